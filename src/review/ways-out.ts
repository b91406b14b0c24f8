/**
 * Ways out of a finding: which single notes of the added voices could be changed so that it is gone and no new fault
 * has come. The class is told how many there are and in which voices; which they are is for the teacher.
 */
import { analyse } from '../harmony/analyse.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { membersOf } from '../harmony/questions/members.ts';
import { chordAt, keyAt } from '../harmony/questions/moments.ts';
import { keyFacts } from '../harmony/tonal.ts';
import { RULES } from '../rules/list.ts';
import type { Family } from '../rules/rule.ts';
import { rangesIn, voiceRange } from '../rules/voice-range.ts';
import { excerpt, withTone } from '../score/excerpt.ts';
import { type NoteName, type Pitch, printNoteName, semitone, staffPlace } from '../score/pitch.ts';
import { barAt } from '../score/place.ts';
import { type ByVoice, byVoice, type Score, VOICES, type VoiceName } from '../score/score.ts';
import { sliceAt, type Tone, textureOf, toneIn } from '../score/texture.ts';
import { type Finding, occurrencesOf, type Review, reviewAnalysis, reviewScore } from './review.ts';

export interface WaysOutOptions {
  /** Voices that are given and may not be changed: mostly the soprano. */
  readonly locked: readonly VoiceName[];
}

/** One note to change, and to what. */
export interface WayOut {
  readonly tone: Tone;
  readonly pitch: Pitch;
}

/** How a changed note is come to from the note before it. */
export type Move = 'step' | 'leap' | 'stay';

export interface WaysOut {
  readonly finding: Finding;
  /** How many there are in each voice. */
  readonly counts: ByVoice<number>;
  /** How many of them move so from the note before; a voice's first note moves from none. */
  readonly moves: ByVoice<Readonly<Record<Move, number>>>;
  readonly total: number;
  /** For the teacher's switch only. By voice from the top, then in time, then from the lowest pitch. */
  readonly ways: readonly WayOut[];
}

const LINEAR: ReadonlySet<Family> = new Set(['consecutives', 'melody', 'spacing and range']);

/** Bars on either side of a finding in which candidates are tried first; what passes there is tried in the whole. */
const BARS_AROUND = 2;

/**
 * Tries every note of the unlocked voices that sounds in the finding, on every pitch of the key or the chord that its
 * voice can reach. A way out clears the finding and makes no new fault, nor anything as heavy as what it cures.
 * Pure; undefined where the review has no such finding.
 */
export function waysOut(review: Review, findingId: string, options: WaysOutOptions): WaysOut | undefined {
  const finding = review.findings.find(({ id }) => id === findingId);
  if (finding === undefined) return undefined;
  const { score, profile } = review;
  const first = Math.max(0, barAt(score, finding.from).index - BARS_AROUND);
  const last = Math.min(score.bars.length - 1, barAt(score, finding.until - 1).index + BARS_AROUND);
  const near = excerpt(score, first, last);
  const nearby = reviewScore(near.score, profile).findings;
  const moved = moveBack(finding, near.shift);
  const part = first > 0 || last < score.bars.length - 1;
  const ways = candidates(review, finding, options.locked).filter(({ tone, pitch }) => {
    const local = { voice: tone.voice, at: tone.at - near.shift, until: tone.until - near.shift };
    if (part && local.at >= 0 && !isCured(moved, nearby, withTone(near.score, local, pitch), review))
      return false;
    return isCured(finding, review.findings, withTone(score, tone, pitch), review);
  });
  const moves = ways.map((way) => ({ voice: way.tone.voice, move: moveTo(review.analysis, way) }));
  const number = (voice: VoiceName, move: Move) =>
    moves.filter((each) => each.voice === voice && each.move === move).length;
  return {
    finding,
    counts: byVoice((voice) => ways.filter((way) => way.tone.voice === voice).length),
    moves: byVoice((voice) => ({
      step: number(voice, 'step'),
      leap: number(voice, 'leap'),
      stay: number(voice, 'stay'),
    })),
    total: ways.length,
    ways,
  };
}

function moveTo({ texture }: Analysis, { tone, pitch }: WayOut): Move | undefined {
  const slice = tone.at === 0 ? undefined : sliceAt(texture, tone.at - 1);
  const before = slice && toneIn(slice, tone.voice);
  if (before === undefined) return undefined;
  const steps = Math.abs(staffPlace(pitch) - staffPlace(before.pitch));
  return steps > 1 ? 'leap' : steps === 1 ? 'step' : 'stay';
}

function moveBack(finding: Finding, shift: number): Finding {
  return { ...finding, from: finding.from - shift, until: finding.until - shift };
}

function isCured(finding: Finding, before: readonly Finding[], altered: Score, { profile }: Review): boolean {
  const analysis = analyse(textureOf(altered));
  const others = before.filter((was) => !isSame(was, finding));
  const known = (now: Place) => others.some((was) => isSame(was, now));
  // Most candidates fail here, on the one rule, and the others need not be asked.
  const rule = RULES.find(({ id }) => id === finding.rule.id)!;
  const again = occurrencesOf(rule, analysis, profile).map((found) => ({
    ...found,
    rule: finding.rule,
  }));
  if (again.some((now) => isSame(finding, now) && !known(now))) return false;
  return reviewAnalysis(analysis, profile).findings.every((now) => {
    if (now.severity === 'remark' || known(now)) return true;
    return now.severity !== 'fault' && finding.severity !== 'query';
  });
}

type Place = Pick<Finding, 'rule' | 'from' | 'until' | 'voices'>;

/** The same complaint about the same place, though its ends may have shifted. */
function isSame(a: Place, b: Place): boolean {
  return (
    a.rule === b.rule &&
    a.from < b.until &&
    b.from < a.until &&
    a.voices.some((voice) => b.voices.includes(voice))
  );
}

function candidates(review: Review, finding: Finding, locked: readonly VoiceName[]): WayOut[] {
  return VOICES.filter((voice) => !locked.includes(voice)).flatMap((voice) =>
    tonesConcerned(review, finding, voice).flatMap((tone) =>
      pitchesFor(review, tone).map((pitch) => ({ tone, pitch })),
    ),
  );
}

/** What is wrong with a line, or between two, lies in its own notes; what is wrong with a chord, in any of the four. */
function tonesConcerned({ analysis }: Review, finding: Finding, voice: VoiceName): readonly Tone[] {
  if (LINEAR.has(finding.rule.family)) return finding.tones.filter((tone) => tone.voice === voice);
  return analysis.texture.tones[voice].filter((tone) => tone.at < finding.until && tone.until > finding.from);
}

function pitchesFor({ analysis, profile }: Review, tone: Tone): Pitch[] {
  const set =
    profile.rules[voiceRange.id]?.parameters?.comfortable ?? voiceRange.parameters.comfortable?.value;
  const range = rangesIn(String(set))[tone.voice];
  const place = staffPlace(tone.pitch);
  return namesFor(analysis, tone)
    .flatMap((name) => [-1, 0, 1].map((by) => ({ ...name, octave: tone.pitch.octave + by })))
    .filter((pitch) => {
      const height = semitone(pitch);
      if (height === semitone(tone.pitch) || Math.abs(staffPlace(pitch) - place) > 7) return false;
      return range === undefined || (height >= semitone(range[0]) && height <= semitone(range[1]));
    })
    .sort((a, b) => semitone(a) - semitone(b));
}

/** The notes of the key, in minor with the raised sixth and seventh, and those of the chord. */
function namesFor(analysis: Analysis, tone: Tone): NoteName[] {
  const key = keyAt(analysis, tone.at);
  const chord = chordAt(analysis, tone.at);
  const facts = key === undefined ? undefined : keyFacts(key);
  const names = [
    ...(facts === undefined ? [] : [...facts.scale, ...facts.harmonic, ...facts.melodic]),
    ...(chord === undefined ? [] : membersOf(chord)),
  ];
  return [...new Map(names.map((name) => [printNoteName(name), name])).values()];
}
