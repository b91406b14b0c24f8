/** A finding as the desk keeps it: the public JSON finding, and what kind of place it is at. */

import * as z from 'zod';
import { jsonFindings, shownFindings } from '../report/json.ts';
import { findingSchema } from '../report/schema.ts';
import { withSigns } from '../report/sentences.ts';
import type { Review } from '../review/review.ts';
import { contextOf } from './context.ts';

export const scriptFindingSchema = findingSchema.extend({
  context: z
    .string()
    .describe('What kind of place this is, the same in any script and key: mode, chords, degrees by voice.'),
});
export type ScriptFinding = z.infer<typeof scriptFindingSchema>;

/** The findings that are given one by one, in the review's order. */
export function scriptFindings(review: Review): ScriptFinding[] {
  const findings = jsonFindings(review);
  return shownFindings(review).map((finding, index) => {
    const { message, hint, hints, ...told } = findings[index]!;
    return {
      ...told,
      // People read these, on the desk and on paper: the signs as musicians write them.
      message: withSigns(message),
      hint: withSigns(hint),
      hints: hints.map(withSigns),
      context: contextOf(review.analysis, finding),
    };
  });
}
