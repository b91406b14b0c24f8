/**
 * What a class has in common, gathered script by script: a picture is a small plain value, whatever the number of
 * scripts, and two pictures of two halves of a stack make the picture of the whole.
 */
import { capitalised, counted, listed } from '../english/words.ts';
import type { Family, Severity } from '../rules/rule.ts';
import type { BoardBar, GoodBar } from './board.ts';
import { type Judgement, standingFindings } from './decisions.ts';
import { hintOf } from './feedback.ts';
import type { FigureFinding, ScriptFigures } from './figures.ts';
import { hash } from './hash.ts';
import { classStyle, joinedStyle, type StyleTally, styleTally } from './script-style.ts';

interface RuleTally {
  readonly name: string;
  readonly family: Family;
  readonly scripts: number;
  readonly places: number;
  readonly bySeverity: Readonly<Record<Severity, number>>;
  /** Scripts affected times how heavy it is in each. */
  readonly load: number;
  /** Where the clearest bar is, if one shows it. */
  readonly board?: BarPlace & { readonly clearness: number };
}

/** A bar worth showing: of which script (the desk's id), and the how-manieth of those kept of it. */
interface BarPlace {
  readonly script: number;
  readonly bar: number;
}

interface GoodPlace extends BarPlace {
  readonly kind: string;
  readonly worth: number;
  /** Equal for the same music. */
  readonly music: number;
}

/** Everything gathered so far. Small and plain, to be kept for each script; the bars' music stays with the scripts. */
export interface ClassTally {
  readonly scripts: number;
  readonly faultless: number;
  readonly rules: Readonly<Record<string, RuleTally>>;
  readonly good: readonly GoodPlace[];
  readonly style: StyleTally;
}

export const NO_SCRIPTS: ClassTally = { scripts: 0, faultless: 0, rules: {}, good: [], style: {} };

const GOOD_BARS = 6;

/** What one script brings to the picture. */
export interface ScriptInClass {
  /** The desk's id. */
  readonly script: number;
  readonly figures: Pick<ScriptFigures, 'boardBars' | 'goodBars' | 'style'>;
  /** As the teacher's decisions leave them; what is overruled is not counted. */
  readonly findings: readonly (FigureFinding & Judgement)[];
}

/** The tally with one more script. Give each candidate's latest draft only, or drafts will count twice. */
export function withScript(tally: ClassTally, { script, figures, findings }: ScriptInClass): ClassTally {
  const standing = standingFindings(findings);
  const byRule = new Map<string, (typeof standing)[number][]>();
  for (const finding of standing) {
    const list = byRule.get(finding.rule);
    if (list === undefined) byRule.set(finding.rule, [finding]);
    else list.push(finding);
  }
  const ids = new Set(standing.map(({ id }) => id));
  const clear = new Map(
    figures.boardBars.flatMap(({ rule, finding, clearness }, bar) =>
      ids.has(finding) ? [[rule, { script, bar, clearness }] as const] : [],
    ),
  );
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
      load: Math.max(...list.map(({ severity }) => WEIGHT[severity])),
      ...(clear.has(rule) ? { board: clear.get(rule)! } : {}),
    };
  }
  return joined(tally, {
    scripts: 1,
    faultless: standing.some(({ severity }) => severity === 'fault') ? 0 : 1,
    rules,
    good: figures.goodBars.map(({ kind, worth, text }, bar) => ({
      script,
      bar,
      kind,
      worth,
      music: hash(text),
    })),
    style: styleTally(figures.style),
  });
}

/** How heavy a rule weighs in one script: by the heaviest of what stands there. */
const WEIGHT: Readonly<Record<Severity, number>> = { fault: 3, query: 1, remark: 0 };

/** The tally of two groups of scripts together. */
export function joined(a: ClassTally, b: ClassTally): ClassTally {
  const rules: Record<string, RuleTally> = { ...a.rules };
  for (const [rule, more] of Object.entries(b.rules)) {
    const known = Object.hasOwn(rules, rule) ? rules[rule]! : undefined;
    rules[rule] = known === undefined ? more : together(known, more);
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
    load: a.load + b.load,
    ...clearer(a, b),
  };
}

/** The clearer bar of two; of two as clear the first. */
function clearer({ board: a }: RuleTally, { board: b }: RuleTally): Pick<RuleTally, 'board'> {
  const board = b === undefined || (a !== undefined && a.clearness >= b.clearness) ? a : b;
  return board === undefined ? {} : { board };
}

/** The best good bars, the same music only once, and of one kind no more than a third. */
function bestOfEach(bars: readonly GoodPlace[]): GoodPlace[] {
  const kept: GoodPlace[] = [];
  for (const bar of [...bars].sort((a, b) => b.worth - a.worth)) {
    const kin = kept.filter(({ kind }) => kind === bar.kind).length;
    if (kept.length < GOOD_BARS && kin < GOOD_BARS / 3 && !kept.some(({ music }) => music === bar.music))
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
  /** It is a fault in half at least of the scripts it is in; these come first. */
  readonly heavy: boolean;
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
  /** What is mostly a fault before what is mostly a query; the commonest first. Remarks are left out. */
  readonly rules: readonly RuleInClass[];
  /** One rule to a bar, in the same order. */
  readonly board: readonly BoardBar[];
  readonly good: readonly GoodBar[];
  /** What to practise next, in the same order: the first lesson begins with the first of `rules`. */
  readonly practise: readonly Practise[];
  /** What many scripts have less or more of than the model, in sentences. */
  readonly style: readonly string[];
  readonly summary: string;
}

const BOARD_BARS = 6;
const LESSONS = 3;

/** What is kept of a script to be shown. */
export type BarsOf = (script: number) => Pick<ScriptFigures, 'boardBars' | 'goodBars'>;

/** Reads the picture from what was gathered; the few bars that are shown are asked of their scripts. */
export function classPicture(tally: ClassTally, barsOf: BarsOf): ClassPicture {
  const rules = Object.entries(tally.rules)
    .map(([rule, entry]) => ({ rule, ...entry }))
    .filter(({ bySeverity }) => bySeverity.fault + bySeverity.query > 0);
  // One order for all that is told, in list, advice and on the board: what is mostly a fault, then by scripts.
  const ranked = rules.sort(
    (a, b) =>
      Number(isHeavy(b)) - Number(isHeavy(a)) ||
      b.scripts - a.scripts ||
      b.load - a.load ||
      b.places - a.places,
  );
  return {
    scripts: tally.scripts,
    faultless: tally.faultless,
    rules: ranked.map(({ rule, name, family, scripts, places, bySeverity, load }) => ({
      rule,
      name,
      family,
      scripts,
      places,
      bySeverity,
      heavy: isHeavy({ load, scripts }),
      sentence: `${name}${bySeverity.fault > 0 ? '' : ', worth a second look'}: in ${scripts} of ${counted(tally.scripts, 'script')}, ${counted(places, 'place')}.`,
    })),
    board: ranked
      .flatMap(({ board }) => board ?? [])
      .slice(0, BOARD_BARS)
      .flatMap(({ script, bar }) => barsOf(script).boardBars[bar] ?? []),
    good: tally.good.flatMap(({ script, bar }) => barsOf(script).goodBars[bar] ?? []),
    practise: practise(ranked, tally.scripts),
    style: classStyle(tally.style),
    summary: summary(tally, ranked[0]),
  };
}

/** A fault in half at least of the scripts it is in. */
function isHeavy({ load, scripts }: Pick<RuleTally, 'load' | 'scripts'>): boolean {
  return 2 * load >= (WEIGHT.fault + WEIGHT.query) * scripts;
}

type Entry = RuleTally & { readonly rule: string };

/** Families in the order of their first rules, each with its two first. */
function practise(ranked: readonly Entry[], scripts: number): Practise[] {
  const families = new Map<Family, Entry[]>();
  for (const entry of ranked) {
    // One pupil's fault is no lesson for a class.
    if (scripts > 3 && entry.scripts < 2) continue;
    families.set(entry.family, [...(families.get(entry.family) ?? []), entry]);
  }
  return [...families].slice(0, LESSONS).map(([family, entries]) => {
    const [first, second] = entries as [Entry, Entry?];
    const named = [first, ...(second === undefined ? [] : [second])];
    return {
      family,
      rules: named.map(({ rule }) => rule),
      sentence: `${capitalised(family)}: ${listed(
        named.map((entry) => `${lower(entry.name)} (${entry.scripts} of ${counted(scripts, 'script')})`),
      )}. ${hintOf(first.rule)}`,
    };
  });
}

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function summary(tally: ClassTally, commonest: Entry | undefined): string {
  if (tally.scripts === 0) return 'There are no scripts on this stack yet that can be read.';
  const clean =
    tally.faultless === 0
      ? 'Every script has a fault.'
      : tally.faultless === tally.scripts
        ? 'No script has a fault.'
        : `${counted(tally.faultless, 'script')} of ${tally.scripts} ${tally.faultless === 1 ? 'has' : 'have'} no fault.`;
  if (commonest === undefined) return clean;
  return `${clean} The commonest: ${lower(commonest.name)}, in ${commonest.scripts} of ${counted(tally.scripts, 'script')}.`;
}
