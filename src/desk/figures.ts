/** The little of a script's facts that lists and the class picture need: kept by itself, so that neither reads a file. */
import type { ScriptFacts } from './facts.ts';
import type { ScriptFinding } from './finding.ts';
import type { ScriptStyle } from './script-style.ts';

export type FigureFinding = Pick<ScriptFinding, 'id' | 'rule' | 'name' | 'family' | 'severity' | 'context'>;

export interface ScriptFigures {
  readonly findings: readonly FigureFinding[];
  readonly boardBars: ScriptFacts['boardBars'];
  readonly goodBars: ScriptFacts['goodBars'];
  readonly style: ScriptStyle;
}

export function figuresOf({
  findings,
  boardBars,
  goodBars,
  counts,
}: Pick<ScriptFacts, 'findings' | 'boardBars' | 'goodBars' | 'counts'>): ScriptFigures {
  return {
    findings: findings.map(({ id, rule, name, family, severity, context }) => ({
      id,
      rule,
      name,
      family,
      severity,
      context,
    })),
    boardBars,
    goodBars,
    style: counts.style ?? {},
  };
}
