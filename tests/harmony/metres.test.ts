/** What is counted in minims or quavers is read as the same music counted in crotchets. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/harmony/reading/model/grid.ts';
import { phrasesOf } from '../../src/harmony/reading/phrases.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { exerciseText } from '../support/exercises.ts';
import { analyseText, numerals } from './reading.ts';

const METRE = /^metre: (\d+)\/4$/m;
const EXERCISES = readdirSync(new URL('../../fixtures/exercises/', import.meta.url))
  .filter((file) => file.endsWith('.txt'))
  .map((file) => file.slice(0, -4))
  .filter((name) => METRE.test(exerciseText(name)) && exerciseText(name).match(/^metre:/gm)?.length === 1);

describe('the note value of the beat', () => {
  it.each(EXERCISES)('changes nothing in %s', (name) => {
    const plain = analyseText(exerciseText(name));
    for (const unit of [2, 8]) {
      const other = analyseText(exerciseText(name).replace(METRE, `metre: $1/${unit}`));
      expect(numerals(other)).toBe(numerals(plain));
      expect(other.chords.map(({ at }) => (at * unit) / 4)).toEqual(plain.chords.map(({ at }) => at));
      expect(other.cadences.map(({ kind }) => kind)).toEqual(plain.cadences.map(({ kind }) => kind));
    }
  });

  it.each([
    ['4/4', 1],
    ['3/2', 2],
    ['3/8', 0.5],
    ['6/8', 1],
    ['6/4', 1],
  ])('is in %s so many crotchets', (metre, crotchets) => {
    const voice = `${metre.split('/')[0]}`;
    const { texture } = analyseText(
      `key: C major\nmetre: ${metre}\nS: E4*${voice} |\nA: C4*${voice} |\nT: G3*${voice} |\nB: C3*${voice} |`,
    );
    expect(gridOf(texture, phrasesOf(texture)).beat).toBe(crotchets * CROTCHET);
  });

  it('is that of the metre which lasts longest', () => {
    const { texture } = analyseText(`key: C major
metre: 4/4
S: E4*4 |
A: C4*4 |
T: G3*4 |
B: C3*4 |

metre: 3/2
S: E4*3 | E4*3 |
A: C4*3 | C4*3 |
T: G3*3 | G3*3 |
B: C3*3 | C3*3 |`);
    expect(gridOf(texture, phrasesOf(texture)).beat).toBe(2 * CROTCHET);
  });
});
