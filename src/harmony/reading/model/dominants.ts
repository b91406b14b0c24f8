/**
 * A six-four that passes off the beat inside one dominant: over the held bass neighbouring notes rise and fall back, and
 * the ear hears one chord. The search, which goes from chord to chord, likes to name it.
 */
import { TYPE } from '../../chord-types.ts';
import { type Grid, WAYS } from './grid.ts';
import type { Span } from './search.ts';
import { memberAt } from './segment.ts';

/** Strength of a beat, as the grid counts it. */
const BEAT = 2;
const STEPS: ReadonlySet<number> = new Set([WAYS.indexOf('step up'), WAYS.indexOf('step down')]);

/** The reading with such six-fours taken into their dominant. */
export function dominantsKeptWhole(grid: Grid, spans: readonly Span[]): Span[] {
  return spans.map((span, i) => {
    const [before, after] = [spans[i - 1], spans[i + 1]];
    if (before === undefined || after === undefined || !passes(grid, before, span, after)) return span;
    const { root, type, inversion } = before;
    return { ...span, root, type, inversion };
  });
}

function passes(grid: Grid, before: Span, span: Span, after: Span): boolean {
  return (
    grid.strength[span.from]! < BEAT &&
    isTonicSixFour(span) &&
    isDominantInRoot(before, span) &&
    isDominantInRoot(after, span) &&
    isWithoutBreak(grid, span.from) &&
    isWithoutBreak(grid, after.from) &&
    grid.voices.every((_, voice) => onlyDecorates(grid, voice, span.from, before))
  );
}

function isTonicSixFour({ root, type, inversion, tonic }: Span): boolean {
  return root === tonic && inversion === 2 && (type === TYPE.M || type === TYPE.m);
}

/** A dominant over its root, in the key of the six-four. */
function isDominantInRoot({ root, type, inversion, tonic, mode }: Span, sixFour: Span): boolean {
  if (tonic !== sixFour.tonic || mode !== sixFour.mode || root !== tonic + 1 || inversion !== 0) return false;
  return type === TYPE.M || type === TYPE.M7;
}

function isWithoutBreak(grid: Grid, atom: number): boolean {
  return grid.phraseStart[atom] === 0 && grid.gapBefore[atom] === 0;
}

/** What a voice has at an atom belongs to the chord, or is come to and left by step. */
function onlyDecorates(grid: Grid, voice: number, atom: number, { root, type }: Span): boolean {
  const tones = grid.voices[voice]!;
  const tone = grid.first[voice]![atom]!;
  const place = tones.place[tone];
  if (place === undefined || tones.at[tone]! >= grid.until[atom]!) return true;
  if (memberAt(type, root, place) >= 0) return true;
  return STEPS.has(tones.approach[tone]!) && STEPS.has(tones.departure[tone]!);
}
