/** How a length is written: a note value, dots, and the tuplet it stands in. */
import { CROTCHET, type Ticks } from '../score/time.ts';

export interface NoteValue {
  /** As MusicXML names it: `quarter`. */
  readonly type: string;
  readonly dots: number;
  /** `{ actual: 3, normal: 2 }` in a triplet. */
  readonly tuplet?: { readonly actual: number; readonly normal: number };
}

/** Note values as MusicXML names them, each half as long as the one before; the longest are eight semibreves. */
export const VALUE_NAMES = [
  'maxima',
  'long',
  'breve',
  'whole',
  'half',
  'quarter',
  'eighth',
  '16th',
  '32nd',
  '64th',
  '128th',
  '256th',
] as const;
/** Those that are written; a maxima or shorter than a 128th is only read. */
const WRITTEN = VALUE_NAMES.slice(1, -1);
/** The semibreve's eightfold, in crotchets. */
export const LONGEST_CROTCHETS = 32;

const TUPLETS = [
  { actual: 3, normal: 2 },
  { actual: 5, normal: 4 },
  { actual: 7, normal: 4 },
  { actual: 9, normal: 8 },
  { actual: 15, normal: 8 },
] as const;

/** The plainest way to write a length as one note, or undefined where there is none (five crotchets). */
export function noteValue(ticks: Ticks): NoteValue | undefined {
  const plain = undotted(ticks);
  if (plain !== undefined) return plain;
  for (const tuplet of TUPLETS) {
    const written = (ticks * tuplet.actual) / tuplet.normal;
    const value = Number.isInteger(written) ? undotted(written) : undefined;
    if (value !== undefined) return { ...value, tuplet };
  }
  return undefined;
}

function undotted(ticks: Ticks): NoteValue | undefined {
  for (const [i, type] of WRITTEN.entries()) {
    const value = (CROTCHET * LONGEST_CROTCHETS) / 2 ** (i + 1);
    for (const dots of [0, 1, 2]) {
      if (ticks * 2 ** dots === value * (2 ** (dots + 1) - 1)) return { type, dots };
    }
  }
  return undefined;
}
