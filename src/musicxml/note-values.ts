/** How a length is written: a note value, dots, and the tuplet it stands in. */
import { CROTCHET, type Ticks } from '../score/time.ts';

export interface NoteValue {
  /** As MusicXML names it: `quarter`. */
  readonly type: string;
  readonly dots: number;
  /** `{ actual: 3, normal: 2 }` in a triplet. */
  readonly tuplet?: { readonly actual: number; readonly normal: number };
}

const VALUES = [
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
] as const;
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
  for (const [i, type] of VALUES.entries()) {
    const value = CROTCHET * 2 ** (4 - i);
    for (const dots of [0, 1, 2]) {
      if (ticks * 2 ** dots === value * (2 ** (dots + 1) - 1)) return { type, dots };
    }
  }
  return undefined;
}
