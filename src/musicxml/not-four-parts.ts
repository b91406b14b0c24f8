/** The sentence for a file that is no four-part exercise: what was found, and what is needed. */
import { listed } from '../english/words.ts';
import { printPitch, samePitch } from '../score/pitch.ts';
import { partName } from './describe.ts';
import type { Staff } from './lines.ts';
import type { SourceScore } from './source.ts';

const NEEDED =
  'Needed are soprano, alto, tenor and bass: four staves with one voice each, or two staves with two voices each; voices still to be written may be left empty.';
const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'] as const;

export function notFourParts(source: SourceScore, staves: readonly Staff[]): string {
  const { parts } = source;
  if (parts.length === 0) return `The file has no parts, so there is no music in it. ${NEEDED}`;
  const notes = staves.reduce((sum, staff) => sum + staff.most, 0);
  if (notes === 0 && staves.every((staff) => staff.kind === 'notes')) {
    return `There are no notes in the file: it has ${found(source, staves)}. ${NEEDED}`;
  }
  const lines = staves.reduce((sum, staff) => sum + staff.lines.length, 0);
  const [only] = staves;
  if (staves.length === 1 && lines === 1 && only?.kind === 'notes') {
    return `This is a single melody: ${found(source, staves)}. To harmonise it, add staves for the other voices. ${NEEDED}`;
  }
  return `This is not a four-part exercise. It has ${found(source, staves)}. ${NEEDED}`;
}

/** `one part, "Piano", with two staves: upper staff 3 notes at once (C2–G5) …`, at most six parts told one by one. */
function found(source: SourceScore, staves: readonly Staff[]): string {
  const { parts } = source;
  const told = parts.slice(0, 6).map((_, index) => {
    const own = staves.filter((staff) => staff.part === index);
    const what = own.map(contents);
    const about = own.length === 1 ? what[0]! : `${count(own.length, 'staff', 'staves')}: ${listed(what)}`;
    return `${partName(source, index)} (${about})`;
  });
  const more = parts.length > 6 ? [`${count(parts.length - 6, 'other part', 'other parts')}`] : [];
  return `${count(parts.length, 'part', 'parts')}: ${listed([...told, ...more])}`;
}

function contents(staff: Staff): string {
  if (staff.kind === 'tablature') return 'a tablature';
  if (staff.kind === 'percussion') return 'percussion without pitch';
  if (staff.most === 0) return 'empty';
  const pitches = staff.lines.flatMap((line) => (line.lowest && line.highest ? [line] : []));
  const highest = pitches[0]?.highest;
  const lowest = pitches.at(-1)?.lowest;
  const range =
    highest && lowest
      ? samePitch(highest, lowest)
        ? `, all on ${printPitch(lowest)}`
        : ` from ${printPitch(lowest)} to ${printPitch(highest)}`
      : '';
  return staff.most === 1
    ? `one line of notes${range}`
    : `up to ${COUNTS[staff.most] ?? staff.most} notes at once${range}`;
}

function count(n: number, one: string, many: string): string {
  return n === 1 ? `one ${one}` : `${COUNTS[n] ?? n} ${many}`;
}
