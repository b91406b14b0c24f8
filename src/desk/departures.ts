/** How one voice of one bar differs from what the brief gives there, note by note. */

import { capitalised } from '../english/words.ts';
import { withSigns } from '../report/sentences.ts';
import { beats } from '../rules/wording.ts';
import { printPitch } from '../score/pitch.ts';
import { placeIn, printBar, printBeat, printPlace } from '../score/place.ts';
import { type Bar, VOICE_WORDS, type VoiceName } from '../score/score.ts';
import { crotchets } from '../score/time.ts';
import { type BarNote, type NotedBar, type PitchCode, semitonesOf, transposed } from './bar-notes.ts';

export type DepartureKind =
  | 'changed pitch'
  /** It sounds the same but is spelt otherwise: Gb4 for F#4. */
  | 'changed spelling'
  | 'changed rhythm'
  | 'missing note'
  | 'added note'
  /** The given voice has nothing in this bar yet. */
  | 'not written'
  | 'missing bar'
  | 'added bar';

export interface Departure {
  readonly kind: DepartureKind;
  /** Absent for whole bars. */
  readonly voice?: VoiceName;
  /** Printed number of the script's bar, or of the brief's where the script has none. */
  readonly bar: string;
  /** Where it is to be seen in the script, crotchets from its start; absent for a missing bar. */
  readonly at?: number;
  readonly message: string;
}

/** A bar with its notes. */
export interface BarWithNotes {
  readonly bar: Bar;
  readonly noted: NotedBar;
}

/** The departures in one voice of two bars that answer to each other. `by` is how far the script is transposed. */
export function voiceDepartures(
  asked: BarWithNotes,
  script: BarWithNotes,
  voice: VoiceName,
  by: PitchCode,
): Departure[] {
  const wanted = asked.noted.notes[voice];
  const written = script.noted.notes[voice];
  if (wanted.length === 0) return [];
  const { bar } = script;
  const name = VOICE_WORDS[voice];
  if (written.length === 0 && script.noted.unwritten[voice] > 0)
    return [
      {
        kind: 'not written',
        voice,
        bar: bar.number,
        at: crotchets(bar.at),
        message: `${capitalised(printBar(bar.number))}: the given ${name} is not written here yet.`,
      },
    ];
  // Where the brief leaves a part of the bar open, what the script writes there is its own.
  const open = asked.noted.unwritten[voice] > 0;
  const sides = { asked: asked.bar, bar, voice, by };
  return matched(wanted, written, by).flatMap(([want, note]): Departure[] => {
    if (note !== undefined && want !== undefined) return changes(sides, want, note);
    if (want !== undefined) return [missingNote(sides, want)];
    if (note === undefined || (open && !wanted.some((other) => overlap(other, note)))) return [];
    const message = `${withSigns(printPitch(note.pitch))} in the ${name} is not in the brief.`;
    return [told(sides, 'added note', note, message)];
  });
}

/** The brief's bar and the script's, the voice, and how far the script is transposed. */
interface Sides {
  readonly asked: Bar;
  readonly bar: Bar;
  readonly voice: VoiceName;
  readonly by: PitchCode;
}

function told({ bar, voice }: Sides, kind: DepartureKind, note: BarNote, message: string): Departure {
  const at = note.onset - bar.offset + bar.at;
  return {
    kind,
    voice,
    bar: bar.number,
    at: crotchets(Math.min(Math.max(at, bar.at), bar.at + bar.duration - 1)),
    message: `${capitalised(printPlace(placeIn(bar, at)))}: ${message}`,
  };
}

function missingNote(sides: Sides, want: BarNote): Departure {
  const pitch = withSigns(printPitch(transposed(want.pitch, sides.by)));
  return told(sides, 'missing note', want, `${pitch} of the given ${VOICE_WORDS[sides.voice]} is missing.`);
}

/** How a note differs from the one it answers to. */
function changes(sides: Sides, want: BarNote, note: BarNote): Departure[] {
  const { asked, bar, voice, by } = sides;
  const name = VOICE_WORDS[voice];
  const here = withSigns(printPitch(note.pitch));
  const found: Departure[] = [];
  if (note.code - by !== want.code) {
    const pitch = withSigns(printPitch(transposed(want.pitch, by)));
    const respelt = semitonesOf(note.code - by) === semitonesOf(want.code);
    found.push(
      respelt
        ? told(
            sides,
            'changed spelling',
            note,
            `the ${name} is spelt ${here}; the brief has ${pitch}, which sounds the same.`,
          )
        : told(sides, 'changed pitch', note, `the ${name} has ${here}; the brief has ${pitch}.`),
    );
  }
  const rhythm = rhythmMessage(want, note, asked, bar, `${here} in the ${name}`);
  if (rhythm !== undefined) found.push(told(sides, 'changed rhythm', note, rhythm));
  return found;
}

function rhythmMessage(
  want: BarNote,
  note: BarNote,
  askedBar: Bar,
  bar: Bar,
  name: string,
): string | undefined {
  if (want.onset !== note.onset) {
    const place = placeIn(askedBar, want.onset - askedBar.offset + askedBar.at);
    return `${name} begins here; in the brief it begins at beat ${printBeat(place)}.`;
  }
  if (want.duration !== note.duration)
    return `${name} lasts ${beats(note.duration, bar.metre)}; in the brief ${beats(want.duration, askedBar.metre)}.`;
  if (want.held === note.held) return undefined;
  return want.held
    ? `${name} is struck again; in the brief it is held over the barline.`
    : `${name} is held over the barline; in the brief it is struck again.`;
}

function overlap(a: BarNote, b: BarNote): boolean {
  return a.onset < b.onset + b.duration && b.onset < a.onset + a.duration;
}

/**
 * Which note answers to which: least edit distance. A note that differs in pitch, spelling or length is the same note
 * changed if it begins at the same place or has kept its pitch; else one is missing and one added.
 */
function matched(
  wanted: readonly BarNote[],
  written: readonly BarNote[],
  by: PitchCode,
): [BarNote | undefined, BarNote | undefined][] {
  const width = written.length + 1;
  const costs = new Array<number>((wanted.length + 1) * width).fill(0);
  const change = (i: number, j: number): number => {
    const [want, note] = [wanted[i]!, written[j]!];
    const pitch = want.code === note.code - by ? 0 : 1;
    const onset = want.onset === note.onset ? 0 : 1;
    const rhythm = onset || want.duration !== note.duration ? 0.9 : want.held === note.held ? 0 : 0.4;
    return pitch && onset
      ? Number.POSITIVE_INFINITY
      : pitch + rhythm * (onset && !overlap(want, note) ? 1.5 : 1);
  };
  for (let i = wanted.length; i >= 0; i--) {
    for (let j = written.length; j >= 0; j--) {
      if (i === wanted.length || j === written.length) {
        costs[i * width + j] = wanted.length - i + written.length - j;
        continue;
      }
      costs[i * width + j] = Math.min(
        costs[(i + 1) * width + j + 1]! + change(i, j),
        costs[(i + 1) * width + j]! + 1,
        costs[i * width + j + 1]! + 1,
      );
    }
  }
  const pairs: [BarNote | undefined, BarNote | undefined][] = [];
  let i = 0;
  let j = 0;
  while (i < wanted.length || j < written.length) {
    const here = costs[i * width + j]!;
    const both = i < wanted.length && j < written.length;
    if (both && here === costs[(i + 1) * width + j + 1]! + change(i, j))
      pairs.push([wanted[i++], written[j++]]);
    else if (i < wanted.length && here === costs[(i + 1) * width + j]! + 1)
      pairs.push([wanted[i++], undefined]);
    else pairs.push([undefined, written[j++]]);
  }
  return pairs;
}
