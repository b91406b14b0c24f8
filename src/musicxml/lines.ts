/**
 * From the notes of a staff to its lines: the melodies that a person would sing from it, numbered from the top. A staff
 * of its own for each voice has one line, a staff of a closed score two, however the file writes them: as two voices
 * with stems up and down, as voices that change their number from bar to bar, or as chords.
 */
import { comparePitch, type Pitch, semitone } from '../score/pitch.ts';
import type { Ticks } from '../score/time.ts';
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

export function stavesOf(source: SourceScore): Staff[] {
  return source.parts.flatMap((part, index) => {
    const bars = homed(part);
    return Array.from({ length: part.staves }, (_, i) => {
      const staff = i + 1;
      const own = bars.map((notes) => notes.filter((note) => note.staff === staff));
      return readStaff(part, index, staff, own);
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
      const before = last.get(note.voice);
      if (before !== undefined && before.staff !== note.staff) {
        // The same number on two staves at once only means that each staff counts its own voices.
        if (note.at < before.at + before.duration && !note.chord) stays.add(note.voice);
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

/** The notes of one voice number in one bar; two lanes where one number is used for two things at once. */
interface Lane {
  readonly voice: string;
  readonly notes: SourceNote[];
  chords: boolean;
}

function lanesOf(notes: readonly SourceNote[]): Lane[] {
  const lanes = new Map<string, { lane: Lane; until: Ticks }[]>();
  let last: { lane: Lane; until: Ticks } | undefined;
  for (const note of notes) {
    if (note.chord && last) {
      last.lane.notes.push(note);
      last.lane.chords = true;
      continue;
    }
    const open = lanes.get(note.voice) ?? [];
    lanes.set(note.voice, open);
    let place = open.find((one) => one.until <= note.at);
    if (place === undefined) {
      const voice = open.length === 0 ? note.voice : `${note.voice}~${open.length + 1}`;
      place = { lane: { voice, notes: [], chords: false }, until: 0 };
      open.push(place);
    }
    place.lane.notes.push(note);
    place.until = note.at + note.duration;
    last = place;
  }
  return [...lanes.values()].flat().map((one) => one.lane);
}

interface Habits {
  /** Which line a voice number stands for throughout. */
  readonly lineOf: ReadonlyMap<string, number>;
  /** The share of moments with more than one note. */
  readonly chordal: number;
  /** The line that a lone note of a staff written as chords belongs to. */
  readonly outer: number;
}

function readStaff(
  part: SourcePart,
  partIndex: number,
  staff: number,
  bars: readonly (readonly SourceNote[])[],
): Staff {
  const lanes = bars.map(lanesOf);
  const { most, usual, chordal } = density(bars);
  const abreast = Math.max(1, ...lanes.map((bar) => bar.length));
  const of = Math.min(MOST_LINES, Math.max(1, usual, Math.min(abreast, 2), abreast <= most ? abreast : 1));
  const habits: Habits = {
    lineOf: habitsOf(lanes, of),
    chordal,
    outer: part.clefs.get(staff)?.sign === 'F' ? of - 1 : 0,
  };
  const dealt = lanes.map((bar) => deal(bar, of, habits));
  const lines = Array.from({ length: of }, (_, i) =>
    lineFrom(
      partIndex,
      staff,
      i,
      of,
      dealt.map((bar) => bar.lines[i]!),
    ),
  );
  return {
    part: partIndex,
    staff,
    lines,
    most,
    kind: part.unpitched.get(staff) ?? 'notes',
    guessed: dealt.some((bar) => bar.guessed),
    setAside: dealt.flatMap((bar, index) => bar.setAside.map((note) => ({ bar: index, note }))),
    shared: dealt.reduce((sum, bar) => sum + bar.shared, 0),
  };
}

/** How many notes sound together on a staff: at most, and often enough to tell. */
function density(bars: readonly (readonly SourceNote[])[]): { most: number; usual: number; chordal: number } {
  const moments: number[] = [];
  for (const bar of bars) {
    const notes = bar.filter((note) => note.kind === 'note');
    for (const at of new Set(notes.map((note) => note.at))) {
      moments.push(notes.filter((note) => note.at <= at && note.at + note.duration > at).length);
    }
  }
  const most = Math.max(0, ...moments);
  const share = (k: number) => moments.filter((n) => n >= k).length / Math.max(1, moments.length);
  let usual = most >= 2 ? 2 : 1;
  while (usual < most && share(usual + 1) >= TELLING) usual++;
  return { most, usual, chordal: share(2) };
}

function habitsOf(bars: readonly (readonly Lane[])[], of: number): Map<string, number> {
  const known = new Map<string, { up: number; down: number; sum: number; notes: number }>();
  for (const lane of bars.flat()) {
    const habit = known.get(lane.voice) ?? { up: 0, down: 0, sum: 0, notes: 0 };
    known.set(lane.voice, habit);
    for (const note of lane.notes) {
      if (note.stem === 'up') habit.up++;
      if (note.stem === 'down') habit.down++;
      if (note.pitch) {
        habit.sum += semitone(note.pitch);
        habit.notes++;
      }
    }
  }
  const lineOf = new Map<string, number>();
  const lean = (h: { up: number; down: number }) => (h.up - h.down) / Math.max(1, h.up + h.down);
  const sounding = [...known].filter(([, h]) => h.notes > 0);
  if (of === 1) return lineOf;
  if (sounding.length === of && of > 1) {
    const stemsTell = of === 2 && Math.abs(lean(sounding[0]![1]) - lean(sounding[1]![1])) > 0.5;
    sounding.sort(([, a], [, b]) => (stemsTell ? lean(b) - lean(a) : b.sum / b.notes - a.sum / a.notes));
    for (const [i, [voice]] of sounding.entries()) lineOf.set(voice, i);
  } else if (of === 2) {
    for (const [voice, habit] of sounding) {
      if (Math.abs(lean(habit)) >= 0.6 && habit.up + habit.down > 0)
        lineOf.set(voice, lean(habit) > 0 ? 0 : 1);
    }
  }
  if (lineOf.size === 0 && of === 2 && known.size === 2) {
    // Nothing but their numbers tells the voices apart: the upper one comes first.
    const order = [...known.keys()].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
    for (const [i, voice] of order.entries()) lineOf.set(voice, i);
  }
  // The one voice that never sounds is the line that is left over.
  const silent = [...known.keys()].filter((voice) => !lineOf.has(voice));
  const free = Array.from({ length: of }, (_, i) => i).filter((i) => ![...lineOf.values()].includes(i));
  if (silent.length === 1 && free.length === 1 && lineOf.size === of - 1) lineOf.set(silent[0]!, free[0]!);
  return lineOf;
}

interface Dealt {
  readonly lines: SourceNote[][];
  readonly setAside: SourceNote[];
  guessed: boolean;
  shared: number;
}

/** Gives the notes of one bar to the lines of the staff. */
function deal(lanes: readonly Lane[], of: number, habits: Habits): Dealt {
  const lines = Array.from({ length: of }, (): SourceNote[] => []);
  const dealt: Dealt = { lines, setAside: [], guessed: false, shared: 0 };
  const chords = lanes.some((lane) => lane.chords);
  if (of === 1) {
    for (const lane of lanes) lines[0]!.push(...lane.notes);
  } else if (!chords && lanes.length > 1 && lanes.length <= of) {
    const order = orderOf(lanes, of, habits);
    for (const [i, lane] of lanes.entries()) lines[order[i]!]!.push(...lane.notes);
  } else if (!chords && lanes.length === 1 && habits.lineOf.has(lanes[0]!.voice)) {
    lines[habits.lineOf.get(lanes[0]!.voice)!]!.push(...lanes[0]!.notes);
  } else {
    dealMoments(lanes, habits, dealt);
  }
  for (const line of lines) untangle(line, dealt.setAside);
  return dealt;
}

/** Which line each lane is, where every lane is a single melody. */
function orderOf(lanes: readonly Lane[], of: number, habits: Habits): number[] {
  const stems = lanes.map((lane) => {
    const up = lane.notes.filter((note) => note.stem === 'up').length;
    const down = lane.notes.filter((note) => note.stem === 'down').length;
    return up > 0 && down === 0 ? 'up' : down > 0 && up === 0 ? 'down' : undefined;
  });
  if (of === 2 && stems[0] !== undefined && stems[1] !== undefined && stems[0] !== stems[1]) {
    return stems.map((stem) => (stem === 'up' ? 0 : 1));
  }
  const usual = lanes.map((lane) => habits.lineOf.get(lane.voice));
  if (usual.every((line) => line !== undefined) && new Set(usual).size === lanes.length)
    return usual as number[];
  if (of === 2) {
    const known = usual.findIndex((line, i) => line !== undefined || stems[i] !== undefined);
    if (known >= 0 && usual.filter((line) => line !== undefined).length <= 1) {
      const line = usual[known] ?? (stems[known] === 'up' ? 0 : 1);
      return lanes.map((_, i) => (i === known ? line : 1 - line));
    }
  }
  const byHeight = lanes.map((lane, i) => ({ i, height: heightOf(lane.notes) }));
  byHeight.sort((a, b) => (a.height === 0 || b.height === 0 ? a.i - b.i : b.height - a.height || a.i - b.i));
  const order: number[] = [];
  for (const [line, { i }] of byHeight.entries()) order[i] = line;
  return order;
}

/** Moment by moment: stems first, then height. */
function dealMoments(lanes: readonly Lane[], habits: Habits, dealt: Dealt): void {
  const { lines, setAside } = dealt;
  const last = lines.length - 1;
  const busy = lines.map(() => 0);
  const all = lanes.flatMap((lane) =>
    lane.notes.map((note) => ({ note, line: habits.lineOf.get(lane.voice) })),
  );
  const give = (line: number, note: SourceNote) => {
    lines[line]!.push(note);
    busy[line] = note.at + note.duration;
  };
  for (const at of [...new Set(all.map(({ note }) => note.at))].sort((a, b) => a - b)) {
    const here = all.filter(({ note }) => note.at === at);
    for (const { note, line } of here.filter((one) => one.note.kind === 'rest')) {
      if (lanes.length > 1 && line !== undefined) give(line, note);
      else if (lanes.length === 1) for (const i of lines.keys()) give(i, note);
    }
    const notes = here.filter(({ note }) => note.kind === 'note');
    const [only] = notes;
    if (only === undefined) continue;
    if (notes.length === 1) {
      const free = [...lines.keys()].filter((i) => busy[i]! <= at);
      if (lanes.length > 1 && only.line !== undefined) give(only.line, only.note);
      else if (free.length === 1) give(free[0]!, only.note);
      else if (habits.chordal >= 0.5) {
        // On a staff written as chords a lone note is sung by both.
        for (const i of lines.keys()) give(i, only.note);
        dealt.shared++;
      } else give(habits.outer, only.note);
      dealt.guessed = true;
      continue;
    }
    dealt.guessed = true;
    const rank = (stem: SourceNote['stem']) => (stem === 'up' ? 0 : stem === 'down' ? 2 : 1);
    const mixed = new Set(notes.map(({ note }) => note.stem)).size > 1;
    notes.sort(
      (a, b) =>
        (mixed ? rank(a.note.stem) - rank(b.note.stem) : 0) || comparePitch(b.note.pitch!, a.note.pitch!),
    );
    // The lowest note is the lowest line's; what is too many is in the middle.
    const above = notes.slice(0, -1);
    give(last, notes.at(-1)!.note);
    for (const [i, { note }] of above.entries()) {
      if (i < last) give(i, note);
      else setAside.push(note);
    }
  }
}

/** Puts a line in order of time and takes out what begins before the note before it has ended. */
function untangle(line: SourceNote[], setAside: SourceNote[]): void {
  line.sort((a, b) => a.at - b.at);
  let until = 0;
  let kept = 0;
  for (const note of line) {
    if (note.duration <= 0) continue;
    const before = line[kept - 1];
    if (note.at < until && note.kind === 'note' && before !== undefined && before.kind !== 'note') {
      // A rest written for both voices gives way to the note of one.
      if (before.at < note.at) line[kept - 1] = { ...before, duration: note.at - before.at };
      else kept--;
    } else if (note.at < until) {
      if (note.kind === 'note') setAside.push(note);
      continue;
    }
    line[kept++] = note;
    until = note.at + note.duration;
  }
  line.length = kept;
}

function lineFrom(
  part: number,
  staff: number,
  index: number,
  of: number,
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
    id: `${part + 1}.${staff}.${index + 1}`,
    part,
    staff,
    position: index + 1,
    of,
    bars,
    notes,
    ...(lowest && highest ? { lowest, highest } : {}),
    height: heightOf(bars.flat()),
  };
}

function heightOf(notes: readonly SourceNote[]): number {
  const pitched = notes.flatMap((note) => (note.pitch ? [semitone(note.pitch)] : []));
  return pitched.length === 0 ? 0 : pitched.reduce((sum, n) => sum + n, 0) / pitched.length;
}
