/**
 * The kinds of chord there are, by the distances of their members from the root on the line of fifths, so that
 * spelling is kept: a German sixth is not a dominant seventh.
 */
import { type NoteName, noteNameAtFifths } from '../score/pitch.ts';
import type { Members, SeventhQuality, SpecialChord, TriadQuality } from './analysis.ts';
import { chordOffsets } from './tonal.ts';

export interface ChordType {
  /** How tables call it: the root written as `1`. */
  readonly name: string;
  readonly quality: TriadQuality;
  readonly seventh?: SeventhQuality;
  readonly special?: Exclude<SpecialChord, 'Neapolitan'>;
  /** Root, third, fifth and perhaps seventh in fifths from the root. */
  readonly offsets: readonly number[];
}

/**
 * The augmented sixths are stacked in thirds for want of a better root: German F#–Ab–C–Eb, Italian without the Eb,
 * French D–F#–Ab–C. Their triad has no name of its own; they are filed under the nearest.
 */
export const CHORD_TYPES: readonly ChordType[] = [
  { name: 'M', quality: 'major', offsets: chordOffsets('M') },
  { name: 'm', quality: 'minor', offsets: chordOffsets('m') },
  { name: 'o', quality: 'diminished', offsets: chordOffsets('dim') },
  { name: '+', quality: 'augmented', offsets: chordOffsets('aug') },
  { name: 'M7', quality: 'major', seventh: 'minor', offsets: chordOffsets('7') },
  { name: 'Mmaj7', quality: 'major', seventh: 'major', offsets: chordOffsets('maj7') },
  { name: 'm7', quality: 'minor', seventh: 'minor', offsets: chordOffsets('m7') },
  { name: 'ø7', quality: 'diminished', seventh: 'minor', offsets: chordOffsets('m7b5') },
  { name: 'o7', quality: 'diminished', seventh: 'diminished', offsets: chordOffsets('dim7') },
  { name: 'mmaj7', quality: 'minor', seventh: 'major', offsets: chordOffsets('mMaj7') },
  { name: '+maj7', quality: 'augmented', seventh: 'major', offsets: chordOffsets('maj7#5') },
  { name: 'It', quality: 'diminished', special: 'Italian sixth', offsets: [0, -10, -6] },
  { name: 'Fr', quality: 'major', seventh: 'minor', special: 'French sixth', offsets: [0, 4, -6, -2] },
  {
    name: 'Ger',
    quality: 'diminished',
    seventh: 'diminished',
    special: 'German sixth',
    offsets: [0, -10, -6, -9],
  },
];

/** Indices into {@link CHORD_TYPES} that code asks for by name. */
export const TYPE = Object.fromEntries(CHORD_TYPES.map((type, index) => [type.name, index])) as Readonly<
  Record<string, number>
>;

/** The members of a chord on a root given by its place on the line of fifths. */
export function membersAt(root: number, type: number): Members {
  const { offsets } = CHORD_TYPES[type]!;
  const name = (i: number): NoteName => noteNameAtFifths(root + offsets[i]!);
  return {
    root: name(0),
    third: name(1),
    fifth: name(2),
    ...(offsets.length > 3 ? { seventh: name(3) } : {}),
  };
}

/** Which member (0 root … 3 seventh) a note at `place` on the line of fifths is of a chord on `root`; -1 if foreign. */
export function memberIndex(root: number, type: number, place: number): number {
  return CHORD_TYPES[type]!.offsets.indexOf(place - root);
}
