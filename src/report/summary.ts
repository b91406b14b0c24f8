/** What a review comes to: counts, what was not looked at, and one sentence. */
import { counted, listed } from '../english/words.ts';
import { isUnwritten, slipsAmong } from '../review/marks.ts';
import type { Review } from '../review/review.ts';
import type { RuleWords, Severity } from '../rules/rule.ts';
import { toWriteInWords } from '../rules/unfinished.ts';
import { withBlanks } from '../score/blanks.ts';
import { barAt, printBars } from '../score/place.ts';
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
  const toWrite = unwritten === 0 ? '' : ` ${soleSentence(review) ?? stillToWrite(unwritten)}`;
  const slips = slipsAmong(review.findings);
  const noted = review.findings.filter((finding) => finding.severity === 'remark' && !isUnwritten(finding));
  return {
    profile: review.profile.name,
    faults: bySeverity.fault,
    queries: bySeverity.query,
    remarks: bySeverity.remark,
    slips,
    byRule,
    unwritten,
    switchedOff: [...review.switchedOff],
    sentence: sentence({ ...bySeverity, remark: noted.length }, slips) + toWrite + inferredEnds(review),
  };
}

function unwrittenTicks(review: Review): number {
  const { voices } = withBlanks(review.score);
  return VOICES.flatMap((voice) => voices[voice])
    .filter((event) => event.kind === 'gap')
    .reduce((sum, gap) => sum + gap.duration, 0);
}

/** Told once, since cadences and much else hang on it. */
function inferredEnds({ analysis, score }: Review): string {
  const ends = analysis.phrases.filter(({ end }) => end === 'inferred');
  if (ends.length === 0) return '';
  const where = printBars(ends.map(({ goal }) => barAt(score, goal).number));
  return ` Where no pause is marked, phrases were taken to end in ${where}.`;
}

/** `3 faults and 1 query worth a second look, from 2 slips; 4 remarks.` What is to be written is no remark. */
function sentence(counts: Readonly<Record<Severity, number>>, slips: number): string {
  const { fault, query, remark } = counts;
  if (fault + query + remark === 0) return 'Nothing to mend was found.';
  if (fault + query === 0) return `Nothing at fault; ${count(remark, 'remark')}.`;
  const mends = [
    fault > 0 ? count(fault, 'fault') : '',
    query > 0 ? `${count(query, 'query')} worth a second look` : '',
  ].filter((part) => part !== '');
  const from = slips < fault + query ? `, from ${counted(slips, 'slip')}` : '';
  const remarks = remark > 0 ? `; ${count(remark, 'remark')}` : '';
  return `${fault === 0 ? 'Nothing at fault; ' : ''}${listed(mends)}${from}${remarks}.`;
}

/** What is still to be written, to be listed; empty where the summary has told it in one sentence. */
export function toWriteListed(review: Review): string[] {
  return soleSentence(review) === undefined ? toWriteTold(review) : [];
}

function soleSentence(review: Review): string | undefined {
  const told = toWriteTold(review);
  return told.length === 1 && unwrittenTicks(review) > 0 ? told[0] : undefined;
}

/** All that is still to be written, for where no summary tells it. */
export function toWriteTold({ score, findings }: Review): string[] {
  return toWriteInWords(score, findings.filter(isUnwritten));
}

/** `One crotchet is still to be written.` */
function stillToWrite(unwritten: number): string {
  return unwritten === 1
    ? 'One crotchet is still to be written.'
    : `${Number(unwritten.toFixed(2))} crotchets are still to be written.`;
}

/** Names of those of the rules that the profile leaves out, as they stand in a sentence. */
export function leftOut(
  { switchedOff }: Pick<Review, 'switchedOff'>,
  rules: readonly Pick<RuleWords, 'id' | 'name'>[],
): string {
  const off = new Set(switchedOff);
  return listed(rules.filter(({ id }) => off.has(id)).map(({ name }) => name.toLowerCase()));
}
