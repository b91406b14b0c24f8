/** From a texture to its harmonies: builds the grid, asks the search, and gives times back their ticks. */
import type { Texture } from '../../score/texture.ts';
import type { Phrase } from '../analysis.ts';
import type { Harmony } from './harmony.ts';
import { gridOf } from './model/grid.ts';
import { scorersOf } from './model/scorers.ts';
import { bestReading, type Span } from './model/search.ts';
import { secondReadings } from './model/second.ts';
import { parseTable } from './model/table.ts';
import { MODES } from './model/vocabulary.ts';
import { TABLE } from './model/weights.ts';
import { neapolitanAsHeard } from './neapolitan.ts';
import { cutAtSeventh } from './sevenths.ts';

/**
 * A second reading whose sum of weights comes so near is told. At this distance, on chorales the weights had not
 * seen, about one chord in eleven has one, the first is right for half of those and the second for a quarter.
 */
const DOUBT = 4;

let committed: Float64Array | undefined;

function committedWeights(): Float64Array {
  committed ??= parseTable(TABLE);
  return committed;
}

/** The harmonies of a texture, in order of time. Stretches where fewer than two voices sound may have none. */
export function readHarmonies(
  texture: Texture,
  phrases: readonly Phrase[],
  weights: Float64Array = committedWeights(),
): Harmony[] {
  const grid = gridOf(texture, phrases);
  const scorers = scorersOf(grid, weights);
  const { spans } = bestReading(scorers);
  const others = secondReadings(scorers, spans, DOUBT);
  const found = spans.map((span, i): Harmony => {
    const other = others[i];
    return neapolitanAsHeard(texture, {
      at: grid.at[span.from]!,
      until: grid.until[span.to - 1]!,
      ...plain(span),
      ...(other === undefined ? {} : { other: plain(other) }),
    });
  });
  const starts = new Set(phrases.map(({ from }) => from));
  const harmonies: Harmony[] = [];
  for (const harmony of found.flatMap((one, i) => cutAtSeventh(texture, one, found[i + 1]))) {
    const last = harmonies.at(-1);
    // The search splits at phrase ends and after its longest segment; a harmony is one as long as nothing changes.
    if (last !== undefined && !starts.has(harmony.at) && unchanged(last, harmony))
      harmonies[harmonies.length - 1] = { ...last, until: harmony.until };
    else harmonies.push(harmony);
  }
  return harmonies;
}

function plain(span: Span): Omit<Harmony, 'at' | 'until' | 'other'> {
  return {
    tonic: span.tonic,
    mode: MODES[span.mode]!,
    root: span.root,
    type: span.type,
    inversion: span.inversion as Harmony['inversion'],
  };
}

function unchanged(a: Harmony, b: Harmony): boolean {
  return (
    a.until === b.at &&
    a.root === b.root &&
    a.type === b.type &&
    a.inversion === b.inversion &&
    a.tonic === b.tonic &&
    a.mode === b.mode
  );
}
