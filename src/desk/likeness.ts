/**
 * How much two scripts share of the voices their writers added to the same tune, and how rare that is among
 * harmonisations made apart. It raises a question and accuses nobody: friends work together, teachers show a bar on
 * the board, and a plain tune has plain answers.
 */
import { semitone, staffPlace } from '../score/pitch.ts';
import { endOf, type Score, VOICES, type VoiceName } from '../score/score.ts';
import { textureOf, toneIn } from '../score/texture.ts';
import { CROTCHET } from '../score/time.ts';
import { INDEPENDENT } from './independent.ts';

/**
 * A script as it is compared: for each crotchet the tune's step from the crotchet before, and how far the added
 * voices lie below or above the given one (in staff places and semitones), so that a transposed copy is a copy.
 */
export interface Skeleton {
  readonly tune: readonly string[];
  /** `undefined` where an added voice is silent or not written. */
  readonly added: readonly (string | undefined)[];
  /** The bar printed over each crotchet. */
  readonly bars: readonly string[];
}

/** The voice the others are measured from, and the voices compared. */
const GIVEN: VoiceName = 'S';

export function skeletonOf(score: Score): Skeleton {
  const { slices } = textureOf(score);
  const tune: string[] = [];
  const added: (string | undefined)[] = [];
  const bars: string[] = [];
  let index = 0;
  let before: number | undefined;
  for (let at = 0; at < endOf(score); at += CROTCHET) {
    while (index + 1 < slices.length && slices[index + 1]!.at <= at) index++;
    const slice = slices[index]!;
    const given = toneIn(slice, GIVEN)?.pitch;
    const place = given === undefined ? undefined : staffPlace(given);
    tune.push(place === undefined ? '-' : before === undefined ? '*' : String(place - before));
    before = place ?? before;
    const others = VOICES.filter((voice) => voice !== GIVEN).map((voice) => toneIn(slice, voice)?.pitch);
    added.push(
      given === undefined || others.some((pitch) => pitch === undefined)
        ? undefined
        : others
            .map((pitch) => `${staffPlace(pitch!) - place!}/${semitone(pitch!) - semitone(given)}`)
            .join(','),
    );
    bars.push(slice.bar.number);
  }
  return { tune, added, bars };
}

export interface Likeness {
  /** Crotchets in which both have the tune and all added voices. */
  readonly compared: number;
  /** Crotchets among them in which all added voices agree. */
  readonly agreeing: number;
  /** `agreeing` of `compared`, 0 to 1. */
  readonly share: number;
  /** The longest unbroken agreement, in crotchets. */
  readonly longest: number;
  /** Bars (as printed in the first script) that agree throughout. */
  readonly bars: readonly string[];
}

/** Compares two skeletons of the same tune; crotchets are paired by the tune, as far as both have it. */
export function likeness(a: Skeleton, b: Skeleton): Likeness {
  let compared = 0;
  let agreeing = 0;
  let run = 0;
  let longest = 0;
  const whole = new Map<string, boolean>();
  for (const [i, j] of pairedBeats(a.tune, b.tune)) {
    const [x, y] = [a.added[i], b.added[j]];
    if (x === undefined || y === undefined) {
      run = 0;
      continue;
    }
    compared++;
    const bar = a.bars[i]!;
    if (x === y) {
      agreeing++;
      run++;
      longest = Math.max(longest, run);
      if (!whole.has(bar)) whole.set(bar, true);
    } else {
      run = 0;
      whole.set(bar, false);
    }
  }
  return {
    compared,
    agreeing,
    share: compared === 0 ? 0 : agreeing / compared,
    longest,
    bars: [...whole].filter(([, agrees]) => agrees).map(([bar]) => bar),
  };
}

/** Positions with the same tune, in order. Same tune throughout: one by one; else the longest common subsequence. */
function pairedBeats(a: readonly string[], b: readonly string[]): [number, number][] {
  if (a.length === b.length && a.every((step, i) => step === b[i])) return a.map((_, i) => [i, i]);
  const width = b.length + 1;
  const table = new Uint16Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      table[i * width + j] =
        a[i] === b[j]
          ? table[(i + 1) * width + j + 1]! + 1
          : Math.max(table[(i + 1) * width + j]!, table[i * width + j + 1]!);
    }
  }
  const pairs: [number, number][] = [];
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    if (a[i] === b[j]) pairs.push([i++, j++]);
    else if (table[(i + 1) * width + j]! >= table[i * width + j + 1]!) i++;
    else j++;
  }
  return pairs;
}

/** Fewer crotchets than this say nothing. */
export const LEAST_COMPARED = 12;

/** How rare an agreement is among independent harmonisations of one tune. */
export function rarity({ share, longest }: Pick<Likeness, 'share' | 'longest'>): {
  /** Independent pairs that agree at least so much. */
  readonly asMuch: number;
  readonly pairs: number;
  readonly unusual: boolean;
  readonly sentence: string;
} {
  const { shares, runs } = INDEPENDENT;
  const pairs = shares.length;
  const asMuch = shares.filter((other) => other >= share).length;
  const asLong = runs.filter((other) => other >= longest).length;
  // Raised where no more than one independent pair in a hundred comes so near.
  const unusual = asMuch <= pairs / 100 || asLong <= pairs / 100;
  const most = Math.max(...shares);
  return {
    asMuch,
    pairs,
    unusual,
    sentence:
      `${percent(share)} of the beats have the same alto, tenor and bass. Of ${pairs} pairs of chorales that set one tune ` +
      `independently, ${asMuch === 0 ? 'none agrees' : asMuch === 1 ? 'one agrees' : `${asMuch} agree`} in as much; the nearest pair shares ${percent(most)}.`,
  };
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** A pair of scripts, by whatever they are called. */
export interface LikePair<Id> extends Likeness {
  readonly first: Id;
  readonly second: Id;
}

/** Crotchets in a stretch by which pairs are found without comparing all with all. */
const STRETCH = 6;
/** A stretch that so many scripts share is what the tune suggests: it makes no pair. */
const COMMON = 60;

/**
 * Pairs of scripts that agree unusually, the likest first. Scripts are first brought together by stretches of six
 * crotchets that they share, so that ten thousand scripts need no fifty million comparisons; then each pair is compared
 * in full.
 */
export function likePairs<Id>(
  scripts: Iterable<{ readonly id: Id; readonly skeleton: Skeleton }>,
): LikePair<Id>[] {
  const all: { id: Id; skeleton: Skeleton }[] = [];
  const holders = new Map<string, number[]>();
  for (const script of scripts) {
    const index = all.push(script) - 1;
    for (const stretch of new Set(stretchesOf(script.skeleton))) {
      const list = holders.get(stretch);
      if (list === undefined) holders.set(stretch, [index]);
      else if (list.length <= COMMON) list.push(index);
    }
  }
  const seen = new Set<number>();
  const pairs: LikePair<Id>[] = [];
  for (const list of holders.values()) {
    if (list.length > COMMON) continue;
    for (const [k, i] of list.entries()) {
      for (const j of list.slice(k + 1)) {
        const key = i * all.length + j;
        if (seen.has(key)) continue;
        seen.add(key);
        const found = likeness(all[i]!.skeleton, all[j]!.skeleton);
        if (found.compared >= LEAST_COMPARED && rarity(found).unusual) {
          pairs.push({ first: all[i]!.id, second: all[j]!.id, ...found });
        }
      }
    }
  }
  return pairs.sort((a, b) => b.share - a.share || b.longest - a.longest);
}

function stretchesOf({ added }: Skeleton): string[] {
  const stretches: string[] = [];
  for (let i = 0; i + STRETCH <= added.length; i++) {
    const stretch = added.slice(i, i + STRETCH);
    if (stretch.every((beat) => beat !== undefined)) stretches.push(stretch.join(' '));
  }
  return stretches;
}
