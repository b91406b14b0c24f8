/** What goes on a pupil's sheet: two strengths and three things to work on, as the teacher's decisions leave them. */
import type { Family } from '../rules/rule.ts';
import { inWords, sentence } from '../rules/wording.ts';
import { type JudgedFinding, standingFindings } from './decisions.ts';
import type { ScriptFacts } from './facts.ts';

export interface ToWorkOn {
  /** Id of the rule, and so of its page. */
  readonly rule: string;
  readonly name: string;
  readonly family: Family;
  readonly times: number;
  /** Printed numbers of the bars, each once, in order. */
  readonly bars: readonly string[];
  /** `Parallel fifths, in bars 3 and 7.` */
  readonly sentence: string;
  /** Why the ear minds. */
  readonly why: string;
  /** Which movement would cure it; never the note to write. */
  readonly hint: string;
  /** Ids of the findings it stands for. */
  readonly findings: readonly string[];
}

export interface Feedback {
  readonly strengths: readonly string[];
  readonly toWorkOn: readonly ToWorkOn[];
}

/** How many of each a sheet has room for, and a pupil for. */
const MOST_STRENGTHS = 2;
const MOST_TO_WORK_ON = 3;

const WEIGHT = { fault: 3, query: 1, remark: 0 } as const;
/** What the teacher has agreed to comes before what nobody has looked at. */
const AGREED = 1.25;

/**
 * How far one lesson gets with faults of a family: what can be checked voice by voice with one question is soon
 * mended, a sense for chords and phrases takes longer. A teacher's rule of thumb; common practice, no source.
 */
const TEACHABLE: Readonly<Record<Family, number>> = {
  consecutives: 1.2,
  'cadences and phrases': 1.1,
  chords: 1.1,
  'spacing and range': 1,
  melody: 1,
  dissonance: 0.9,
  'rhythm and notation': 0.7,
};

/** How urgently a rule wants work: its findings' weight, each further place counting less, times how teachable it is. */
export function urgency(
  family: Family,
  findings: readonly Pick<JudgedFinding, 'severity' | 'standing'>[],
): number {
  const weights = findings
    .map(({ severity, standing }) => WEIGHT[severity] * (standing === 'agreed' ? AGREED : 1))
    .sort((a, b) => b - a);
  const sum = weights.reduce<number>((total, weight, i) => total + weight / Math.sqrt(i + 1), 0);
  return sum * TEACHABLE[family];
}

/**
 * Chooses what a pupil is told. What the teacher overruled is not mentioned; what the teacher agreed to or made
 * heavier comes as the teacher has it. Two of the three things come from different families where there are two.
 */
export function feedbackFor(
  facts: Pick<ScriptFacts, 'strengths'>,
  findings: readonly JudgedFinding[],
): Feedback {
  return {
    strengths: facts.strengths.slice(0, MOST_STRENGTHS),
    toWorkOn: toWorkOn(findings),
  };
}

function toWorkOn(findings: readonly JudgedFinding[]): ToWorkOn[] {
  const byRule = new Map<string, JudgedFinding[]>();
  for (const finding of standingFindings(findings)) {
    if (finding.severity === 'remark') continue;
    const list = byRule.get(finding.rule);
    if (list === undefined) byRule.set(finding.rule, [finding]);
    else list.push(finding);
  }
  const ranked = [...byRule.values()]
    .map((list) => ({ list, urgency: urgency(list[0]!.family, list) }))
    .sort((a, b) => b.urgency - a.urgency);
  const chosen: JudgedFinding[][] = [];
  for (const { list } of ranked) {
    const same = chosen.filter(([first]) => first!.family === list[0]!.family).length;
    // Three kinds of consecutives would be one lesson: a third of the same family waits for another day.
    if (chosen.length < MOST_TO_WORK_ON && same < 2) chosen.push(list);
  }
  for (const { list } of ranked)
    if (chosen.length < MOST_TO_WORK_ON && !chosen.includes(list)) chosen.push(list);
  return chosen.map(told);
}

function told(findings: readonly JudgedFinding[]): ToWorkOn {
  const first = findings[0]!;
  const bars = [...new Set(findings.map(({ bar }) => bar))];
  return {
    rule: first.rule,
    name: first.name,
    family: first.family,
    times: findings.length,
    bars,
    sentence: `${sentence(first.name)}, ${placesOf(findings.length, bars)}.`,
    why: first.why,
    hint: first.hints[1]!,
    findings: findings.map(({ id }) => id),
  };
}

/** The most bars that a sentence lists. */
const MOST_BARS = 6;

/** `in bar 3`, `in bars 3 and 7`, `three times in bar 3`, `in bars 1, 2, 3, 5, 6, 8 and 4 others`. */
function placesOf(times: number, bars: readonly string[]): string {
  if (bars.length === 1) return times === 1 ? `in bar ${bars[0]}` : `${times} times in bar ${bars[0]}`;
  const shown = bars.slice(0, MOST_BARS);
  const rest = bars.length - shown.length;
  const list = inWords(rest === 0 ? shown : [...shown, `${rest} other${rest === 1 ? '' : 's'}`]);
  return `${times > bars.length ? `${times} times ` : ''}in bars ${list}`;
}
