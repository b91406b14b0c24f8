/** What goes on a pupil's sheet: two strengths and three things to work on, as the teacher's decisions leave them. */
import { capitalised, counted, listed } from '../english/words.ts';
import { chooseWork, type Weighed } from '../report/to-work-on.ts';
import { RULES } from '../rules/list.ts';
import type { Family } from '../rules/rule.ts';
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

/** How many strengths a sheet has room for, and a pupil for. */
const MOST_STRENGTHS = 2;

/** What the weighing of {@link chooseWork} asks of a judged finding. */
export function weighed({ rule, family, severity, standing }: JudgedFinding): Weighed {
  return { rule, family, severity, agreed: standing === 'agreed' };
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
    toWorkOn: chooseWork(standingFindings(findings), weighed).map(told),
  };
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
    sentence: `${capitalised(first.name)}, ${placesOf(findings.length, bars)}.`,
    why: first.why,
    hint: ruleHint(first),
    findings: findings.map(({ id }) => id),
  };
}

/** The number that an upbeat's bar is printed with, which means nothing to a singer. */
export const UPBEAT = '0';

/** The most bars that a sentence lists. */
const MOST_BARS = 6;

/** `in bar 3`, `in bars 3 and 7`, `three times in bar 3`, `in bars 1, 2, 3, 5, 6, 8 and 4 others`. */
function placesOf(times: number, bars: readonly string[]): string {
  if (bars.length === 1) {
    const where = bars[0] === UPBEAT ? 'in the upbeat' : `in bar ${bars[0]}`;
    return times === 1 ? where : `${times} times ${where}`;
  }
  const numbered = bars.filter((bar) => bar !== UPBEAT);
  const shown = numbered.slice(0, MOST_BARS);
  const rest = numbered.length - shown.length;
  const list = listed(rest === 0 ? shown : [...shown, counted(rest, 'other')]);
  const upbeat = numbered.length < bars.length ? 'the upbeat and ' : '';
  const where = `in ${upbeat}${numbered.length === 1 ? 'bar' : 'bars'} ${list}`;
  return times > bars.length ? `${times} times ${where}` : where;
}

/** Which movement would cure it, of whatever place: the rule's own words, since a finding's speak of one place only. */
export function ruleHint({ rule, hints }: Pick<JudgedFinding, 'rule' | 'hints'>): string {
  return RULES.find(({ id }) => id === rule)?.hints[1] ?? hints[1]!;
}
