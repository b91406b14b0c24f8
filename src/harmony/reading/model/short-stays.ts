/**
 * Keys that are only touched. People who label chorales now and then name one; in plain work it would be a key for three
 * chords of the minor scale, or for the middle of a sequence, and a teacher hears neither.
 */
import type { Grid } from './grid.ts';
import type { Span } from './search.ts';
import { STRANGE, vocabularyIndex } from './vocabulary.ts';

/**
 * So many beats at most a minor key may spend on the mediant, its relative major, without being left: with that key's
 * dominant, and without.
 */
const TOUCHED = { withDominant: 3, without: 4 } as const;
/** Chords of which each root lies a fifth under the one before: a sequence, the one before and the one after included. */
const SEQUENCE = 4;

/** The reading with such stays read in the key around them, whose chords they all are, if no phrase ends in them. */
export function withoutShortStays(grid: Grid, spans: readonly Span[]): Span[] {
  const read = [...spans];
  for (let from = 0, to = 0; from < read.length; from = to) {
    while (to < read.length && inOneKey(read[to]!, read[from]!)) to++;
    const [before, after] = [read[from - 1], read[to]];
    if (before === undefined || after === undefined || !inOneKey(before, after)) continue;
    const stay = read.slice(from, to);
    const goesBy = isTouched(grid, stay, before, after) || isSequence(grid, [before, ...stay, after]);
    if (!goesBy || !belongs(grid, stay, before)) continue;
    for (let i = from; i < to; i++) read[i] = { ...read[i]!, tonic: before.tonic, mode: before.mode };
  }
  return read;
}

function inOneKey(a: Span, b: Span): boolean {
  return a.tonic === b.tonic && a.mode === b.mode;
}

/** No phrase ends in the stay, and the key around it knows every chord of it. */
function belongs(grid: Grid, stay: readonly Span[], { tonic, mode }: Span): boolean {
  return stay.every(
    ({ from, to, root, type }) =>
      !grid.phraseEnd.subarray(from, to).includes(1) && vocabularyIndex(mode, root - tonic, type) !== STRANGE,
  );
}

/** A moment in the relative major of a minor key. */
function isTouched(grid: Grid, stay: readonly Span[], before: Span, after: Span): boolean {
  const [first, last] = [stay[0]!, stay.at(-1)!];
  if (before.mode !== 1 || first.mode !== 0 || first.tonic !== before.tonic - 3) return false;
  const tonicAfter = (i: number) => (stay[i + 1] ?? after).root === first.tonic;
  const leads = stay.some(({ root }, i) => [1, 5].includes(root - first.tonic) && tonicAfter(i));
  const most = (leads ? TOUCHED.withDominant : TOUCHED.without) * grid.beat;
  return grid.until[last.to - 1]! - grid.at[first.from]! <= most;
}

/** Falling fifths all the way, the diminished one of the scale among them. */
function isSequence(grid: Grid, chords: readonly Span[]): boolean {
  const falls = chords.every(({ from, root }, i) => {
    const down = root - (chords[i - 1]?.root ?? root);
    return i === 0 || (grid.gapBefore[from] === 0 && [0, -1, 6].includes(down));
  });
  return falls && chords.length >= SEQUENCE;
}
