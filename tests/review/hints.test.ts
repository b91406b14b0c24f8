import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { hintsFor } from '../../src/review/hints.ts';
import { reviewScore } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';
import { hintFaults } from '../support/hint-faults.ts';
import { scoreOf } from '../support/rules.ts';

const EXAMPLES = RULES.flatMap((rule) =>
  rule.examples.wrong.map(({ text, figures }, index) => {
    const score = scoreOf(text);
    return [`${rule.id} ${index + 1}`, figures === undefined ? score : { ...score, figures }] as const;
  }),
);

const told = (score: ReturnType<typeof scoreOf>) => {
  const { findings, analysis } = reviewScore(score, CHORALE);
  return findings.map((finding) => ({ finding, hints: hintsFor(analysis, finding) }));
};

describe.each(EXAMPLES)('the hints about the wrong example of %s', (_name, score) => {
  it('belong to their places, and name no note to write and none of a given voice to change', () => {
    const review = reviewScore(score, CHORALE);
    for (const given of [['S'], ['S', 'B'], ['S', 'A', 'T', 'B']] as const)
      expect(hintFaults(review, given)).toEqual([]);
  });
});

it('tell two places against one rule apart', () => {
  const twice = `key: C major
metre: 4/4
S: C5 B4 C5*2 | C5 D5 C5*2! |
A: G4 G4 A4*2 | A4 G4 E4*2! |
T: E4 D4 E4*2 | E4 D4 C4*2! |
B: C3 G3 A3*2 | A3 G3 C3*2! |`;
  const fifths = told(scoreOf(twice)).filter(({ finding }) => finding.rule.id === 'parallel-fifths');
  expect(fifths.length).toBeGreaterThan(1);
  expect(new Set(fifths.map(({ hints }) => hints[0])).size).toBe(fifths.length);
});

it('speak of beats and not of other notes where a bar does not add up, and of an upbeat where it may be one', () => {
  const short = `key: G major
metre: 4/4
S: B4 | A4 G4 A4 B4 | A4*2 G4! |
A: G4 | F#4 E4 F#4 G4 | F#4*2 D4! |
T: D4 | D4 B3 D4 D4 | D4*2 B3! |
B: G3 | D3 E3 D3 G3 | D3*2 G2! |`;
  const hints = told(scoreOf(short))
    .filter(({ finding }) => finding.rule.id === 'bar-length')
    .map(({ hints }) => hints.join(' '));
  expect(hints).toHaveLength(2);
  expect(hints.join()).not.toContain('Free to move');
  expect(hints[0]).toContain('If this bar is an upbeat, mark it as one');
  expect(hints[1]).not.toContain('upbeat');
});
