/** What a whole class shows: commonest faults, bars worth showing on the board, what to practise next. */
import type { JsonFinding, JsonReview } from '../report/json.ts';
import { list } from '../report/sentences.ts';

export interface RuleCount {
  readonly rule: string;
  readonly name: string;
  readonly family: string;
  /** Scripts in which it counts. */
  readonly scripts: number;
  /** Places in all scripts together. */
  readonly times: number;
}

export interface BoardBar {
  /** The script it is taken from: for drawing, never printed. */
  readonly script: number;
  readonly bar: string;
  readonly from: number;
  readonly until: number;
  readonly worth: string;
}

export interface ClassPicture {
  readonly scripts: number;
  /** Scripts in which nothing is at fault. */
  readonly faultless: number;
  /** Commonest first, by number of scripts. */
  readonly rules: readonly RuleCount[];
  readonly board: readonly BoardBar[];
  /** Advice for the next lesson, one sentence each. */
  readonly practise: readonly string[];
}

/** Gathers script by script, so that ten thousand of them need no more memory than one. */
export class ClassGatherer {
  readonly #rules = new Map<string, { -readonly [K in keyof RuleCount]: RuleCount[K] }>();
  #board: (BoardBar & { readonly merit: number })[] = [];
  #scripts = 0;
  #faultless = 0;

  add(script: number, review: JsonReview, counting: readonly JsonFinding[]): void {
    this.#scripts++;
    if (!counting.some(({ severity }) => severity === 'fault')) this.#faultless++;
    const here = new Set<string>();
    for (const { rule, name, family, severity } of counting) {
      if (severity === 'remark') continue;
      const entry = this.#rules.get(rule) ?? { rule, name, family, scripts: 0, times: 0 };
      entry.times++;
      if (!here.has(rule)) entry.scripts++;
      here.add(rule);
      this.#rules.set(rule, entry);
    }
    const best = bestBar(script, review, counting);
    if (best !== undefined) {
      this.#board = [...this.#board, best].sort((a, b) => b.merit - a.merit).slice(0, BOARD_BARS);
    }
  }

  picture(): ClassPicture {
    const rules = [...this.#rules.values()].sort((a, b) => b.scripts - a.scripts || b.times - a.times);
    return {
      scripts: this.#scripts,
      faultless: this.#faultless,
      rules,
      board: this.#board.map(({ merit: _merit, ...bar }) => bar),
      practise: rules
        .filter(({ scripts }) => scripts >= Math.max(2, this.#scripts / 10))
        .slice(0, 3)
        .map(({ name, scripts }) => `${name}: in ${scripts} of ${this.#scripts} scripts.`),
    };
  }
}

const BOARD_BARS = 5;

/** The bar of a script with most to show and nothing against it. */
function bestBar(
  script: number,
  review: JsonReview,
  counting: readonly JsonFinding[],
): (BoardBar & { merit: number }) | undefined {
  const ends = new Map<string, { from: number; until: number }>();
  for (const { bar, at, until } of review.chords) {
    const span = ends.get(bar);
    ends.set(bar, { from: span?.from ?? at, until: Math.max(until, span?.until ?? 0) });
  }
  let best: (BoardBar & { merit: number }) | undefined;
  for (const [bar, { from, until }] of ends) {
    const within = (at: number) => at >= from && at < until;
    const blamed = counting.some((f) => f.severity !== 'remark' && f.from < until && f.until > from);
    if (blamed) continue;
    const ornaments = review.ornaments.filter(({ at }) => within(at));
    const suspensions = ornaments.filter(({ kind }) => kind === 'suspension').length;
    const cadences = review.cadences.filter(({ at }) => within(at));
    const chords = review.chords.filter((chord) => chord.bar === bar);
    const sevenths = chords.filter(({ seventh, applied }) => seventh || applied !== undefined).length;
    const merit = 4 * suspensions + ornaments.length + 2 * cadences.length + sevenths + chords.length / 4;
    const worth = list([
      ...(suspensions > 0 ? [suspensions === 1 ? 'a suspension' : `${suspensions} suspensions`] : []),
      ...(ornaments.length > suspensions ? ['flowing lines'] : []),
      ...cadences.map(({ name }) => `a ${name}`),
      ...(sevenths > 0 ? ['sevenths well resolved'] : []),
    ]);
    if (worth !== '' && merit > (best?.merit ?? 0)) best = { script, bar, from, until, worth, merit };
  }
  return best;
}
