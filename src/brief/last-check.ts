/** The last look before handing in: what is done, what is not yet, and what a person should look at. */

import { capitalised, counted } from '../english/words.ts';
import { count, printTempo } from '../report/sentences.ts';
import type { Finding, Review } from '../review/review.ts';
import { withBlanks } from '../score/blanks.ts';
import { barAt, firstMetre, placeAt, printBar, printBars, printPlace } from '../score/place.ts';
import { type Gap, type Score, VOICE_WORDS, VOICES } from '../score/score.ts';
import { secondsOf, tempoMarks } from '../score/tempo.ts';
import type { Ticks } from '../score/time.ts';
import { type Brief, printDuration } from './brief.ts';

export type Verdict = 'done' | 'not yet' | 'look';

export interface CheckDetail {
  readonly text: string;
  readonly at?: Ticks;
  /** Id of the finding it speaks of. */
  readonly finding?: string;
}

export interface CheckItem {
  readonly id: 'written' | 'given' | 'phrases' | 'faults' | 'queries' | 'ranges' | 'length' | 'together';
  readonly title: string;
  readonly verdict: Verdict;
  readonly sentence: string;
  readonly details: readonly CheckDetail[];
}

/** How the exercise compares with what was given; the desk's `compareWithGiven` answers so. */
export interface GivenAnswer {
  readonly summary: string;
  /** The whole stands higher or lower than it was set. */
  readonly transposition?: { readonly message: string };
  /** What differs for the whole: metre, key signature. */
  readonly general: readonly string[];
  readonly departures: readonly { readonly message: string }[];
}

export interface LastCheckInput {
  readonly review: Review;
  readonly brief?: Brief;
  /** Where there is a brief: how the exercise compares with it. */
  readonly given?: GivenAnswer;
  /** The pupil's own word on findings he or she means so, by the finding's id. */
  readonly notes: Readonly<Record<string, string>>;
  /** Crotchets a minute, where the exercise doesn't say. */
  readonly usualTempo: number;
  /** How long the other composition lasts, in seconds; 0 where not told. */
  readonly otherSeconds: number;
  /** What both must last together where the brief doesn't say, in seconds. */
  readonly leastTogetherSeconds: number;
}

/** Said wherever the check is shown or printed. */
export const WHO_DECIDES =
  'This check advises. It cannot tell how well the music sounds or how it will be marked: your teacher and the examiner decide, by their own criteria.';

/** Every point of the last check, in the order to go through. Pure. */
export function lastCheck(input: LastCheckInput): CheckItem[] {
  const { review } = input;
  // Where marks are withheld the check says only what a pupil can count: what is written, given, and how long.
  const marked = input.brief?.without.includes('marks')
    ? []
    : [phrases(review), faults(review, input.notes), queries(review, input.notes), ranges(review)];
  return [
    written(withBlanks(review.score)),
    ...(input.given === undefined ? [] : [given(input.given)]),
    ...marked,
    ...length(input),
    ...together(input),
  ];
}

function written(score: Score): CheckItem {
  const details = VOICES.flatMap((voice) => {
    const gaps = score.voices[voice].filter((event) => event.kind === 'gap');
    if (gaps.length === 0) return [];
    const begun = score.voices[voice].some(({ kind }) => kind === 'note');
    const what = begun ? `not complete ${barsOf(score, gaps)}` : 'still to be written';
    return [{ text: `The ${VOICE_WORDS[voice]} is ${what}.`, at: gaps[0]!.at }];
  });
  const empty = score.bars.length === 0;
  return {
    id: 'written',
    title: 'Every beat written in every voice',
    verdict: details.length === 0 && !empty ? 'done' : 'not yet',
    sentence: empty
      ? 'Nothing is written yet.'
      : details.length === 0
        ? 'All four voices are written from the first beat to the last.'
        : `${counted(details.length, 'voice')} ${details.length === 1 ? 'has' : 'have'} beats still to be written.`,
    details,
  };
}

/** `in bars 2 and 5`, and `from bar 2 to bar 8` where it is one stretch. */
function barsOf(score: Score, gaps: readonly Gap[]): string {
  const bars = [...new Set(gaps.map((gap) => barAt(score, gap.at)))];
  const [first, last] = [bars[0]!, bars.at(-1)!];
  return bars.length > 2 && last.index - first.index === bars.length - 1
    ? `from ${printBar(first.number)} to ${printBar(last.number)}`
    : `in ${printBars(
        bars.map(({ number }) => number),
        MOST_BARS,
      )}`;
}

/** More bars than this are only counted. */
const MOST_BARS = 8;

function given({ summary, transposition, general, departures }: GivenAnswer): CheckItem {
  return {
    id: 'given',
    title: 'What was given is unchanged',
    verdict: departures.length > 0 ? 'not yet' : transposition || general.length > 0 ? 'look' : 'done',
    sentence: [summary, ...general].join(' '),
    details: departures.map(({ message }) => ({ text: message })),
  };
}

function phrases({ analysis, score }: Review): CheckItem {
  // A phrase still to be written has no cadence to look for; that it isn't written is said above.
  const whole = withBlanks(score);
  const written = analysis.phrases.filter((phrase) => isWrittenAt(whole, phrase.until));
  const open = written.filter((phrase) => phrase.cadence === undefined);
  const details = open.map((phrase) => ({
    text: `The phrase that ends in ${printBar(barAt(score, Math.max(phrase.from, phrase.until - 1)).number)} has no cadence${phrase.end === 'unfinished' ? ' yet' : ''}.`,
    at: phrase.from,
  }));
  const total = analysis.phrases.length;
  const waiting = total - written.length;
  return {
    id: 'phrases',
    title: 'Each phrase closed by a cadence',
    verdict: total > 0 && open.length + waiting === 0 ? 'done' : 'not yet',
    sentence:
      total === 0
        ? 'No phrase can be told yet.'
        : written.length === 0
          ? 'The phrase ends are still to be written.'
          : open.length === 0
            ? `${waiting > 0 ? `${capitalised(counted(written.length, 'phrase'))} written so far ${written.length === 1 ? 'closes' : 'close'}` : total === 1 ? 'The one phrase closes' : total === 2 ? 'Both phrases close' : `All ${total} phrases close`} with a cadence${waiting > 0 ? `; ${counted(waiting, 'phrase end')} ${waiting === 1 ? 'is' : 'are'} still to be written` : ''}.`
            : `${counted(open.length, 'phrase')} of ${total} ${open.length === 1 ? 'has' : 'have'} no cadence.`,
    details,
  };
}

/** Nothing is still to be written: what was not found is not there. */
function isWhole(score: Score): boolean {
  const { voices } = withBlanks(score);
  return VOICES.every((voice) => voices[voice].every(({ kind }) => kind !== 'gap'));
}

/** True where all voices have something in the last moment before this one. */
function isWrittenAt(score: Score, until: Ticks): boolean {
  return VOICES.every((voice) => {
    const last = score.voices[voice].find((event) => event.at < until && until <= event.at + event.duration);
    return last !== undefined && last.kind !== 'gap';
  });
}

function faults(review: Review, notes: LastCheckInput['notes']): CheckItem {
  const all = review.findings.filter((f) => f.severity === 'fault');
  const meant = all.filter((f) => notes[f.id] !== undefined);
  const left = all.length - meant.length;
  return {
    id: 'faults',
    title: 'Faults left',
    verdict: left > 0 ? 'not yet' : meant.length > 0 ? 'look' : 'done',
    sentence:
      all.length === 0
        ? isWhole(review.score)
          ? 'No faults are left.'
          : 'No faults stand in what is written so far.'
        : `${capitalised(count(left, 'fault'))} ${left === 1 ? 'is' : 'are'} left${meant.length === 0 ? '.' : `, and ${meant.length} more ${meant.length === 1 ? 'is' : 'are'} meant so, with a reason given.`}`,
    details: all.map((f) => findingDetail(review, f, notes)),
  };
}

function queries(review: Review, notes: LastCheckInput['notes']): CheckItem {
  const all = review.findings.filter((f) => f.severity === 'query');
  const left = all.filter((f) => notes[f.id] === undefined).length;
  return {
    id: 'queries',
    title: 'Queries',
    verdict: all.length === 0 ? 'done' : 'look',
    sentence:
      all.length === 0
        ? `Nothing else is worth a second look${isWhole(review.score) ? '' : ' so far'}.`
        : `${capitalised(count(all.length, 'query'))} worth a second look${left === all.length ? '.' : `; ${all.length - left} ${all.length - left === 1 ? 'has' : 'have'} your reason beside ${all.length - left === 1 ? 'it' : 'them'}.`}`,
    details: all.map((f) => findingDetail(review, f, notes)),
  };
}

function findingDetail(review: Review, finding: Finding, notes: LastCheckInput['notes']): CheckDetail {
  const note = notes[finding.id];
  const place = capitalised(printPlace(placeAt(review.score, finding.from)));
  return {
    text: `${place}: ${finding.rule.name}. ${finding.message}${note === undefined ? '' : ` Your word: “${note.trim()}”`}`,
    at: finding.from,
    finding: finding.id,
  };
}

function ranges(review: Review): CheckItem {
  const out = review.findings.filter((f) => f.rule.id === 'voice-range');
  return {
    id: 'ranges',
    title: 'Voices within their ranges',
    verdict: out.length === 0 ? 'done' : out.some((f) => f.severity === 'fault') ? 'not yet' : 'look',
    sentence:
      out.length === 0
        ? isWhole(review.score)
          ? 'Every voice stays where a choir can sing it.'
          : 'What is written so far stays where a choir can sing it.'
        : `${counted(out.length, 'place')} ${out.length === 1 ? 'lies' : 'lie'} outside a voice’s comfortable range.`,
    details: out.map((f) => ({
      text: `${capitalised(printPlace(placeAt(review.score, f.from)))}: ${f.message}`,
      at: f.from,
      finding: f.id,
    })),
  };
}

function length({ review, brief, usualTempo }: LastCheckInput): CheckItem[] {
  const seconds = secondsOf(review.score, usualTempo);
  const tempo = review.score.tempo ?? usualTempo;
  const least = brief?.leastSeconds;
  const changes = tempoMarks(review.score).length > 1;
  const pace = changes ? 'its tempos' : printTempo(tempo, firstMetre(review.score));
  const lasts = `At ${pace} it lasts ${printDuration(seconds)}`;
  return [
    {
      id: 'length',
      title: 'Length',
      verdict: least === undefined || seconds >= least ? 'done' : 'not yet',
      sentence:
        least === undefined
          ? `${lasts}, repeats not counted.`
          : `${lasts}; at least ${printDuration(least)} is asked for.`,
      details: [],
    },
  ];
}

function together({
  review,
  brief,
  usualTempo,
  otherSeconds,
  leastTogetherSeconds,
}: LastCheckInput): CheckItem[] {
  // Nobody has asked for it, and nobody has told of another composition: then it only baffles.
  if (brief?.leastTogetherSeconds === undefined && otherSeconds === 0) return [];
  const least = brief?.leastTogetherSeconds ?? leastTogetherSeconds;
  const total = secondsOf(review.score, usualTempo) + otherSeconds;
  const enough = total >= least;
  return [
    {
      id: 'together',
      title: 'Length with the other composition',
      verdict: enough ? 'done' : 'not yet',
      sentence:
        otherSeconds === 0
          ? `The length of the other composition is not told yet; both together should last ${printDuration(least)}.`
          : `Both together last ${printDuration(total)}; ${printDuration(least)} is asked for${enough ? '' : `, ${printDuration(least - total)} more`}.`,
      details: [],
    },
  ];
}
