/** Bars that a voice leaves blank, and last bars that give back the upbeat. */
import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { withBlanks } from '../../src/score/blanks.ts';
import { VOICES } from '../../src/score/score.ts';
import { crotchets } from '../../src/score/time.ts';

const gaps = (text: string) => {
  const score = withBlanks(readNotation(text).score);
  return VOICES.flatMap((voice) =>
    score.voices[voice].flatMap(({ kind, at, duration }) =>
      kind === 'gap' ? [`${voice} ${crotchets(at)}–${crotchets(at + duration)}`] : [],
    ),
  );
};

const TUNE = `key: F major
metre: 4/4
upbeat: 1
S: F4 | A4 A4 G4 F4 | Bb4 Bb4 A4 A4 | D5 C5 C5 B4 | C5*3 |`;

describe('a voice that rests through a whole bar while another sings', () => {
  it('is still to be written there, and in the rests beside', () => {
    expect(
      gaps(`key: C major
metre: 4/4
S: E4 D4 C4 D4 | E4 F4 E4 D4 | C4*4 |
B: C3 G3 A3 r | r*4 | r*4 |`),
    ).toContain('B 3–4');
  });

  it('is told of as what is to be written, not as resting, and no cadence is missed', () => {
    const text = `${TUNE}
A: C4 | F4 F4 E4 C4 | F4 D4 F4 r | r*4 | r*3 |
T: A3 | C4 C4 C4 A3 | F3 Bb3 C4 r | r*4 | r*3 |
B: F3 | F3 F3 C3 F3 | D3 Bb2 F3 r | r*4 | r*3 |`;
    const { findings } = reviewScore(readNotation(text).score, CHORALE);
    expect(findings.filter(({ severity }) => severity === 'fault')).toEqual([]);
    const unwritten = findings.filter(({ rule }) => rule.id === 'unfinished');
    expect(unwritten.map(({ severity }) => severity)).toEqual(['remark', 'remark', 'remark']);
    expect(unwritten[0]!.message).toBe('The alto is still to be written for 8 beats from bar 2, beat 4.');
  });

  it('but not where it rests a beat, nor where nobody sings', () => {
    expect(
      gaps(`key: C major
metre: 4/4
S: E4 D4 C4 D4 | E4*4! | r*4 |
A: C4 r C4 B3 | C4*4! | r*4 |
T: G3 G3 G3 G3 | G3*4! | r*4 |
B: C3 G3 A3 G3 | C3*4! | r*4 |`),
    ).toEqual([]);
  });
});

describe('a last bar that gives back the upbeat', () => {
  const lacks = (text: string) =>
    reviewScore(readNotation(text).score, CHORALE).findings.filter(
      ({ rule, voices }) => rule.id === 'bar-length' || (rule.id === 'unfinished' && voices.includes('S')),
    );

  it.each([
    ['with its barline', TUNE],
    ['without', TUNE.replace(/ \|$/, '')],
    ['where the upbeat follows rests', TUNE.replace('upbeat: 1\nS: F4', 'S: r*3 F4')],
    ['before empty bars', `${TUNE} r*4 | r*4 |`],
  ])('is whole %s', (_, text) => {
    expect(lacks(text)).toEqual([]);
  });

  it('closes as fully with empty bars after it as without', () => {
    const whole = `key: C major
metre: 4/4
S: E5 F5 D5 B4 | C5*4 |
A: G4 A4 G4 F4 | E4*4 |
T: C4 C4 B3 D4 | C4*4 |
B: C3 F3 G3 G3 | C3*4 |`;
    for (const text of [whole, whole.replaceAll(/\|$/gm, '| r*4 | r*4 |')]) {
      const { analysis, findings } = reviewScore(readNotation(text).score, CHORALE);
      expect(analysis.cadences.at(-1)).toMatchObject({ kind: 'perfect', full: true });
      expect(findings.filter(({ rule }) => rule.id === 'weak-cadence')).toEqual([]);
    }
  });

  it('is not where it is longer or shorter than that', () => {
    expect(lacks(TUNE.replace('C5*3 |', 'C5*2')).map(({ message }) => message)).toEqual([
      'The soprano is still to be written for 2 beats from bar 4, beat 3.',
    ]);
  });
});
