/** Parts, staves and lines in words. */

import type { Line } from './lines.ts';
import { quoted } from './quoted.ts';
import type { SourceScore } from './source.ts';

/** `the part "Piano"`, or `part 3` where it has no name. */
export function partName(source: SourceScore, part: number): string {
  const name = source.parts[part]!.name;
  return name === '' ? `part ${part + 1}` : `the part ${quoted(name)}`;
}

/** `the part "Piano", upper staff`. */
function staffName(source: SourceScore, part: number, staff: number): string {
  const { staves } = source.parts[part]!;
  if (staves === 1) return partName(source, part);
  const which = staves === 2 ? (staff === 1 ? 'upper staff' : 'lower staff') : `staff ${staff}`;
  return `${partName(source, part)}, ${which}`;
}

/** `the part "Choir", upper staff, lower voice`. */
export function lineName(source: SourceScore, line: Line): string {
  const staff = staffName(source, line.part, line.staff);
  if (line.of === 1) return staff;
  const which =
    line.of === 2 ? (line.position === 1 ? 'upper voice' : 'lower voice') : `voice ${line.position}`;
  return `${staff}, ${which}`;
}
