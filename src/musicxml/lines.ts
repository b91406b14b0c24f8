/**
 * From the notes of a staff to its lines: the melodies that a person would sing from it, numbered from the top. A staff
 * of its own for each voice has one line, a staff of a closed score two, however the file writes them: as two voices
 * with stems up and down, as voices that change their number from bar to bar, or as chords.
 */
import { comparePitch, type Pitch } from '../score/pitch.ts';
import { deal } from './deal.ts';
import { type Habits, habitsOf, heightOf, lanesOf } from './lanes.ts';
import type { SourceNote, SourcePart, SourceScore } from './source.ts';

export interface Line {
  /** `2.1.1` is the first line of the first staff of the second part; a file with the same parts gives the same ids. */
  readonly id: string;
  /** Position of its part in the file, from 0. */
  readonly part: number;
  /** From 1. */
  readonly staff: number;
  /** From 1 at the top, of `of` lines on the staff. */
  readonly position: number;
  readonly of: number;
  /** By bar: notes and rests in order of time, one at a time. */
  readonly bars: readonly (readonly SourceNote[])[];
  readonly notes: number;
  readonly lowest?: Pitch;
  readonly highest?: Pitch;
  /** The middle of its notes, in semitones above C0; 0 where there are none. */
  readonly height: number;
}

export interface Staff {
  readonly part: number;
  readonly staff: number;
  readonly lines: readonly Line[];
  /** Most notes that sound at once. */
  readonly most: number;
  readonly kind: 'notes' | 'tablature' | 'percussion';
  /** Lines had to be told apart by stems or height, so that a person should look. */
  readonly guessed: boolean;
  /** Notes that found no line, because more sound at once than there are lines. */
  readonly setAside: readonly { readonly bar: number; readonly note: SourceNote }[];
  /** Notes of a staff written as chords that were given to two lines as unisons. */
  readonly shared: number;
}

/** More notes than this share of a staff's moments makes it a staff of more lines. */
const TELLING = 0.05;
const MOST_LINES = 4;
/** In semitones above C0. */
const MIDDLE_C = 48;

/** @param slips a second note that sounds in few of a staff's bars makes no second line; it is a slip */
export function stavesOf(source: SourceScore, { slips = false } = {}): Staff[] {
  return source.parts.flatMap((part, index) => {
    const bars = homed(part);
    return Array.from({ length: part.staves }, (_, i) => {
      const staff = i + 1;
      const own = bars.map((notes) => notes.filter((note) => note.staff === staff));
      return readStaff(part, { part: index, staff }, own, slips);
    });
  });
}

/** A voice that steps over to another staff for some notes is brought home to the staff where it mostly stands. */
function homed(part: SourcePart): (readonly SourceNote[])[] {
  if (part.staves === 1) return part.bars.map((bar) => bar.notes);
  const homes = new Map<string, Map<number, number>>();
  const wanders = new Set<string>();
  const stays = new Set<string>();
  for (const bar of part.bars) {
    const last = new Map<string, SourceNote>();
    for (const note of bar.notes) {
      const counts = homes.get(note.voice) ?? new Map<number, number>();
      homes.set(note.voice, counts);
      counts.set(note.staff, (counts.get(note.staff) ?? 0) + 1);
      if (note.chord) continue;
      const before = last.get(note.voice);
      if (before !== undefined && before.staff !== note.staff) {
        // The same number on two staves at once only means that each staff counts its own voices.
        if (note.at < before.at + before.duration) stays.add(note.voice);
        else wanders.add(note.voice);
      }
      last.set(note.voice, note);
    }
  }
  const moved = [...wanders].filter((voice) => voice !== '' && !stays.has(voice));
  if (moved.length === 0) return part.bars.map((bar) => bar.notes);
  return part.bars.map((bar) => {
    const roams = (voice: string) =>
      new Set(bar.notes.filter((n) => n.voice === voice).map((n) => n.staff)).size > 1;
    const here = new Set(moved.filter(roams));
    return bar.notes.map((note) => {
      if (!here.has(note.voice)) return note;
      const counts = [...homes.get(note.voice)!].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
      return { ...note, staff: counts[0]![0] };
    });
  });
}

function readStaff(
  part: SourcePart,
  place: Pick<Staff, 'part' | 'staff'>,
  bars: readonly (readonly SourceNote[])[],
  slips: boolean,
): Staff {
  const { staff } = place;
  const lanes = bars.map(lanesOf);
  const abreast = Math.max(1, ...lanes.map((bar) => bar.length));
  const { most, usual, chordal } = density(bars, abreast);
  const low = isLow(part.clefs.get(staff)?.sign, bars);
  const of = slips
    ? linesByBars(bars)
    : Math.min(MOST_LINES, Math.max(1, usual, Math.min(abreast, 2), abreast <= most ? abreast : 1));
  const habits: Habits = {
    lineOf: habitsOf(lanes, of),
    chordal,
    outer: low ? of - 1 : 0,
    low,
  };
  const dealt = lanes.map((bar) => deal(bar, of, habits));
  const lines = Array.from({ length: of }, (_, i) =>
    lineFrom(
      { ...place, position: i + 1, of },
      dealt.map((bar) => bar.lines[i]!),
    ),
  );
  return {
    ...place,
    lines,
    most,
    kind: part.unpitched.get(staff) ?? 'notes',
    guessed: dealt.some((bar) => bar.guessed),
    setAside: dealt.flatMap((bar, index) => bar.setAside.map((note) => ({ bar: index, note }))),
    shared: dealt.reduce((sum, bar) => sum + bar.shared, 0),
  };
}

/** Whether a staff is for low voices: by its clef, or by its notes where it has none. */
function isLow(clef: string | undefined, bars: readonly (readonly SourceNote[])[]): boolean {
  if (clef === 'F' || clef === 'G') return clef === 'F';
  const height = heightOf(bars.flat());
  return height > 0 && height < MIDDLE_C;
}

/** How many notes sound together on a staff: at most, and often enough to tell. */
function density(
  bars: readonly (readonly SourceNote[])[],
  abreast: number,
): { most: number; usual: number; chordal: number } {
  const moments: number[] = [];
  for (const bar of bars) {
    const notes = bar.filter((note) => note.kind === 'note');
    for (const at of new Set(notes.map((note) => note.at))) {
      moments.push(notes.filter((note) => note.at <= at && note.at + note.duration > at).length);
    }
  }
  const most = Math.max(0, ...moments);
  const share = (k: number) => moments.filter((n) => n >= k).length / Math.max(1, moments.length);
  // A single voice may divide for a chord or two; written under two numbers, it is two voices however seldom.
  let usual = most >= 2 && (abreast > 1 || share(2) >= TELLING) ? 2 : 1;
  while (usual > 1 && usual < most && share(usual + 1) >= TELLING) usual++;
  return { most, usual, chordal: share(2) };
}

/** Of the bars that have notes, more than this must have two at once to make a second line. */
const SLIPS = 1 / 4;

/** How many lines a staff has where what happens in few bars does not count. */
function linesByBars(bars: readonly (readonly SourceNote[])[]): number {
  const most = bars.flatMap((bar) => {
    const notes = bar.filter((note) => note.kind === 'note');
    const at = (moment: number) =>
      notes.filter((note) => note.at <= moment && note.at + note.duration > moment).length;
    return notes.length === 0 ? [] : [Math.max(...notes.map((note) => at(note.at)))];
  });
  let of = 1;
  while (of < MOST_LINES && most.filter((n) => n > of).length > most.length * SLIPS) of++;
  return of;
}

function lineFrom(
  place: Pick<Line, 'part' | 'staff' | 'position' | 'of'>,
  bars: readonly (readonly SourceNote[])[],
): Line {
  let lowest: Pitch | undefined;
  let highest: Pitch | undefined;
  let notes = 0;
  for (const bar of bars) {
    for (const { pitch } of bar) {
      if (pitch === undefined) continue;
      notes++;
      if (lowest === undefined || comparePitch(pitch, lowest) < 0) lowest = pitch;
      if (highest === undefined || comparePitch(pitch, highest) > 0) highest = pitch;
    }
  }
  return {
    id: `${place.part + 1}.${place.staff}.${place.position}`,
    ...place,
    bars,
    notes,
    ...(lowest && highest ? { lowest, highest } : {}),
    height: heightOf(bars.flat()),
  };
}
