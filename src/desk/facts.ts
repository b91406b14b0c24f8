/**
 * What the desk keeps of a review: small, plain, and safe to store as JSON, so that a worker can review a script and
 * hand over only this, and ten thousand of them can be read one after the other. The score itself is kept as its file.
 */
import * as z from 'zod';
import { homeKey } from '../harmony/questions/home-key.ts';
import { printKey } from '../harmony/words/labels.ts';
import { STRENGTH_KINDS, strengthsOf } from '../report/strengths.ts';
import type { Review } from '../review/review.ts';
import type { Score } from '../score/score.ts';
import { boardBarSchema, boardBars, goodBarSchema, goodBars } from './board.ts';
import { countsOf, countsSchema } from './counts.ts';
import { scriptFindingSchema, scriptFindings } from './finding.ts';
import { likenessPrint, likenessPrintSchema } from './fingerprint.ts';
import { ownWork } from './own-work.ts';

export const factsSchema = z.object({
  /** Raised whenever the shape or its meaning changes: older ones are to be reviewed again. */
  version: z.literal(2),
  title: z.string(),
  /** `G major`. */
  key: z.string(),
  bars: z.number().int().min(0),
  findings: z.array(scriptFindingSchema),
  counts: countsSchema,
  /** The clearest bar for each rule, for the class's board. */
  boardBars: z.array(boardBarSchema),
  goodBars: z.array(goodBarSchema),
  /** The added voices, to be compared with other scripts'. */
  print: likenessPrintSchema,
  /** Strong points, the most telling first, in sentences. */
  strengths: z.array(z.string()),
  /** What each of them is about, so that none is told that a finding contradicts. */
  strengthKinds: z.array(z.enum(STRENGTH_KINDS)).exactOptional(),
});
export type ScriptFacts = z.infer<typeof factsSchema>;

/**
 * Reduces a review to what the desk keeps.
 *
 * @param given the notes that the brief gives: neither praised nor blamed, and no sign of likeness
 */
export function factsOf(whole: Review, given?: Score): ScriptFacts {
  const own = ownWork(whole, given);
  const { review } = own;
  const findings = scriptFindings(review);
  const strengths = strengthsOf(review);
  return {
    version: 2,
    title: review.score.title,
    key: printKey(homeKey(review.analysis)),
    bars: review.score.bars.length,
    findings,
    counts: countsOf(own),
    boardBars: boardBars(review, findings),
    goodBars: goodBars(review),
    print: likenessPrint(review.score, given),
    strengths: strengths.map(({ sentence }) => sentence),
    strengthKinds: strengths.map(({ id }) => id),
  };
}
