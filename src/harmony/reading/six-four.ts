/** What kind of six-four a chord in second inversion is, from what stands before and after. */

import { intervalBetween } from '../../score/interval.ts';
import { fifthsPlace, sameNoteName } from '../../score/pitch.ts';
import { barAt, metricalStrength } from '../../score/place.ts';
import { sliceAt, type Texture, toneIn } from '../../score/texture.ts';
import type { Chord, SixFourKind } from '../analysis.ts';

/** The kind of a chord's six-four; undefined for any other chord, and for sevenths, whose 4/3 is no six-four. */
export function sixFourKind(
  texture: Texture,
  chord: Chord,
  before: Chord | undefined,
  after: Chord | undefined,
): SixFourKind | undefined {
  if (chord.roman.inversion !== 2 || chord.roman.seventh !== undefined) return undefined;
  const strength = (c: Chord) => metricalStrength(barAt(texture.score, c.at), c.at);
  if (after !== undefined && staysAsRoot(chord, after)) {
    if (settlesOnTonic(chord, after)) return 'pedal';
    if (strength(chord) >= strength(after)) return 'cadential';
  }
  if (before !== undefined && after !== undefined) {
    if (overOneBass(texture, before, chord, after)) return 'pedal';
    // Six-fours in a row pass from nowhere to nowhere.
    if (!isSixFour(before) && !isSixFour(after) && stepwise(texture, before, chord, after)) return 'passing';
  }
  const same = (other: Chord | undefined) =>
    other !== undefined &&
    fifthsPlace(other.root) === fifthsPlace(chord.root) &&
    other.quality === chord.quality;
  return same(before) || same(after) ? 'arpeggiated' : 'free';
}

/** The bass stays, and is the root of the major chord that follows. */
function staysAsRoot(chord: Chord, after: Chord): boolean {
  return (
    sameNoteName(after.bass, chord.bass) && sameNoteName(after.root, chord.bass) && after.quality === 'major'
  );
}

/** IV over the tonic that follows in the same bass: it decorates the tonic, and leads to no dominant. */
function settlesOnTonic(chord: Chord, after: Chord): boolean {
  const plain = [chord, after].every(({ roman }) => roman.applied === undefined);
  return plain && chord.roman.degree === 4 && after.roman.degree === 1;
}

function isSixFour({ roman }: Chord): boolean {
  return roman.inversion === 2 && roman.seventh === undefined;
}

/** The bass that sounds, whatever member of its chord it is, is the same before, in and after the chord. */
function overOneBass(texture: Texture, before: Chord, chord: Chord, after: Chord): boolean {
  const names = [before.until - 1, chord.at, after.at].map((at) => {
    const slice = sliceAt(texture, at);
    return slice && toneIn(slice, 'B')?.pitch;
  });
  const [a, b, c] = names;
  return a !== undefined && b !== undefined && c !== undefined && sameNoteName(a, b) && sameNoteName(b, c);
}

/** The bass goes through by step in one direction, or steps away and back. */
function stepwise(texture: Texture, before: Chord, chord: Chord, after: Chord): boolean {
  const bass = [before, chord, after].map((c) => {
    const slice = sliceAt(texture, c.at);
    return slice && toneIn(slice, 'B')?.pitch;
  });
  const [a, b, c] = bass;
  if (!a || !b || !c) return false;
  const first = intervalBetween(a, b);
  const second = intervalBetween(b, c);
  return Math.abs(first.steps) === 1 && Math.abs(second.steps) === 1;
}
