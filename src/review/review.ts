/** Runs the rules over an analysed score and puts what they find in order. */
import { analyse } from '../harmony/analyse.ts';
import type { Analysis } from '../harmony/analysis.ts';
import type { Profile } from '../profiles/profile.ts';
import { RULES } from '../rules/list.ts';
import {
  type Occurrence,
  type Parameters,
  type ParameterValues,
  type Rule,
  SEVERITIES,
  type Severity,
  severityRank,
} from '../rules/rule.ts';
import { withBlanks } from '../score/blanks.ts';
import type { Score } from '../score/score.ts';
import { asWritten, textureOf } from '../score/texture.ts';
import type { Finding } from './finding.ts';
import { inOrderOfMarks } from './marks.ts';
import { withCauses } from './slips.ts';

export type { Finding } from './finding.ts';

export interface Review {
  readonly score: Score;
  readonly analysis: Analysis;
  readonly profile: Profile;
  /** As they are told: see `marks.ts`. */
  readonly findings: readonly Finding[];
  /** Ids of the rules the profile switched off: told in every summary, never silently. */
  readonly switchedOff: readonly string[];
}

/** Analyses a score and runs every rule the profile leaves on. Pure. */
export function reviewScore(score: Score, profile: Profile): Review {
  return reviewAnalysis(analyse(textureOf(withBlanks(score))), profile);
}

/** Runs every rule the profile leaves on over an analysis that is already there. Pure. */
export function reviewAnalysis(analysis: Analysis, profile: Profile): Review {
  const { score } = analysis.texture;
  const findings: Finding[] = [];
  const switchedOff: string[] = [];
  const met = new Map<string, number>();
  for (const rule of RULES) {
    const setting = profile.rules[rule.id];
    if (setting?.severity === 'off') {
      switchedOff.push(rule.id);
      continue;
    }
    for (const occurrence of occurrencesOf(rule, analysis, profile)) {
      const id = findingId(rule, occurrence);
      const nth = (met.get(id) ?? 0) + 1;
      met.set(id, nth);
      findings.push({
        ...occurrence,
        tones: occurrence.tones.map(asWritten),
        id: nth === 1 ? id : `${id}#${nth}`,
        rule,
        severity: settledSeverity(rule, occurrence, setting?.severity),
      });
    }
  }
  return { score, analysis, profile, findings: inOrderOfMarks(withCauses(findings)), switchedOff };
}

/** What one rule finds, with the parameters the profile sets. */
export function occurrencesOf(rule: Rule, analysis: Analysis, profile: Profile): Occurrence[] {
  return rule.check(analysis, parameterValues(rule, profile.rules[rule.id]?.parameters));
}

/**
 * A profile moves a rule's own severity; an occurrence that the rule itself takes more lightly moves with it by as
 * many steps, and never becomes heavier than the profile says.
 */
function settledSeverity(rule: Rule, occurrence: Occurrence, set: Severity | undefined): Severity {
  const own = occurrence.severity ?? rule.severity;
  if (set === undefined) return own;
  const steps = severityRank(own) - severityRank(rule.severity);
  const rank = Math.min(2, Math.max(severityRank(set), severityRank(set) + steps));
  return SEVERITIES[rank]!;
}

function parameterValues(
  rule: Rule,
  set: Readonly<Record<string, number | string>> | undefined,
): ParameterValues<Parameters> {
  const values: Record<string, number | string> = {};
  for (const [name, parameter] of Object.entries(rule.parameters))
    values[name] = set?.[name] ?? parameter.value;
  return values as ParameterValues<Parameters>;
}

function findingId(rule: Rule, occurrence: Occurrence): string {
  return `${rule.id}@${occurrence.from}:${occurrence.voices.join('')}`;
}
