/** Which line of the file is soprano, which alto, tenor and bass. */
import { capitalised, listed } from '../english/words.ts';
import { printPitch, semitone } from '../score/pitch.ts';
import { type ReaderRemark, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { lineName } from './describe.ts';
import { type FoundLine, VoicesUntold } from './found-line.ts';
import { asideRemarks, doubles, mayStandAside, tenorRemarks } from './left-out-staves.ts';
import { type Line, type Staff, stavesOf } from './lines.ts';
import { readName } from './names.ts';
import { notFourParts as wordsForNotFourParts } from './not-four-parts.ts';
import { quoted } from './quoted.ts';
import type { SourcePart, SourceScore } from './source.ts';

/** A person's choice: the id of the line that each voice sings. Voices left out are not written yet. */
export type VoiceAssignment = Readonly<Partial<Record<VoiceName, string>>>;

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

/** @throws {Refused} where the file holds no four voices, saying what it does hold. */
export function assignVoices(source: SourceScore, wished: VoiceAssignment | undefined): Assigned {
  const staves = stavesOf(source);
  if (staves.every((staff) => staff.most === 0)) throw notFourParts(source, staves);
  const told = toldFrom(source, staves);
  // A person chooses among the lines that were shown: those by which the voices were told, if they were.
  if (wished !== undefined) {
    const shown = told?.staves ?? staves;
    return assigned(source, shown, asWished(source, shown, wished));
  }
  if (told === undefined) throw notFourParts(source, staves);
  return assigned(source, told.staves, told.choice);
}

/** The voices as the file tells them, and by which reading of its staves; undefined where it doesn't. */
function toldFrom(
  source: SourceScore,
  staves: readonly Staff[],
): { readonly staves: readonly Staff[]; readonly choice: Choice } | undefined {
  const choice = choose(source, staves);
  if (choice !== undefined) return { staves, choice };
  // A voice that divides here and there is one voice with slips of the pen.
  const sparing = stavesOf(source, { slips: true });
  const second = choose(source, sparing);
  return second === undefined ? undefined : { staves: sparing, choice: second };
}

function choose(source: SourceScore, staves: readonly Staff[]): Choice | undefined {
  return byName(source, staves) ?? byPlace(source, staves);
}

function assigned(source: SourceScore, staves: readonly Staff[], choice: Choice): Assigned {
  const chosen = new Map(Object.entries(choice.lines).map(([voice, line]) => [line.id, voice as VoiceName]));
  const lines = foundLines(source, staves, chosen);
  return {
    lines: choice.lines,
    assignment: { lines, guessed: choice.guessed, how: choice.how, layout: layoutOf(choice) },
    remarks: [
      ...(choice.guessed ? [{ message: choice.how, about: 'voices' as const }] : []),
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

/** All lines of the file, those that sing a voice marked as such. */
function foundLines(
  source: SourceScore,
  staves: readonly Staff[],
  chosen: ReadonlyMap<string, VoiceName> = new Map(),
): FoundLine[] {
  return staves.flatMap((staff) => staff.lines).map((line) => found(source, line, chosen.get(line.id)));
}

function notFourParts(source: SourceScore, staves: readonly Staff[]): VoicesUntold {
  return new VoicesUntold(wordsForNotFourParts(source, staves), foundLines(source, staves));
}

function asWished(source: SourceScore, staves: readonly Staff[], wished: VoiceAssignment): Choice {
  const all = staves.flatMap((staff) => staff.lines);
  const refuse = (message: string) => new VoicesUntold(message, foundLines(source, staves));
  const lines: Partial<Record<VoiceName, Line>> = {};
  for (const voice of VOICES) {
    const id = wished[voice];
    if (id === undefined) continue;
    const line = all.find((one) => one.id === id || one.id === `${id}.1` || one.id === `${id}.1.1`);
    if (line === undefined) {
      throw refuse(
        `The ${VOICE_WORDS[voice]} was to be read from line ${quoted(id)}, which this file does not have; it has ${all.map((one) => one.id).join(', ')}.`,
      );
    }
    if (Object.values(lines).includes(line)) {
      throw refuse(
        `The line ${quoted(id)} was chosen for two voices; choose another for the ${VOICE_WORDS[voice]}.`,
      );
    }
    lines[voice] = line;
  }
  if (Object.keys(lines).length === 0) throw refuse('No voice was chosen; choose a line for at least one.');
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
  const over: { voice: VoiceName; line: Line }[] = [];
  for (const voice of VOICES) {
    const all = named.filter((one) => one.voice === voice);
    // "Soprano" before "Given melody" and "Alto" before "Alto trombone", which may play what it likes.
    const exact = all.filter((one) => readName(source.parts[one.line.part]!.name).exact);
    const claims = exact.length > 0 ? exact : all;
    // Of two basses the lower is the bass, of all others the upper one the voice; a part may also stand there twice.
    const first = voice === 'B' ? claims.at(-1) : claims[0];
    if (first === undefined) continue;
    lines[voice] = first.line;
    over.push(...claims.filter((one) => one !== first && !doubles(one.line, [first.line])));
  }
  const taken = Object.values(lines);
  if (taken.length === 0) return undefined;
  const missing = VOICES.filter((voice) => lines[voice] === undefined);
  if (missing.length > 0) {
    // "Women" over "Men" says less of four single staves than their order does.
    const loose = named.some(({ line }) => readName(source.parts[line.part]!.name).voices.length > line.of);
    const four = loose || over.length > 0 ? fourSingles(source, staves) : undefined;
    return four ?? (over.length > 0 ? undefined : withMissing(source, staves, lines, missing));
  }
  if (over.length === 0) return { lines, guessed: false, how: 'The parts are named after the voices.' };
  return { lines, guessed: true, how: moreThanFour(source, lines, over) };
}

function moreThanFour(
  source: SourceScore,
  lines: Choice['lines'],
  over: readonly { readonly voice: VoiceName; readonly line: Line }[],
): string {
  const told = over.map(
    ({ voice, line }) =>
      `${lineName(source, line)} was left out beside ${lineName(source, lines[voice]!)}, which was taken as the ${VOICE_WORDS[voice]}`,
  );
  return `The file has more than four voices: ${listed(told)}.`;
}

/** Not all four voices are named: a line that lies where a missing voice would is taken for it. */
function withMissing(
  source: SourceScore,
  staves: readonly Staff[],
  named: Choice['lines'],
  missing: readonly VoiceName[],
): Choice | undefined {
  const taken = Object.values(named);
  const left = staves.filter(
    (staff) => !taken.some((line) => line.part === staff.part) && !mayStandAside(source, staff, taken),
  );
  const open = left.flatMap((staff) => staff.lines);
  const fits = open.length === missing.length && missing.every((voice, i) => liesAs(open[i]!, voice));
  if (taken.length >= 2 && fits) {
    const lines = { ...named, ...Object.fromEntries(missing.map((voice, i) => [voice, open[i]!])) };
    const told = missing.map(
      (voice, i) => `${lineName(source, open[i]!)} was taken as the ${VOICE_WORDS[voice]}`,
    );
    return {
      lines,
      guessed: true,
      how: `Some parts are not named after a voice; ${listed(told)}.`,
    };
  }
  const low = missing.length === 1 && missing[0] === 'B' ? onlyBass(staves, taken) : undefined;
  if (low !== undefined) {
    return {
      lines: { ...named, B: low },
      guessed: true,
      how: `No part is named after the bass; ${lineName(source, low)}, the only low one, was taken as the bass.`,
    };
  }
  // What lies nowhere near a voice that is missing is an instrument; of three named voices it takes nothing away.
  const alien = open.every((line) => !missing.some((voice) => liesAs(line, voice)));
  if (taken.length < 2 || (open.length > 0 && (taken.length < 3 || !alien))) return undefined;
  return {
    lines: named,
    guessed: true,
    how: `The file has no part for the ${listed(missing.map((voice) => VOICE_WORDS[voice]))}; what is missing was taken as not written yet.`,
  };
}

/** The one single line below all voices so far, an accompaniment's too. */
function onlyBass(staves: readonly Staff[], taken: readonly Line[]): Line | undefined {
  const low = staves.flatMap(({ kind, lines }) =>
    kind === 'notes' && lines.length === 1 && lines[0]!.notes > 0 ? lines : [],
  );
  const basses = low.filter((line) => !taken.includes(line) && liesAs(line, 'B'));
  return basses.length === 1 ? basses[0] : undefined;
}

/** Between which heights (the middle of its notes, in semitones above C0) a voice lies, with room to spare. */
const HEIGHTS: Readonly<Record<VoiceName, readonly [least: number, most: number]>> = {
  S: [50, 72],
  A: [43, 64],
  T: [34, 60],
  B: [24, 50],
};

function liesAs(line: Line, voice: VoiceName): boolean {
  const [least, most] = HEIGHTS[voice];
  return line.notes === 0 || (line.height >= least && line.height <= most);
}

/** Four staves with a line each are soprano to bass, whatever they are called: women and men, treble and bass. */
function fourSingles(source: SourceScore, staves: readonly Staff[]): Choice | undefined {
  const group = staves.filter(({ kind, most }) => kind === 'notes' && most > 0);
  const lines = group.flatMap(begunLines);
  return group.length === 4 && lines.length === 4 ? inOrder(source, group, lines) : undefined;
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
      const crowded = group.some((staff) => staff.lines.length > 2 || !mayHaveSlips(staff));
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

/** Of a staff's bars that have notes, this share may have one too many here and there. */
const SLIPS = 1 / 4;

function mayHaveSlips({ lines, setAside }: Staff): boolean {
  const bars = lines[0]!.bars.filter((_, index) => lines.some((line) => line.bars[index]!.length > 0));
  return new Set(setAside.map(({ bar }) => bar)).size <= bars.length * SLIPS;
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
  if (!staves.every(mayHaveSlips)) return undefined;
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
    name: capitalised(lineName(source, line).replace(/^the part "(.*?)"/, '$1')),
    notes: line.notes,
    ...(line.lowest && line.highest
      ? { lowest: printPitch(line.lowest), highest: printPitch(line.highest) }
      : {}),
    ...(given === undefined ? {} : { given }),
  };
}
