/** A review without its rules' functions, which can't be sent between threads; their ids bring them back. */
import type { Finding, Review } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';

type PlainFinding = Omit<Finding, 'rule'> & { readonly rule: string };
export type PlainReview = Omit<Review, 'findings'> & { readonly findings: readonly PlainFinding[] };

export function withoutFunctions(review: Review): PlainReview {
  return { ...review, findings: review.findings.map((finding) => ({ ...finding, rule: finding.rule.id })) };
}

export function withFunctions(plain: PlainReview): Review {
  return {
    ...plain,
    findings: plain.findings.flatMap((finding) => {
      const rule = RULES.find((known) => known.id === finding.rule);
      return rule === undefined ? [] : [{ ...finding, rule }];
    }),
  };
}
