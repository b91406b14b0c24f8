/** One file of `partwise review`: from its bytes to what is printed of it. The same here and in a worker. */
import type { LabelStyle } from '../harmony/words/labels.ts';
import type { VoiceAssignment } from '../musicxml/index.ts';
import { openScore } from '../open/open.ts';
import type { Profile } from '../profiles/profile.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import { jsonFailure, jsonReview } from '../report/json.ts';
import { type Review, reviewScore } from '../review/review.ts';
import { EXIT } from './exit.ts';
import type { Bytes } from './input.ts';
import { linesToChoose } from './voices.ts';

/** How a file is to be reviewed and told. Plain data, so that a worker can be told. */
export interface Manner {
  readonly json: boolean;
  readonly profile: Profile;
  readonly labels: LabelStyle;
  readonly voices?: VoiceAssignment;
}

/** What is printed of one file, and the exit status if it were the only one. */
export interface Told {
  readonly out: string;
  readonly err: string;
  readonly status: number;
}

/** Never throws: a file that can't be read is told. */
export async function tellFile(file: string, input: Bytes, manner: Manner): Promise<Told> {
  const outcome = review(input, manner);
  const status = outcome.ok ? statusOf(outcome.review) : EXIT.unreadable;
  if (manner.json) {
    const line = outcome.ok ? jsonReview(file, outcome.review) : jsonFailure(file, outcome);
    return { out: `${JSON.stringify(line)}\n`, err: '', status };
  }
  const paper = await import('./paper.ts');
  return outcome.ok
    ? { out: paper.printReview(file, outcome.review, manner.labels), err: '', status }
    : { out: '', err: paper.printFailure(file, outcome), status };
}

function statusOf({ findings }: Review): number {
  return findings.some(({ severity }) => severity === 'fault') ? EXIT.faults : EXIT.fine;
}

function review(input: Bytes, { profile, voices }: Manner): Outcome<{ readonly review: Review }> {
  if (!input.ok) return input;
  const opened = openScore(input.bytes, undefined, voices);
  if (!opened.ok) {
    const { lines, ...refusal } = opened;
    return lines === undefined
      ? refusal
      : { ...refusal, message: `${refusal.message} ${linesToChoose(lines)}` };
  }
  try {
    return { ok: true, review: reviewScore(opened.score, profile) };
  } catch (error) {
    // No score is known to stop a review; if one does, the others in the stack still come.
    const reason = error instanceof Error ? error.message : String(error);
    return refuse(`The music was read, but its review stopped, which is our mistake (${reason}).`);
  }
}
