/** Small words beside the notes: letters at non-harmony notes and bar numbers, each where it covers nothing. Pure. */
import type { Ornament } from '../../src/harmony/analysis.ts';
import { stemUp } from './extents.ts';
import { type Box, type HeadBox, overlap, type SystemGeometry } from './geometry.ts';
import type { PlacedWords } from './lanes.ts';
import { type Measure, ORNAMENT_LETTERS } from './words.ts';

const LETTER_SIZE = 11.5;
/** From the accent of É to the tail of p. */
const LETTER_HEIGHT = 13;
/** Sloping letters reach a little beyond their measured width. */
const SLOPE = 1.5;
const NUMBER_SIZE = 10;

/** Bar numbers stand above the left end of each bar, save an upbeat's. */
export function placeBarNumbers(geometry: SystemGeometry, measure: Measure): PlacedWords[] {
  return geometry.bars.flatMap((bar, i) => {
    // The second half of a split bar bears the number of the first: it is told once.
    if (bar.number === '0' || bar.number === geometry.bars[i - 1]?.number) return [];
    const width = measure(bar.number, NUMBER_SIZE);
    const x = i === 0 ? geometry.left : bar.x + 1;
    const spot = (y: number): Box => ({ x, y: y - 8, width, height: 9 });
    let y = -4;
    for (let tries = 0; tries < 40 && !isFree(spot(y), geometry, []); tries++) y -= 3;
    return [{ kind: 'bar' as const, box: spot(y), x, y, label: words(bar.number, NUMBER_SIZE, width) }];
  });
}

/**
 * A letter for each ornament, as near to its head as is free: past the stem's end, on the other side of the head, or
 * beside it. Where even these are taken it moves away from the staff until it is clear.
 */
export function placeOrnaments(
  ornaments: readonly Ornament[],
  geometry: SystemGeometry,
  taken: readonly Box[],
  measure: Measure,
): PlacedWords[] {
  const placed: PlacedWords[] = [];
  for (const ornament of ornaments) {
    const head = headAt(geometry, ornament);
    if (!head) continue;
    const text =
      ornament.figures === undefined
        ? ORNAMENT_LETTERS[ornament.kind]
        : `${ORNAMENT_LETTERS[ornament.kind]} ${ornament.figures}`;
    const width = measure(text, LETTER_SIZE) + 2 * SLOPE;
    const blocked = [...taken, ...placed.map(({ box }) => box)];
    const inside = (each: Box) => each.x >= 1 && each.x + width <= geometry.width - 1;
    const box = candidates(head, width).find((each) => inside(each) && isFree(each, geometry, blocked));
    const spot = box ?? outwards(head, width, geometry, blocked);
    placed.push({
      kind: 'ornament',
      box: spot,
      x: spot.x + SLOPE,
      y: spot.y + spot.height - 2,
      label: words(text, LETTER_SIZE, width),
    });
  }
  return placed;
}

/** The head that sounds where the ornament begins: a suspension's letter stands at the dissonance, not its preparation. */
function headAt(geometry: SystemGeometry, ornament: Ornament): HeadBox | undefined {
  const own = geometry.heads.filter(
    (head) => head.voice === ornament.voice && head.tone === ornament.tone.id,
  );
  return own.find((head) => ornament.at >= head.at && ornament.at < head.until) ?? own[0];
}

function candidates(head: HeadBox, width: number): Box[] {
  const up = stemUp(head.voice);
  const middle = head.x + head.width / 2 - width / 2;
  const past = up ? head.tip - LETTER_HEIGHT - 2 : head.tip + 2;
  const other = up ? head.y + head.height + 2 : head.y - LETTER_HEIGHT - 2;
  const level = head.y + head.height / 2 - LETTER_HEIGHT / 2;
  const size = { width, height: LETTER_HEIGHT };
  const spots = [
    { x: middle, y: past },
    { x: middle, y: other },
    { x: head.x + head.width + 3, y: level },
    { x: head.x - width - 3, y: level },
    ...[5, 9].map((more) => ({ x: middle, y: past + (up ? -more : more) })),
    { x: head.x + head.width + 3, y: level + (up ? -9 : 9) },
    { x: head.x - width - 3, y: level + (up ? -9 : 9) },
    ...[13, 17, 21].map((more) => ({ x: middle, y: past + (up ? -more : more) })),
  ];
  return spots.map((spot) => ({ ...spot, ...size }));
}

/** Past the stem's end and on, the way the stem points, until nothing is in the way. */
function outwards(head: HeadBox, width: number, geometry: SystemGeometry, blocked: readonly Box[]): Box {
  const up = stemUp(head.voice);
  const wanted = head.x + head.width / 2 - width / 2;
  const x = Math.max(1, Math.min(wanted, geometry.width - width - 1));
  const edge = up ? head.tip - LETTER_HEIGHT - 2 : head.tip + 2;
  const spot = (step: number) => ({ x, y: edge + (up ? -3 : 3) * step, width, height: LETTER_HEIGHT });
  for (let step = 0; step < 120; step++) if (isFree(spot(step), geometry, blocked)) return spot(step);
  return spot(120);
}

/** True where a box covers no sign, stem or beam and none of the boxes taken. */
function isFree(box: Box, geometry: SystemGeometry, taken: readonly Box[]): boolean {
  return (
    !geometry.solid.some((each) => overlap(box, each, 1)) &&
    !geometry.thin.some((each) => overlap(box, each, 0.5)) &&
    !taken.some((each) => overlap(box, each, 1.5))
  );
}

function words(text: string, size: number, width: number) {
  return { runs: [{ text, x: 0, y: 0, size }], width };
}
