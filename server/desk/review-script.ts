/**
 * Reviews one script: bytes in, facts out; nothing is kept between two calls but the brief that was read. The worker pool runs it; a job queue of any
 * kind could as well (see DEVELOPERS.md).
 */
import { type Brief, readBrief } from '../../src/brief/brief.ts';
import {
  type CandidatePattern,
  candidateOf,
  compareWithGiven,
  factsOf,
  type ScriptFacts,
} from '../../src/desk/index.ts';
import type { Profile } from '../../src/profiles/profile.ts';
import { type Refusal, refusalOf } from '../../src/refusal/refusal.ts';
import { reviewScore } from '../../src/review/review.ts';
import type { Score } from '../../src/score/score.ts';
import { openScript, type SaidVoices } from './open-script.ts';

export interface ScriptTask {
  /** The file's name, perhaps with folders. */
  readonly file: string;
  readonly content: Uint8Array;
  readonly profile: Profile;
  /** The brief's text. */
  readonly brief?: string;
  /** How file names are built: `{candidate}-draft{draft}`. */
  readonly pattern?: CandidatePattern;
  /** Which lines sing which voices, where somebody said so. */
  readonly voices?: SaidVoices;
}

export interface ScriptResult {
  readonly candidate?: string;
  readonly draft: number;
  /** One of the two. */
  readonly facts?: ScriptFacts;
  readonly error?: Refusal;
  /** The failure was not the file's: worth another try. */
  readonly again?: true;
  /** Where the script departs from the notes that the brief gives. */
  readonly given?: GivenCheck;
}

/** A comparison with the brief, in sentences. */
export interface GivenCheck {
  readonly summary: string;
  readonly general: readonly string[];
  readonly departures: readonly { readonly bar: string; readonly message: string }[];
}

/** Never throws for a bad file: what can't be read is told in `error`. */
export default function reviewScript(task: ScriptTask): ScriptResult {
  const opened = openScript(task.content, task.voices ?? {});
  if (!opened.ok) return { ...whose(task, ''), error: refusalOf(opened) };
  const brief = task.brief === undefined ? undefined : briefOf(task.brief);
  const review = reviewScore(opened.score, task.profile);
  const facts = factsOf(review, brief?.score);
  return {
    ...whose(task, opened.score.title),
    facts,
    ...(brief === undefined ? {} : { given: checkGiven(brief.score, opened.score) }),
  };
}

/** The brief last read: a stack's scripts have one between them. */
let lastBrief: { readonly text: string; readonly brief: Brief } | undefined;

function briefOf(text: string): Brief {
  if (lastBrief?.text !== text) lastBrief = { text, brief: readBrief(text).brief };
  return lastBrief.brief;
}

function checkGiven(asked: Score, score: Score): GivenCheck {
  const { summary, general, departures } = compareWithGiven(asked, score);
  return { summary, general, departures: departures.map(({ bar, message }) => ({ bar, message })) };
}

/** From the name of the file, then the title in it. */
export function whose(task: ScriptTask, title: string): Pick<ScriptResult, 'candidate' | 'draft'> {
  const read = candidateOf(task.file, title, task.pattern);
  return read.ok ? { candidate: read.candidate, draft: read.draft ?? 1 } : { draft: 1 };
}
