/** From a texture to its harmonies: builds the grid, asks the search, and gives times back their ticks. */
import type { Texture } from '../../score/texture.ts';
import type { Phrase } from '../analysis.ts';
import type { Doubt, Harmony } from './harmony.ts';
import { dominantsKeptWhole } from './model/dominants.ts';
import { keyDoubts } from './model/doubts.ts';
import { gridOf } from './model/grid.ts';
import { keyOdds } from './model/key-odds.ts';
import { type KeyNumber, keyIndex } from './model/keys.ts';
import { scorersOf } from './model/scorers.ts';
import { bestReading, type Span } from './model/search.ts';
import { secondChords } from './model/second.ts';
import { withoutShortStays } from './model/short-stays.ts';
import { parseTable } from './model/table.ts';
import type { ChordNumber } from './model/transition.ts';
import { MODES, STRANGE, vocabularyIndex } from './model/vocabulary.ts';
import { TABLE } from './model/weights.ts';
import { neapolitanAsHeard } from './neapolitan.ts';
import { cutAtSeventh } from './sevenths.ts';
import { soundsWhole } from './sounding.ts';
import { parseParameters } from './thin/characters.ts';
import { leaningOf } from './thin/leaning.ts';
import { NETWORK } from './thin/parameters.ts';
import { withOwnThirds } from './thirds.ts';

let committed: Float64Array | undefined;

function committedWeights(): Float64Array {
  committed ??= parseTable(TABLE);
  return committed;
}

let network: Float64Array | undefined;

function committedNetwork(): Float64Array {
  network ??= parseParameters(NETWORK);
  return network;
}

/** What a reading weighs by; what is committed unless a bench has learnt another. */
export interface Learnt {
  readonly weights?: Float64Array;
  /** The parameters of the network for what is still to be written. */
  readonly network?: Float64Array;
}

/** What is read: the harmonies in order of time, and where a second reading lies close. */
interface Found {
  readonly harmonies: readonly Harmony[];
  readonly doubts: readonly Doubt[];
}

/** Reads a texture. Stretches where fewer than two voices sound may have no harmony. */
export function readHarmonies(texture: Texture, phrases: readonly Phrase[], learnt: Learnt = {}): Found {
  const grid = gridOf(texture, phrases);
  const leaning = leaningOf(grid, () => learnt.network ?? committedNetwork());
  const scorers = scorersOf(grid, learnt.weights ?? committedWeights(), leaning);
  const spans = withoutShortStays(grid, dominantsKeptWhole(grid, bestReading(scorers).spans));
  const odds = keyOdds(scorers, spans);
  const { keys } = scorers.keys;
  const found = spans.map((span, i): Harmony[] => {
    const own = keyIndex(keys, span);
    const harmony = neapolitanAsHeard(texture, {
      at: grid.at[span.from]!,
      until: grid.until[span.to - 1]!,
      ...inWords(span),
      ...chordOf(span),
      sure: odds[i * keys.length + own]!,
    });
    return cutAtSeventh(texture, harmony, spans[i + 1]);
  });
  const starts = new Set(phrases.map(({ from }) => from));
  const harmonies: Harmony[] = [];
  for (const harmony of found.flat()) {
    const last = harmonies.at(-1);
    // The search splits at phrase ends and after its longest segment; a harmony is one as long as nothing changes.
    if (last !== undefined && !starts.has(harmony.at) && unchanged(last, harmony))
      harmonies[harmonies.length - 1] = {
        ...last,
        until: harmony.until,
        sure: Math.min(last.sure, harmony.sure),
      };
    else harmonies.push(harmony);
  }
  const doubts = [
    ...keyDoubts(spans, keys, odds, isKnown).map(
      ({ first, last, ...key }): Doubt => ({
        at: grid.at[spans[first]!.from]!,
        until: grid.until[spans[last]!.to - 1]!,
        ...inWords(key),
      }),
    ),
    ...secondChords(scorers, spans).flatMap((chord, i): Doubt[] => {
      const [harmony, ...rest] = found[i]!;
      // Where plain rules have overruled the search, its second thoughts are about something else.
      if (chord === undefined || harmony === undefined || rest.length > 0) return [];
      const { at, until, tonic, mode, root } = harmony;
      // A chord that sounds whole leaves no question which chord it is.
      return root === spans[i]!.root && !soundsWhole(texture, harmony)
        ? [{ at, until, tonic, mode, chord: chordOf(chord) }]
        : [];
    }),
  ];
  return { harmonies: withOwnThirds(texture, harmonies), doubts: doubts.sort((a, b) => a.at - b.at) };
}

function isKnown({ root, type }: Span, { tonic, mode }: KeyNumber): boolean {
  return vocabularyIndex(mode, root - tonic, type) !== STRANGE;
}

function inWords({ tonic, mode }: KeyNumber): Pick<Harmony, 'tonic' | 'mode'> {
  return { tonic, mode: MODES[mode]! };
}

function chordOf({ root, type, inversion }: ChordNumber): Pick<Harmony, 'root' | 'type' | 'inversion'> {
  return { root, type, inversion: inversion as Harmony['inversion'] };
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
