/**
 * Short exercises as pupils write them, made by chance with their chords known: one chord to a note of a tune, in all
 * keys; mostly chords that may follow one another and voices that may move so, now and then neither.
 */
import { CHORD_TYPES } from '../../src/harmony/chord-types.ts';
import { gridOf } from '../../src/harmony/reading/model/grid.ts';
import { phrasesOf } from '../../src/harmony/reading/phrases.ts';
import { aimNamed } from '../../src/practice/aims.ts';
import { bassMember, CHORDS, isSeventh, mayFollow } from '../../src/practice/chords.ts';
import { type Chance, chance } from '../../src/practice/random.ts';
import { scoreOf } from '../../src/practice/search.ts';
import { type PracticeTune, tuneFor } from '../../src/practice/tune.ts';
import { mayMove, type Voicing, voicingsOf } from '../../src/practice/voicings.ts';
import { fifthsPlace } from '../../src/score/pitch.ts';
import { textureOf } from '../../src/score/texture.ts';
import type { HumanLabel, Piece } from './harmony-corpus.ts';

/** One chord in so many follows without regard to the one before. */
const CLUMSY = 5;

/** So many exercises, always the same for the same seed. Their labels are the chords they were made of. */
export function plainExercises(number: number, seed: number): Piece[] {
  const by = chance(seed);
  const pieces: Piece[] = [];
  while (pieces.length < number) {
    const tune = tuneFor(aimNamed('close')!, by);
    const chords = tune === undefined ? undefined : chordsUnder(tune, by);
    if (tune === undefined || chords === undefined) continue;
    const name = `plain ${seed}.${pieces.length + 1}`;
    const texture = textureOf(scoreOf(tune, chords, name));
    pieces.push({
      name,
      title: name,
      texture,
      grid: gridOf(texture, phrasesOf(texture)),
      labels: chords.map((voicing, i) => labelOf(tune, voicing, i, i === chords.length - 1)),
      tune: -1,
    });
  }
  return pieces;
}

/** Undefined where a note has no chord. */
function chordsUnder({ key, notes }: PracticeTune, by: Chance): Voicing[] | undefined {
  const chords: Voicing[] = [];
  for (const [i, note] of notes.entries()) {
    const last = i === notes.length - 1;
    const names = last ? (['I'] as const) : i === notes.length - 2 ? (['V', 'V7'] as const) : CHORDS;
    const all = names.flatMap((chord) => voicingsOf(key, chord, note, last));
    const before = chords.at(-1);
    const fit =
      before === undefined
        ? all.filter(({ chord }) => chord === 'I')
        : all.filter((way) => mayFollow(before.chord, way.chord, key.mode) && mayMove(before, way));
    const open = fit.length === 0 || (before !== undefined && by.next(CLUMSY) === 0) ? all : fit;
    if (open.length === 0) return undefined;
    chords.push(by.pick(open));
  }
  return chords;
}

function labelOf(
  { key, lastBeats }: PracticeTune,
  { chord, parts }: Voicing,
  i: number,
  last: boolean,
): HumanLabel {
  const root = fifthsPlace(parts.find(({ member }) => member === 0)!.pitch);
  const sung = parts.map(({ pitch }) => fifthsPlace(pitch) - root);
  const seventh = isSeventh(chord);
  const type = CHORD_TYPES.findIndex(
    ({ offsets }) => offsets.length === (seventh ? 4 : 3) && sung.every((offset) => offsets.includes(offset)),
  );
  const { offsets, quality } = CHORD_TYPES[type]!;
  const mode = key.mode === 'minor' ? 1 : 0;
  return {
    from: i,
    until: i + (last ? lastBeats : 1),
    tonic: key.fifths + 3 * mode,
    mode,
    root,
    bass: root + offsets[bassMember(chord)]!,
    type,
    seventh,
    quality,
    figure: chord,
  };
}
