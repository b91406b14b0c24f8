/**
 * Checks from outside. All from memory of the books named; none of them is quoted.
 *
 * Ranges: Aldwell and Schachter, Harmony and Voice Leading, print S C4–G5, A G3–C5, T C3–G4, B E2–C4; Kostka and Payne,
 * Tonal Harmony, give alto and bass a tone more at the top. Consecutives: the cases that every textbook works through,
 * from Fux, Gradus ad Parnassum (1725), on.
 */
import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { scoreOf } from '../support/rules.ts';

const RANGES = {
  S: { low: 'C4', high: 'G5', tooLow: 'F3', tooHigh: 'C6' },
  A: { low: 'G3', high: 'C5', tooLow: 'D3', tooHigh: 'G5' },
  T: { low: 'C3', high: 'G4', tooLow: 'G2', tooHigh: 'C5' },
  B: { low: 'E2', high: 'C4', tooLow: 'B1', tooHigh: 'G4' },
} as const;

function findings(text: string, family?: string) {
  const { findings: found } = reviewScore(scoreOf(text), CHORALE);
  return found
    .filter((finding) => family === undefined || finding.rule.family === family)
    .map((finding) => `${finding.rule.id} ${finding.voices.join('')} ${finding.severity}`);
}

describe('textbook ranges', () => {
  it.each(Object.entries(RANGES))('%s may sing to both ends of its range', (voice, { low, high }) => {
    const ids = findings(`${voice}: ${low} ${high} ${low} ${high} |`);
    expect(ids.filter((id) => id.startsWith('voice-range'))).toEqual([]);
  });

  it.each(Object.entries(RANGES))('%s may not sing a fourth beyond them', (voice, { tooLow, tooHigh }) => {
    for (const note of [tooLow, tooHigh])
      expect(findings(`${voice}: ${note}*4 |`)).toContain(`voice-range ${voice} fault`);
  });
});

describe('consecutives that every textbook prints', () => {
  it('IV to V in root position with all voices rising: fifths and octaves', () => {
    expect(
      findings(
        `key: C major
metre: 2/4
S: C5 D5 |
A: F4 G4 |
T: A3 B3 |
B: F3 G3 |`,
        'consecutives',
      ),
    ).toEqual(['parallel-fifths SA fault', 'parallel-fifths SB fault', 'parallel-octaves AB fault']);
  });

  it('IV to V with the upper voices falling against the bass: nothing', () => {
    expect(
      findings(
        `key: C major
metre: 2/4
S: C5 B4 |
A: A4 G4 |
T: F4 D4 |
B: F3 G3 |`,
        'consecutives',
      ),
    ).toEqual([]);
  });

  it('V to vi with the leading note falling along: fifths and octaves', () => {
    const found = findings(
      `key: C major
metre: 2/4
S: D5 E5 |
A: B4 C5 |
T: G4 A4 |
B: G3 A3 |`,
      'consecutives',
    );
    expect(found).toContain('parallel-fifths SB fault');
    expect(found).toContain('parallel-octaves TB fault');
  });

  it('V to vi with the third doubled: nothing', () => {
    expect(
      findings(
        `key: C major
metre: 2/4
S: D5 C5 |
A: B4 C5 |
T: G4 E4 |
B: G3 A3 |`,
        'consecutives',
      ),
    ).toEqual([]);
  });

  it('two chords a third apart that only slide: three consecutives at once', () => {
    expect(
      findings(
        `key: C major
metre: 2/4
S: C5 A4 |
A: G4 E4 |
T: E4 C4 |
B: C3 A2 |`,
        'consecutives',
      ),
    ).toEqual(['parallel-fifths AB fault', 'parallel-octaves SB fault']);
  });

  it('the perfect close: leading note up, bass down a fifth, no consecutives', () => {
    expect(
      findings(
        `key: C major
metre: 2/4
S: B4 C5 |
A: D4 E4 |
T: G3 G3 |
B: G2 C3 |`,
        'consecutives',
      ),
    ).toEqual([]);
  });

  it('horn fifths in the outer voices: exposed only where the upper one leaps', () => {
    expect(
      findings(
        `key: C major
metre: 3/4
S: C4 D4 E4 |
A: r r r |
T: r r r |
B: E3 G3 C4 |`,
        'consecutives',
      ),
    ).toEqual([]);
  });
});
