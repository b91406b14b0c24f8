/** How a pupil changed from one draft to the next: mended, still there, new. Matched by the music, not by bar numbers. */
import type { JsonFinding } from '../report/json.ts';
import { staffPlace } from '../score/pitch.ts';
import type { Bar, Score } from '../score/score.ts';
import { textureOf } from '../score/texture.ts';
import { crotchets } from '../score/time.ts';

export interface DraftChange {
  readonly mended: readonly JsonFinding[];
  /** In the later draft's own places. */
  readonly still: readonly JsonFinding[];
  readonly fresh: readonly JsonFinding[];
}

interface Draft {
  readonly score: Score;
  readonly findings: readonly JsonFinding[];
}

/**
 * Compares two drafts. Bars are paired by their soprano (given in both), so that an added or dropped bar, a moved
 * repeat or a new numbering does not make old faults look new; within paired bars a finding is the same when rule,
 * voices and place in the bar agree (half a beat of leeway for a note moved a little).
 */
export function compareDrafts(earlier: Draft, later: Draft): DraftChange {
  const twin = pairBars(earlier.score, later.score);
  const unmatched = new Set(earlier.findings);
  const still: JsonFinding[] = [];
  const fresh: JsonFinding[] = [];
  for (const finding of later.findings) {
    const here = locate(later.score, finding);
    let best: JsonFinding | undefined;
    let bestDistance = Infinity;
    for (const old of unmatched) {
      if (old.rule !== finding.rule || old.voices.join() !== finding.voices.join()) continue;
      const there = locate(earlier.score, old);
      if (twin.get(here.bar) !== there.bar) continue;
      const distance = Math.abs(here.into - there.into);
      if (distance <= 0.5 && distance < bestDistance) {
        best = old;
        bestDistance = distance;
      }
    }
    if (best === undefined) fresh.push(finding);
    else {
      unmatched.delete(best);
      still.push(finding);
    }
  }
  return { mended: [...unmatched], still, fresh };
}

/** The bar a finding begins in, by index, and how many crotchets into it. */
function locate(score: Score, finding: JsonFinding): { bar: number; into: number } {
  const bar = score.bars.findLast(({ at }) => crotchets(at) <= finding.from) ?? score.bars[0];
  return bar === undefined ? { bar: 0, into: 0 } : { bar: bar.index, into: finding.from - crotchets(bar.at) };
}

/** What the soprano does in each bar, as steps from the bar's first note, so that a transposed draft is the same tune. */
function tunes(score: Score): string[] {
  const { tones } = textureOf(score);
  return score.bars.map((bar: Bar) => {
    const here = tones.S.filter(({ at }) => at >= bar.at && at < bar.at + bar.duration);
    const first = here[0];
    if (first === undefined) return `empty ${bar.duration}`;
    return here
      .map((tone) => `${tone.at - bar.at}:${staffPlace(tone.pitch) - staffPlace(first.pitch)}`)
      .join(' ');
  });
}

/**
 * Pairs the bars of two scores so that as many as possible have the same tune, in order (longest common
 * subsequence); bars between two pairs, where equally many are left on both sides, are paired one by one.
 * Gives later bar → earlier bar.
 */
export function pairBars(earlier: Score, later: Score): Map<number, number> {
  const a = tunes(earlier);
  const b = tunes(later);
  const longest: number[][] = Array.from({ length: a.length + 1 }, () =>
    new Array<number>(b.length + 1).fill(0),
  );
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      longest[i]![j] =
        a[i] === b[j] ? longest[i + 1]![j + 1]! + 1 : Math.max(longest[i + 1]![j]!, longest[i]![j + 1]!);
    }
  }
  const pairs = new Map<number, number>();
  let i = 0;
  let j = 0;
  let gapA = 0;
  let gapB = 0;
  const closeGap = (): void => {
    if (i - gapA === j - gapB) for (let k = 0; k < i - gapA; k++) pairs.set(gapB + k, gapA + k);
  };
  while (i < a.length && j < b.length) {
    if (a[i] === b[j]) {
      closeGap();
      pairs.set(j++, i++);
      gapA = i;
      gapB = j;
    } else if (longest[i + 1]![j]! >= longest[i]![j + 1]!) i++;
    else j++;
  }
  i = a.length;
  j = b.length;
  closeGap();
  return pairs;
}
