import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { type WaysOut, waysOut } from '../../src/review/ways-out.ts';
import { waysOutInWords } from '../../src/review/ways-out-words.ts';
import { withTone } from '../../src/score/excerpt.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { VOICES } from '../../src/score/score.ts';
import { scoreOf } from '../support/rules.ts';

/** Tenor and bass move in parallel fifths from the first chord to the second. */
const FIFTHS = `key: C major
metre: 4/4
S: E5 D5 E5 C5 | D5 B4 C5*2! |
A: G4 F4 G4 G4 | A4 G4 E4*2! |
T: G3 A3 C4 E4 | F4 D4 G3*2! |
B: C3 D3 C3 C3 | F3 G3 C3*2! |`;

function review(text: string) {
  return reviewScore(scoreOf(text), CHORALE);
}

function waysFrom(text: string, rule: string, locked: ('S' | 'A' | 'T' | 'B')[] = ['S']): WaysOut {
  const reviewed = review(text);
  const finding = reviewed.findings.find((f) => f.rule.id === rule);
  if (finding === undefined) throw new Error(`no ${rule} in the exercise`);
  return waysOut(reviewed, finding.id, { locked })!;
}

describe('ways out', () => {
  it('clear the finding and make no new fault, each of them, in the whole exercise', () => {
    const before = review(FIFTHS);
    const { ways, finding, total } = waysFrom(FIFTHS, 'parallel-fifths');
    expect(total).toBeGreaterThan(0);
    const faults = new Set(before.findings.filter((f) => f.severity === 'fault').map((f) => f.id));
    for (const { tone, pitch } of ways) {
      const after = reviewScore(withTone(before.score, tone, pitch), CHORALE);
      expect(after.findings.map((f) => f.id)).not.toContain(finding.id);
      const fresh = after.findings.filter((f) => f.severity === 'fault' && !faults.has(f.id));
      expect(fresh.map((f) => f.message)).toEqual([]);
    }
  });

  it('count what they list, voice by voice', () => {
    const { ways, counts, total } = waysFrom(FIFTHS, 'parallel-fifths');
    expect(ways.length).toBe(total);
    for (const voice of VOICES)
      expect(ways.filter((way) => way.tone.voice === voice).length).toBe(counts[voice]);
  });

  it('say how each is come to from the note before', () => {
    const { ways, moves, counts } = waysFrom(FIFTHS, 'parallel-fifths');
    const later = ways.filter(({ tone }) => tone.at > 0);
    const told = VOICES.flatMap((voice) => Object.values(moves[voice])).reduce((a, b) => a + b, 0);
    expect(later.length).toBeGreaterThan(0);
    expect(told).toBe(later.length);
    for (const voice of VOICES) expect(moves[voice].leap).toBeLessThanOrEqual(counts[voice]);
  });

  it('leave the given voices alone', () => {
    const { counts } = waysFrom(FIFTHS, 'parallel-fifths', ['S', 'B']);
    expect(counts.S).toBe(0);
    expect(counts.B).toBe(0);
    expect(waysFrom(FIFTHS, 'parallel-fifths', ['S', 'A', 'T', 'B']).total).toBe(0);
  });

  it('stay within reach of each voice', () => {
    for (const { tone, pitch } of waysFrom(FIFTHS, 'parallel-fifths').ways) {
      expect(printPitch(pitch)).not.toBe(printPitch(tone.pitch));
      if (tone.voice === 'T') expect(pitch.octave).toBeLessThan(5);
    }
  });

  it('are the same every time, and none for a finding that is not there', () => {
    const reviewed = review(FIFTHS);
    const { id } = reviewed.findings.find((f) => f.rule.id === 'parallel-fifths')!;
    expect(waysOut(reviewed, id, { locked: ['S'] })).toEqual(waysOut(reviewed, id, { locked: ['S'] }));
    expect(waysOut(reviewed, 'parallel-fifths@1:TB', { locked: ['S'] })).toBeUndefined();
  });

  it('find the plain cure of a wide leap: the note an octave nearer', () => {
    const text = `key: D major
metre: 4/4
S: F#4 F#4 E4 D4! |
A: D4 D4 C#4 D4! |
T: A3 A3 A3 F#3! |
B: F#3 D2 A2 D3! |`;
    const { ways } = waysFrom(text, 'wide-leap');
    expect(ways.map((way) => `${way.tone.id} ${printPitch(way.pitch)}`)).toContain('B@10080 D3');
  });

  it('are told in a sentence that names no note', () => {
    const counts = { S: 0, A: 0, T: 2, B: 1 };
    const none = { step: 0, leap: 0, stay: 0 };
    const moves = { S: none, A: none, T: { ...none, step: 1, leap: 1 }, B: { ...none, stay: 1 } };
    expect(waysOutInWords({ counts, moves, total: 3 })).toBe(
      'There are 3 changes of a single note that would clear this: 2 in the tenor (1 by step, 1 by leap) and 1 in the bass (by staying on the note before).',
    );
    expect(waysOutInWords({ counts: { ...counts, T: 0 }, moves: { ...moves, B: none }, total: 1 })).toBe(
      'There is 1 change of a single note that would clear this: 1 in the bass.',
    );
    expect(waysOutInWords({ counts: { S: 0, A: 0, T: 0, B: 0 }, moves, total: 0 })).toContain('two or more');
  });
});
