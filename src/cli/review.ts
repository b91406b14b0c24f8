/** `partwise review`: one exercise after another, for people or as JSON lines. */

import type { LabelStyle } from '../harmony/words/labels.ts';
import type { VoiceAssignment } from '../musicxml/index.ts';
import { openScore } from '../open/open.ts';
import type { Profile } from '../profiles/profile.ts';
import { type Outcome, refuse } from '../refusal/refusal.ts';
import { jsonFailure, jsonReview } from '../report/json.ts';
import { type Review, reviewScore } from '../review/review.ts';
import { EXIT } from './exit.ts';
import { readInput } from './input.ts';
import { loadProfile } from './profile.ts';
import { linesToChoose } from './voices.ts';

export interface ReviewOptions {
  readonly json?: true;
  readonly profile: string;
  readonly labels: LabelStyle;
  readonly voices?: VoiceAssignment;
}

/** Reviews the files in the order given; one that can't be read is told and the others still come. */
export async function reviewCommand(files: readonly string[], options: ReviewOptions): Promise<number> {
  const profile = await loadProfile(options.profile);
  const paper = options.json ? undefined : await import('./paper.ts');
  let status: number = EXIT.fine;
  for (const [index, file] of files.entries()) {
    const outcome = await reviewFile(file, profile, options.voices);
    if (outcome.ok) {
      if (outcome.review.findings.some(({ severity }) => severity === 'fault')) {
        status = Math.max(status, EXIT.faults);
      }
    } else status = EXIT.unreadable;
    if (paper) {
      if (index > 0) process.stdout.write('\n');
      if (outcome.ok) process.stdout.write(paper.printReview(file, outcome.review, options.labels));
      else process.stderr.write(paper.printFailure(file, outcome));
    } else {
      const line = outcome.ok ? jsonReview(file, outcome.review) : jsonFailure(file, outcome);
      process.stdout.write(`${JSON.stringify(line)}\n`);
    }
  }
  return status;
}

async function reviewFile(
  file: string,
  profile: Profile,
  voices: VoiceAssignment | undefined,
): Promise<Outcome<{ readonly review: Review }>> {
  const input = await readInput(file);
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
