import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { placesInWords } from '../../src/report/mark-words.ts';
import { marksOf } from '../../src/review/marks.ts';
import { reviewScore } from '../../src/review/review.ts';
import { scoreOf } from '../support/rules.ts';

const wordsOf = (text: string, rule: string) => {
  const { score, findings } = reviewScore(scoreOf(text), CHORALE);
  const mark = marksOf(findings).find(({ slips }) => slips[0].finding.rule.id === rule);
  return placesInWords(score, mark!);
};

/** Root-position chords in a row. */
const CHAIN = `key: G major
metre: 4/4
upbeat: 1
S: B4 | B4 C5 D5 B4 | A4 B4 A4*2! | B4 C5 B4 A4 | G4 A4 G4*2! |
A: G4 | G4 G4 A4 G4 | E4 D4 F#4*2! | G4 E4 E4 F#4 | E4 F#4 D4*2! |
T: D4 | D4 E4 F#4 D4 | C4 G3 D4*2! | D4 A3 G3 D4 | C4 D4 B3*2! |
B: G3 | G3 C3 D3 G3 | A2 G2 D3*2! | G3 A2 E3 D3 | C3 D3 G2*2! |`;

/** The dominant is minor three times, once at the last close. */
const UNRAISED = `key: E minor
metre: 4/4
S: E4 G4 F#4 G4 | A4 F#4 G4 F#4! | G4 A4 B4 C5 | B4 A4 G4*2! |
A: B3 E4 D4 E4 | E4 D4 D4 D4! | D4 D4 D4 E4 | E4 D4 B3*2! |
T: G3 B3 B3 B3 | C4 B3 B3 B3! | B3 F#3 G3 A3 | B3 F#3 E3*2! |
B: E3 E3 B2 E3 | A2 D3 G2 B2! | G3 D3 G3 A2 | E3 B2 E3*2! |`;

describe('the places of a mark', () => {
  const fifths = wordsOf(CHAIN, 'parallel-fifths');

  it('are told in full once, and then by their notes', () => {
    expect(fifths[0]!.sentence).toBe('bar 1, beat 2: Alto and bass move in parallel fifths: G4–C3 to A4–D3.');
    expect(fifths[1]!.sentence).toBe('bar 2, beat 1, alto and bass: E4–A2 to D4–G2.');
    expect(fifths.slice(1).every(({ sentence }) => !sentence.includes('parallel'))).toBe(true);
  });

  it('have what follows from them by name and place', () => {
    expect(fifths[0]!.follows).toBe('Follows from it: parallel octaves (soprano and bass).');
    expect(fifths.map(({ follows }) => follows).join(' ')).toContain('the same again (');
    expect(wordsOf(CHAIN, 'seventh-leap')[0]!.follows).toBe('');
  });

  it('say where one is lighter than the mark, and say another sentence whole', () => {
    const words = wordsOf(UNRAISED, 'unraised-leading-note').map(({ sentence }) => sentence);
    expect(words.length).toBeGreaterThan(1);
    expect(words.some((sentence) => / \(query\): /.test(sentence))).toBe(true);
    expect(words.filter((sentence) => sentence.includes('seventh degree'))).toHaveLength(words.length);
  });
});
