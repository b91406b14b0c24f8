/** Chords, dominants and dissonances by the notes alone, beside what the reading makes of them. */
import { describe, expect, it } from 'vitest';
import { bareDissonances, givesWay, isPrepared } from '../../src/harmony/by-ear/bare-dissonances.ts';
import { heardSteps } from '../../src/harmony/by-ear/heard-steps.ts';
import { hearingAt, hearings } from '../../src/harmony/by-ear/hearing.ts';
import { dominantIn, keysNearTo } from '../../src/harmony/by-ear/keys-near.ts';
import { printKey } from '../../src/harmony/words/labels.ts';
import { printNoteName } from '../../src/score/pitch.ts';
import { analyseText } from './reading.ts';

const CROTCHET = 10_080;

const CADENCE = `key: C major
metre: 4/4
S: E5 D5 D5*2 | C5*4! |
A: G4 C5 C5 B4 | G4*4! |
T: C4 A3 G3*2 | E3*4! |
B: C3 F3 G3*2 | C3*4! |`;

describe('hearings', () => {
  it('names what sounds as a plain chord, and is silent on what does not', () => {
    const { texture } = analyseText(CADENCE);
    const roots = hearings(texture).map(
      ({ at, members }) => `${at / CROTCHET} ${printNoteName(members.root)}`,
    );
    // F A C D on the second beat is a seventh chord on D; G C D on the third is no chord at all.
    expect(roots).toEqual(['0 C', '1 D', '3 G', '4 C']);
    expect(hearingAt(texture, 2 * CROTCHET)).toBeUndefined();
  });

  it('takes two notes for a triad only with the root in the bass', () => {
    const { texture } = analyseText(`key: C major
metre: 4/4
S: E5 E5 C5 C5!|
A: C5 C5 G4 G4!|
T: C4 C4 C4 C4!|
B: C3 E3 G3 C3!|`);
    const heard = hearings(texture).map(({ at, until }) => [at / CROTCHET, until / CROTCHET]);
    expect(heard).toEqual([[0, 1]]);
  });

  it('joins the slices in which the chord stays the same', () => {
    const { texture } = analyseText(`key: C major
metre: 4/4
S: E5 G5 E5 D5!|
A: C5 C5 C5 B4!|
T: G4 G4 G4 G4!|
B: C3 E3 C3 G3!|`);
    expect(hearings(texture).map(({ at, until }) => [at / CROTCHET, until / CROTCHET])).toEqual([
      [0, 3],
      [3, 4],
    ]);
  });
});

describe('keys near', () => {
  it('begins with the key of the reading, and finds the dominant in it', () => {
    const analysis = analyseText(CADENCE);
    expect(printKey(keysNearTo(analysis, 0)[0]!)).toBe('C major');
    const dominant = dominantIn(analysis, hearingAt(analysis.texture, 3 * CROTCHET)!);
    expect(dominant && [printNoteName(dominant.leading), printNoteName(dominant.tonic)]).toEqual(['B', 'C']);
  });

  it('reads a step between triads in root position by degrees', () => {
    const analysis = analyseText(`key: C major
metre: 4/4
S: C5 C5 C5 B4 | C5*4! |
A: G4 A4 A4 G4 | G4*4! |
T: E4 F4 E4 D4 | E4*4! |
B: C3 F3 A3 G3 | C3*4! |`);
    const inC = heardSteps(analysis).filter(({ key }) => printKey(key) === 'C major');
    expect(inC.map(({ fromDegree, toDegree }) => `${fromDegree}-${toDegree}`)).toEqual([
      '1-4',
      '4-6',
      '6-5',
      '5-1',
    ]);
  });
});

describe('bareDissonances', () => {
  it('tells a prepared dissonance that gives way from one that is leapt to', () => {
    const [held] = bareDissonances(analyseText(CADENCE).texture).filter(
      ({ tone, slice }) => tone.voice === 'A' && slice.at === 2 * CROTCHET,
    );
    expect(held && isPrepared(held) && givesWay(held)).toBe(true);
    const leapt = bareDissonances(
      analyseText(CADENCE.replace('A: G4 C5 C5 B4', 'A: G4 F4 C5 B4')).texture,
    ).find(({ tone, slice }) => tone.voice === 'A' && slice.at === 2 * CROTCHET);
    expect(leapt && isPrepared(leapt)).toBe(false);
  });
});
