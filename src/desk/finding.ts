/** A finding in the form that the desk keeps: plain data, without its rule's functions. */
import { z } from 'zod';
import type { Review } from '../review/review.ts';
import { FAMILIES } from '../rules/rule.ts';
import { printPitch } from '../score/pitch.ts';
import { barAt, placeIn, printBeat } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import { contextOf } from './context.ts';

const ticks = z.number().int().min(0);
const voice = z.enum(VOICES);

/** A finding without its rule's functions. Times are ticks from the start of the script. */
export const scriptFindingSchema = z.object({
  /** As in the review: stable within a script, unique there. */
  id: z.string(),
  /** Id of the rule, and so of its page. */
  rule: z.string(),
  name: z.string(),
  family: z.enum(FAMILIES),
  severity: z.enum(['fault', 'query', 'remark']),
  voices: z.array(voice),
  /** Number printed in the score, and place in the list of bars from 0. */
  bar: z.string(),
  barIndex: z.number().int().min(0),
  /** As printed: `2½`. */
  beat: z.string(),
  from: ticks,
  until: ticks,
  notes: z.array(z.object({ voice, at: ticks, pitch: z.string() })),
  message: z.string(),
  /** Where to look, which movement would cure it, which textbook rule it is. */
  hints: z.tuple([z.string(), z.string(), z.string()]),
  /** What kind of place this is, the same in any script and key: see `contextOf`. */
  context: z.string(),
});
export type ScriptFinding = z.infer<typeof scriptFindingSchema>;

/** The review's findings in the form that the desk keeps, in the review's order. Two at one place get ids of their own. */
export function scriptFindings(review: Review): ScriptFinding[] {
  const met = new Map<string, number>();
  return review.findings.map((finding) => {
    const { rule } = finding;
    const bar = barAt(review.score, finding.from);
    const before = met.get(finding.id) ?? 0;
    met.set(finding.id, before + 1);
    return {
      id: before === 0 ? finding.id : `${finding.id}#${before + 1}`,
      rule: rule.id,
      name: rule.name,
      family: rule.family,
      severity: finding.severity,
      voices: [...finding.voices],
      bar: bar.number,
      barIndex: bar.index,
      beat: printBeat(placeIn(bar, finding.from)),
      from: finding.from,
      until: finding.until,
      notes: finding.tones.map((tone) => ({
        voice: tone.voice,
        at: tone.at,
        pitch: printPitch(tone.pitch),
      })),
      message: finding.message,
      hints: [finding.hint ?? rule.hints[0], rule.hints[1], rule.hints[2]],
      context: contextOf(review.analysis, finding),
    };
  });
}
