/** Which bars stand on which system, as plain data. Two equal plans give the same drawing, so an unchanged one is kept. */
import { byVoice, VOICES } from '../../src/score/score.ts';
import { lastBegun } from '../../src/score/search.ts';
import { signatureAlteration } from '../../src/score/signature.ts';
import type { Metre, Ticks } from '../../src/score/time.ts';
import { signatureSize } from './accidentals.ts';
import { type PlannedBar, type Sign, STAFF_VOICES, type StaffName } from './bars.ts';
import { staffDistance } from './extents.ts';
import { sameItems } from './plan.ts';
import {
  barWidths,
  breakSystems,
  type Column,
  type LabelRoom,
  type LabelRooms,
  type SpacedBar,
} from './spacing.ts';

export interface SystemPlan {
  readonly index: number;
  readonly bars: readonly PlannedBar[];
  /** Drawing units from the container's left to its right edge. */
  readonly width: number;
  /** The last system need not fill the width. */
  readonly ragged: boolean;
  /** From the treble's top line to the bass's. */
  readonly distance: number;
  /** The signature that the next system begins with, where it changes: warned of at this system's end. */
  readonly nextKey?: { readonly fifths: number; readonly before: number };
  /** The metre that the next system begins with, where it changes. */
  readonly nextMetre?: Metre;
  /** Lines of syllables between the staves. */
  readonly lyrics?: number;
  /** Room wanted by words at each moment, as [at, rooms]. */
  readonly labels: LabelRooms;
}

/** Room for the bracket left of the staves. */
export const LEFT_MARGIN = 18;
export const RIGHT_MARGIN = 3;
/** The widest stretch of a last system, and of a score that is one short system (an example). */
export const RAGGED_STRETCH = 1.6;

export interface Arrangement {
  readonly width: number;
  /** The room that a bar's labels want; the same answer for the same bar, so that its widths are worked out once. */
  readonly labels: (bar: PlannedBar) => LabelRooms;
  /** Lines of syllables between the staves. */
  readonly lyrics: number;
  /** Moments at which a letter stands at an inner voice's note, in order: their systems are given room for it. */
  readonly letters?: readonly Ticks[];
  /** Systems begin where those of the arrangement before do, while that is hardly worse. */
  readonly settled?: boolean;
  /** Staves that stand further apart than they need stay there, if those of the system in their place do. */
  readonly hold?: boolean;
}

/** Room for a letter between the staves. */
const LETTER_ROOM = 14;

/**
 * Arranges bars on systems of a width in drawing units. Widths of signs are estimated, never measured. A plan that
 * differs in nothing from the one in its place in `before` is that very one.
 */
export function arrangeSystems(
  bars: readonly PlannedBar[],
  arrangement: Arrangement,
  before: readonly SystemPlan[] = [],
): SystemPlan[] {
  const { width, labels, lyrics, letters = [], settled = false, hold = false } = arrangement;
  const widths = bars.map((bar) => widthsOf(bar, labels(bar)));
  const head = bars.reduce((most, bar) => Math.max(most, headWidth(bar.key.fifths)), 0);
  const stay = settled && before[0]?.width === width;
  const breaks = stay ? before.map((plan) => plan.bars[0]?.index ?? 0) : undefined;
  const starts = breakSystems(widths, width - LEFT_MARGIN - RIGHT_MARGIN, head, breaks);
  return starts.map((start, index) => {
    const own = bars.slice(start, starts[index + 1] ?? bars.length);
    const wanted = own.flatMap(labels);
    if (own[0]) own[0] = restateTied(own[0]);
    const next = bars[starts[index + 1] ?? bars.length];
    const until = next?.at ?? Number.POSITIVE_INFINITY;
    const letter = lastBegun(letters, (own[0]?.at ?? 0) - 1, (at) => at) + 1;
    const lettered = (letters[letter] ?? until) < until;
    const needed = staffDistance(own, lyrics) + (lettered ? LETTER_ROOM : 0);
    const old = before[index];
    const stays = hold && old !== undefined && old.bars[0]?.index === own[0]?.index;
    const plan = {
      index,
      bars: own,
      width,
      ragged: index === starts.length - 1,
      distance: stays ? Math.max(needed, old.distance) : needed,
      ...(lyrics > 0 ? { lyrics } : {}),
      ...(next?.keyBefore !== undefined
        ? { nextKey: { fifths: next.key.fifths, before: next.keyBefore } }
        : {}),
      ...(next?.metreChanges ? { nextMetre: next.metre } : {}),
      labels: wanted,
    };
    return old !== undefined && samePlan(old, plan) ? old : plan;
  });
}

/** True where two plans are made of the very same bars and labels, and are alike in all else. */
function samePlan(a: SystemPlan, b: SystemPlan): boolean {
  return (
    a.width === b.width &&
    a.ragged === b.ragged &&
    a.distance === b.distance &&
    a.lyrics === b.lyrics &&
    a.nextKey?.fifths === b.nextKey?.fifths &&
    a.nextKey?.before === b.nextKey?.before &&
    a.nextMetre === b.nextMetre &&
    sameItems(a.bars, b.bars) &&
    sameItems(a.labels, b.labels)
  );
}

interface BarWidths {
  readonly labels: LabelRooms;
  readonly widths: { readonly least: number; readonly natural: number; readonly closes: boolean };
}

const knownWidths = new WeakMap<PlannedBar, BarWidths>();

function widthsOf(bar: PlannedBar, labels: LabelRooms): BarWidths['widths'] {
  const known = knownWidths.get(bar);
  if (known?.labels === labels) return known.widths;
  const widths = {
    ...barWidths(estimate(bar, new Map(labels))),
    closes: VOICES.some((voice) => bar.signs[voice].some((sign) => sign.fermata)),
  };
  knownWidths.set(bar, { labels, widths });
  return widths;
}

const restated = new WeakMap<PlannedBar, PlannedBar>();

/**
 * The first bar of a system with the accidentals of notes that are tied over from the system before: the eye has lost
 * them there, so they are told again in brackets (common practice, no source). The same bar has the same answer.
 */
function restateTied(bar: PlannedBar): PlannedBar {
  if (!VOICES.some((voice) => bar.signs[voice][0]?.continued)) return bar;
  const known = restated.get(bar);
  if (known !== undefined) return known;
  const signs = byVoice((voice) =>
    bar.signs[voice].map((sign, i): Sign => {
      if (i > 0 || !sign.continued || !sign.pitch) return sign;
      const { step, alteration } = sign.pitch;
      return alteration === signatureAlteration(bar.key.fifths, step)
        ? sign
        : { ...sign, accidental: 'courtesy' };
    }),
  );
  const again = { ...bar, signs };
  restated.set(bar, again);
  return again;
}

/** The clef and a key signature at the beginning of a system. */
function headWidth(fifths: number): number {
  return 50 + signatureSize(fifths) * 9;
}

/** A bar's columns with estimated room: 11 for an accidental, 12 for a head, 7 for a dot. */
function estimate(bar: PlannedBar, labels: ReadonlyMap<Ticks, readonly LabelRoom[]>): SpacedBar {
  const columns = bar.columns.map((at, i): Column => {
    const until = bar.columns[i + 1] ?? bar.at + bar.duration;
    let left = 0;
    let right = 14;
    for (const staff of ['treble', 'bass'] as const) {
      const room = staffRoom(bar, staff, at);
      left = Math.max(left, room.left);
      right = Math.max(right, room.right);
    }
    return { at, duration: until - at, left, right, labels: labels.get(at) ?? [] };
  });
  let head = 14;
  if (bar.keyBefore !== undefined)
    head += 14 + signatureSize(bar.key.fifths) * 9 + signatureSize(bar.keyBefore) * 6;
  if (bar.metreChanges || bar.index === 0) head += 26;
  if (bar.repeatStart) head += 14;
  return { head, columns };
}

function staffRoom(bar: PlannedBar, staff: StaffName, at: number): { left: number; right: number } {
  const here: Sign[] = [];
  for (const voice of STAFF_VOICES[staff]) {
    const sign = bar.signs[voice].find((each) => each.at === at);
    if (sign && sign.kind !== 'gap') here.push(sign);
  }
  const accidentals = here.filter((sign) => sign.accidental).length;
  const grace = Math.max(0, ...here.map((sign) => (sign.grace?.length ?? 0) * 14));
  const dots = here.some((sign) => sign.value.dots > 0) ? 8 : 0;
  const flag = here.some((sign) => sign.value.base >= 8) ? 8 : 0;
  const [upper, lower] = here;
  const close =
    upper?.kind === 'note' &&
    lower?.kind === 'note' &&
    upper.place - lower.place < 2 &&
    !(upper.place === lower.place && upper.value.base === lower.value.base);
  return { left: accidentals * 11 + grace, right: 14 + dots + flag + (close ? 13 : 0) };
}
