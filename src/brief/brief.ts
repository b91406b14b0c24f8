/**
 * A brief: the exercise as it was set. A small file in our text notation, with `?` where the pupil is to write and a
 * few more headers:
 *
 * ```
 * task: add alto, tenor and bass
 * profile: chorale
 * least length: 0:45
 * least together: 6:00
 * without: hints, ways out
 * ```
 */
import { listed } from '../english/words.ts';
import { type ExtraHeader, hasHeader, type Problem, printNotation, readNotation } from '../notation/index.ts';
import { type ByVoice, byVoice, type Score, type VoiceEvent, type VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import { HELPS, type Help, isHelp } from './helps.ts';

export interface Brief {
  /** What is given; everything else is a gap. */
  readonly score: Score;
  /** What is asked for, in a sentence. May be empty. */
  readonly task: string;
  /** Name of the house profile. */
  readonly profile: string;
  /** How long the exercise must last at its tempo, in seconds. */
  readonly leastSeconds?: number;
  /** How long it and the other composition must last together, in seconds. */
  readonly leastTogetherSeconds?: number;
  /** Helps that the page does not give. */
  readonly without: readonly Help[];
}

export interface BriefReading {
  readonly brief: Brief;
  /** Empty where all was read. */
  readonly problems: readonly Problem[];
}

const BRIEF_HEADERS = ['task', 'profile', 'least length', 'least together', 'without'] as const;

/** True where a text has one of the headers that only a brief has. */
export function isBrief(text: string): boolean {
  return hasHeader(text, BRIEF_HEADERS);
}

/** Reads a brief whole; it never throws. */
export function readBrief(text: string): BriefReading {
  const { score, problems, headers } = readNotation(text, { extraHeaders: BRIEF_HEADERS });
  const value = (name: string): ExtraHeader | undefined => headers.findLast((header) => header.name === name);
  const wrong: Problem[] = [];
  const duration = (name: string): number | undefined => {
    const header = value(name);
    if (header === undefined) return undefined;
    const seconds = parseDuration(header.value);
    if (seconds === undefined)
      wrong.push({
        line: header.line,
        column: 1,
        message: `"${name}: ${header.value.slice(0, 24)}" could not be read; minutes and seconds such as 6:00 were expected.`,
      });
    return seconds;
  };
  const without = (): Help[] => {
    const header = value('without');
    if (header === undefined) return [];
    const names = header.value.split(',').map((name) => name.trim().toLowerCase());
    for (const name of names)
      if (!isHelp(name))
        wrong.push({
          line: header.line,
          column: 1,
          message: `"without: ${name.slice(0, 24)}" names no help; ${listed(HELPS, 'or')} was expected.`,
        });
    return HELPS.filter((help) => names.includes(help));
  };
  const leastSeconds = duration('least length');
  const leastTogetherSeconds = duration('least together');
  return {
    brief: {
      score,
      task: value('task')?.value ?? '',
      profile: value('profile')?.value ?? 'chorale',
      ...(leastSeconds === undefined ? {} : { leastSeconds }),
      ...(leastTogetherSeconds === undefined ? {} : { leastTogetherSeconds }),
      without: without(),
    },
    problems: [...problems, ...wrong].sort((a, b) => a.line - b.line || a.column - b.column),
  };
}

/** The brief as text; {@link readBrief} gives it back. */
export function printBrief(brief: Brief): string {
  const headers = [
    ...(brief.task === '' ? [] : [`task: ${brief.task.replaceAll(/\s+/g, ' ')}`]),
    `profile: ${brief.profile}`,
    ...(brief.leastSeconds === undefined ? [] : [`least length: ${printDuration(brief.leastSeconds)}`]),
    ...(brief.leastTogetherSeconds === undefined
      ? []
      : [`least together: ${printDuration(brief.leastTogetherSeconds)}`]),
    ...(brief.without.length === 0 ? [] : [`without: ${brief.without.join(', ')}`]),
  ];
  return `${headers.join('\n')}\n${printNotation(brief.score)}`;
}

/** What of a score is given: for each voice all of it, nothing, or all that begins before a moment. */
export type Given = ByVoice<boolean | Ticks>;

/** The score with only what is given left in it; the rest is to be written. */
export function onlyGiven(score: Score, given: Given): Score {
  return keeping(score, (event, voice) => {
    const until = given[voice];
    return until === true || (typeof until === 'number' && event.at < until);
  });
}

/**
 * The score as a brief: its notes are given; its rests, like its empty bars, are to be written, since that is how a
 * notation program shows an empty bar.
 */
export function asGiven(score: Score): Score {
  return keeping(score, ({ kind }) => kind === 'note');
}

/** The score with what is kept left in it; the rest is to be written. */
export function keeping(score: Score, kept: (event: VoiceEvent, voice: VoiceName) => boolean): Score {
  return {
    ...score,
    remarks: [],
    voices: byVoice((voice) =>
      mergedGaps(
        score,
        score.voices[voice].map((event) =>
          kept(event, voice) ? event : { kind: 'gap', at: event.at, duration: event.duration },
        ),
      ),
    ),
  };
}

/** Gaps that follow one another within a bar become one. */
function mergedGaps(score: Score, events: readonly VoiceEvent[]): VoiceEvent[] {
  const starts = new Set(score.bars.map((bar) => bar.at));
  const merged: VoiceEvent[] = [];
  for (const event of events) {
    const last = merged.at(-1);
    if (event.kind === 'gap' && last?.kind === 'gap' && !starts.has(event.at))
      merged[merged.length - 1] = { ...last, duration: last.duration + event.duration };
    else merged.push(loose(event, last, merged));
  }
  return merged;
}

/** A tie into what is no longer given is dropped from the note before. */
function loose(event: VoiceEvent, last: VoiceEvent | undefined, merged: VoiceEvent[]): VoiceEvent {
  if (last?.kind === 'note' && last.tied && event.kind !== 'note') {
    const { tied: _tied, ...rest } = last;
    merged[merged.length - 1] = rest;
  }
  return event;
}

/** Reads `6:00` or `0:45` as seconds; undefined for anything else. */
export function parseDuration(text: string): number | undefined {
  const match = /^(\d{1,3}):([0-5]\d)$/.exec(text.trim());
  return match ? Number(match[1]) * 60 + Number(match[2]) : undefined;
}

/** Seconds as `6:00`, rounded down to whole ones. */
export function printDuration(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
