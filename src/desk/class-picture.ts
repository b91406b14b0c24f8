/**
 * What a class has in common, gathered script by script: a picture is a small plain value, whatever the number of
 * scripts, and two pictures of two halves of a stack make the picture of the whole.
 */
import { capitalised, counted, listed } from '../english/words.ts';
import type { Family, Severity } from '../rules/rule.ts';
import type { BoardBar, GoodBar } from './board.ts';
import { type JudgedFinding, standingFindings } from './decisions.ts';
import type { ScriptFacts } from './facts.ts';
import { ruleHint } from './feedback.ts';
import { classStyle, joinedStyle, type StyleTally, styleTally } from './script-style.ts';

interface RuleTally {
  readonly name: string;
  readonly family: Family;
  readonly scripts: number;
  readonly places: number;
  readonly bySeverity: Readonly<Record<Severity, number>>;
  /** The scripts' urgencies added up: scripts affected times weight. */
  readonly urgency: number;
  /** How to mend it: the rule's own second hint. */
  readonly hint: string;
  /** The clearest bars found, the clearest first. */
  readonly board: readonly BoardBar[];
}

/** Everything gathered so far. Plain data, to be kept or handed from worker to worker. */
export interface ClassTally {
  readonly scripts: number;
  readonly faultless: number;
  readonly rules: Readonly<Record<string, RuleTally>>;
  readonly good: readonly GoodBar[];
  readonly style: StyleTally;
}

export const NO_SCRIPTS: ClassTally = { scripts: 0, faultless: 0, rules: {}, good: [], style: {} };

const BOARD_BARS_A_RULE = 2;
const GOOD_BARS = 6;

/** What one script brings to the picture. */
export interface ScriptInClass {
  readonly facts: Pick<ScriptFacts, 'boardBars' | 'goodBars' | 'counts'>;
  /** As the teacher's decisions leave them; what is overruled is not counted. */
  readonly findings: readonly JudgedFinding[];
}

/** The tally with one more script. Give each candidate's latest draft only, or drafts will count twice. */
export function withScript(tally: ClassTally, { facts, findings }: ScriptInClass): ClassTally {
  const standing = standingFindings(findings);
  const byRule = new Map<string, JudgedFinding[]>();
  for (const finding of standing) {
    const list = byRule.get(finding.rule);
    if (list === undefined) byRule.set(finding.rule, [finding]);
    else list.push(finding);
  }
  const ids = new Set(standing.map(({ id }) => id));
  const rules: Record<string, RuleTally> = {};
  for (const [rule, list] of byRule) {
    const first = list[0]!;
    const bySeverity = { fault: 0, query: 0, remark: 0 };
    for (const { severity } of list) bySeverity[severity]++;
    rules[rule] = {
      name: first.name,
      family: first.family,
      scripts: 1,
      places: list.length,
      bySeverity,
      urgency: urgency(first.family, list),
      hint: ruleHint(first),
      board: facts.boardBars.filter((bar) => bar.rule === rule && ids.has(bar.finding)),
    };
  }
  return joined(tally, {
    scripts: 1,
    faultless: standing.some(({ severity }) => severity === 'fault') ? 0 : 1,
    rules,
    good: facts.goodBars,
    style: styleTally(facts.counts.style ?? {}),
  });
}

const WEIGHT: Readonly<Record<Severity, number>> = { fault: 3, query: 1, remark: 0 };
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

/** How urgently a class wants a rule taught: its findings' weight, each further place counting less, times how teachable. */
function urgency(family: Family, findings: readonly JudgedFinding[]): number {
  const weights = findings
    .map(({ severity, standing }) => WEIGHT[severity] * (standing === 'agreed' ? AGREED : 1))
    .sort((a, b) => b - a);
  return TEACHABLE[family] * weights.reduce((total, weight, i) => total + weight / Math.sqrt(i + 1), 0);
}

/** The tally of two groups of scripts together. */
export function joined(a: ClassTally, b: ClassTally): ClassTally {
  const rules: Record<string, RuleTally> = { ...a.rules };
  for (const [rule, more] of Object.entries(b.rules)) {
    const known = Object.hasOwn(rules, rule) ? rules[rule]! : undefined;
    rules[rule] = known === undefined ? { ...more, board: clearest(more.board) } : together(known, more);
  }
  return {
    scripts: a.scripts + b.scripts,
    faultless: a.faultless + b.faultless,
    rules,
    good: bestOfEach([...a.good, ...b.good]),
    style: joinedStyle(a.style, b.style),
  };
}

function together(a: RuleTally, b: RuleTally): RuleTally {
  return {
    ...a,
    scripts: a.scripts + b.scripts,
    places: a.places + b.places,
    bySeverity: {
      fault: a.bySeverity.fault + b.bySeverity.fault,
      query: a.bySeverity.query + b.bySeverity.query,
      remark: a.bySeverity.remark + b.bySeverity.remark,
    },
    urgency: a.urgency + b.urgency,
    board: clearest([...a.board, ...b.board]),
  };
}

/** The clearest bars, the same music only once. */
function clearest(bars: readonly BoardBar[]): BoardBar[] {
  const sorted = [...bars].sort((a, b) => b.clearness - a.clearness);
  return sorted
    .filter((bar, i) => sorted.findIndex(({ text }) => text === bar.text) === i)
    .slice(0, BOARD_BARS_A_RULE);
}

/** The best good bars, the same music only once, and of one kind no more than a third. */
function bestOfEach(bars: readonly GoodBar[]): GoodBar[] {
  const kept: GoodBar[] = [];
  for (const bar of [...bars].sort((a, b) => b.worth - a.worth)) {
    const kin = kept.filter(({ kind }) => kind === bar.kind).length;
    if (kept.length < GOOD_BARS && kin < GOOD_BARS / 3 && !kept.some(({ text }) => text === bar.text))
      kept.push(bar);
  }
  return kept;
}

export interface RuleInClass {
  readonly rule: string;
  readonly name: string;
  readonly family: Family;
  readonly scripts: number;
  readonly places: number;
  readonly bySeverity: Readonly<Record<Severity, number>>;
  /** `Parallel fifths: in 12 of 30 scripts, 19 places.` A query says that it is one. */
  readonly sentence: string;
}

export interface Practise {
  readonly family: Family;
  /** Ids of the rules, whose pages to look at. */
  readonly rules: readonly string[];
  readonly sentence: string;
}

export interface ClassPicture {
  readonly scripts: number;
  readonly faultless: number;
  /** Faults before queries; the commonest first, by scripts and then by places. Remarks are left out. */
  readonly rules: readonly RuleInClass[];
  /** One fault to a bar, the fault that matters most to the class first. */
  readonly board: readonly BoardBar[];
  readonly good: readonly GoodBar[];
  /** What to practise next, the most pressing first. */
  readonly practise: readonly Practise[];
  /** What many scripts have less or more of than the model, in sentences. */
  readonly style: readonly string[];
  readonly summary: string;
}

const BOARD_BARS = 6;
const LESSONS = 3;

/** Reads the picture from what was gathered. */
export function classPicture(tally: ClassTally): ClassPicture {
  const rules = Object.entries(tally.rules)
    .map(([rule, entry]) => ({ rule, ...entry }))
    .filter(({ bySeverity }) => bySeverity.fault + bySeverity.query > 0);
  const pressing = [...rules].sort((a, b) => b.urgency - a.urgency);
  const commonest = [...rules].sort(
    (a, b) => Number(isFault(b)) - Number(isFault(a)) || b.scripts - a.scripts || b.places - a.places,
  );
  return {
    scripts: tally.scripts,
    faultless: tally.faultless,
    rules: commonest.map(({ rule, name, family, scripts, places, bySeverity }) => ({
      rule,
      name,
      family,
      scripts,
      places,
      bySeverity,
      sentence: `${name}${bySeverity.fault > 0 ? '' : ', worth a second look'}: in ${scripts} of ${counted(tally.scripts, 'script')}, ${counted(places, 'place')}.`,
    })),
    board: pressing.flatMap(({ board }) => board.slice(0, 1)).slice(0, BOARD_BARS),
    good: tally.good,
    practise: practise(pressing, tally.scripts),
    style: classStyle(tally.style),
    summary: summary(tally, commonest.find(isFault)),
  };
}

function isFault({ bySeverity }: Pick<RuleTally, 'bySeverity'>): boolean {
  return bySeverity.fault > 0;
}

type Entry = RuleTally & { readonly rule: string };

/** Families in the order of what their rules come to, each with its two most pressing rules. */
function practise(pressing: readonly Entry[], scripts: number): Practise[] {
  const families = new Map<Family, Entry[]>();
  for (const entry of pressing) {
    // One pupil's fault is no lesson for a class.
    if (scripts > 3 && entry.scripts < 2) continue;
    families.set(entry.family, [...(families.get(entry.family) ?? []), entry]);
  }
  return [...families]
    .map(([family, entries]) => ({
      family,
      entries: entries.slice(0, 2),
      weight: entries.reduce((sum, entry) => sum + entry.urgency, 0),
    }))
    .sort((a, b) => b.weight - a.weight)
    .slice(0, LESSONS)
    .map(({ family, entries }) => ({
      family,
      rules: entries.map(({ rule }) => rule),
      sentence: `${capitalised(family)}: ${listed(
        entries.map((entry) => `${lower(entry.name)} (${entry.scripts} of ${counted(scripts, 'script')})`),
      )}. ${entries[0]!.hint}`,
    }));
}

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function summary(tally: ClassTally, commonest: Entry | undefined): string {
  if (tally.scripts === 0) return 'No scripts yet.';
  const clean =
    tally.faultless === 0
      ? 'No script is without a fault.'
      : tally.faultless === tally.scripts
        ? 'No script has a fault.'
        : `${counted(tally.faultless, 'script')} of ${tally.scripts} ${tally.faultless === 1 ? 'has' : 'have'} no fault.`;
  if (commonest === undefined) return clean;
  return `${clean} Commonest: ${lower(commonest.name)}, in ${counted(commonest.scripts, 'script')}.`;
}
