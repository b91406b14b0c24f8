/** Ways of setting one chord under a given note, and whether one way may follow another. Common practice, no source. */
import { type Pitch, semitone } from '../score/pitch.ts';
import { bassMember, type ChordName, isSeventh, leads, membersOf } from './chords.ts';
import { type PracticeKey, pitchOf, placesOf, type Sung } from './scale.ts';

/** Where each voice lies well, as {@link semitone} counts. */
const RANGES = { A: [43, 62], T: [36, 55], B: [28, 48] } as const;
type Range = readonly [low: number, high: number];
/** The most between neighbours from the top, in semitones. */
const SPACING = { SA: 12, AT: 12, TB: 19 } as const;

export interface Part {
  readonly pitch: Pitch;
  /** As {@link semitone} counts. */
  readonly height: number;
  readonly place: number;
  /** Which member of the chord it is, from 0. */
  readonly member: number;
}

export interface Voicing {
  readonly chord: ChordName;
  /** Soprano, alto, tenor, bass. */
  readonly parts: readonly [Part, Part, Part, Part];
}

/** Every way of setting a chord under a note of the tune; none where the note is no member. */
export function voicingsOf(key: PracticeKey, chord: ChordName, tune: Sung, last: boolean): Voicing[] {
  const thirds = last && key.mode === 'minor' && chord === 'I' ? [true, false] : [false];
  return thirds.flatMap((raised) => setIn(key, chord, tune, membersOf(chord, key.mode, raised)));
}

function setIn(
  key: PracticeKey,
  chord: ChordName,
  tune: Sung,
  members: ReturnType<typeof membersOf>,
): Voicing[] {
  const top = members.findIndex(({ degree, raised }) => degree === tune.degree && raised === tune.raised);
  if (top < 0) return [];
  const part = (place: number, member: number): Part => {
    const pitch = pitchOf(key, { place, raised: members[member]!.raised });
    return { pitch, height: semitone(pitch), place, member };
  };
  const within = ([low, high]: Range, member: number): Part[] =>
    placesOf(key, members[member]!, low, high).map((place) => part(place, member));
  const all = (range: Range): Part[] => members.flatMap((_, member) => within(range, member));
  const S = part(tune.place, top);
  const found: Voicing[] = [];
  const basses = within(RANGES.B, bassMember(chord));
  for (const A of all(RANGES.A)) {
    if (A.height > S.height || S.height - A.height > SPACING.SA) continue;
    for (const T of all(RANGES.T)) {
      if (T.height > A.height || A.height - T.height > SPACING.AT) continue;
      for (const B of basses) {
        if (B.height > T.height || T.height - B.height > SPACING.TB) continue;
        const voicing: Voicing = { chord, parts: [S, A, T, B] };
        if (isComplete(voicing)) found.push(voicing);
      }
    }
  }
  return found;
}

/** Root and third are there, and the fifth but where it may be left out; what leads or must resolve is there once. */
function isComplete({ chord, parts }: Voicing): boolean {
  const count = [0, 0, 0, 0];
  for (const { member } of parts) count[member]!++;
  const [root = 0, third = 0, fifth = 0, seventh = 0] = count;
  if (third === 0 || (isSeventh(chord) && seventh !== 1)) return false;
  if (leads(chord)) {
    if (chord === 'viio6') return root === 1 && third === 2 && fifth === 1;
    if (third !== 1) return false;
  }
  if (chord === 'I64') return root > 0 && fifth === 2;
  const fifthOptional = chord === 'V7' || chord === 'I';
  if (root === 0 || (fifth === 0 && !fifthOptional)) return false;
  return third < 3 && root < 4;
}

/** True where every voice may go from one way to the other. */
export function mayMove(from: Voicing, to: Voicing): boolean {
  for (let voice = 0; voice < 4; voice++) {
    const [a, b] = [from.parts[voice]!, to.parts[voice]!];
    if (voice > 0 && !isSingable(a, b, voice === 3)) return false;
    if (voice > 0 && b.height > from.parts[voice - 1]!.height) return false;
    if (voice < 3 && b.height < from.parts[voice + 1]!.height) return false;
    if (!resolves(from.chord, to.chord, a, b)) return false;
    for (let other = voice + 1; other < 4; other++)
      if (isConsecutive(a, b, from.parts[other]!, to.parts[other]!)) return false;
  }
  return !isExposed(from, to);
}

function isSingable(a: Part, b: Part, isBass: boolean): boolean {
  const [steps, size] = [Math.abs(b.place - a.place), Math.abs(b.height - a.height)];
  if (steps === 1) return size <= 2;
  // Neither a tritone nor anything wider than a fourth within, nor than a fifth or an octave in the bass.
  if (size === 6 || size > 12) return false;
  return isBass ? size <= 7 || size === 12 : size <= 5;
}

/** The leading note goes up to the tonic, the seventh down by step. */
function resolves(before: ChordName, after: ChordName, a: Part, b: Part): boolean {
  const toTonic = after === 'I' || after === 'I6' || after === 'vi';
  const leading = leads(before) && a.member === (before === 'viio6' ? 0 : 1);
  if (leading && toTonic && b.height - a.height !== 1) return false;
  if (isSeventh(before) && a.member === 3 && b.place !== a.place - 1) return false;
  return true;
}

function isConsecutive(a: Part, b: Part, c: Part, d: Part): boolean {
  if (a.height === b.height || c.height === d.height) return false;
  const [before, after] = [(a.height - c.height) % 12, (b.height - d.height) % 12];
  return before === after && (before === 0 || before === 7);
}

/** Tune and bass go the same way into a fifth or an octave, the tune by leap. */
function isExposed(from: Voicing, to: Voicing): boolean {
  const [up, down] = [to.parts[0].height - from.parts[0].height, to.parts[3].height - from.parts[3].height];
  const leap = Math.abs(to.parts[0].place - from.parts[0].place) > 1;
  return leap && up * down > 0 && [0, 7].includes((to.parts[0].height - to.parts[3].height) % 12);
}
