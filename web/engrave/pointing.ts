/** What lies under a point of a system. Pure; coordinates are the drawing's own. */
import type { VoiceName } from '../../src/score/score.ts';
import { LOWEST_LINE, STAFF_VOICES, type StaffName } from './bars.ts';
import { STAFF_HEIGHT } from './extents.ts';
import type { Box, GapBox, HeadBox, SystemGeometry } from './geometry.ts';
import type { Hit } from './input.ts';
import type { PlacedTag } from './tags.ts';

/** How near to a head or tag a pointer counts as on it: a finger is broader than a head. */
const NEAR = 7;

/** Answers undefined to the left and right of the music. */
export function hitIn(
  geometry: SystemGeometry,
  tags: readonly PlacedTag[],
  x: number,
  y: number,
): Hit | undefined {
  const first = geometry.columns[0];
  if (!first || x < geometry.left - NEAR || x > geometry.right + NEAR) return undefined;
  const border = (geometry.top.treble + STAFF_HEIGHT + geometry.top.bass) / 2;
  const staff: StaffName = y < border ? 'treble' : 'bass';
  const place = LOWEST_LINE[staff] + Math.round((geometry.top[staff] + STAFF_HEIGHT - y) / 5);
  const head = nearest(geometry, x, y);
  const { at, moment } = timeAt(geometry, x);
  const tag = nearestTag(tags, x, y);
  const gap = head === undefined ? gapAt(geometry, staff, moment, y) : undefined;
  return {
    staff,
    voice: head?.voice ?? gap?.voice ?? voiceNear(geometry, staff, at, y),
    at,
    moment,
    place,
    ...(gap ? { gap: { voice: gap.voice, at: gap.at, until: gap.until } } : {}),
    ...(head?.tone !== undefined ? { tone: head.tone } : {}),
    ...(tag ? { finding: tag.finding } : {}),
  };
}

/**
 * What is still to be written in a staff at a moment, of two voices the one whose box is nearer in height; undefined
 * where a note of the other voice is nearer still, and so is what was pointed at.
 */
function gapAt(geometry: SystemGeometry, staff: StaffName, moment: number, y: number): GapBox | undefined {
  const away = (box: Box) => Math.abs(box.y + box.height / 2 - y);
  const sounds = (box: GapBox | HeadBox) =>
    STAFF_VOICES[staff].includes(box.voice) && box.at <= moment && moment < box.until;
  const [gap] = geometry.gaps.filter(sounds).sort((a, b) => away(a) - away(b));
  const nearer = geometry.heads.some((head) => gap && sounds(head) && away(head) < away(gap));
  return nearer ? undefined : gap;
}

/** The tag under the pointer, or within a finger's breadth of it. */
function nearestTag(tags: readonly PlacedTag[], x: number, y: number): PlacedTag | undefined {
  let best: PlacedTag | undefined;
  let least = NEAR;
  for (const tag of tags) {
    const away = distance(tag.box, x, y);
    if (away < least) [best, least] = [tag, away];
  }
  return best;
}

function nearest(geometry: SystemGeometry, x: number, y: number) {
  let best: (typeof geometry.heads)[number] | undefined;
  let least = NEAR;
  for (const head of geometry.heads) {
    const away = distance(head, x, y);
    const middle = Math.hypot(head.x + head.width / 2 - x, head.y + head.height / 2 - y) / 1000;
    if (head.tone !== undefined && away + middle < least) {
      least = away + middle;
      best = head;
    }
  }
  return best;
}

function distance(
  box: { x: number; y: number; width: number; height: number },
  x: number,
  y: number,
): number {
  const dx = Math.max(box.x - x, 0, x - box.x - box.width);
  const dy = Math.max(box.y - y, 0, y - box.y - box.height);
  return Math.hypot(dx, dy);
}

/** The voice whose note in this column is nearest in height; the staff's half where there is none. */
function voiceNear(geometry: SystemGeometry, staff: StaffName, at: number, y: number): VoiceName {
  const [upper, lower] = STAFF_VOICES[staff];
  const here = geometry.heads.filter(
    (head) => (head.voice === upper || head.voice === lower) && at >= head.at && at < head.until,
  );
  const middle = geometry.top[staff] + STAFF_HEIGHT / 2;
  if (here.length < 2) return y < middle ? upper : lower;
  const away = (head: (typeof here)[number]) => Math.abs(head.y + head.height / 2 - y);
  return [...here].sort((a, b) => away(a) - away(b))[0]!.voice;
}

function timeAt(geometry: SystemGeometry, x: number): { at: number; moment: number } {
  const { columns, bars } = geometry;
  let index = 0;
  // A little before a column still belongs to it: people aim at the head's left edge.
  while (index + 1 < columns.length && columns[index + 1]!.x - 5 <= x) index++;
  const column = columns[index]!;
  const bar = bars.find((each) => column.at >= each.at && column.at < each.until) ?? bars.at(-1)!;
  const next = columns[index + 1];
  const inBar = next !== undefined && next.at < bar.until;
  const end = inBar ? { at: next.at, x: next.x } : { at: bar.until, x: bar.x + bar.width };
  const part = Math.min(0.999, Math.max(0, (x - column.x) / Math.max(1, end.x - column.x)));
  return { at: column.at, moment: Math.round(column.at + (end.at - column.at) * part) };
}
