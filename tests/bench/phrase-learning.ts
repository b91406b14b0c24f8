/** Learns what ends a phrase from the fermatas of the open chorales: a structured averaged perceptron. */
import { lengthFeatures, type Melody, melodyOf } from '../../src/harmony/reading/phrase-model.ts';
import {
  type Division,
  divide,
  endNames,
  type PhraseWeights,
} from '../../src/harmony/reading/phrase-search.ts';
import { byVoice, type Score } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import type { Piece } from './harmony-corpus.ts';
import { withoutFermatas, withoutVoices } from './pupils/thin.ts';

/** A melody without its fermatas, and the tones that had them. */
interface Lesson {
  readonly melody: Melody;
  readonly truth: ReadonlySet<number>;
}

const EPOCHS = 12;
/** What an ending too many and an ending too few count against the margin. */
const MARGIN = 1;
const NOTHING_GIVEN = { ends: () => false, goesOn: () => false };

/** Learns from the pieces as they are, without their verses, and with voices still to be written. */
export function learnPhrases(pieces: readonly Piece[]): PhraseWeights {
  const lessons = pieces.flatMap(lessonsOf);
  const weights = new Map<string, number>();
  const sum = new Map<string, number>();
  const squares = new Map<string, number>();
  let steps = 0;
  for (let epoch = 0; epoch < EPOCHS; epoch++) {
    for (let k = 0; k < lessons.length; k++) {
      // A stride that shares no factor with the count visits all, in an order that mixes pieces.
      const { melody, truth } = lessons[(k * 7919 + epoch * 31) % lessons.length]!;
      const found = divide(melody, weights, NOTHING_GIVEN, (i) => (truth.has(i) ? -MARGIN : MARGIN));
      const delta = new Map<string, number>();
      addFeatures(melody, best(melody, weights, truth), 1, delta);
      addFeatures(melody, found, -1, delta);
      for (const [name, value] of delta) {
        if (value === 0) continue;
        const moved = (squares.get(name) ?? 0) + value * value;
        squares.set(name, moved);
        weights.set(name, (weights.get(name) ?? 0) + value / Math.sqrt(1 + moved));
      }
      for (const [name, value] of weights) sum.set(name, (sum.get(name) ?? 0) + value);
      steps++;
    }
  }
  return new Map([...sum].map(([name, value]) => [name, value / steps]));
}

function lessonsOf({ texture }: Piece): Lesson[] {
  const { score } = texture;
  const bare = withoutFermatas(score);
  const silent = withoutVerses(bare);
  const shapes = [
    bare,
    silent,
    silent,
    withoutVoices(silent, ['A', 'T']),
    withoutVoices(silent, ['T']),
    withoutVoices(silent, ['A', 'T', 'B']),
  ];
  const marked = new Set(
    texture.tones.S.flatMap((tone, i) => (tone.notes.some(({ fermata }) => fermata) ? [i] : [])),
  );
  if (marked.size < 2) return [];
  return shapes.flatMap((shape) => {
    const melody = melodyOf(textureOf(shape));
    if (melody === undefined) return [];
    return [{ melody, truth: new Set([...marked, melody.tones.length - 1]) }];
  });
}

/** The same notes, no words under them. */
export function withoutVerses(score: Score): Score {
  return {
    ...score,
    voices: byVoice((voice) =>
      score.voices[voice].map((event) => {
        if (event.kind !== 'note') return event;
        const { lyrics: _lyrics, ...plain } = event;
        return plain;
      }),
    ),
  };
}

/** The true endings, with the usual length that suits them best. */
function best(melody: Melody, weights: PhraseWeights, truth: ReadonlySet<number>): Division {
  return divide(melody, weights, { ends: (i) => truth.has(i), goesOn: (i) => !truth.has(i) });
}

function addFeatures(
  melody: Melody,
  { ends, usual }: Division,
  factor: number,
  into: Map<string, number>,
): void {
  const add = (name: string) => into.set(name, (into.get(name) ?? 0) + factor);
  let from = melody.tones[0]!.at;
  for (const i of ends) {
    for (const name of endNames(melody)[i]!) add(name);
    lengthFeatures(melody, from, melody.tones[i]!.until, usual, add);
    from = melody.tones[i]!.until;
  }
}
