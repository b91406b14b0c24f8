/** What goes on a pupil's sheet: two strengths and three things to work on, as the teacher's decisions leave them. */
import { capitalised } from '../english/words.ts';
import type { StrengthKind } from '../report/strengths.ts';
import { type Mark, marksAmong, toMend, type Weighed } from '../review/marks.ts';
import { RULES } from '../rules/list.ts';
import type { Family } from '../rules/rule.ts';
import { printBars } from '../score/place.ts';
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

/** A teacher's lists know every rule; one that a newer review has found weighs as most do. */
const USUAL_WEIGHT = 5;

/**
 * A script's findings as the page lists them (see `src/review/marks.ts`), under the teacher's decisions: what is
 * overruled is left out, and what followed from it stands for itself.
 */
function marksUnder(findings: readonly JudgedFinding[]): Mark<JudgedFinding>[] {
  const ids = new Map(findings.map(({ number, id }) => [number, id]));
  return marksAmong(standingFindings(findings), (finding): Weighed => {
    const { id, rule, family, severity, because, from, standing } = finding;
    return {
      id,
      rule,
      family,
      weight: RULES.find((each) => each.id === rule)?.weight ?? USUAL_WEIGHT,
      severity,
      because: because === undefined ? undefined : ids.get(because),
      from,
      agreed: standing === 'agreed',
    };
  });
}

type StrengthFacts = Pick<ScriptFacts, 'strengths' | 'strengthKinds'> & {
  readonly counts?: Pick<ScriptFacts['counts'], 'phrases'>;
};

/** The strengths that no fault or query that stands says the opposite of. */
function uncontradicted(facts: StrengthFacts, findings: readonly JudgedFinding[]): string[] {
  const against = standingFindings(findings).filter(({ severity }) => severity !== 'remark');
  const lastBar = facts.counts?.phrases.at(-1)?.lastBar;
  return facts.strengths.filter((_, i) => {
    const kind = facts.strengthKinds?.[i];
    return kind === undefined || !against.some((finding) => CONTRADICTS[kind](finding, lastBar));
  });
}

type Contradicts = (finding: JudgedFinding, lastBar: string | undefined) => boolean;

const isOf =
  (...families: Family[]): Contradicts =>
  ({ family }) =>
    families.includes(family);

/** Whether a finding says the opposite of a strength of each kind. */
const CONTRADICTS: Readonly<Record<StrengthKind, Contradicts>> = {
  suspensions: isOf('dissonance'),
  movement: isOf('dissonance'),
  cadences: isOf('cadences and phrases'),
  keys: isOf('cadences and phrases'),
  clean: isOf('consecutives'),
  // Whatever is wrong in the last bar spoils the close.
  close: ({ bar }, lastBar) => bar === lastBar,
  bass: ({ family, voices, rule }) =>
    (family === 'melody' && voices.includes('B')) || rule === 'repeated-bass' || rule.endsWith('six-four'),
  inner: ({ family, voices }) =>
    (family === 'melody' || family === 'spacing and range') &&
    voices.some((voice) => voice === 'A' || voice === 'T'),
  colour: ({ rule }) =>
    ['false-relation', 'unresolved-augmented-sixth', 'misspelt-note', 'unresolved-seventh'].includes(rule),
};

/**
 * Chooses what a pupil is told: what the page and the command line say is first to mend. What the teacher overruled is
 * not mentioned; what the teacher agreed to or made heavier comes as the teacher has it.
 */
export function feedbackFor(facts: StrengthFacts, findings: readonly JudgedFinding[]): Feedback {
  return {
    strengths: uncontradicted(facts, findings).slice(0, MOST_STRENGTHS),
    toWorkOn: toMend(marksUnder(findings)).map(told),
  };
}

function told({ slips }: Mark<JudgedFinding>): ToWorkOn {
  const findings = slips.map(({ finding }) => finding);
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

/** The most bars that a sentence lists. */
const MOST_BARS = 6;

/** `in bar 3`, `in bars 3 and 7`, `3 times in bar 3`, `in bars 1, 2, 3, 5, 6, 8 and 4 others`. */
function placesOf(times: number, bars: readonly string[]): string {
  const where = `in ${printBars(bars, MOST_BARS)}`;
  return times > bars.length ? `${times} times ${where}` : where;
}

/** Which movement would cure it, of whatever place: the rule's own words, since a finding's speak of one place only. */
function ruleHint({ rule, hints }: Pick<JudgedFinding, 'rule' | 'hints'>): string {
  return hintOf(rule) || hints[1]!;
}

/** The rule's own second hint; empty for a rule that is no more. */
export function hintOf(rule: string): string {
  return RULES.find(({ id }) => id === rule)?.hints[1] ?? '';
}
