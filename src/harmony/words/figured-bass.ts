/** Figured bass with its accidentals: what a player would read under the bass of a chord. */
import { stepIndex } from '../../score/pitch.ts';
import { signatureAlteration } from '../../score/signature.ts';
import type { Chord } from '../analysis.ts';
import { membersOf } from '../questions/members.ts';

/** Numbers always written, by inversion: triads, then sevenths. Common practice, no source. */
const TRIADS: readonly (readonly number[])[] = [[], [6], [6, 4], []];
const SEVENTHS: readonly (readonly number[])[] = [[7], [6, 5], [4, 3], [4, 2]];

/**
 * The figures from the top, as in {@link WrittenFigure}: `['6', '5']`, `['#']`, `['6', '#4']`. A note that the key
 * signature does not give carries `#`, `b` or `n`, and is written even where its figure would be left out. An altered
 * third is its sign alone, but not in the four-three chord, where the 3 is always written: a sign alone under a 4
 * would be read as a suspended fourth and its resolution. Common practice, no source.
 *
 * @param signature sharps positive, flats negative
 */
export function figuredBass(chord: Pick<Chord, 'members' | 'bass' | 'roman'>, signature: number): string[] {
  const usual = (chord.members.seventh === undefined ? TRIADS : SEVENTHS)[chord.roman.inversion]!;
  const figures = new Map<number, string>(usual.map((number) => [number, '']));
  for (const note of membersOf(chord)) {
    const number = ((stepIndex(note.step) - stepIndex(chord.bass.step) + 7) % 7) + 1;
    if (number > 1 && note.alteration !== signatureAlteration(signature, note.step))
      figures.set(number, note.alteration === 0 ? 'n' : note.alteration > 0 ? '#' : 'b');
  }
  return [...figures]
    .sort(([a], [b]) => b - a)
    .map(([number, sign]) => (number === 3 && !usual.includes(3) ? sign : `${sign}${number}`));
}

/** The figures in one line, from the top: `65`, `#643`, `4n3`. A sign belongs to the figure after it; one without, to the third. */
export function figuresInLine(figures: readonly string[]): string {
  return figures.join('');
}

/** The figures of a line that {@link figuresInLine} wrote; undefined for anything else. */
export function figuresOfLine(line: string): readonly string[] | undefined {
  return /^([#bn]?\d)*[#bn]?$/.test(line) && line !== '' ? line.match(/[#bn]?\d|[#bn]/g)! : undefined;
}
