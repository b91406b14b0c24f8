/** What sounds overrules what was learnt: in every key and metre the same notes are the same chords. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import { numeral } from '../../src/harmony/words/labels.ts';
import { readNotation } from '../../src/notation/index.ts';
import { fifthsPlace, noteNameAtFifths, type Pitch, printPitch, semitone } from '../../src/score/pitch.ts';
import { byVoice, type Score } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';

/** The score so many places up the line of fifths, each note in the octave nearest to where it was. */
function transposed(score: Score, fifths: number): Score {
  const up = ((((7 * fifths) % 12) + 18) % 12) - 6;
  const move = (pitch: Pitch): Pitch => {
    const name = noteNameAtFifths(fifthsPlace(pitch) + fifths);
    const wanted = semitone(pitch) + up;
    const octave = [1, 2, 3, 4, 5, 6].find((o) => semitone({ ...name, octave: o }) === wanted);
    return { ...name, octave: octave! };
  };
  return {
    ...score,
    bars: score.bars.map((bar) => ({ ...bar, key: { ...bar.key, fifths: bar.key.fifths + fifths } })),
    voices: byVoice((voice) =>
      score.voices[voice].map((event) =>
        event.kind === 'note' ? { ...event, pitch: move(event.pitch) } : event,
      ),
    ),
  };
}

const plain = ({ chords }: Analysis) => chords.map(({ roman, key }) => numeral(roman, key)).join(' ');

/** How the numerals stand in every key from seven flats to seven sharps. */
function readings(text: string): string[] {
  const { score } = readNotation(text);
  const home = score.bars[0]!.key.fifths;
  const keys = Array.from({ length: 15 }, (_, i) => i - 7 - home);
  return [...new Set(keys.map((fifths) => plain(analyse(textureOf(transposed(score, fifths))))))];
}

const close = (metre: string, alto: string) => {
  const bars: Record<string, string[]> = {
    '4/4': ['A4 A4 B4 A4!', `E4 F4 E4 ${alto}!`, 'C4 D4 G#3 A3!', 'A2 D3 E3 A2!'],
    '4/2': ['A4 A4 B4 A4!', `E4 F4 E4 ${alto}!`, 'C4 D4 G#3 A3!', 'A2 D3 E3 A2!'],
    '3/4': ['A4 A4 B4 | A4*3!', `E4 F4 E4 | ${alto}*3!`, 'C4 D4 G#3 | A3*3!', 'A2 D3 E3 | A2*3!'],
  };
  const [S, A, T, B] = bars[metre]!;
  return `key: A minor\nmetre: ${metre}\nS: ${S} |\nA: ${A} |\nT: ${T} |\nB: ${B} |`;
};

describe('what sounds', () => {
  for (const metre of ['4/4', '4/2', '3/4']) {
    it(`makes a close without its fifth minor in ${metre}`, () => {
      expect(readings(close(metre, 'C4'))).toEqual(['i iv V i']);
    });
    it(`makes a tierce without its fifth major in ${metre}`, () => {
      expect(readings(close(metre, 'C#4'))).toEqual(['i iv V I']);
    });
    it(`makes no tierce of an open fifth in ${metre}`, () => {
      expect(readings(close(metre, 'E4'))).toEqual(['i iv V i']);
    });
  }

  it('has no rootless seventh without its leading note', () => {
    const read = readings(`key: A minor
metre: 4/4
S: A4 E4 B4 A4 | C5 F4 A4 G#4 | A4*4! |
A: E4 C4 E4 E4 | E4 D4 E4 E4 | E4*4! |
T: C4 A3 G#3 C4 | A3 B3 C4 B3 | C4*4! |
B: A2 C3 E3 A3 | A2 B2 E3 E3 | A2*4! |`);
    expect(read).toHaveLength(1);
    expect(read[0]).toContain('iio');
    expect(read[0]).not.toContain('viio');
  });

  it('keeps the root of a first inversion without its fifth', () => {
    const read = readings(`key: C major
metre: 4/4
S: C5 D5 C5 D5 | D5*2 C5*2! |
A: G4 F4 E4 A4 | G4*2 E4*2! |
T: E4 B3 C4 D4 | B3*2 C4*2! |
B: C3 D3 E3 F3 | G3*2 C3*2! |`);
    expect(read).toEqual(['I viio6 I6 ii6 V I']);
  });

  it('changes the figure where the seventh enters, a semiquaver before the tonic too', () => {
    for (const seventh of ['G4/2 F4/2', 'G4*3/4 F4/4'])
      expect(
        readings(`key: C major
metre: 4/4
S: E5 D5 C5*2! |
A: G4 B4 G4*2! |
T: C4 ${seventh} E4*2! |
B: C3 G2 C3*2! |`),
      ).toEqual(['I V V7 I']);
  });

  it('lets a tierce before iv close in its own key', () => {
    const text = `key: D minor
metre: 4/4
S: F4 E4 D4*2! | D4 E4 F4 E4 | D4*4! |
A: D4 C#4 A3*2! | Bb3 C4 D4 C#4 | A3*4! |
T: A3 A3 F#3*2! | G3 G3 A3 A3 | F3*4! |
B: D3 A2 D3*2! | G3 C3 F3 A2 | D3*4! |`;
    for (const read of readings(text)) expect(read).toMatch(/^i V I iv/);
    const { cadences } = analyse(textureOf(readNotation(text).score));
    expect(cadences[0]).toMatchObject({ kind: 'perfect', tierce: true, key: { mode: 'minor' } });
  });
});

describe('a misspelt note', () => {
  const right = `key: A minor
metre: 4/4
S: C5 B4 C5 B4 | A4*4! |
A: E4 E4 E4 D4 | C4*4! |
T: A3 G#3 A3 G#3 | A3*4! |
B: A2 E3 A2 E3 | A2*4! |`;

  it('is read as what it sounds like', () => {
    const wrong = right.replaceAll('G#3', 'Ab3');
    expect(readings(wrong)).toEqual(readings(right));
    const analysis = analyse(textureOf(readNotation(wrong).score));
    expect(analysis.misspelt.map(({ written }) => printPitch(written))).toEqual(['Ab3', 'Ab3']);
    expect(analysis.ornaments).toEqual([]);
  });

  it('is nowhere in what is rightly spelt', () => {
    expect(analyse(textureOf(readNotation(right).score)).misspelt).toEqual([]);
  });
});
