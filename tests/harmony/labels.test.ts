import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import type { Key, Roman } from '../../src/harmony/analysis.ts';
import { CHORD_TYPES, membersAt } from '../../src/harmony/chord-types.ts';
import { romanOf } from '../../src/harmony/reading/roman.ts';
import { figuredBass, figuresOfLine } from '../../src/harmony/words/figured-bass.ts';
import { chordLabel, numeral, printKey } from '../../src/harmony/words/labels.ts';
import { readNotation } from '../../src/notation/index.ts';
import { fifthsPlace, parseNoteName } from '../../src/score/pitch.ts';
import { textureOf } from '../../src/score/texture.ts';

const place = (name: string) => fifthsPlace(parseNoteName(name)!);
const type = (name: string) => CHORD_TYPES.findIndex((t) => t.name === name);
const key = (name: string): Key => {
  const [tonic, mode] = name.split(' ') as [string, 'major' | 'minor'];
  return { tonic: parseNoteName(tonic)!, mode };
};

/** Key, root, type, inversion; then figures, mixed letters, capital letters. */
const CASES: readonly [string, string, string, Roman['inversion'], string, string, string][] = [
  ['G major', 'G', 'M', 0, 'I', 'I', 'I'],
  ['G major', 'D', 'M7', 1, 'V65', 'V7b', 'V7b'],
  ['G major', 'D', 'M7', 3, 'V2', 'V7d', 'V7d'],
  ['G major', 'A', 'm', 1, 'ii6', 'iib', 'IImb'],
  ['G major', 'G', 'M', 2, 'I64', 'Ic', 'Ic'],
  ['G major', 'A', 'm7', 1, 'ii65', 'ii7b', 'IIm7b'],
  ['G major', 'F#', 'o', 1, 'viio6', 'viiob', 'VIIob'],
  ['E minor', 'F#', 'ø7', 1, 'iiø65', 'iiø7b', 'IIø7b'],
  ['E minor', 'D#', 'o7', 0, 'viio7', 'viio7', 'VIIo7'],
  ['E minor', 'D', 'M', 0, 'VII', 'VII', 'VII'],
  ['E minor', 'C#', 'o', 1, 'vio6', 'viob', 'VIob'],
  ['E minor', 'G', '+', 1, 'III+6', 'III+b', 'III+b'],
  ['E minor', 'F', 'M', 1, 'N6', 'bIIb', 'bIIb'],
  ['C minor', 'Bb', 'M', 0, 'VII', 'VII', 'VII'],
  ['C minor', 'B', 'o', 0, 'viio', 'viio', 'VIIo'],
  ['C minor', 'C', 'm', 0, 'i', 'i', 'Im'],
  ['C major', 'D', 'M7', 0, 'V7/V', 'V7/V', 'V7/V'],
  ['C major', 'F#', 'o', 1, 'viio6/V', 'viiob/V', 'VIIob/V'],
  ['C major', 'A', 'M', 1, 'V6/ii', 'Vb/ii', 'Vb/IIm'],
  ['C major', 'C', 'M7', 0, 'V7/IV', 'V7/IV', 'V7/IV'],
  ['C major', 'F', 'm', 1, 'iv6', 'ivb', 'IVmb'],
  ['C major', 'Ab', 'M', 0, 'bVI', 'bVI', 'bVI'],
  ['A minor', 'D#', 'It', 1, 'It6', 'Itb', 'Itb'],
  ['A minor', 'B', 'Fr', 2, 'Fr43', 'Frc', 'Frc'],
  ['A minor', 'D#', 'Ger', 1, 'Ger65', 'Gerb', 'Gerb'],
];

describe('writing chords', () => {
  it.each(CASES)('%s: %s %s, inversion %i is %s, %s or %s', (name, root, chord, inversion, ...written) => {
    const roman = romanOf(key(name), place(root), type(chord), inversion);
    expect(
      (['figures', 'letters', 'capital letters'] as const).map((style) => numeral(roman, key(name), style)),
    ).toEqual(written);
  });

  it('takes VII for what it is until it goes to III', () => {
    const following = { root: place('G'), type: type('M') };
    expect(numeral(romanOf(key('E minor'), place('D'), type('M7'), 1, following), key('E minor'))).toBe(
      'V65/III',
    );
    expect(numeral(romanOf(key('E minor'), place('D'), type('M'), 0), key('E minor'))).toBe('VII');
  });

  it('prints keys', () => {
    expect(['G major', 'E minor', 'F# minor', 'Bb major'].map((name) => printKey(key(name)))).toEqual([
      'G major',
      'E minor',
      'F# minor',
      'Bb major',
    ]);
  });
});

/**
 * The usual figures and the chord each stands for over a bass C without signature, as printed in textbooks of
 * figured bass (for one: W. Piston, Harmony, the chapters on the sixth chord, the six-four and the dominant
 * seventh and its inversions; from memory).
 */
const FIGURES: readonly [string, string, string, Roman['inversion']][] = [
  ['', 'C', 'M', 0],
  ['6', 'A', 'm', 1],
  ['64', 'F', 'M', 2],
  ['7', 'C', 'Mmaj7', 0],
  ['65', 'A', 'm7', 1],
  ['43', 'F', 'Mmaj7', 2],
  ['42', 'D', 'm7', 3],
];

describe('figured bass', () => {
  it.each(FIGURES)(
    '"%s" over C is the chord of %s (%s) in inversion %i',
    (figures, root, chord, inversion) => {
      const members = membersAt(place(root), type(chord));
      const bass = [members.root, members.third, members.fifth, members.seventh][inversion]!;
      expect(bass).toEqual({ step: 'C', alteration: 0 });
      const roman = romanOf(key('C major'), place(root), type(chord), inversion);
      expect(figuredBass({ members, bass, roman }, 0).join('')).toBe(figures);
    },
  );

  it.each([
    ['V in A minor', 'E', 'M', 0, 0, '#'],
    ['V in C minor', 'G', 'M', 0, -3, 'n'],
    ['viio6 in A minor', 'G#', 'o', 1, 0, '#6'],
    ['V65 in A minor', 'E', 'M7', 1, 0, '65'],
    ['V43 in A minor', 'E', 'M7', 2, 0, '#643'],
    ['V2 of V in C major', 'D', 'M7', 3, 0, '#42'],
    ['diminished seventh in C minor', 'B', 'o7', 0, -3, '7'],
    ['Neapolitan sixth in A minor', 'Bb', 'M', 1, 0, 'b6'],
    ['V43 of IV in G major, with the 3 beside the 4', 'G', 'M7', 2, 1, '4n3'],
    ['viio43 in B minor under three sharps', 'A#', 'o7', 2, 3, '#4n3'],
    ['German sixth in A minor', 'D#', 'Ger', 1, 0, '#65'],
    ['French sixth in D minor over its raised fourth', 'E', 'Fr', 1, -1, '65'],
  ] as const)('%s shows its accidentals', (_, root, chord, inversion, signature, figures) => {
    const members = membersAt(place(root), type(chord));
    const bass = [members.root, members.third, members.fifth, members.seventh][inversion]!;
    const roman = { degree: 1, alteration: 0, quality: 'major', inversion } as const;
    expect(figuredBass({ members, bass, roman }, signature).join('')).toBe(figures);
  });

  it('is printed in one line with its accidentals, for paper and the command line', () => {
    const analysis = analyse(
      textureOf(
        readNotation(`key: A minor
metre: 4/4
S: A4 G#4 A4*2 |
A: E4 E4 E4*2 |
T: C4 B3 C4*2 |
B: A3 E3 A2*2 |`).score,
      ),
    );
    expect(analysis.chords.map((chord) => chordLabel(chord, 'figured bass', 0))).toEqual(['', '#', '']);
    expect(figuresOfLine('#643')).toEqual(['#6', '4', '3']);
    expect(figuresOfLine('4n3')).toEqual(['4', 'n3']);
    expect(figuresOfLine('b6#')).toEqual(['b6', '#']);
    expect(figuresOfLine('V65')).toBeUndefined();
  });
});
