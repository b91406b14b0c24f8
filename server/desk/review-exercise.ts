/** Reviews one exercise for the service: bytes in, the bytes of the answer out. The worker pool runs it. */
import { readAbc } from '../../src/abc/read.ts';
import { type FileKind, openScore, readAbcBy } from '../../src/open/open.ts';
import { DEFAULT_PROFILE, profileNamed } from '../../src/profiles/list.ts';
import { type Refusal, refusalOf } from '../../src/refusal/refusal.ts';
import { jsonReview } from '../../src/report/json.ts';
import { reviewScore } from '../../src/review/review.ts';

export interface ExerciseTask {
  /** What the person calls the file. */
  readonly file: string;
  readonly content: Uint8Array;
  /** What the sender said it is. */
  readonly kind?: FileKind;
  /** One that is built in. */
  readonly profile: string;
}

// A worker is loaded without waiting for anything.
readAbcBy(readAbc);

/** JSON as it is sent, or why the file can't be read. */
export type ExerciseResult =
  | { readonly ok: true; readonly answer: Uint8Array }
  | { readonly ok: false; readonly refusal: Refusal };

/** Never throws for a bad file. */
export default function reviewExercise({ file, content, kind, profile }: ExerciseTask): ExerciseResult {
  const opened = openScore(content, kind);
  if (!opened.ok) return { ok: false, refusal: refusalOf(opened) };
  const review = reviewScore(opened.score, profileNamed(profile) ?? DEFAULT_PROFILE);
  const text = JSON.stringify({ review: jsonReview(file, review), score: opened.score });
  return { ok: true, answer: new TextEncoder().encode(text) };
}
