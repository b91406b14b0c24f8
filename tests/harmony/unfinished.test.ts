/** The reading of what is half written, wrong or hardly there: it never throws, and says no more than it can. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import { memberOf } from '../../src/harmony/questions/members.ts';
import { buildScore, type DraftEvent } from '../../src/score/build.ts';
import { STEPS } from '../../src/score/pitch.ts';
import { VOICES } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { analyseText, numerals } from './reading.ts';

describe('unfinished exercises', () => {
  it('reads soprano and bass alone by what they imply', () => {
    const analysis = analyseText(`key: G major
metre: 4/4
S: B4 A4 G4 F#4 | G4*4! |
B: G3 D3 E3 D3 | G2*4! |`);
    expect(numerals(analysis)).toBe('G major: I V vi V I');
  });

  it('speaks of no tierce while nobody sings the third', () => {
    const close = (alto: string) =>
      analyseText(`key: C minor
metre: 4/4
S: G4 F4 D4 D4 | C4*4! |
A: ? ? ? ? | ${alto} |
T: ?*4 | ?*4 |
B: C3 Ab2 G2 G2 | C3*4! |`).cadences.at(-1)!;
    expect(close('?*4')).toMatchObject({ kind: 'perfect', tierce: false });
    expect(close('E4*4')).toMatchObject({ kind: 'perfect', tierce: true });
  });

  it('reads a melody alone as no chords, and its phrases all the same', () => {
    const analysis = analyseText(`key: G major
metre: 4/4
S: G4 A4 B4 C5 | D5*2 D5*2! | D5 C5 B4 A4 | G4*4! |`);
    expect(analysis.chords).toEqual([]);
    expect(analysis.phrases.map(({ end }) => end)).toEqual(['fermata', 'fermata']);
  });

  it('stops where the writing stops', () => {
    const analysis = analyseText(`key: G major
metre: 4/4
S: G4 A4 B4 C5 | D5*2 D5*2! |
A: D4 F#4 G4 ? | ?*4 |
T: B3 D4 D4 ? | ?*4 |
B: G3 D3 G3 ? | ?*4 |`);
    expect(numerals(analysis)).toBe('G major: I V I');
    expect(analysis.chords.at(-1)!.until).toBe(3 * CROTCHET);
  });

  it('reads one chord, and an empty score', () => {
    expect(
      numerals(analyseText('key: C major\nmetre: 4/4\nS: C5*4 |\nA: G4*4 |\nT: E4*4 |\nB: C3*4 |')),
    ).toBe('C major: I');
    const empty = analyse(textureOf(buildScore({ title: '', bars: [] })));
    expect(empty.chords).toEqual([]);
    expect(empty.phrases).toEqual([]);
    expect(empty.keys).toEqual([]);
  });

  it('lets a harmony last through a rest of all voices', () => {
    const analysis = analyseText(`key: C major
metre: 4/4
S: E5 D5 E5*2! | r C5 D5 C5! |
A: C5 B4 C5*2! | r A4 B4 G4! |
T: G4 G4 G4*2! | r F4 G4 E4! |
B: C4 G3 C4*2! | r F3 G3 C3! |`);
    for (const [i, chord] of analysis.chords.slice(1).entries())
      expect(chord.at).toBe(analysis.chords[i]!.until);
  });
});

const event: fc.Arbitrary<DraftEvent> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      kind: fc.constant('note' as const),
      duration: fc.constantFrom(CROTCHET / 4, CROTCHET / 3, CROTCHET / 2, CROTCHET, 2 * CROTCHET),
      pitch: fc.record({
        step: fc.constantFrom(...STEPS),
        alteration: fc.integer({ min: -2, max: 2 }),
        octave: fc.integer({ min: 2, max: 5 }),
      }),
      tied: fc.boolean(),
      fermata: fc.boolean(),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constantFrom('rest' as const, 'gap' as const),
      duration: fc.constantFrom(CROTCHET / 2, CROTCHET),
    }),
  },
);

const bar = fc.record({
  metre: fc.constantFrom(
    { beats: 4, unit: 4 },
    { beats: 3, unit: 4 },
    { beats: 6, unit: 8 },
    { beats: 2, unit: 2 },
  ),
  key: fc.record({ fifths: fc.integer({ min: -7, max: 7 }) }),
  voices: fc.record(
    Object.fromEntries(
      VOICES.map((voice) => [
        voice,
        fc.record({ events: fc.array(event, { maxLength: 6 }), closed: fc.boolean() }),
      ]),
    ),
    { requiredKeys: [] },
  ),
});

describe('any score at all', () => {
  it('is read without an error, and the parts of the reading agree', () => {
    fc.assert(
      fc.property(fc.array(bar, { maxLength: 5 }), (bars) => {
        const analysis = analyse(textureOf(buildScore({ title: '', bars })));
        for (const [i, chord] of analysis.chords.entries()) {
          expect(chord.index).toBe(i);
          expect(chord.until).toBeGreaterThan(chord.at);
          const before = analysis.chords[i - 1];
          if (before) expect(chord.at).toBeGreaterThanOrEqual(before.until);
          expect(memberOf(chord, chord.bass)).toBeDefined();
        }
        for (const ornament of analysis.ornaments)
          expect(memberOf(analysis.chords[ornament.chord]!, ornament.tone.pitch)).toBeUndefined();
        for (const [i, phrase] of analysis.phrases.entries())
          expect(phrase.from).toBe(analysis.phrases[i - 1]?.until ?? 0);
      }),
      { seed: 20_080, numRuns: 60 },
    );
  });
});
