/** What is still to be written, told in as few sentences as will do. */
import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { summarise, toWriteListed } from '../../src/report/summary.ts';
import { isUnwritten } from '../../src/review/marks.ts';
import { reviewScore } from '../../src/review/review.ts';
import { toWriteInWords } from '../../src/rules/unfinished.ts';

const reviewOf = (text: string) => reviewScore(readNotation(text).score, CHORALE);
const told = (text: string) => {
  const { score, findings } = reviewOf(text);
  return toWriteInWords(score, findings.filter(isUnwritten));
};

describe('what is still to be written', () => {
  it('is one sentence for a tune alone', () => {
    expect(told('key: C major\nmetre: 4/4\nS: E4 D4 C4 D4 | E4*4 |')).toEqual([
      'Alto, tenor and bass are still to be written.',
    ]);
  });

  it('puts voices together that lack the same beats, and leaves others by themselves', () => {
    expect(
      told(`key: C major
metre: 4/4
S: E4 D4 C4 D4 | E4*4 |
A: ? ? G3 B3 | C4*4 |
T: ? ? E3 G3 | ?*4 |
B: C3 G3 C3 G3 | C3*4 |`),
    ).toEqual([
      'Alto and tenor are still to be written for 2 beats from bar 1, beat 1.',
      'The tenor is still to be written for 4 beats from bar 2, beat 1.',
    ]);
  });

  it('is told by the summary where one sentence will do, and else counted there and listed', () => {
    const alone = reviewOf('key: C major\nmetre: 4/4\nS: E4 D4 C4 D4 | E4*4 |');
    expect(summarise(alone).sentence).toBe(
      'Nothing to mend was found. Alto, tenor and bass are still to be written.',
    );
    expect(toWriteListed(alone)).toEqual([]);
    const begun = reviewOf('key: C major\nmetre: 4/4\nS: E4 D4 C4 D4 | E4*4 |\nB: C3 G3 ? ? | C3*4 |');
    expect(summarise(begun).sentence).toMatch(/18 crotchets are still to be written\.$/);
    expect(toWriteListed(begun)).toHaveLength(2);
  });
});
