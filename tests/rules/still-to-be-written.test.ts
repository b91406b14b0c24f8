/** Questions of chords that a voice still to be written could answer are not asked yet. */
import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';

function rulesIn(text: string): string[] {
  return reviewScore(readNotation(text).score!, CHORALE).findings.map(({ rule }) => rule.id);
}

/** The diminished triad at beat 2, and the tenor's notes. */
const leading = (tenor: string) => `key: C major
metre: 4/4
S: E5 D5 E5 D5 | C5*4! |
A: G4 F4 G4 F4 | E4*4! |
T: ${tenor} |
B: C3 B2 C3 G2 | C3*4! |`;

/** Its root twice. */
const doubled = (tenor: string) => `key: C major
metre: 4/4
S: C5 B4 C5 B4 | C5*4! |
A: G4 F4 E4 D4 | E4*4! |
T: ${tenor} |
B: C3 D3 C3 G2 | C3*4! |`;

describe('while the tenor is to be written', () => {
  const open = '? ? ? ? | ?*4';

  it('its root may make a seventh chord of a diminished triad', () => {
    expect(rulesIn(leading(open))).not.toContain('diminished-root-position');
    expect(rulesIn(leading('C4 G3 C4 G3 | G3*4!'))).not.toContain('diminished-root-position');
    expect(rulesIn(leading('C4 D4 C4 G3 | G3*4!'))).toContain('diminished-root-position');
  });

  it('what is doubled in the chord is not said before the chord is known', () => {
    const rule = 'doubled-diminished-root';
    expect(rulesIn(doubled(open))).not.toContain(rule);
    expect(rulesIn(doubled('E4 B3 C4 G3 | G3*4!'))).toContain(rule);
  });
});
