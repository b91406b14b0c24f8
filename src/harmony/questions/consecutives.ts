/**
 * Consecutive perfect fifths, octaves and unisons between two voices, found once for all the rules that judge them.
 *
 * They are looked for in four ways: as written, from one slice to the next; in the plain lines that are left when
 * passing notes, neighbour notes and anticipations are taken away; in these lines with a suspension taken for its
 * resolution; and from beat to beat, with chord notes between.
 */
import {
  crossesFermata,
  PAIRS,
  type Pair,
  type PerfectInterval,
  perfectInterval,
} from '../../score/motion.ts';
import { sameNoteName, semitone } from '../../score/pitch.ts';
import { remembered } from '../../score/remember.ts';
import { type ByVoice, byVoice, VOICES } from '../../score/score.ts';
import { type Slice, type Tone, toneIn } from '../../score/texture.ts';
import type { Ticks } from '../../score/time.ts';
import type { Analysis, Ornament, OrnamentKind } from '../analysis.ts';
import { sameHarmony } from './functions.ts';
import { chordAt } from './moments.ts';
import { ornamentsByTone } from './ornaments.ts';

/**
 * `direct`: both voices move at once, straight from the one perfect interval to the next.
 * `decorated`: they do so once the ornaments that merely postpone it are taken away.
 * `held back`: they do so once a suspension is taken for the note it resolves to.
 * `on beats`: on two successive beats, with chord notes between.
 */
export type ConsecutiveWay = 'direct' | 'decorated' | 'held back' | 'on beats';

export interface Consecutive {
  /** The interval both times; a unison and an octave in turn count as octaves. */
  readonly interval: PerfectInterval;
  /** By contrary motion a fifth becomes a twelfth, a unison an octave, and so on. */
  readonly motion: 'similar' | 'contrary';
  readonly way: ConsecutiveWay;
  readonly pair: Pair;
  /** Upper voice, lower voice. */
  readonly first: readonly [Tone, Tone];
  readonly second: readonly [Tone, Tone];
  /** When the first interval begins to sound, and when the second stops. */
  readonly from: Ticks;
  readonly until: Ticks;
  /** When the second interval is reached. */
  readonly arrival: Ticks;
  /** A phrase ends under a fermata between the two. */
  readonly acrossFermata: boolean;
  /** One chord throughout, and both outer voices keep their notes: a change of position. */
  readonly changeOfPosition: boolean;
  /** Of the four notes, those foreign to their chord where the intervals sound. */
  readonly ornaments: readonly Ornament[];
}

/** All consecutives of a texture, in order of arrival. Found once for each analysis and remembered. */
export const consecutivesIn: (analysis: Analysis) => readonly Consecutive[] = remembered(findConsecutives);

const LAID_ON: ReadonlySet<OrnamentKind> = new Set([
  'passing',
  'neighbour',
  'anticipation',
  'échappée',
  'changing notes',
]);

/** True for ornaments that lie on top of the plain line, off the beat: the ear hears the line through them. */
export function isLaidOn(ornament: Ornament): boolean {
  return LAID_ON.has(ornament.kind);
}

function findConsecutives(analysis: Analysis): Consecutive[] {
  const { slices } = analysis.texture;
  const list: Consecutive[] = [];
  const ornaments = ornamentsByTone(analysis);
  const plain = byVoice((voice) =>
    plainLine(
      slices.map((slice) => toneIn(slice, voice)),
      slices,
      ornaments,
    ),
  );
  const resolved = byVoice((voice) =>
    plain[voice].map((tone, i) => tone && resolvedAt(ornaments, tone, slices[i]!.at)),
  );
  const suspends = new Set(
    VOICES.filter((voice) => resolved[voice].some((tone, i) => tone !== plain[voice][i])),
  );
  for (const pair of PAIRS) {
    const reached = new Map<Tone, Tone>();
    const add = (consecutive: Consecutive | undefined) => {
      if (consecutive === undefined) return;
      const [upper, lower] = consecutive.second;
      if (reached.get(upper) === lower) return;
      reached.set(upper, lower);
      list.push(consecutive);
    };
    const meet = { analysis, pair, ornaments };
    for (const step of directSteps(slices, pair)) add(judge(meet, step, 'direct'));
    for (const step of plainSteps(slices, pair, plain))
      if (overlap(step.before) && overlap(step.after)) add(judge(meet, step, 'decorated'));
    // One voice as if it did not hold its suspensions back; two that do so together move together anyway.
    for (const voice of pair.filter((one) => suspends.has(one)))
      for (const step of plainSteps(slices, pair, { ...plain, [voice]: resolved[voice] }))
        if (isHeldBack(step, voice)) add(judge(meet, step, 'held back'));
    for (const step of beatSteps(slices, pair)) add(judge(meet, step, 'on beats'));
  }
  return list.sort((a, b) => a.arrival - b.arrival);
}

/** From the pair's tones in one place to its tones in another, both of them new. */
interface PairStep {
  readonly before: readonly [Tone, Tone];
  readonly after: readonly [Tone, Tone];
  /** The last slice of the first interval as written, and the first of the second. */
  readonly leave: Slice;
  readonly arrive: Slice;
}

function* directSteps(slices: readonly Slice[], [upper, lower]: Pair): Generator<PairStep> {
  for (let i = 1; i < slices.length; i++) {
    const leave = slices[i - 1]!;
    const arrive = slices[i]!;
    const a = toneIn(leave, upper);
    const b = toneIn(leave, lower);
    const c = toneIn(arrive, upper);
    const d = toneIn(arrive, lower);
    if (!a || !b || !c || !d || a === c || b === d) continue;
    yield { before: [a, b], after: [c, d], leave, arrive };
  }
}

function* plainSteps(
  slices: readonly Slice[],
  [upper, lower]: Pair,
  plain: ByVoice<readonly (Tone | undefined)[]>,
): Generator<PairStep> {
  let before: readonly [Tone, Tone] | undefined;
  let leave: Slice | undefined;
  for (const [i, arrive] of slices.entries()) {
    const a = plain[upper][i];
    const b = plain[lower][i];
    if (!a || !b) {
      before = leave = undefined;
      continue;
    }
    if (before !== undefined && leave !== undefined && before[0] !== a && before[1] !== b) {
      yield { before, after: [a, b], leave, arrive };
    }
    if (before === undefined || before[0] !== a || before[1] !== b) {
      before = [a, b];
      leave = arrive;
    }
  }
}

function* beatSteps(slices: readonly Slice[], [upper, lower]: Pair): Generator<PairStep> {
  let leave: Slice | undefined;
  for (const arrive of slices) {
    const c = toneIn(arrive, upper);
    const d = toneIn(arrive, lower);
    if (!c || !d) leave = undefined;
    if (!c || !d || arrive.strength < 2) continue;
    const a = leave && toneIn(leave, upper);
    const b = leave && toneIn(leave, lower);
    if (leave && a && b && a !== c && b !== d && leave.index < arrive.index - 1)
      yield { before: [a, b], after: [c, d], leave, arrive };
    leave = arrive;
  }
}

interface Meeting {
  readonly analysis: Analysis;
  readonly pair: Pair;
  readonly ornaments: ReadonlyMap<Tone, readonly Ornament[]>;
}

function judge(meeting: Meeting, step: PairStep, way: ConsecutiveWay): Consecutive | undefined {
  const { before, after, leave, arrive } = step;
  const interval = together(perfectInterval(...before), perfectInterval(...after));
  if (interval === undefined) return undefined;
  const rises = [0, 1].map((v) => semitone(after[v]!.pitch) - semitone(before[v]!.pitch));
  const [upperRise, lowerRise] = rises as [number, number];
  if (upperRise === 0 || lowerRise === 0) return undefined;
  // Both keep their note names: the octave changes, the harmony does not.
  if (sameNoteName(before[0].pitch, after[0].pitch) && sameNoteName(before[1].pitch, after[1].pitch))
    return undefined;
  const foreign = [
    ...before.flatMap((tone) => sounding(meeting.ornaments, tone, leave.at)),
    ...after.flatMap((tone) => sounding(meeting.ornaments, tone, arrive.at)),
  ];
  return {
    interval,
    motion: upperRise > 0 === lowerRise > 0 ? 'similar' : 'contrary',
    way,
    pair: meeting.pair,
    first: before,
    second: after,
    from: Math.max(before[0].at, before[1].at),
    until: Math.min(after[0].until, after[1].until),
    arrival: arrive.at,
    acrossFermata: fermataBetween(meeting.analysis.texture.slices, leave, arrive),
    changeOfPosition: isChangeOfPosition(meeting.analysis, leave, arrive),
    ornaments: foreign,
  };
}

/** Two fifths, two unisons, or two of the family of octaves. */
function together(
  first: PerfectInterval | undefined,
  second: PerfectInterval | undefined,
): PerfectInterval | undefined {
  if (first === undefined || second === undefined) return undefined;
  if (first === second) return first;
  return first === 'fifth' || second === 'fifth' ? undefined : 'octave';
}

function fermataBetween(slices: readonly Slice[], leave: Slice, arrive: Slice): boolean {
  for (let i = leave.index; i < arrive.index; i++) {
    if (crossesFermata({ from: slices[i]!, to: slices[i + 1]! })) return true;
  }
  return false;
}

function isChangeOfPosition(analysis: Analysis, leave: Slice, arrive: Slice): boolean {
  const before = chordAt(analysis, leave.at);
  const after = chordAt(analysis, arrive.at);
  if (!before || !after || !sameHarmony(before, after)) return false;
  return (['S', 'B'] as const).every((voice) => {
    const a = toneIn(leave, voice);
    const b = toneIn(arrive, voice);
    return a !== undefined && b !== undefined && semitone(a.pitch) === semitone(b.pitch);
  });
}

function sounding(map: Meeting['ornaments'], tone: Tone, at: Ticks): readonly Ornament[] {
  return map.get(tone)?.filter((ornament) => at >= ornament.at && at < ornament.until) ?? [];
}

/** The tone a suspension resolves to, from where it begins to be one; any other tone as it is. */
function resolvedAt(ornaments: Meeting['ornaments'], tone: Tone, at: Ticks): Tone {
  const held = sounding(ornaments, tone, at).find(({ kind }) => kind === 'suspension');
  return held?.resolution ?? tone;
}

/** Two notes are heard together at some time; a plain line may stand on under a note that has long been left. */
function overlap([upper, lower]: readonly [Tone, Tone]): boolean {
  return upper.at < lower.until && lower.at < upper.until;
}

/** The step in a line of resolved suspensions goes to a tone that is held back: it sounds only later. */
function isHeldBack({ after, arrive }: PairStep, voice: Tone['voice']): boolean {
  return after.some((tone) => tone.voice === voice && tone.at > arrive.at);
}

/** A voice slice by slice without the ornaments laid on it: the note before stands on through them. */
function plainLine(
  tones: readonly (Tone | undefined)[],
  slices: readonly Slice[],
  ornaments: Meeting['ornaments'],
): (Tone | undefined)[] {
  let last: Tone | undefined;
  return tones.map((tone, i) => {
    const at = slices[i]!.at;
    const laidOn = tone !== undefined && sounding(ornaments, tone, at).some(isLaidOn);
    if (!laidOn) last = tone;
    return laidOn ? last : tone;
  });
}
