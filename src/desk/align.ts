/** Which bar of one score answers to which bar of another, by the music and not by the number. */
import type { VoiceName } from '../score/score.ts';
import { likeBars, type PitchCode, type SoundingBar } from './bar-notes.ts';

/** One step of an alignment: both bars, or a bar that the other score does not have. Indices into the two lists. */
export interface AlignedBar {
  readonly a?: number;
  readonly b?: number;
  /** How much of the two bars is the same, 0 to 1; 0 where one is missing. */
  readonly likeness: number;
}

export interface Alignment {
  readonly bars: readonly AlignedBar[];
  /** What the differences add up to: 0 for the same music, about 1 for each bar that is another. */
  readonly cost: number;
}

/** A bar left out or put in costs a little more than half a changed bar, so that a rewritten bar is still the bar it was. */
const SKIPPED = 0.55;
/** Two bars of which one or both are unwritten say nothing for or against each other. */
const UNKNOWN = 0.5;
/** Beyond so many pairs of bars, only bars near the diagonal are compared. */
const MOST_PAIRS = 60_000;
const BAND = 40;
/** Steps of the alignment as they are noted. */
const [BOTH, ONLY_A, ONLY_B] = [1, 2, 3];

/**
 * Aligns bars so that as much music as possible answers to the same music (least edit distance over bars).
 *
 * @param voices the voices that are compared: the given ones for a brief, all for two drafts
 * @param by how far the second score is transposed against the first
 */
export function alignBars(
  a: readonly SoundingBar[],
  b: readonly SoundingBar[],
  voices: readonly VoiceName[],
  by: PitchCode = 0,
): Alignment {
  const near =
    a.length * b.length > MOST_PAIRS ? BAND + Math.abs(a.length - b.length) : Number.POSITIVE_INFINITY;
  const width = b.length + 1;
  const costs = new Float64Array((a.length + 1) * width).fill(Number.POSITIVE_INFINITY);
  const likeness = new Float32Array((a.length + 1) * width);
  const steps = new Uint8Array((a.length + 1) * width);
  costs[0] = 0;
  for (let i = 0; i <= a.length; i++) {
    for (let j = 0; j <= b.length; j++) {
      if (i + j === 0 || Math.abs(i - j) > near) continue;
      const here = i * width + j;
      const reach = (cost: number, step: number) => {
        if (cost < costs[here]!) [costs[here], steps[here]] = [cost, step];
      };
      if (i > 0 && j > 0) {
        const [x, y] = [a[i - 1]!, b[j - 1]!];
        const like = likeBars(x, y, voices, by) ?? UNKNOWN;
        likeness[here] = like;
        const known = isWritten(x, voices) && isWritten(y, voices);
        reach(costs[here - width - 1]! + 1 - (known ? like : UNKNOWN), BOTH);
      }
      if (i > 0) reach(costs[here - width]! + SKIPPED, ONLY_A);
      if (j > 0) reach(costs[here - 1]! + SKIPPED, ONLY_B);
    }
  }
  const bars: AlignedBar[] = [];
  for (let i = a.length, j = b.length; i > 0 || j > 0; ) {
    const here = i * width + j;
    const step = steps[here]!;
    if (step !== ONLY_B) i--;
    if (step !== ONLY_A) j--;
    bars.push({
      ...(step === ONLY_B ? {} : { a: i }),
      ...(step === ONLY_A ? {} : { b: j }),
      likeness: step === BOTH ? likeness[here]! : 0,
    });
  }
  return { bars: bars.reverse(), cost: costs[a.length * width + b.length]! };
}

function isWritten(bar: SoundingBar, voices: readonly VoiceName[]): boolean {
  return voices.some((voice) => bar.notes[voice].length > 0);
}

/**
 * How far the second score is transposed against the first: the interval under which most of the music answers.
 * 0 where it stands as it was, or where nothing answers better. Octaves count: a tune an octave lower is transposed.
 */
export function transpositionBetween(
  a: readonly SoundingBar[],
  b: readonly SoundingBar[],
  voices: readonly VoiceName[],
): PitchCode {
  let best: PitchCode = 0;
  let least = alignBars(a, b, voices, 0).cost;
  for (const by of likelyIntervals(a, b, voices)) {
    const { cost } = alignBars(a, b, voices, by);
    // A changed bar or two must not look like a change of key: the other key has to explain clearly more.
    if (cost < least - 0.25 && cost < 0.75 * least) [best, least] = [by, cost];
  }
  return best;
}

/** How many of the commonest intervals between the two tunes are tried. */
const TRIED = 4;

/** The intervals between notes that stand near the same place in both lines, the commonest first. */
function likelyIntervals(
  a: readonly SoundingBar[],
  b: readonly SoundingBar[],
  voices: readonly VoiceName[],
): PitchCode[] {
  const counts = new Map<PitchCode, number>();
  for (const voice of voices) {
    const x = a.flatMap((bar) => bar.notes[voice]).slice(0, 200);
    const y = b.flatMap((bar) => bar.notes[voice]).slice(0, 200);
    for (let i = 0; i < x.length; i++)
      for (let j = Math.max(0, i - 4); j <= i + 4 && j < y.length; j++) {
        const by = y[j]!.code - x[i]!.code;
        // The same place counts for more than a neighbouring one.
        counts.set(by, (counts.get(by) ?? 0) + (i === j ? 2 : 1));
      }
  }
  return [...counts]
    .filter(([by]) => by !== 0)
    .sort((p, q) => q[1] - p[1] || p[0] - q[0])
    .slice(0, TRIED)
    .map(([by]) => by);
}
