/** A finding as the desk keeps it: the public JSON finding, and what kind of place it is at. */
import { z } from 'zod';
import { jsonFinding, shownFindings } from '../report/json.ts';
import { findingSchema } from '../report/schema.ts';
import type { Review } from '../review/review.ts';
import { contextOf } from './context.ts';

export const scriptFindingSchema = findingSchema.extend({
  context: z
    .string()
    .describe('What kind of place this is, the same in any script and key: mode, chords, degrees by voice.'),
});
export type ScriptFinding = z.infer<typeof scriptFindingSchema>;

/** The findings that are given one by one, in the review's order. Where two have one id, the second gets one of its own. */
export function scriptFindings(review: Review): ScriptFinding[] {
  const met = new Map<string, number>();
  return shownFindings(review).map((finding) => {
    const nth = (met.get(finding.id) ?? 0) + 1;
    met.set(finding.id, nth);
    return {
      ...jsonFinding(review, finding),
      id: nth === 1 ? finding.id : `${finding.id}#${nth}`,
      context: contextOf(review.analysis, finding),
    };
  });
}
