/** Where phrases end without fermatas, and what somebody says about it. */
import { describe, expect, it } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { summarise } from '../../src/report/summary.ts';
import { reviewScore } from '../../src/review/review.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { analyseText } from './reading.ts';

const FOUR = `key: G major
metre: 4/4
upbeat: 1
S: G4 | B4 A4 G4 A4 | B4*2 G4*2~ | A4 B4 C5 B4 | A4*3 D5 | D5 C5 B4 A4 | G4*3 G4 | A4 B4 A4 A4 | G4*3 |
A: D4 | D4 D4 D4 F#4 | G4*2 D4*2 | F#4 G4 G4 G4 | F#4*3 F#4 | G4 E4 D4 F#4 | D4*3 E4 | E4 D4 D4 F#4 | D4*3 |
T: B3 | G3 F#3 B3 D4 | D4*2 B3*2 | D4 D4 E4 D4 | D4*3 A3 | B3 C4 G3 D4 | B3*3 B3 | C4 B3 D4 C4 | B3*3 |
B: G3 | G3 D3 E3 D3 | G3*2 G3*2 | D3 G3 C3 G3 | D3*3 D3 | B2 C3 G3 D3 | G2*3 E3 | A2 B2 D3 D3 | G2*3 |`;

const ends = (text: string) =>
  analyseText(text).phrases.map(({ until, end }) => `${until / CROTCHET} ${end}`);

describe('phrases without fermatas', () => {
  it('end where the melody comes to rest and begins again as it began', () => {
    expect(ends(FOUR.replace('~', ''))).toContain('16 inferred');
    expect(ends(FOUR.replace('~', '')).at(-1)).toBe('32 final bar');
  });

  it('are not changed by a silent last bar', () => {
    const silent = FOUR.replaceAll(/\*3 \|$/gm, '*3 r | r*4 |');
    expect(silent).not.toBe(FOUR);
    expect(ends(silent)).toEqual(ends(FOUR));
  });

  it('are told in the summary', () => {
    const { score } = readNotation(FOUR);
    expect(summarise(reviewScore(score, CHORALE)).sentence).toMatch(/Where no pause is marked/);
  });

  it('end where somebody says so, and nowhere where somebody says not', () => {
    expect(ends(FOUR)).not.toContain('9 inferred');
    const set = FOUR.replace('B4*2 G4*2~', "B4*2' G4*2");
    expect(ends(set)).toContain('7 set');
    const marked = FOUR.replace('A4*3 D5', 'A4*3! D5');
    expect(ends(marked)).toContain('16 fermata');
    expect(ends(marked.replace('A4*3! D5', 'A4*3!~ D5'))).not.toContain('16 fermata');
  });

  it('keep what was said when written out and read again', () => {
    const { score } = readNotation(FOUR.replace('B4*2 G4*2~', "B4*2' G4*2~"));
    const again = readNotation(printNotation(score)).score;
    expect(again.voices.S.flatMap((event) => (event.kind === 'note' && event.phrase) || [])).toEqual([
      'ends',
      'goes on',
    ]);
  });

  it('count as pauses for every rule that asks', () => {
    const { texture } = analyseText(FOUR);
    expect(texture.slices.filter(({ rests }) => rests).length).toBeGreaterThan(0);
  });
});
