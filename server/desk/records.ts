/** What lies on a desk, and how a row of the database is read. */
import {
  type CandidatePattern,
  candidatePatternSchema,
  type Decision,
  type Scheme,
  type ScriptFacts,
  SECOND_MARKINGS,
  type SecondMarking,
  schemeSchema,
} from '../../src/desk/index.ts';
import type { Profile } from '../../src/profiles/profile.ts';
import { type Refusal, Refused } from '../../src/refusal/refusal.ts';
import type { GivenCheck } from './review-script.ts';

export interface Stack {
  readonly id: number;
  readonly name: string;
  readonly created: string;
  /** The brief's text, where one was given. */
  readonly brief?: string;
  readonly profile: Profile;
  readonly scheme: Scheme;
  readonly pattern?: CandidatePattern;
  /** A harmonisation to compare with, as text in our notation. */
  readonly reference?: string;
  /** How a second person marks; absent where one marks alone. */
  readonly second?: SecondMarking;
  /** Which lines of its files sing which voices, where somebody said so: `S=1,A=2,T=3,B=4`. */
  readonly voices?: string;
  readonly revision: number;
}

/** A script without its content and facts: what a list needs. */
export interface ScriptEntry {
  readonly id: number;
  readonly stack: number;
  readonly file: string;
  readonly candidate?: string;
  readonly draft: number;
  readonly received: string;
  readonly error?: Refusal;
  readonly faults: number;
  readonly queries: number;
  readonly remarks: number;
  /** Which lines sing which voices, where somebody said so of this script: `S=1,A=2,T=3,B=4`. */
  readonly voices?: string;
  /** The teacher has finished with it. */
  readonly done: boolean;
  readonly revision: number;
}

export interface Script extends ScriptEntry {
  readonly facts?: ScriptFacts;
  readonly given?: GivenCheck;
}

export interface NewScript {
  readonly file: string;
  readonly sum: string;
  readonly content: Uint8Array;
  readonly candidate?: string;
  readonly draft: number;
  readonly facts?: ScriptFacts;
  readonly error?: Refusal;
  readonly given?: GivenCheck;
  /** The failure was ours: `has` lets the next run try again. */
  readonly again?: true;
}

/** Somebody else decided meanwhile: nothing was stored. `revision` is the one that stands now. */
export function outdated(revision: number): Refused {
  return new Refused(
    'This was changed in another window since you last saw it. Nothing was stored: look at it again, then decide.',
    { kind: 'outdated', more: { revision } },
  );
}

/** What is asked for is not there. */
export function missing(message: string): Refused {
  return new Refused(message, { kind: 'missing' });
}

export type Row = Record<string, unknown>;
/** A decision as it is handed in: the desk adds its id and time. */
export type Proposed = Decision extends infer D ? (D extends Decision ? Omit<D, 'id' | 'at'> : never) : never;

/** A mark taken back: at which criterion, whose, and whether it was an agreed one. */
export interface TakenBack {
  readonly takeBack: string;
  readonly by?: string;
  readonly agreed?: true;
}

/** The settings of a stack that a person may set. */
export type StackSettings = Pick<Stack, 'name' | 'profile' | 'scheme'> &
  Partial<Pick<Stack, 'brief' | 'pattern' | 'reference' | 'second' | 'voices'>>;

export function stackOf(row: Row): Stack {
  return {
    id: Number(row.id),
    name: String(row.name),
    created: String(row.created),
    profile: JSON.parse(String(row.profile)) as Profile,
    scheme: schemeSchema.parse(JSON.parse(String(row.scheme))),
    ...(row.brief === null ? {} : { brief: String(row.brief) }),
    ...(row.pattern === null ? {} : { pattern: candidatePatternSchema.parse(row.pattern) }),
    ...(row.reference === null ? {} : { reference: String(row.reference) }),
    ...secondOf(row),
    ...(row.voices === null ? {} : { voices: String(row.voices) }),
    revision: Number(row.revision),
  };
}

function secondOf({ second }: Row): Pick<Stack, 'second'> {
  const known = SECOND_MARKINGS.find((one) => one === second);
  return known === undefined ? {} : { second: known };
}

export function entryOf(row: Row): ScriptEntry {
  return {
    id: Number(row.id),
    stack: Number(row.stack),
    file: String(row.file),
    ...(row.candidate === null ? {} : { candidate: String(row.candidate) }),
    draft: Number(row.draft),
    received: String(row.received),
    ...(row.error === null ? {} : { error: JSON.parse(String(row.error)) as Refusal }),
    faults: Number(row.faults),
    queries: Number(row.queries),
    remarks: Number(row.remarks),
    ...(row.voices === null ? {} : { voices: String(row.voices) }),
    done: row.done === 1,
    revision: Number(row.revision),
  };
}

export function scriptOf(row: Row): Script {
  const entry = entryOf(row);
  // Checked where they come in, from the worker; checking ten thousand again at each report would take longer than it.
  if (row.facts === null) return entry;
  return {
    ...entry,
    facts: JSON.parse(String(row.facts)) as ScriptFacts,
    ...(row.given === null ? {} : { given: JSON.parse(String(row.given)) as GivenCheck }),
  };
}
