/** What a review comes to: counts, what was not looked at, and one sentence. */

import { listed } from '../english/words.ts';
import type { Review } from '../review/review.ts';
import type { Severity } from '../rules/rule.ts';
import { barAt } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import { crotchets } from '../score/time.ts';
import type { JsonReview } from './schema.ts';
import { count } from './sentences.ts';

export function summarise(review: Review): JsonReview['summary'] {
  const bySeverity: Record<Severity, number> = { fault: 0, query: 0, remark: 0 };
  const byRule: Record<string, number> = {};
  for (const { rule, severity } of review.findings) {
    bySeverity[severity]++;
    byRule[rule.id] = (byRule[rule.id] ?? 0) + 1;
  }
  const unwritten = crotchets(unwrittenTicks(review));
  return {
    profile: review.profile.name,
    faults: bySeverity.fault,
    queries: bySeverity.query,
    remarks: bySeverity.remark,
    byRule,
    unwritten,
    switchedOff: [...review.switchedOff],
    sentence: sentence(bySeverity, unwritten) + inferredEnds(review),
  };
}

function unwrittenTicks(review: Review): number {
  return VOICES.flatMap((voice) => review.score.voices[voice])
    .filter((event) => event.kind === 'gap')
    .reduce((sum, gap) => sum + gap.duration, 0);
}

/** Told once, since cadences and much else hang on it. */
function inferredEnds({ analysis, score }: Review): string {
  const ends = analysis.phrases.filter(({ end }) => end === 'inferred');
  if (ends.length === 0) return '';
  const bars = [...new Set(ends.map(({ goal }) => barAt(score, goal).number))];
  const where = bars.length === 1 ? `bar ${bars[0]}` : `bars ${listed(bars)}`;
  return ` Where no pause is marked, phrases were taken to end in ${where}.`;
}

function sentence(counts: Readonly<Record<Severity, number>>, unwritten: number): string {
  const { fault, query, remark } = counts;
  const unfinished =
    unwritten > 0
      ? ` ${unwritten === 1 ? 'One crotchet is' : `${Number(unwritten.toFixed(2))} crotchets are`} still to be written.`
      : '';
  if (fault + query + remark === 0) return `Nothing to mend was found.${unfinished}`;
  if (fault === 0 && query === 0) return `Nothing at fault; ${count(remark, 'remark')}.${unfinished}`;
  const parts = [
    fault > 0 ? count(fault, 'fault') : '',
    query > 0 ? `${count(query, 'query')} worth a second look` : '',
    remark > 0 ? count(remark, 'remark') : '',
  ].filter((part) => part !== '');
  return `${fault === 0 ? 'Nothing at fault; ' : ''}${listed(parts)}.${unfinished}`;
}
