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

/** Over the bass's passing B: a seventh chord by its notes, of which the soprano's A would be the seventh. */
const passing = (tenor: string) => `key: A major
metre: 4/4
S: A4 A4 E4 G#4 | A4*4! |
A: E4 D4 C#4 E4 | E4*4! |
T: ${tenor} |
B: C#3 B2 A2 E3 | A2*4! |`;

/** The tonic goes straight to the dominant, unless the tenor makes another chord of it. */
const straight = (tenor: string) => `key: C major
metre: 4/4
S: E5 D5 C5 B4 | C5*4! |
A: G4 G4 G4 G4 | G4*4! |
T: ${tenor} |
B: C3 B2 E3 G3 | C3*4! |`;

/** The raised sixth of A minor in the bass sinks again. */
const raised = (tenor: string) => `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: A4 D4 E4 G#4 | E4*4! |
T: ${tenor} |
B: A3 F#3 E3 E3 | A2*4! |`;

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

  it('a note is no seventh that is one only until the tenor comes', () => {
    expect(rulesIn(passing(open))).not.toContain('unresolved-seventh');
    expect(rulesIn(passing('A3 F#3 A3 B3 | C#4*4!'))).toContain('unresolved-seventh');
  });

  it('the tenor may make the chord that leads to the dominant', () => {
    expect(rulesIn(straight(open))).not.toContain('missing-predominant');
    expect(rulesIn(straight('C4 D4 C4 D4 | E4*4!'))).toContain('missing-predominant');
  });

  it('the sixth degree may belong to another key', () => {
    expect(rulesIn(raised(open))).not.toContain('minor-scale-degrees');
    expect(rulesIn(raised('E4 A3 A3 D4 | C4*4!'))).toContain('minor-scale-degrees');
  });

  it('nor is a note called misspelt that the missing voice could make a chord of', () => {
    const raised = (alto: string) => `key: E minor
metre: 4/4
S: C#5 D#5 E5 D5 | D5*4! |
A: ${alto} |
T: E4 F#4 (E4 C#4) (D4 F#4) | F#4*4! |
B: A3 (G#3 F#3) (G#3 A#3) B3 | B3*4! |`;
    for (const alto of ['?*4 | ?*4', 'A4 A4 B4 C#5 | F#4*4!']) {
      const told = rulesIn(raised(alto));
      expect(told).not.toContain('misspelt-note');
      expect(told).not.toContain('unresolved-augmented-sixth');
    }
  });
});
