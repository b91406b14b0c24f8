/**
 * How far signs reach above and below the staff lines, from plain data: so that the distance of the two staves is
 * settled before anything is drawn. Units: a staff space is 10, y grows downwards from the staff's top line.
 */
import { staffPlace } from '../../src/score/pitch.ts';
import type { VoiceName } from '../../src/score/score.ts';
import { LOWEST_LINE, type PlannedBar, type Sign, STAFF_VOICES, type StaffName } from './bars.ts';

/** From a staff's top line to its lowest. */
export const STAFF_HEIGHT = 40;
const STEM = 36;
/** The least clear space between the two staves, and between things that hang into it. */
const LEAST_GAP = 62;
const CLEAR = 10;
/** A tuplet's number, and its beam's slope. */
const TUPLET_NUMBER = 24;

/** The y of a staff place, from the top line. */
export function placeY(staff: StaffName, place: number): number {
  return STAFF_HEIGHT - (place - LOWEST_LINE[staff]) * 5;
}

/** True for voices whose stems point up. */
export function stemUp(voice: VoiceName): boolean {
  return voice === 'S' || voice === 'T';
}

/** Top and bottom of one sign, stem included. */
function reach(staff: StaffName, voice: VoiceName, sign: Sign): { top: number; bottom: number } {
  const y = placeY(staff, sign.place);
  if (sign.kind === 'gap') return { top: y - 6, bottom: y + 6 };
  if (sign.kind === 'rest') return { top: y - 16, bottom: y + 16 };
  const stem = sign.value.base < 2 ? 8 : STEM;
  const tie = sign.tied || sign.continued ? 12 : 7;
  const others = (sign.beside ?? []).map(({ pitch }) => placeY(staff, staffPlace(pitch)));
  const highest = Math.min(y, ...others);
  const lowest = Math.max(y, ...others);
  return stemUp(voice)
    ? { top: Math.min(highest - stem, highest - tie), bottom: lowest + 6 }
    : { top: highest - 6, bottom: Math.max(lowest + stem, lowest + tie) };
}

/** From one line of syllables to the next, and from the notes to the first one's baseline. */
export const VERSE = 14;

/** How far the signs of one bar reach. */
interface Reach {
  /** The staves' distance that keeps clear what hangs from the upper and what rises from the lower. */
  readonly distance: number;
  /** The lowest that anything hangs from the treble staff, from its top line. */
  readonly bottom: number;
  /** The highest that anything rises from the bass staff, from its top line. */
  readonly rise: number;
}

const reaches = new WeakMap<PlannedBar, Reach>();

function reachOf(bar: PlannedBar): Reach {
  const known = reaches.get(bar);
  if (known !== undefined) return known;
  const below = spans(bar, 'treble');
  const above = spans(bar, 'bass');
  let distance = 0;
  for (const low of below) {
    for (const high of above) {
      // Neighbours in time count too: a stem may lean into the next column.
      if (high.at > low.until || low.at > high.until) continue;
      distance = Math.max(distance, low.bottom - high.top + CLEAR);
    }
  }
  const reached = {
    distance,
    bottom: Math.max(STAFF_HEIGHT, ...below.map(({ bottom }) => bottom)),
    rise: Math.min(0, ...above.map(({ top }) => top)),
  };
  reaches.set(bar, reached);
  return reached;
}

/** The lowest that anything hangs from the treble staff in these bars, from its top line: lyrics stand under it. */
export function trebleBottom(bars: readonly PlannedBar[]): number {
  return Math.max(STAFF_HEIGHT, ...bars.map((bar) => reachOf(bar).bottom));
}

/**
 * From the treble staff's top line to the bass staff's top line in one system: wide enough that what hangs from the
 * upper staff and what rises from the lower keep clear wherever they meet in time, and that `verses` lines of syllables
 * find room between all of it.
 */
export function staffDistance(bars: readonly PlannedBar[], verses: number): number {
  let distance = Math.max(STAFF_HEIGHT + LEAST_GAP, ...bars.map((bar) => reachOf(bar).distance));
  if (verses > 0) {
    const rise = Math.min(0, ...bars.map((bar) => reachOf(bar).rise));
    distance = Math.max(distance, trebleBottom(bars) + VERSE * verses + CLEAR - rise);
  }
  return Math.ceil(distance);
}

function spans(
  bar: PlannedBar,
  staff: StaffName,
): { at: number; until: number; top: number; bottom: number }[] {
  return STAFF_VOICES[staff].flatMap((voice) => {
    const tuplets = bar.tuplets.filter((tuplet) => tuplet.voice === voice);
    return bar.signs[voice].map((sign, i) => {
      const { top, bottom } = reach(staff, voice, sign);
      const number = tuplets.some(({ first, last }) => i >= first && i <= last) ? TUPLET_NUMBER : 0;
      const up = stemUp(voice);
      return {
        at: sign.at,
        until: sign.at + sign.duration,
        top: up ? top - number : top,
        bottom: up ? bottom : bottom + number,
      };
    });
  });
}
