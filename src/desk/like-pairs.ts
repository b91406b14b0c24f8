/** Which scripts of a stack to lay side by side because they share more than the tune explains. */

import { ADDED, type AddedVoice, type LikenessPrint } from './fingerprint.ts';
import { hash, mixed } from './hash.ts';
import { INDEPENDENT } from './independent.ts';
import { type Comparable, comparable, type Likeness, likenessOf } from './likeness.ts';

/** To be printed wherever likeness is shown. */
export const LIKENESS_NOTICE =
  'Likeness is a question, not an answer: people work together, a teacher shows a bar on the board, and a plain tune has plain answers. Ask, and decide yourself.';

/** How common an agreement is. */
export interface Rarity {
  /** Of a hundred pairs of independent harmonisations of one tune, so many agree as much or more. */
  readonly inAHundred: number;
  /** So many pairs of this stack would come as near by chance; absent for a small stack or none. */
  readonly byChance?: number;
  /** True where the pair is worth a question: see {@link rarityOf}. */
  readonly unusual: boolean;
  readonly sentence: string;
}

/** How near the pairs of a stack are to each other, by their shares. */
export interface StackNearness {
  readonly pairs: number;
  readonly middle: number;
  readonly mean: number;
  readonly deviation: number;
}

/** Fewer bars than this say nothing. */
const LEAST_BARS = 4;
/** A pair is worth a question where no more than so many in a hundred independent pairs agree as much … */
const UNUSUAL = 2;
/** … and where it agrees clearly more than the middle pair of its own stack: one class has learnt one manner. */
const ABOVE_MIDDLE = 0.15;
/** … and where not many pairs of the stack would come as near by chance, or where all voices agree for a stretch of bars. */
const MOST_BY_CHANCE = 1;
const STRETCH = 3;
/** From so many pairs on the stack tells what may come by chance. */
const ENOUGH_PAIRS = 45;

/**
 * How common it is to agree so much. The yardstick is one composer's settings of one tune, made apart: he takes up an
 * earlier setting of his own now and then, so it errs on the side of calling a likeness common. Pupils of one class may
 * be nearer to each other than that; therefore a pair must also stand out from its own stack, and it is said how many
 * pairs of the stack would come as near by chance.
 */
export function rarityOf(likeness: Likeness, stack?: StackNearness): Rarity {
  const whole = likeness.compared === 0 ? 0 : likeness.wholeBars / likeness.compared;
  const byShare = inAHundred(INDEPENDENT.shares, likeness.share);
  const byBars = inAHundred(INDEPENDENT.wholeBars, whole);
  const rarest = Math.min(byShare, byBars);
  const standsOut = stack === undefined || likeness.share >= stack.middle + ABOVE_MIDDLE;
  const byChance = stack === undefined ? undefined : expected(likeness.share, stack);
  const nearThroughout = byShare <= UNUSUAL && (byChance === undefined || byChance <= MOST_BY_CHANCE);
  const alikeForAStretch = byBars <= UNUSUAL && likeness.longestRun >= STRETCH;
  return {
    inAHundred: rarest,
    ...(byChance === undefined ? {} : { byChance }),
    unusual: likeness.compared >= LEAST_BARS && standsOut && (nearThroughout || alikeForAStretch),
    sentence: [
      `The added voices are the same for ${percent(likeness.share)} of the time, and all three throughout ${likeness.wholeBars} of ${likeness.compared} bars.`,
      `Of ${INDEPENDENT.pairs} pairs of independent settings of one tune ${rarest === 0 ? 'none agrees' : rarest === 1 ? '1 in 100 agrees' : `${rarest} in 100 agree`} as much.`,
      ...(stack === undefined ? [] : [`The middle pair of this stack agrees in ${percent(stack.middle)}.`]),
      ...(byChance === undefined ? [] : [chanceSentence(byChance, stack!.pairs)]),
    ].join(' '),
  };
}

/** How many pairs of the stack would reach a share by chance, its shares taken as spread normally. */
function expected(share: number, { pairs, mean, deviation }: StackNearness): number | undefined {
  if (pairs < ENOUGH_PAIRS || deviation === 0) return undefined;
  return pairs * normalTail((share - mean) / deviation);
}

/** The part of a normal distribution beyond z; Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17 (from memory). */
function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  const t = 1 / (1 + 0.2316419 * z);
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const factors = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429];
  return density * factors.reduceRight((sum, factor) => t * (factor + sum), 0);
}

function chanceSentence(byChance: number, pairs: number): string {
  const many =
    byChance < 0.5
      ? 'hardly one comes'
      : byChance < 1.5
        ? 'about one comes'
        : `about ${Math.round(byChance)} come`;
  return `Of its ${pairs} pairs ${many} as near by chance.`;
}

/** Of a hundred pairs, those that reach a share; see `independent.ts` for the table. */
function inAHundred(thousandths: readonly number[], share: number): number {
  const below = thousandths.findIndex((value) => value >= Math.round(1000 * share));
  if (below < 0) return 0;
  // The greatest value met is one pair's: to agree as much as that is one in a hundred at most.
  return Math.max(1, 100 - below);
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

export interface LikePair<Id, Other = Id> {
  readonly first: Id;
  readonly second: Other;
  readonly likeness: Likeness;
  readonly rarity: Rarity;
}

export interface Likenesses<Id> {
  /** Worth a question, the likest first; of very many, the first {@link MOST_TOLD}. */
  readonly pairs: readonly LikePair<Id>[];
  /** How many more there are than told. */
  readonly further: number;
  /** Pairs that were compared in full. */
  readonly compared: number;
  /** How near the stack's pairs are in all; absent where there are fewer than three. */
  readonly stack?: StackNearness;
  readonly notice: string;
}

/** A script in the stack. `candidate` keeps a candidate's own drafts from being laid side by side. */
export interface StackScript<Id> {
  readonly id: Id;
  readonly candidate?: string;
  readonly print: LikenessPrint;
}

/** More pairs than this nobody looks at. */
const MOST_TOLD = 300;
/** Up to so many scripts all pairs are compared; beyond, only those that share rare bars. */
const ALL_PAIRS = 150;
/** Pairs drawn from a large stack to find the middle one. */
const SAMPLE = 2_000;

/** Compares the scripts of a stack. With many, only those that an index brings together are compared in full. */
export function likePairs<Id>(scripts: readonly StackScript<Id>[]): Likenesses<Id> {
  const ready = madeReady(scripts);
  const own = (i: number, j: number): boolean => {
    const [a, b] = [scripts[i]!.candidate, scripts[j]!.candidate];
    return a !== undefined && a === b;
  };
  const candidates = (
    scripts.length <= ALL_PAIRS ? allPairs(scripts.length) : pairsSharingBars(scripts.length, ready)
  ).filter(([i, j]) => !own(i, j));
  const found = candidates.map(([i, j]) => ({ i, j, likeness: likenessOf(ready(i), ready(j)) }));
  const drawn =
    scripts.length <= ALL_PAIRS ? found.map(({ likeness }) => likeness) : sampled(scripts.length, ready, own);
  const stack = nearnessOf(drawn, (scripts.length * (scripts.length - 1)) / 2);
  const pairs = found
    .map(({ i, j, likeness }) => ({
      first: scripts[i]!.id,
      second: scripts[j]!.id,
      likeness,
      rarity: rarityOf(likeness, stack),
    }))
    .filter(({ rarity }) => rarity.unusual)
    .sort((a, b) => b.likeness.share - a.likeness.share);
  return {
    pairs: pairs.slice(0, MOST_TOLD),
    further: Math.max(0, pairs.length - MOST_TOLD),
    compared: found.length,
    ...(stack === undefined ? {} : { stack }),
    notice: LIKENESS_NOTICE,
  };
}

/** Undefined where fewer than three pairs were drawn: two scripts are no stack to stand out from. */
function nearnessOf(drawn: readonly Likeness[], pairs: number): StackNearness | undefined {
  const shares = drawn
    .filter(({ compared }) => compared >= LEAST_BARS)
    .map(({ share }) => share)
    .sort((a, b) => a - b);
  if (shares.length < 3) return undefined;
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const spread = shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / shares.length;
  return { pairs, middle: shares[shares.length >> 1]!, mean, deviation: Math.sqrt(spread) };
}

/** Lays each script beside a setting that the teacher supplies; those worth a question, the likest first. */
export function likeReference<Id>(
  scripts: Iterable<StackScript<Id>>,
  reference: LikenessPrint,
): LikePair<Id, Id | 'reference'>[] {
  const other = comparable(reference);
  const pairs: LikePair<Id, Id | 'reference'>[] = [];
  for (const { id, print } of scripts) {
    const likeness = likenessOf(comparable(print), other);
    const rarity = rarityOf(likeness);
    if (rarity.unusual) pairs.push({ first: id, second: 'reference', likeness, rarity });
  }
  return pairs.sort((a, b) => b.likeness.share - a.likeness.share);
}

type Indices = readonly [number, number];

type Ready = (index: number) => Comparable;

/** Scripts as they are compared, made when they are asked for: of a large stack only the latest are kept. */
function madeReady(scripts: readonly { readonly print: LikenessPrint }[]): Ready {
  const kept = new Map<number, Comparable>();
  return (index) => {
    const known = kept.get(index);
    if (known !== undefined) return known;
    if (kept.size >= 2 * ALL_PAIRS) kept.clear();
    const fresh = comparable(scripts[index]!.print);
    kept.set(index, fresh);
    return fresh;
  };
}

function allPairs(scripts: number): Indices[] {
  const pairs: Indices[] = [];
  for (let i = 0; i < scripts; i++) for (let j = i + 1; j < scripts; j++) pairs.push([i, j]);
  return pairs;
}

/** Pairs spread evenly over the stack, always the same for the same stack. */
function sampled(n: number, ready: Ready, own: (i: number, j: number) => boolean): Likeness[] {
  const found: Likeness[] = [];
  for (let k = 0; k < SAMPLE; k++) {
    const i = k % n;
    const j = (i + 1 + ((k * 7_919) % (n - 1))) % n;
    if (!own(i, j)) found.push(likenessOf(ready(i), ready(j)));
  }
  return found;
}

/** What so many scripts share is what the tune suggests, or what the class was shown: it brings no pair together. */
function mostSharing(scripts: number): number {
  return Math.max(40, Math.floor(scripts / 100));
}
/** Bars (or pairs of bars in one voice) that two scripts must share to be compared in full. */
const LEAST_SHARED = 3;

/**
 * The pairs that share at least three rare traits. A trait is one bar in all its voices, or two bars running in one
 * added voice, pitches counted from the tune's first note there. Two traits with one hash only bring together a pair
 * that is then compared.
 */
function pairsSharingBars(scripts: number, ready: Ready): Indices[] {
  const holders = new Map<number, number[]>();
  const traits = Array.from({ length: scripts }, (_, index) => {
    const own = [...new Set(traitsOf(ready(index)))];
    for (const trait of own) {
      const list = holders.get(trait);
      if (list === undefined) holders.set(trait, [index]);
      else list.push(index);
    }
    return own;
  });
  const most = mostSharing(scripts);
  const pairs: Indices[] = [];
  // How many each later script shares with the one in hand: one row at a time, however many pairs there are.
  const shared = new Uint16Array(scripts);
  for (const [i, own] of traits.entries()) {
    const met: number[] = [];
    for (const list of own.map((trait) => holders.get(trait)!)) {
      if (list.length > most) continue;
      for (const j of list) if (j > i && ++shared[j]! === 1) met.push(j);
    }
    for (const j of met) {
      if (shared[j]! >= LEAST_SHARED) pairs.push([i, j]);
      shared[j] = 0;
    }
  }
  return pairs;
}

function traitsOf({ bars, tune }: Comparable): number[] {
  const traits: number[] = [];
  let before: Partial<Record<AddedVoice, number>> = {};
  for (const [i, { notes }] of bars.entries()) {
    const { shape, from } = tune[i]!;
    const sung = hash(shape);
    const here: Partial<Record<AddedVoice, number>> = {};
    for (const [voice, name] of ADDED.entries())
      if (notes[name].length > 0)
        here[name] = notes[name].reduce(
          (value, { onset, duration, code }) => mixed(mixed(mixed(value, onset), duration), code - from),
          mixed(sung, voice),
        );
    const { A, T, B } = here;
    if (A !== undefined && T !== undefined && B !== undefined) traits.push(mixed(mixed(A, T), B));
    for (const voice of ADDED)
      if (before[voice] !== undefined && here[voice] !== undefined)
        traits.push(mixed(before[voice], here[voice]));
    before = here;
  }
  return traits;
}
