/** Gives the notes of a bar to the lines of its staff. */
import { comparePitch, semitone } from '../score/pitch.ts';
import { type Habits, heightOf, type Lane, stemsOf } from './lanes.ts';
import type { SourceNote } from './source.ts';

export interface Dealt {
  readonly lines: SourceNote[][];
  readonly setAside: SourceNote[];
  guessed: boolean;
  shared: number;
}

/** Gives the notes of one bar to the lines of the staff. */
export function deal(lanes: readonly Lane[], of: number, habits: Habits): Dealt {
  const lines = Array.from({ length: of }, (): SourceNote[] => []);
  const dealt: Dealt = { lines, setAside: [], guessed: false, shared: 0 };
  const chords = lanes.some((lane) => lane.chords);
  if (of === 1) {
    for (const lane of lanes) lines[0]!.push(...lane.notes);
  } else if (!chords && lanes.length > 1 && lanes.length <= of) {
    const order = orderOf(lanes, of, habits);
    for (const [i, lane] of lanes.entries()) lines[order[i]!]!.push(...lane.notes);
  } else if (!chords && lanes.length === 1 && usualLine(lanes[0]!, of, habits) !== undefined) {
    lines[usualLine(lanes[0]!, of, habits)!]!.push(...lanes[0]!.notes);
  } else {
    dealMoments(lanes, habits, dealt);
  }
  for (const line of lines) untangle(line, dealt.setAside, habits.low);
  for (const note of dealt.setAside) putBeside(lines, note);
  return dealt;
}

/** Tells the note that was taken of the one that was not: of its own voice number if it can be, else the nearest. */
function putBeside(lines: SourceNote[][], spare: SourceNote): void {
  const sounding = lines.flatMap((line) => {
    const index = line.findIndex(
      (note) => note.pitch && note.at <= spare.at && note.at + note.duration > spare.at,
    );
    return index < 0 ? [] : [{ line, index, note: line[index]! }];
  });
  const apart = (note: SourceNote) => Math.abs(semitone(note.pitch!) - semitone(spare.pitch!));
  const [host] = sounding.sort(
    (a, b) =>
      Number(b.note.voice === spare.voice) - Number(a.note.voice === spare.voice) ||
      apart(a.note) - apart(b.note),
  );
  if (host !== undefined)
    host.line[host.index] = { ...host.note, beside: [...(host.note.beside ?? []), spare] };
}

/** The line of a lane that is alone in its bar: by its number, or by its stems where numbers tell nothing. */
function usualLine(lane: Lane, of: number, habits: Habits): number | undefined {
  const line = habits.lineOf.get(lane.voice);
  if (line !== undefined || of !== 2 || habits.lineOf.size > 0) return line;
  const stems = stemsOf(lane);
  return stems === undefined ? undefined : stems === 'up' ? 0 : 1;
}

/** Which line each lane is, where every lane is a single melody. */
function orderOf(lanes: readonly Lane[], of: number, habits: Habits): number[] {
  const stems = lanes.map(stemsOf);
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
    for (const { note, line } of here.filter((one) => one.note.kind !== 'note')) {
      if (lanes.length > 1 && line !== undefined) give(line, note);
      else if (lanes.length === 1 && note.kind === 'rest') for (const i of lines.keys()) give(i, note);
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
function untangle(line: SourceNote[], setAside: SourceNote[], low: boolean): void {
  // Of a chord the outer note is kept: the highest, or the lowest of a low voice.
  const outer = (a: SourceNote, b: SourceNote) =>
    a.pitch && b.pitch ? comparePitch(a.pitch, b.pitch) * (low ? 1 : -1) : 0;
  line.sort((a, b) => a.at - b.at || outer(a, b));
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
