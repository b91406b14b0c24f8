/**
 * Reviews one script: bytes in, facts out, nothing kept between two calls. The worker pool runs it; a job queue of any
 * kind could as well (see DEVELOPERS.md).
 */
import { readBrief } from '../../src/brief/brief.ts';
import { identify, pattern } from '../../src/desk/candidate.ts';
import { factsOf, type ScriptFacts } from '../../src/desk/facts.ts';
import { openScore, type Unreadable } from '../../src/open/open.ts';
import type { Profile } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';

export interface ScriptTask {
  /** The file's name, perhaps with folders. */
  readonly file: string;
  readonly content: Uint8Array;
  readonly profile: Profile;
  /** The brief's text. */
  readonly brief?: string;
  /** How file names are built: `{candidate}-draft{draft}`. */
  readonly pattern?: string;
}

export interface ScriptResult {
  readonly candidate?: string;
  readonly draft: number;
  /** One of the two. */
  readonly facts?: ScriptFacts;
  readonly error?: Unreadable;
}

/** Never throws for a bad file: what can't be read is told in `error`. */
export default function reviewScript(task: ScriptTask): ScriptResult {
  const by = task.pattern === undefined ? undefined : pattern(task.pattern);
  const opened = openScore(task.content);
  if (!opened.ok) return { ...identify(task.file, '', by), error: opened.error };
  const brief = task.brief === undefined ? undefined : readBrief(task.brief).brief;
  const facts = factsOf(reviewScore(opened.score, task.profile), [], brief?.score);
  return { ...identify(task.file, opened.score.title, by), facts };
}
