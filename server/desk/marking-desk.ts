/** A desk at work: the file open for writing, the same file open for reports, and the workers that review. */
import { readBrief } from '../../src/brief/brief.ts';
import {
  type ClassPicture,
  EXAMPLE_SCHEME,
  type Intake,
  readCandidatePattern,
  readScheme,
  type SecondMarking,
} from '../../src/desk/index.ts';
import { printVoiceText, readVoiceText } from '../../src/musicxml/index.ts';
import { openScore } from '../../src/open/open.ts';
import { DEFAULT_PROFILE, profileNamed } from '../../src/profiles/list.ts';
import type { Profile } from '../../src/profiles/profile.ts';
import { allRefused, problemsIn, type Refusal, refusalOf } from '../../src/refusal/refusal.ts';
import { backUp, backUpDaily } from './backup.ts';
import type { Database } from './database.ts';
import { intakeOf, settleIdentities } from './identifying.ts';
import { type Incoming, type Taken, takeAll, takeIn } from './intake.ts';
import { likenessKept } from './likeness-kept.ts';
import type { LikenessReport } from './likeness-report.ts';
import { openForReading, openForWriting } from './open.ts';
import { type PoolOptions, type ReviewPool, reviewPool } from './pool.ts';
import type { Stack, StackSettings } from './records.ts';
import { everything, markBook } from './reports.ts';
import { type Reviewing, reviewingAgain } from './reviewing-again.ts';
import { Desk } from './store.ts';
import { classPictureOf } from './tallies.ts';

/** The settings of a stack as a person gives them: files' texts, not yet looked at. */
export interface RawSettings {
  readonly name: string;
  readonly profile?: Profile;
  readonly brief?: string;
  readonly scheme?: string;
  readonly pattern?: string;
  readonly reference?: string;
  /** Empty where one person marks alone. */
  readonly second?: SecondMarking | '';
  /** Which lines of its files sing which voices: `S=1,A=2,T=3,B=4`. */
  readonly voices?: string;
}

export interface MarkingDesk {
  readonly path: string;
  /** For decisions. */
  readonly desk: Desk;
  /** For reports: it can't write. */
  readonly reports: Desk;
  /** They start when they are first asked for. */
  workers(): ReviewPool;
  takeIn(stack: Stack, incoming: Incoming): Promise<Taken>;
  takeAll(stack: number, incoming: AsyncIterable<Incoming> | Iterable<Incoming>): AsyncGenerator<Taken>;
  /** Reviews again what a change of profile or brief calls for, or what failed through us. Gives how many. */
  reviewAgain(stack: number, progress?: (done: number, of: number) => void): Promise<number>;
  /** Goes on reviewing while whoever asked goes elsewhere. */
  reviewInBackground(stack: number): void;
  /** How far the reviewing again of a stack is. */
  reviewing(stack: number): Reviewing;
  /** Compares the stack's scripts in a worker; kept until one of them changes. */
  likeness(stack: number): Promise<LikenessReport>;
  /** What the stack's scripts have in common. */
  classPicture(stack: number): Promise<ClassPicture>;
  /** Says anew whose the scripts are, from all their names; gives what lies on the stack. */
  settle(stack: number): Intake;
  /** The stack of this name; made where there is none. What is given anew replaces the old. Gives its number. */
  stackFor(settings: RawSettings): number;
  csv(stack: number): Iterable<string>;
  json(stack: number): Iterable<string>;
  backUp(to: string): Promise<string>;
  close(): Promise<void>;
}

/** Opens the desk kept in a file, making it where there is none. @throws {Refused} */
export async function openMarkingDesk(path: string, options: PoolOptions = {}): Promise<MarkingDesk> {
  const db = await openForWriting(path);
  let readOnly: Database;
  try {
    readOnly = await openForReading(path);
  } catch (error) {
    db.close();
    throw error;
  }
  const desk = new Desk(db);
  const reports = new Desk(readOnly);
  let pool: ReviewPool | undefined;
  // Workers are started when there is something to review, and not to look at a list.
  const workers = (): ReviewPool => {
    pool ??= reviewPool(options);
    return pool;
  };
  const again = reviewingAgain(desk, workers, options.log ?? console.error);
  return {
    path,
    desk,
    reports,
    workers,
    takeIn: (stack, incoming) => takeIn(desk, workers(), stack, incoming),
    takeAll: (stack, incoming) => takeAll(desk, workers(), desk.stack(stack), incoming),
    reviewAgain: (stack, progress) => again.review(stack, progress),
    reviewInBackground: (stack) => again.inBackground(stack),
    reviewing: (stack) => again.standing(stack),
    likeness: likenessKept(path, reports, workers),
    // What was not counted yet is kept, so this asks by the connection that can write.
    classPicture: (stack) => classPictureOf(db, stack),
    settle: (stack) => {
      settleIdentities(desk, desk.stack(stack));
      return intakeOf(desk, stack);
    },
    stackFor: (raw) => {
      const known = desk.stackNamed(raw.name);
      if (known === undefined) return desk.addStack(readSettings(raw)).id;
      const { name: _name, ...given } = raw;
      if (Object.keys(given).length > 0) desk.changeStack(known.id, known.revision, readSettings(raw, known));
      return known.id;
    },
    csv: (stack) => markBook(reports, reports.stack(stack)),
    json: (stack) => everything(reports, reports.stack(stack)),
    backUp: (to) => backUp(db, to),
    close: async () => {
      again.stop();
      await pool?.close();
      await again.stopped();
      readOnly.close();
      if (changesIn(db) > 0) await backUpDaily(db, path, new Date());
      // So that the folder holds one file, whole, when nobody is at the desk.
      db.pragma('wal_checkpoint(TRUNCATE)');
      db.close();
    },
  };
}

/** Rows changed through this connection since it was opened. */
function changesIn(db: Database): number {
  return Number(db.prepare('SELECT total_changes()').pluck().get());
}

/** Looks through settings; what is left out stays as it was, and an empty text takes away what was there. @throws {Refused} naming everything wrong */
export function readSettings(raw: RawSettings, known?: Stack): StackSettings {
  const wrong: Refusal[] = [];
  const settings: StackSettings = {
    name: raw.name,
    profile: raw.profile ?? known?.profile ?? profileOfBrief(raw.brief) ?? DEFAULT_PROFILE,
    scheme: known?.scheme ?? EXAMPLE_SCHEME,
    ...(known?.brief === undefined || raw.brief === '' ? {} : { brief: known.brief }),
    ...(known?.pattern === undefined || raw.pattern === '' ? {} : { pattern: known.pattern }),
    ...(known?.reference === undefined || raw.reference === '' ? {} : { reference: known.reference }),
    ...secondMarking(raw, known),
    ...(known?.voices === undefined || raw.voices === '' ? {} : { voices: known.voices }),
  };
  const checked: { -readonly [K in keyof StackSettings]: StackSettings[K] } = { ...settings };
  if (raw.brief) {
    const { problems } = readBrief(raw.brief);
    wrong.push(
      ...problems.map(({ message, line }) => ({ message: `The brief, line ${line}: ${message}`, line })),
    );
    checked.brief = raw.brief;
  }
  if (raw.scheme) {
    const scheme = readScheme(raw.scheme);
    if (scheme.ok) checked.scheme = scheme.scheme;
    else wrong.push(...problemsIn('The mark scheme', scheme));
  }
  if (raw.pattern) {
    const pattern = readCandidatePattern(raw.pattern);
    if (pattern.ok) checked.pattern = pattern.pattern;
    else wrong.push(refusalOf(pattern));
  }
  if (raw.reference) {
    const reference = openScore(new TextEncoder().encode(raw.reference));
    if (reference.ok) checked.reference = raw.reference;
    else wrong.push({ message: `The reference: ${reference.message}` });
  }
  if (raw.voices) {
    const read = readVoiceText(raw.voices);
    if (read.ok) checked.voices = printVoiceText(read.voices);
    else wrong.push({ message: `The voices: ${read.message}` });
  }
  if (wrong.length > 0) throw allRefused(wrong);
  return checked;
}

function secondMarking(raw: RawSettings, known: Stack | undefined): Pick<StackSettings, 'second'> {
  const second = raw.second ?? known?.second ?? '';
  return second === '' ? {} : { second };
}

function profileOfBrief(brief: string | undefined): Profile | undefined {
  return !brief ? undefined : profileNamed(readBrief(brief).brief.profile);
}
