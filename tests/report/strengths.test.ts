import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { scriptFindings } from '../../src/desk/finding.ts';
import { applyDecisions, feedbackFor } from '../../src/desk/index.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { strengthsOf } from '../../src/report/strengths.ts';
import { toWorkOn } from '../../src/report/to-work-on.ts';
import { reviewScore } from '../../src/review/review.ts';

const reviewed = (text: string) => reviewScore(readNotation(text).score, CHORALE);
const ids = (text: string) => strengthsOf(reviewed(text)).map((s) => s.id);

const PLAIN = `key: C major
metre: 4/4
S: C5 D5 E5 C5 | D5 B4 C5*2! |
A: G4 G4 G4 G4 | F4 G4 G4*2! |
T: E4 B3 C4 E4 | A3 D4 E4*2! |
B: C4 G3 C3 C3 | F3 G3 C3*2! |`;
// The alto's C, held over the dominant, falls to B: a 4–3 suspension.
const SUSPENDED = PLAIN.replace('B4 C5*2!', 'D5 C5*2!').replace(
  'A: G4 G4 G4 G4 | F4 G4',
  'A: G4 G4 G4 G4 | C5 (C5 B4)',
);
const FIFTHS = PLAIN.replace('A: G4 G4', 'A: G4 A4')
  .replace('T: E4 B3', 'T: E4 F4')
  .replace('B: C4 G3', 'B: C3 D3');

describe('strong points', () => {
  it('praise nothing where nothing is written', () => {
    expect(strengthsOf(reviewed('S: C5 ?*3 |'))).toEqual([]);
  });
  it('name a full close', () => {
    const close = strengthsOf(reviewed(PLAIN)).find((s) => s.id === 'close');
    expect(close?.sentence).toMatch(/perfect cadence in C major, both chords in root position/);
  });
  it('name a suspension that is right, with its place', () => {
    const found = strengthsOf(reviewed(SUSPENDED)).find((s) => s.id === 'suspensions');
    expect(found?.sentence).toMatch(/suspension in the alto.*bar 2, beat 2/);
    expect(ids(PLAIN)).not.toContain('suspensions');
  });
  it('come strongest first', () => {
    const weights = strengthsOf(reviewed(SUSPENDED)).map((s) => s.weight);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    expect(weights.every((w) => w > 0 && w <= 1)).toBe(true);
  });
});

describe('what to work on', () => {
  it('puts faults before queries and says where first', () => {
    const [first] = toWorkOn(reviewed(FIFTHS));
    expect(first?.rule.family).toBe('consecutives');
    expect(first?.sentence).toMatch(/^Parallel fifths; in bar 1, beat 1: /);
  });
  it('says at most so many', () => {
    expect(toWorkOn(reviewed(FIFTHS), 1)).toHaveLength(1);
    expect(toWorkOn(reviewed('S: C5*4 |\nA: ?*4 |'))).toEqual([]);
  });

  it.each(['fault-consecutives', 'fault-chords', 'fault-melody', 'fault-cadences'])(
    'weighs %s as the desk does',
    (name) => {
      const review = reviewed(readFileSync(`fixtures/exercises/${name}.txt`, 'utf8'));
      const judged = applyDecisions('x', scriptFindings(review), []).findings;
      const sheet = feedbackFor({ strengths: [] }, judged).toWorkOn.map(({ rule }) => rule);
      expect(toWorkOn(review).map(({ rule }) => rule.id)).toEqual(sheet);
      expect(sheet).not.toEqual([]);
    },
  );
});
