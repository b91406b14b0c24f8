/** Learns what ends a phrase from the fermatas of the open chorales: a structured averaged perceptron. */
import {
  lengthFeatures,
  type Melody,
  melodyOf,
  spanFeatures,
} from '../../src/harmony/reading/phrase-model.ts';
import {
  type Division,
  divide,
  endNames,
  type PhraseWeights,
} from '../../src/harmony/reading/phrase-search.ts';
import { byVoice, type Score, VOICES } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Piece } from './harmony-corpus.ts';
import { inThree, withPlainTune } from './proportion.ts';
import type { TypedHymn } from './pupils/hymns/print.ts';
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

/**
 * Learns from the pieces as they are, without their verses, with voices still to be written, with a plain tune, and in
 * triple time; and from hymn tunes.
 */
export function learnPhrases(pieces: readonly Piece[], hymns: readonly TypedHymn[] = []): PhraseWeights {
  const lessons = [...pieces.flatMap(lessonsOf), ...hymns.flatMap(hymnLessons)];
  const weights = new Map<string, number>();
  /** By name: each move times the steps before it, by which the mean over all steps falls short of the last weight. */
  const early = new Map<string, number>();
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
        const move = value / Math.sqrt(1 + moved);
        weights.set(name, (weights.get(name) ?? 0) + move);
        early.set(name, (early.get(name) ?? 0) + move * steps);
      }
      steps++;
    }
  }
  return new Map([...weights].map(([name, value]) => [name, value - early.get(name)! / steps]));
}

function lessonsOf({ texture }: Piece): Lesson[] {
  const { score } = texture;
  const silent = withoutVerses(score);
  const plain = withoutVoices(withPlainTune(silent), ['A', 'T', 'B']);
  const shapes = [
    score,
    silent,
    silent,
    withoutVoices(silent, ['A', 'T']),
    withoutVoices(silent, ['T']),
    withoutVoices(silent, ['A', 'T', 'B']),
    plain,
    ...[silent, withoutVoices(silent, ['A', 'T']), plain].flatMap((shape) => inThree(shape) ?? []),
  ];
  return shapes.flatMap((shape) => {
    const ends = textureOf(shape).tones.S.flatMap(({ notes, until }) =>
      notes.some(({ fermata }) => fermata) ? [until] : [],
    );
    return ends.length < 2 ? [] : [lesson(withoutFermatas(shape), ends)];
  });
}

/** A tune counts as often as a chorale: alone most of the time, and with what else is written. */
function hymnLessons({ score, ends }: TypedHymn): Lesson[] {
  const sung = VOICES.filter((voice) => score.voices[voice].some(({ kind }) => kind === 'note'));
  const lone = lesson(withoutVoices(score, ['A', 'T', 'B']), ends);
  if (sung.length === 1) return [lone, lone, lone];
  return [lone, lone, lone, lesson(score, ends), lesson(withoutVoices(score, ['A', 'T']), ends)];
}

function lesson(score: Score, ends: readonly Ticks[]): Lesson {
  const melody = melodyOf(textureOf(score))!;
  const truth = melody.tones.flatMap(({ until }, i) => (ends.includes(until) ? [i] : []));
  return { melody, truth: new Set([...truth, melody.tones.length - 1]) };
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
  let from = 0;
  let at = melody.tones[0]!.at;
  for (const i of ends) {
    const { until } = melody.tones[i]!;
    for (const name of endNames(melody)[i]!) add(name);
    spanFeatures(melody, from, i, add);
    lengthFeatures(until - at, usual, add);
    [from, at] = [i + 1, until];
  }
}
