/**
 * Where phrases end: at fermatas, and where somebody said so; for the rest, where the melody is best divided
 * (`phrase-search.ts`).
 */
import { endOf, VOICES } from '../../score/score.ts';
import type { Texture, Tone } from '../../score/texture.ts';
import { barLength, type Ticks } from '../../score/time.ts';
import type { Phrase } from '../analysis.ts';
import { type Melody, melodyOf } from './phrase-model.ts';
import { divide, type PhraseWeights } from './phrase-search.ts';
import { PHRASE_WEIGHTS } from './phrase-weights.ts';

interface Ending {
  readonly at: Ticks;
  readonly until: Ticks;
  readonly end: 'fermata' | 'set' | 'inferred';
}

/** Where the fermatas leave a stretch longer than this many bars, endings are looked for inside it. */
const LONGEST_MARKED_BARS = 10;

let committed: PhraseWeights | undefined;

/**
 * The phrases of a texture, in order; together they cover everything that sounds.
 *
 * @param weights what endings are weighed by; the committed ones unless a bench has learnt others
 */
export function phrasesOf(texture: Texture, weights?: PhraseWeights): Phrase[] {
  committed ??= new Map(Object.entries(PHRASE_WEIGHTS));
  const last = lastSound(texture);
  if (last === 0) return [];
  const marked = markedEnds(texture);
  const inferred = inferredEnds(texture, marked, weights ?? committed);
  const inside = [...marked, ...inferred]
    .filter(({ until }) => until < last)
    .sort((a, b) => a.until - b.until);
  const closing = marked.find(({ until }) => until >= last);
  const ends = [...inside, closing ?? { at: last, until: last, end: finalEnd(texture, last) }];
  let from: Ticks = 0;
  return ends.map(({ at, until, end }, index) => {
    const phrase = { index, from, until, goal: Math.max(from, Math.min(at, until)), end };
    from = until;
    return phrase;
  });
}

function lastSound(texture: Texture): Ticks {
  return Math.max(0, ...VOICES.map((voice) => texture.tones[voice].at(-1)?.until ?? 0));
}

/** One bar in which nothing sounds any more, or rests to the end, are an exercise's spare bars, not unwritten music. */
function finalEnd({ score }: Texture, last: Ticks): Phrase['end'] {
  const silent = score.bars.filter(({ at }) => at >= last);
  const rests = VOICES.every((voice) =>
    score.voices[voice].every((event) => event.at < last || event.kind === 'rest'),
  );
  return silent.length <= 1 || (rests && last < endOf(score)) ? 'final bar' : 'unfinished';
}

/**
 * The end of the highest voice's note under each fermata, or under each sign that a phrase ends. Fermatas of several
 * voices over one chord are one ending, though their notes may differ in length.
 */
function markedEnds(texture: Texture): Ending[] {
  const ends: Ending[] = [];
  for (const voice of VOICES) {
    for (const tone of texture.tones[voice]) {
      const set = tone.notes.find(({ phrase }) => phrase === 'ends');
      const note = set ?? tone.notes.find(({ fermata }) => fermata);
      if (note === undefined || tone.notes.some(({ phrase }) => phrase === 'goes on')) continue;
      const met = ends.some((other) => tone.at < other.until && other.at < tone.until);
      if (!met) ends.push({ at: note.at, until: tone.until, end: set === undefined ? 'fermata' : 'set' });
    }
  }
  return ends;
}

/**
 * Endings that nobody marked: everywhere, where no fermata stands inside the piece; else only in stretches much longer
 * than a phrase.
 */
function inferredEnds(texture: Texture, marked: readonly Ending[], weights: PhraseWeights): Ending[] {
  const melody = melodyOf(texture);
  if (melody === undefined) return [];
  const { tones } = melody;
  const fixed = new Set(
    tones.flatMap((tone, i) => (marked.some(({ until }) => until === tone.until) ? [i] : [])),
  );
  const bare = !marked.some(({ until, end }) => end === 'fermata' && until < tones.at(-1)!.until);
  if (!bare && !hasLongStretch(melody, fixed)) return [];
  const covered = (tone: Tone) => marked.some(({ at, until }) => at < tone.until && tone.at < until);
  const { ends } = divide(melody, weights, {
    ends: (i) => fixed.has(i),
    goesOn: (i) => !fixed.has(i) && (covered(tones[i]!) || saysGoesOn(tones[i]!)),
  });
  const open = bare ? () => true : longStretches(melody, fixed);
  return ends.flatMap((i): Ending[] => {
    const { at, until } = tones[i]!;
    return fixed.has(i) || !open(i) ? [] : [{ at, until, end: 'inferred' }];
  });
}

function saysGoesOn(tone: Tone): boolean {
  return tone.notes.some(({ phrase }) => phrase === 'goes on');
}

function hasLongStretch(melody: Melody, fixed: ReadonlySet<number>): boolean {
  const open = longStretches(melody, fixed);
  return melody.tones.some((_, i) => open(i));
}

/** Tells whether a tone lies between two marked endings that are farther apart than any phrase. */
function longStretches({ tones, texture }: Melody, fixed: ReadonlySet<number>): (i: number) => boolean {
  const longest = LONGEST_MARKED_BARS * barLength(texture.score.bars[0]!.metre);
  const edges = [-1, ...[...fixed].sort((a, b) => a - b), tones.length - 1];
  const stretches = edges.slice(1).flatMap((end, k) => {
    const begin = edges[k]!;
    const from = tones[begin]?.until ?? tones[0]!.at;
    return tones[end]!.until - from > longest ? [[begin, end] as const] : [];
  });
  return (i) => stretches.some(([begin, end]) => i > begin && i < end);
}
