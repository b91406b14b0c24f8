/**
 * Stacks of invented scripts by candidate number, for the desk's tests, benchmark and demonstration: settings of one
 * invented tune with faults planted in them, in several drafts and formats, some files broken. The same seed gives
 * the same stack.
 *
 *     npx tsx tests/support/planted-stack.ts FOLDER [candidates] [drafts] [seed]
 *
 * writes one to a folder, with the brief beside it.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { pitchCode, transposed } from '../../src/desk/bar-notes.ts';
import { writeMusicXml, writeMxl } from '../../src/musicxml/index.ts';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { buildScore, type DraftBar, type DraftEvent, type DraftVoice } from '../../src/score/build.ts';
import { type Pitch, parsePitch, staffPlace } from '../../src/score/pitch.ts';
import { type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { barLength, CROTCHET } from '../../src/score/time.ts';
import { type Chance, chance } from './chance.ts';
import { type Column, inventedSetting, type TuneNote } from './invented-harmony.ts';
import { choosePlants, type Plant, type Planted, plant } from './plant.ts';

export interface PlantedFile {
  /** `4012-draft1.mxl`; some carry the candidate's number in their title only. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly candidate: string;
  readonly draft: number;
  readonly format: 'text' | 'musicxml' | 'mxl';
  /** What was planted, and in which printed bar. Empty for a broken file. */
  readonly faults: readonly { readonly kind: Plant; readonly bar: string }[];
  /** Why the file can't be read, where it can't. */
  readonly broken?: string;
  /** Something unusual about it that the desk should notice or survive. */
  readonly trait?: Trait;
}

export type Trait =
  | 'transposed'
  | 'unfinished'
  | 'bar put in'
  | 'number in the title'
  | 'name full of markup'
  | 'copy';

export interface StackOptions {
  /** How many candidates. */
  readonly candidates: number;
  readonly seed?: number;
  /** Drafts of each candidate; 1 unless said otherwise. */
  readonly drafts?: number;
  /** Broken files among them, about one in fifteen. Yes unless said otherwise. */
  readonly broken?: boolean;
}

/** The tune that the class was set; ours. */
const TUNE_TEXT = `title: Orchard lane
key: G major
metre: 4/4
tempo: 76

S: G4 G4 A4 B4 | C5 B4 A4*2! | B4 C5 D5 B4 | A4 A4 G4*2! |
S: B4 B4 C5 D5 | D5 C5 B4*2! | C5 B4 A4 G4 | A4 F#4 G4*2! |
`;

/** The brief as the teacher's file has it. */
export const BRIEF_TEXT = TUNE_TEXT.replace(
  'key: G major',
  'task: add alto, tenor and bass in the style of a chorale\nprofile: chorale\nkey: G major',
);

const TONIC = { step: 'G', alteration: 0 } as const;
const TUNE: readonly TuneNote[] = readNotation(TUNE_TEXT).score.voices.S.flatMap((event) =>
  event.kind === 'note'
    ? [{ pitch: event.pitch, beats: event.duration / CROTCHET, ...(event.fermata ? { fermata: true } : {}) }]
    : [],
);

/** Which candidates are unusual: every fifteenth from these on. */
const EVERY = 15;
const TRAITS: Readonly<Record<number, Trait>> = {
  2: 'name full of markup',
  4: 'transposed',
  7: 'copy',
  9: 'bar put in',
  11: 'unfinished',
  13: 'number in the title',
};
/** A copy is of the candidate so many before. */
const COPIED_FROM = 4;
const BROKEN_AT = 5;

/** The whole stack at once. */
export function plantedStack(options: StackOptions): PlantedFile[] {
  return [...plantedFiles(options)];
}

/** The stack file by file, so that ten thousand need no memory. Drafts of one candidate follow one another. */
export function* plantedFiles({
  candidates,
  seed = 1,
  drafts = 1,
  broken = true,
}: StackOptions): Generator<PlantedFile> {
  for (let i = 0; i < candidates; i++) {
    const candidate = candidateNumber(i, candidates);
    const trait = TRAITS[i % EVERY];
    for (let draft = 1; draft <= drafts; draft++) {
      if (broken && draft === drafts && i % EVERY === BROKEN_AT) yield brokenFile(i, candidate, draft);
      else yield script(i, candidate, draft, drafts, seed, trait);
    }
  }
}

/** Pairs of candidates of whom the second copied from the first. */
export function copies(candidates: number): [string, string][] {
  return Array.from({ length: candidates }, (_, i) => i)
    .filter((i) => TRAITS[i % EVERY] === 'copy')
    .map((i) => [candidateNumber(i - COPIED_FROM, candidates), candidateNumber(i, candidates)]);
}

/** Four digits, in no telling order; five where four do not suffice. */
function candidateNumber(index: number, candidates: number): string {
  const span = candidates > 9_000 ? 90_000 : 9_000;
  return String(span / 9 + ((index * 7_919 + 3_012) % span));
}

function script(
  i: number,
  candidate: string,
  draft: number,
  drafts: number,
  seed: number,
  trait: Trait | undefined,
): PlantedFile {
  const random = chance(seed * 1_000_003 + i);
  const columns = settingOf(i, seed, trait);
  const all = choosePlants(columns, 1 + Math.floor(random() * 5), TONIC, random);
  // From draft to draft about half of the faults are mended; a new one may slip in.
  const left = Math.max(1, Math.ceil(all.length / 2 ** (draft - 1)));
  const faults = [
    ...all.slice(0, left),
    ...(draft > 1 ? choosePlants(columns, random() < 0.5 ? 1 : 0, TONIC, random) : []),
  ];
  const made: Planted[] = [];
  let written: Column[] = columns;
  for (const fault of faults) {
    if (made.some((other) => Math.abs(other.at - fault.at) < 3)) continue;
    const changed = plant(written, fault, TONIC);
    if (changed === undefined) continue;
    written = changed;
    made.push(fault);
  }
  const put = trait === 'bar put in' && draft === drafts ? 4 : undefined;
  // A copy has the other's passing notes too.
  const hand = chance(seed + 31 * (trait === 'copy' ? i - COPIED_FROM : i));
  const score = scoreOf(written, titleOf(trait, candidate), hand, {
    passing: 0.1 + 0.4 * hand(),
    ...(put === undefined ? {} : { repeatBar: put }),
    ...(trait === 'transposed' ? { by: pitchCode(pitch('A4')) - pitchCode(pitch('G4')) } : {}),
    ...(trait === 'unfinished' ? { writtenBars: draft === drafts ? 6 : 4 } : {}),
  });
  const format = (['text', 'musicxml', 'mxl'] as const)[(i + draft) % 3]!;
  return {
    name: `${nameOf(i, trait, candidate, draft)}.${{ text: 'txt', musicxml: 'musicxml', mxl: 'mxl' }[format]}`,
    bytes: bytesOf(score, format),
    candidate,
    draft,
    format,
    faults: made.map(({ kind, at }) => ({
      kind,
      bar: String(barOf(at) + (put !== undefined && barOf(at) > put ? 1 : 0)),
    })),
    ...(trait === undefined ? {} : { trait }),
  };
}

/** Each candidate's own setting; a copy has another's, with one phrase of its own. */
function settingOf(i: number, seed: number, trait: Trait | undefined): Column[] {
  const own = inventedSetting(TUNE, TONIC, chance(seed * 7_907 + i));
  if (trait !== 'copy') return own;
  const other = inventedSetting(TUNE, TONIC, chance(seed * 7_907 + i - COPIED_FROM));
  const phraseEnd = TUNE.findIndex(({ fermata }) => fermata);
  return other.map((column, k) => (k <= phraseEnd ? own[k]! : column));
}

function titleOf(trait: Trait | undefined, candidate: string): string {
  if (trait === 'number in the title') return `Orchard lane, candidate ${candidate}`;
  return trait === 'name full of markup'
    ? '=HYPERLINK("x") <img src=x onerror=alert(1)> & co'
    : 'Orchard lane';
}

function nameOf(i: number, trait: Trait | undefined, candidate: string, draft: number): string {
  if (trait === 'number in the title')
    return `my chorale${' final'.repeat(Math.floor(i / EVERY) + 1)}, draft ${draft}`;
  if (trait === 'name full of markup') return `=<b onclick=alert(1)>${candidate} draft${draft} '&amp;`;
  return i % 3 === 0 ? `${candidate}_d${draft}` : `${candidate}-draft${draft}`;
}

function brokenFile(i: number, candidate: string, draft: number): PlantedFile {
  const kinds = [
    { broken: 'empty', ending: 'txt', bytes: new Uint8Array() },
    {
      broken: 'cut off',
      ending: 'musicxml',
      bytes: utf8(writeMusicXml(readNotation(TUNE_TEXT).score).slice(0, 900)),
    },
    { broken: 'not music', ending: 'txt', bytes: utf8('Dear teacher, sorry, this is my history essay.\n') },
    { broken: 'not a zip', ending: 'mxl', bytes: Uint8Array.from([0x50, 0x4b, 3, 4, 9, 9, 9, 9]) },
    {
      broken: 'a wrong note name',
      ending: 'txt',
      bytes: utf8(TUNE_TEXT.replace('S: G4 G4', 'S: G4 H4')),
    },
  ] as const;
  const kind = kinds[Math.floor(i / EVERY) % kinds.length]!;
  return {
    name: `${candidate}-draft${draft}.${kind.ending}`,
    bytes: kind.bytes,
    candidate,
    draft,
    format: kind.ending === 'txt' ? 'text' : kind.ending,
    faults: [],
    broken: kind.broken,
  };
}

function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

function bytesOf(score: Score, format: PlantedFile['format']): Uint8Array {
  if (format === 'mxl') return writeMxl(score);
  return utf8(format === 'text' ? printNotation(score) : writeMusicXml(score));
}

function pitch(name: string): Pitch {
  return parsePitch(name)!;
}

/** The bar, from 1, in which a note of the tune stands. */
function barOf(index: number): number {
  const beats = TUNE.slice(0, index).reduce((sum, note) => sum + note.beats, 0);
  return Math.floor(beats / 4) + 1;
}

interface Making {
  /** How readily a passing note is put in where a voice moves by a third, 0 to 1. */
  readonly passing: number;
  /** Print this bar, from 1, twice. */
  readonly repeatBar?: number;
  readonly by?: number;
  /** Alto and tenor go only so far. */
  readonly writtenBars?: number;
}

function scoreOf(columns: readonly Column[], title: string, random: Chance, making: Making): Score {
  const metre = { beats: 4, unit: 4 };
  const key =
    making.by === undefined ? { fifths: 1, mode: 'major' as const } : { fifths: 3, mode: 'major' as const };
  const bars: Record<VoiceName, DraftEvent[]>[] = [];
  let held = 0;
  const passed = passingNotes(columns, random, making.passing);
  for (const [i, column] of columns.entries()) {
    if (held % barLength(metre) === 0) bars.push({ S: [], A: [], T: [], B: [] });
    const duration = column.beats * CROTCHET;
    for (const voice of VOICES) {
      const own = pitchIn(column, voice);
      const between = passed.get(`${voice} ${i}`);
      const fermata = column.fermata && (voice === 'S' || voice === 'B') ? { fermata: true } : {};
      bars.at(-1)![voice].push(
        ...(between === undefined
          ? [{ kind: 'note' as const, duration, pitch: moved(own, making), ...fermata }]
          : [own, between].map((p) => ({
              kind: 'note' as const,
              duration: duration / 2,
              pitch: moved(p, making),
            }))),
      );
    }
    held += duration;
  }
  const order = bars.map((_, i) => i);
  if (making.repeatBar !== undefined) order.splice(making.repeatBar, 0, making.repeatBar - 1);
  return buildScore({
    title,
    tempo: 76,
    bars: order.map((i): DraftBar => {
      const voices: Partial<Record<VoiceName, DraftVoice>> = {};
      for (const voice of VOICES)
        if (making.writtenBars === undefined || i < making.writtenBars || voice === 'S' || voice === 'B')
          voices[voice] = { events: bars[i]![voice], closed: true };
      return { metre, key, voices };
    }),
  });
}

function moved(p: Pitch, { by }: Making): Pitch {
  return by === undefined ? p : transposed(p, by);
}

function pitchIn(column: Column, voice: VoiceName): Pitch {
  return voice === 'S' ? column.pitch : column.lower[{ A: 0, T: 1, B: 2 }[voice]]!;
}

/** Where a lower voice moves by a third within a phrase, the note between, by voice and column; one voice at a time. */
function passingNotes(columns: readonly Column[], random: Chance, readily: number): Map<string, Pitch> {
  const scale = ['G', 'A', 'B', 'C', 'D', 'E', 'F#'];
  const found = new Map<string, Pitch>();
  for (const [i, column] of columns.entries()) {
    const next = columns[i + 1];
    if (next === undefined || column.fermata || column.beats !== 1) continue;
    for (const voice of ['B', 'T', 'A'] as const) {
      const [from, to] = [pitchIn(column, voice), pitchIn(next, voice)];
      const places = staffPlace(to) - staffPlace(from);
      if (Math.abs(places) !== 2 || random() > readily) continue;
      const between = transposed(from, Math.sign(places) * 256);
      const name = scale.find((n) => n.startsWith(between.step))!;
      found.set(`${voice} ${i}`, pitch(`${name}${between.octave}`));
      break;
    }
  }
  return found;
}

/** Writes a stack to a folder, with the brief as `brief.txt` above it left to the caller. */
function writeStack(folder: string, options: StackOptions): number {
  mkdirSync(folder, { recursive: true });
  let files = 0;
  for (const file of plantedFiles(options)) {
    // No file system takes a stroke in a name; all else is tried on purpose.
    writeFileSync(join(folder, file.name.replaceAll('/', '-')), file.bytes);
    files++;
  }
  return files;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [folder, candidates = '30', drafts = '1', seed = '1'] = process.argv.slice(2);
  if (folder === undefined) {
    console.error(
      'Say which folder: npx tsx tests/support/planted-stack.ts FOLDER [candidates] [drafts] [seed]',
    );
    process.exit(2);
  }
  const files = writeStack(folder, {
    candidates: Number(candidates),
    drafts: Number(drafts),
    seed: Number(seed),
  });
  writeFileSync(`${folder}.brief.txt`, BRIEF_TEXT);
  console.log(`${files} files in ${folder}, the brief in ${folder}.brief.txt`);
}
