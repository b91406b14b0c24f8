/** The lanes of a bar (what is written under one voice number), and what the numbers of a staff usually stand for. */
import { semitone } from '../score/pitch.ts';
import type { Ticks } from '../score/time.ts';
import type { SourceNote } from './source.ts';

/** A voice's stems go one way when they do so this much more often than the other (1 is always). */
const CLEAR = 0.6;

/** The notes of one voice number in one bar; two lanes where one number is used for two things at once. */
export interface Lane {
  readonly voice: string;
  readonly notes: SourceNote[];
  chords: boolean;
}

export function lanesOf(notes: readonly SourceNote[]): Lane[] {
  const lanes = new Map<string, { lane: Lane; until: Ticks }[]>();
  let last: { lane: Lane; until: Ticks } | undefined;
  for (const note of notes) {
    // A chord over two staves has its first note on the other one.
    if (note.chord && last?.lane.notes.at(-1)?.at === note.at) {
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

export interface Habits {
  /** Which line a voice number stands for throughout. */
  readonly lineOf: ReadonlyMap<string, number>;
  /** The share of moments with more than one note. */
  readonly chordal: number;
  /** The line that a lone note of a staff written as chords belongs to. */
  readonly outer: number;
  /** The staff is one for low voices. */
  readonly low: boolean;
}

/** How often a voice number was seen with stems up and down, in bars that it shares with another; and how high it lies. */
interface Habit {
  up: number;
  down: number;
  sum: number;
  notes: number;
}

/** Which line each voice number stands for, as far as stems, height and the numbers themselves tell. */
export function habitsOf(bars: readonly (readonly Lane[])[], of: number): Map<string, number> {
  const lineOf = new Map<string, number>();
  const known = new Map<string, Habit>();
  for (const bar of bars) {
    for (const lane of bar) {
      const habit = known.get(lane.voice) ?? { up: 0, down: 0, sum: 0, notes: 0 };
      known.set(lane.voice, habit);
      // A voice alone in its bar has its stems as its notes lie, which tells nothing.
      const stems = bar.length > 1 ? stemsOf(lane) : undefined;
      if (stems !== undefined) habit[stems]++;
      for (const { pitch } of lane.notes) {
        if (pitch === undefined) continue;
        habit.sum += semitone(pitch);
        habit.notes++;
      }
    }
  }
  // Without numbers there are no habits.
  if (of === 1 || known.has('')) return lineOf;
  const lean = (h: Habit) => (h.up - h.down) / Math.max(1, h.up + h.down);
  const leans = (h: Habit) => Math.abs(lean(h)) >= CLEAR;
  const sounding = [...known].filter(([, h]) => h.notes > 0);
  // A number with stems now up, now down does not stand for the same line throughout.
  if (of === 2 && sounding.some(([, h]) => h.up > 0 && h.down > 0 && !leans(h))) return lineOf;
  if (sounding.length === of) {
    const stemsTell = of === 2 && lean(sounding[0]![1]) !== lean(sounding[1]![1]);
    sounding.sort(([, a], [, b]) => (stemsTell ? lean(b) - lean(a) : b.sum / b.notes - a.sum / a.notes));
    for (const [i, [voice]] of sounding.entries()) lineOf.set(voice, i);
  } else if (of === 2) {
    for (const [voice, habit] of sounding) if (leans(habit)) lineOf.set(voice, lean(habit) > 0 ? 0 : 1);
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

/** All the stems of a lane, where they go one way. */
export function stemsOf(lane: Lane): 'up' | 'down' | undefined {
  const up = lane.notes.some((note) => note.stem === 'up');
  const down = lane.notes.some((note) => note.stem === 'down');
  return up === down ? undefined : up ? 'up' : 'down';
}

/** The middle of all notes, in semitones above C0; 0 where there are none. */
export function heightOf(notes: readonly SourceNote[]): number {
  const pitched = notes.flatMap((note) => (note.pitch ? [semitone(note.pitch)] : []));
  return pitched.length === 0 ? 0 : pitched.reduce((sum, n) => sum + n, 0) / pitched.length;
}
