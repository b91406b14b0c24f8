/** Which line of the file is soprano, which alto, tenor and bass. */
import { printPitch, semitone } from '../score/pitch.ts';
import { type ReaderRemark, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { capital, lineName, listed } from './describe.ts';
import { asideRemarks, doubles, mayStandAside, tenorRemarks } from './left-out-staves.ts';
import type { Line, Staff } from './lines.ts';
import { readName } from './names.ts';
import { notFourParts } from './not-four-parts.ts';
import { quoted, Refusal } from './refusal.ts';
import type { SourcePart, SourceScore } from './source.ts';

/** A person's choice: the id of the line that each voice sings. Voices left out are not written yet. */
export type VoiceAssignment = Readonly<Partial<Record<VoiceName, string>>>;

/** A line of notes found in the file. */
export interface FoundLine {
  /** Names this line in a {@link VoiceAssignment}. */
  readonly id: string;
  /** The part as the file names it; may be empty. */
  readonly part: string;
  /** Staff of the part, from 1 at the top. */
  readonly staff: number;
  /** Line of the staff, from 1 at the top. */
  readonly voice: number;
  /** In words: `Soprano`, `Choir, lower staff, upper voice`. */
  readonly name: string;
  readonly notes: number;
  /** Scientific pitch names; absent where the line has no notes. */
  readonly lowest?: string;
  readonly highest?: string;
  /** The voice it was given to; absent where it was set aside. */
  readonly given?: VoiceName;
}

export interface Assignment {
  readonly lines: readonly FoundLine[];
  /** The file did not say which voice is which, so that a person should look. */
  readonly guessed: boolean;
  /** How the voices were found, in a sentence. */
  readonly how: string;
  /** How the file sets them out, so that it can be handed back likewise. */
  readonly layout: 'four staves' | 'closed score';
}

export interface Assigned {
  readonly lines: Readonly<Partial<Record<VoiceName, Line>>>;
  readonly assignment: Assignment;
  readonly remarks: readonly ReaderRemark[];
}

interface Choice {
  readonly lines: Partial<Record<VoiceName, Line>>;
  readonly guessed: boolean;
  readonly how: string;
}

/** @throws {Refusal} where the file holds no four voices, saying what it does hold. */
export function assignVoices(
  source: SourceScore,
  staves: readonly Staff[],
  wished: VoiceAssignment | undefined,
): Assigned {
  if (staves.every((staff) => staff.most === 0)) refuse(source, staves);
  const choice =
    wished !== undefined
      ? asWished(staves, wished)
      : (byName(source, staves) ?? byPlace(source, staves) ?? refuse(source, staves));
  const chosen = new Map(Object.entries(choice.lines).map(([voice, line]) => [line.id, voice as VoiceName]));
  const lines = staves
    .flatMap((staff) => staff.lines)
    .map((line) => found(source, line, chosen.get(line.id)));
  return {
    lines: choice.lines,
    assignment: { lines, guessed: choice.guessed, how: choice.how, layout: layoutOf(choice) },
    remarks: [
      ...(choice.guessed ? [{ message: choice.how }] : []),
      ...asideRemarks(source, staves, chosen),
      ...tenorRemarks(source, choice.lines),
    ],
  };
}

function layoutOf({ lines }: Choice): Assignment['layout'] {
  const all = Object.values(lines);
  const staves = new Set(all.map((line) => `${line.part}.${line.staff}`));
  return staves.size < all.length || staves.size === 2 ? 'closed score' : 'four staves';
}

function refuse(source: SourceScore, staves: readonly Staff[]): never {
  throw new Refusal(notFourParts(source, staves));
}

function asWished(staves: readonly Staff[], wished: VoiceAssignment): Choice {
  const all = staves.flatMap((staff) => staff.lines);
  const lines: Partial<Record<VoiceName, Line>> = {};
  for (const voice of VOICES) {
    const id = wished[voice];
    if (id === undefined) continue;
    const line = all.find((one) => one.id === id);
    if (line === undefined) {
      throw new Refusal(
        `The ${VOICE_WORDS[voice]} was to be read from line ${quoted(id)}, which this file does not have; it has ${all.map((one) => one.id).join(', ')}.`,
      );
    }
    if (Object.values(lines).includes(line)) {
      throw new Refusal(
        `The line ${quoted(id)} was chosen for two voices; choose another for the ${VOICE_WORDS[voice]}.`,
      );
    }
    lines[voice] = line;
  }
  if (Object.keys(lines).length === 0)
    throw new Refusal('No voice was chosen; choose a line for at least one.');
  return { lines, guessed: false, how: 'The voices were chosen by hand.' };
}

/** The voices that the part's name gives to the lines of a staff, from the top. */
function namedLines(part: SourcePart, staff: Staff): { voice: VoiceName; line: Line }[] {
  if (part.staves !== 1 || staff.kind !== 'notes') return [];
  const { voices } = readName(part.name);
  if (voices.length === staff.lines.length)
    return staff.lines.map((line, i) => ({ voice: voices[i]!, line }));
  const begun = begunLines(staff);
  if (voices.length === begun.length) return begun.map((line, i) => ({ voice: voices[i]!, line }));
  // A staff for two voices of which only the outer one has been begun.
  if (voices.length !== 2 || begun.length !== 1) return [];
  return [{ voice: voices.includes('B') ? 'B' : voices[0]!, line: begun[0]! }];
}

function byName(source: SourceScore, staves: readonly Staff[]): Choice | undefined {
  const named = staves.flatMap((staff) => namedLines(source.parts[staff.part]!, staff));
  const lines: Partial<Record<VoiceName, Line>> = {};
  for (const voice of VOICES) {
    const all = named.filter((one) => one.voice === voice);
    // "Soprano" before "Given melody" and "Alto" before "Alto trombone", which may play what it likes.
    const exact = all.filter((one) => readName(source.parts[one.line.part]!.name).exact);
    const claims = exact.length > 0 ? exact : all;
    const [first] = claims;
    if (first === undefined) continue;
    // A part may stand there twice; two different sopranos are five voices.
    if (claims.some((claim) => claim !== first && !doubles(claim.line, [first.line]))) refuse(source, staves);
    lines[voice] = first.line;
  }
  const taken = Object.values(lines);
  const missing = VOICES.filter((voice) => lines[voice] === undefined);
  if (missing.length === 0) return { lines, guessed: false, how: 'The parts are named after the voices.' };
  const left = staves.filter(
    (staff) => !taken.some((line) => line.part === staff.part) && !mayStandAside(source, staff, taken),
  );
  if (taken.length === 0) return undefined;
  const open = left.flatMap((staff) => staff.lines);
  if (open.length === missing.length && taken.length >= 2) {
    for (const [i, voice] of missing.entries()) lines[voice] = open[i]!;
    return {
      lines,
      guessed: true,
      how: `Some parts are not named after a voice; ${listed(missing.map((voice, i) => `${lineName(source, open[i]!)} was taken as the ${VOICE_WORDS[voice]}`))}.`,
    };
  }
  if (open.length > 0 || taken.length < 2) return undefined;
  return {
    lines,
    guessed: true,
    how: `The file has no part for the ${listed(missing.map((voice) => VOICE_WORDS[voice]))}; what is missing was taken as not written yet.`,
  };
}

/** With more staves than this that have notes and no voices' names, a score is for an orchestra. */
const MOST_STAVES = 10;

/** Without names: four staves with a line each, or two with two, in the order of the score or by their height. */
function byPlace(source: SourceScore, staves: readonly Staff[]): Choice | undefined {
  const pitched = staves.filter((staff) => staff.kind === 'notes');
  const begun = pitched.filter((staff) => staff.most > 0).length;
  const usable = pitched.length < 2 || begun > MOST_STAVES ? [] : pitched;
  for (const { group, lines } of groupsOf(usable)) {
    const rest = staves.filter((staff) => !group.includes(staff));
    if (rest.every((staff) => mayStandAside(source, staff, lines))) return inOrder(source, group, lines);
  }
  return usable.length === 2 ? outerVoices(source, usable) : undefined;
}

/** Neighbouring staves that may be the four voices: four of them first, then three or two. */
function* groupsOf(staves: readonly Staff[]): Generator<{ group: readonly Staff[]; lines: Line[] }> {
  for (const size of [4, 3, 2]) {
    for (let from = 0; from + size <= staves.length; from++) {
      const group = staves.slice(from, from + size);
      const crowded = group.some(
        (staff) => staff.lines.length > 2 || staff.setAside.length > allowedAside(staff),
      );
      if (crowded || group.every((staff) => staff.most === 0)) continue;
      for (const lines of [group.flatMap(begunLines), group.flatMap((staff) => staff.lines)]) {
        if (lines.length === 4) yield { group, lines };
      }
    }
  }
}

/** The lines of a staff that have notes; a second voice that only rests may be a slip of the pen. */
function begunLines(staff: Staff): readonly Line[] {
  const begun = staff.lines.filter((line) => line.notes > 0);
  return begun.length > 0 ? begun : staff.lines.slice(0, 1);
}

function allowedAside(staff: Staff): number {
  return staff.lines.reduce((sum, line) => sum + line.notes, 0) / 20;
}

/** Lines higher than the one above by more semitones than this are out of order. */
const OUT_OF_ORDER = 3;
/** Fewer notes than this tell nothing about a line's height. */
const ENOUGH_NOTES = 4;

function inOrder(source: SourceScore, group: readonly Staff[], lines: Line[]): Choice {
  const telling = lines.filter((line) => line.notes >= ENOUGH_NOTES);
  const jumbled =
    !source.explicitSilence &&
    telling.some((line, i) =>
      telling.slice(i + 1).some((lower) => lower.height - line.height > OUT_OF_ORDER),
    );
  if (jumbled) lines = byHeight(lines, telling);
  const chosen = Object.fromEntries(VOICES.map((voice, i) => [voice, lines[i]!])) as Record<VoiceName, Line>;
  const told = listed(VOICES.map((voice) => `${VOICE_WORDS[voice]} from ${lineName(source, chosen[voice])}`));
  if (jumbled) {
    return {
      lines: chosen,
      guessed: true,
      how: `The parts are not named after the voices, so they were told apart by height: ${told}.`,
    };
  }
  const split = group.filter((staff) => staff.guessed);
  if (split.length > 0) {
    const shared = split.reduce((sum, staff) => sum + staff.shared, 0);
    return {
      lines: chosen,
      guessed: true,
      how: `Two voices stand on one staff as chords; they were told apart by their stems, then by height: ${told}.${shared > 0 ? ' A single note there was taken as sung by both.' : ''}`,
    };
  }
  if (group.length === 2)
    return { lines: chosen, guessed: false, how: 'Each of two staves holds two voices.' };
  return {
    lines: chosen,
    guessed: true,
    how: `The parts are not named after the voices; they were taken from the top: ${told}.`,
  };
}

/** Bottom to top if that is how all lines stand; else those that have notes change places among themselves. */
function byHeight(lines: readonly Line[], telling: readonly Line[]): Line[] {
  if (telling.every((line, i) => i === 0 || line.height > telling[i - 1]!.height))
    return [...lines].reverse();
  const sorted = [...telling].sort((a, b) => b.height - a.height);
  return lines.map((line) => (telling.includes(line) ? sorted.shift()! : line));
}

/** An exercise on two staves of which not all four voices are begun: melody and bass, or three of the four. */
function outerVoices(source: SourceScore, staves: readonly Staff[]): Choice | undefined {
  const [upper, lower] = staves.map(begunLines) as [readonly Line[], readonly Line[]];
  if (upper.length > 2 || lower.length > 2 || upper[0]!.notes === 0) return undefined;
  if (staves.some((staff) => staff.setAside.length > allowedAside(staff))) return undefined;
  // Hands in two keys are no exercise; two parts of different keys are none either.
  const keys = staves.map((staff) => firstKey(source, staff));
  if (keys[0] !== undefined && keys[1] !== undefined && keys[0] !== keys[1]) return undefined;
  const soprano = upper[0]!;
  const bass = lower.at(-1)!;
  // Singers' ranges with room to spare: a keyboard piece of two single lines soon leaves them.
  if (!within(soprano, 47, 70) || (bass.notes > 0 && !within(bass, 24, 53))) return undefined;
  const lines: Partial<Record<VoiceName, Line>> = { S: soprano };
  if (upper.length === 2) lines.A = upper[1]!;
  if (lower.length === 2) lines.T = lower[0]!;
  lines.B = bass;
  const read = VOICES.filter((voice) => (lines[voice]?.notes ?? 0) > 0);
  const count = read.length === 1 ? 'one line' : read.length === 2 ? 'two lines' : 'three lines';
  return {
    lines,
    guessed: true,
    how: `The file has ${count} of notes on two staves, read as ${listed(read.map((voice) => `${VOICE_WORDS[voice]} (${lineName(source, lines[voice]!)})`))}. What is missing was taken as not written yet.`,
  };
}

function firstKey(source: SourceScore, staff: Staff): number | undefined {
  const keys = source.parts[staff.part]!.bars[0]?.keys ?? [];
  return keys.find((one) => one.staff === 0 || one.staff === staff.staff)?.key.fifths;
}

function within(line: Line, least: number, most: number): boolean {
  if (line.lowest === undefined || line.highest === undefined) return false;
  return semitone(line.lowest) >= least && semitone(line.highest) <= most;
}

function found(source: SourceScore, line: Line, given: VoiceName | undefined): FoundLine {
  return {
    id: line.id,
    part: source.parts[line.part]!.name,
    staff: line.staff,
    voice: line.position,
    name: capital(lineName(source, line).replace(/^the part "(.*?)"/, '$1')),
    notes: line.notes,
    ...(line.lowest && line.highest
      ? { lowest: printPitch(line.lowest), highest: printPitch(line.highest) }
      : {}),
    ...(given === undefined ? {} : { given }),
  };
}
