import { describe, expect, it } from 'vitest';
import { EXAMPLE_SCHEME } from '../../src/desk/example-scheme.ts';
import { measure } from '../../src/desk/measures.ts';
import type { Criterion } from '../../src/desk/scheme.ts';
import { suggestLevel } from '../../src/desk/suggest.ts';
import { scoreFrom, scriptFrom } from './scripts.ts';

/** The tune has a suspension of its own and a leap of an augmented fourth; the brief gives it whole. */
const TUNE = 'S: C5 C5 B4 C5 | F4 B4 C5*2! |';
const HEAD = 'key: C major\nmetre: 4/4\n';
const BRIEF = scoreFrom(
  `${HEAD}${TUNE}\nA: ? ? ? ? | ? ? ?*2 |\nT: ? ? ? ? | ? ? ?*2 |\nB: ? ? ? ? | ? ? ?*2 |`,
);
const LOWER = 'A: G4 G4 G4 G4 | D4 D4 E4*2 |\nT: E4 D4 D4 E4 | A3 G3 G3*2 |\nB: C3 G3 G3 C3 | D3 G3 C3*2 |';

describe('what is given', () => {
  const text = `${HEAD}${TUNE}\n${LOWER}`;
  const alone = scriptFrom(text);
  const set = scriptFrom(text, BRIEF);
  const rules = (script: typeof alone) => script.facts.findings.map(({ rule }) => rule);

  it('is nobody’s fault: a leap of the tune is the pupil’s only where the pupil wrote the tune', () => {
    expect(rules(alone)).toContain('augmented-leap');
    expect(rules(set)).not.toContain('augmented-leap');
  });

  it('is nobody’s merit: a suspension in the tune counts only where the pupil wrote it', () => {
    expect(alone.facts.counts.ornaments).toEqual({ suspension: 1 });
    expect(set.facts.counts.ornaments).toEqual({});
    expect(alone.facts.strengths.join()).toMatch(/suspension/i);
    expect(set.facts.strengths.join()).not.toMatch(/suspension/i);
  });

  it('is the pupil’s own where it was changed', () => {
    const changed = scriptFrom(text.replace('F4 B4', 'Bb4 E5'), BRIEF);
    expect(rules(changed)).toContain('augmented-leap');
  });

  it('is recognised in another key and with a bar put in', () => {
    const higher = scriptFrom(
      'key: D major\nmetre: 4/4\nS: D5 D5 C#5 D5 | G4 C#5 D5*2! |\nA: A4 A4 A4 A4 | E4 E4 F#4*2 |\nT: F#4 E4 E4 F#4 | B3 A3 A3*2 |\nB: D3 A3 A3 D3 | E3 A3 D3*2 |',
      BRIEF,
    );
    expect(rules(higher)).not.toContain('augmented-leap');
    expect(higher.facts.counts.ornaments).toEqual({});
  });

  it('counts as nothing written: with the tune alone all is still to be done', () => {
    const empty = scriptFrom(
      `${HEAD}${TUNE}\nA: ? ? ? ? | ? ? ?*2 |\nT: ? ? ? ? | ? ? ?*2 |\nB: ? ? ? ? | ? ? ?*2 |`,
      BRIEF,
    );
    expect(empty.facts.counts.unwritten).toBe(1);
    const bassOnly = scriptFrom(
      `${HEAD}${TUNE}\nA: ? ? ? ? | ? ? ?*2 |\nT: ? ? ? ? | ? ? ?*2 |\nB: C3 G3 G3 C3 | D3 G3 C3*2 |`,
      BRIEF,
    );
    expect(bassOnly.facts.counts.unwritten).toBeCloseTo(2 / 3);
  });
});

describe('a suggested level', () => {
  const [chords] = EXAMPLE_SCHEME.criteria;
  const needs = [{ measure: 'different chords' as const, atLeast: 2 }];
  const plain: Criterion = {
    ...chords!,
    levels: [
      { name: 'Low', marks: [0, 1], descriptor: 'Little.', needs: [] },
      { name: 'Middle', marks: [2, 3], descriptor: 'Some.', needs },
      { name: 'High', marks: [4, 5], descriptor: 'Much.', needs },
    ],
  };

  it('is not given where less than two thirds is written, and says so', () => {
    const { facts, findings } = scriptFrom(
      `${HEAD}${TUNE}\nA: ? ? ? ? | ? ? ?*2 |\nT: ? ? ? ? | ? ? ?*2 |\nB: C3 G3 G3 C3 | D3 G3 C3*2 |`,
      BRIEF,
    );
    const suggestion = suggestLevel(chords!, { counts: facts.counts, findings });
    expect(suggestion.level).toBeUndefined();
    expect(suggestion.missing).toEqual([
      '33 % of the beats are written. No level is suggested before two thirds are.',
    ]);
  });

  it('is kept down by faults, and says by how many', () => {
    const { facts, findings } = scriptFrom(`${HEAD}${TUNE}\n${LOWER}`, BRIEF);
    const fault = { ...findings[0], id: 'x', rule: 'parallel-fifths', severity: 'fault', standing: 'open' };
    const ground = (faults: number) => ({
      counts: facts.counts,
      findings: Array.from({ length: faults }, (_, i) => ({ ...fault, id: `x${i}`, from: i })) as never,
    });
    // Two faults may stand anywhere; from three on it matters how thick they stand.
    expect([0, 2, 3, 9].map((faults) => suggestLevel(plain, ground(faults)).level)).toEqual([2, 2, 0, 0]);
    const spoilt = suggestLevel(plain, ground(9));
    expect(spoilt.missing.join(' ')).toMatch(/9 faults stand in 8 crotchets: too many for a higher level\./);
  });

  it('gives its reasons with bars', () => {
    const { facts, findings } = scriptFrom(`${HEAD}${TUNE}\n${LOWER}`);
    expect(measure('suspensions', { counts: facts.counts, findings }).sentence).toBe(
      '1 suspension in bar 1.',
    );
  });
});
