import { describe, expect, it } from 'vitest';
import { figuresDisagree } from '../../src/rules/figures-disagree.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { check, pinned, scoreOf } from '../support/rules.ts';

const BARS = `key: D major
metre: 4/4
S: F#4 G4 F#4 E4 | D4*4!
A: D4 D4 D4 C#4 | A3*4!
T: A3 B3 A3 A3 | F#3*4!
B: D3 G3 A3 A2 | D3*4!`;

/** What the rule says of these bars with figures under the beats of the first bar. */
function findings(figures: readonly (readonly string[])[], text = BARS) {
  const score = scoreOf(text);
  const written = figures.map((one, beat) => ({ at: beat * CROTCHET, figures: one }));
  const figured = { ...score, figures: written.filter((one) => one.figures.length > 0) };
  return check(figuresDisagree, figured).map((one) => ({ ...pinned(figured, one), says: one.message }));
}

describe('figures-disagree', () => {
  it('finds a sixth that nobody sings', () => {
    expect(findings([[], ['6']])).toEqual([
      {
        bar: '1',
        beat: '2',
        voices: 'SATB',
        notes: 'S:G4 A:D4 T:B3 B:G3',
        says: 'The figures 6 at bar 1, beat 2 ask for E (6) above G3 in the bass, and nobody sings it.',
      },
    ]);
  });

  it('finds an accidental that is not the one asked for', () => {
    expect(findings([[], [], [], ['n']]).map(({ says }) => says)).toEqual([
      'The figures n at bar 1, beat 4 ask for C (n) above A2 in the bass, and nobody sings it.',
    ]);
  });

  it('leaves alone figures that the chords have', () => {
    expect(findings([[], ['5', '3'], ['6', '4'], ['5', '#3']])).toEqual([]);
    expect(findings([['8'], [], [], ['#']])).toEqual([]);
  });

  it('leaves alone what is not written yet, and figures it cannot read', () => {
    expect(findings([[], ['6']], BARS.replace('A: D4 D4', 'A: D4 ?'))).toEqual([]);
    expect(findings([[], ['tasto']])).toEqual([]);
  });
});
