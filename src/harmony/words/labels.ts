/**
 * Ways of writing a chord. All are plain text: `o` stands for diminished, `ø` for half-diminished, `+` for
 * augmented, `b` and `#` before a numeral for a lowered or raised root, and figures follow without strokes (`V65`).
 */
import { printNoteName } from '../../score/pitch.ts';
import type { Chord, Degree, Key, Roman } from '../analysis.ts';
import { romanNumeral } from '../tonal.ts';
import { figuredBass, figuresInLine } from './figured-bass.ts';

/**
 * - `figures`: figured numerals, `V65`, `ii6`, `I64`, `viio7/V`, lower case for minor and diminished;
 * - `letters`: numerals with inversion letters, mixed case, `V7b`, `iib`, `Ic`; root position unmarked;
 * - `capital letters`: the same all in capitals, a minor triad marked `m`, `IImb`;
 * - `figured bass`: the figures alone with their accidentals, `6`, `64`, `#6`; nothing for a plain triad in root position.
 */
export const LABEL_STYLES = ['figures', 'letters', 'capital letters', 'figured bass'] as const;
export type LabelStyle = (typeof LABEL_STYLES)[number];
/** The styles that need no more than the numeral and its key. */
export type NumeralStyle = Exclude<LabelStyle, 'figured bass'>;

const LABELS: Readonly<Record<LabelStyle, (chord: Chord, signature: number) => string>> = {
  figures: ({ roman, key }) => numeral(roman, key, 'figures'),
  letters: ({ roman, key }) => numeral(roman, key, 'letters'),
  'capital letters': ({ roman, key }) => numeral(roman, key, 'capital letters'),
  'figured bass': (chord, signature) => figuresInLine(figuredBass(chord, signature)),
};

/** A chord's label in any style. `signature` is the key signature that stands there, sharps positive, flats negative. */
export function chordLabel(chord: Chord, style: LabelStyle, signature: number): string {
  return LABELS[style](chord, signature);
}

const INVERSION_LETTERS = ['', 'b', 'c', 'd'] as const;
/** Figures over the bass by inversion, shortened as is usual; common practice, no source. */
const TRIAD_FIGURES = ['', '6', '64', ''] as const;
const SEVENTH_FIGURES = ['7', '65', '43', '42'] as const;
/** In numerals the third inversion is usually written with one figure. */
const SEVENTH_NUMERAL_FIGURES = ['7', '65', '43', '2'] as const;

const SPECIAL_SIGNS = {
  Neapolitan: 'N',
  'Italian sixth': 'It',
  'French sixth': 'Fr',
  'German sixth': 'Ger',
} as const;

/**
 * Writes a chord. The key is needed because the plain forms of 6 and 7 differ in minor: `VI` and `vio` need no sign.
 *
 * @example numeral(V7 in first inversion, G major) is "V65"; as letters "V7b"
 */
export function numeral(roman: Roman, key: Key, style: NumeralStyle = 'figures'): string {
  const figures = plainFigures(roman);
  const slash = roman.applied === undefined ? '' : `/${degreeNumeral(roman.applied, key, style, false)}`;
  if (roman.special !== undefined) {
    const sign = SPECIAL_SIGNS[roman.special];
    if (style !== 'figures')
      return `${roman.special === 'Neapolitan' ? 'bII' : sign}${INVERSION_LETTERS[roman.inversion]}${slash}`;
    return `${sign}${figures}${slash}`;
  }
  const mode = roman.applied === undefined ? key.mode : roman.applied.quality === 'minor' ? 'minor' : 'major';
  const base = degreeNumeral(roman, { tonic: key.tonic, mode }, style, roman.seventh === 'minor');
  if (style === 'figures') {
    const shown = roman.seventh === undefined ? figures : SEVENTH_NUMERAL_FIGURES[roman.inversion];
    return `${base}${shown}${slash}`;
  }
  return `${base}${roman.seventh === undefined ? '' : '7'}${INVERSION_LETTERS[roman.inversion]}${slash}`;
}

/** A degree and its triad: `ii`, `viio`, `bVI`, `III+`. With a minor seventh a diminished triad is marked `ø`. */
function degreeNumeral(degree: Degree, key: Key, style: NumeralStyle, minorSeventh: boolean): string {
  const capitals = style === 'capital letters';
  const small = degree.quality === 'minor' || degree.quality === 'diminished';
  const alteration = impliedAlteration(degree, key) ? 0 : degree.alteration;
  const letters = romanNumeral(degree.degree, alteration, capitals || !small);
  return `${letters}${qualitySign(degree.quality, capitals, minorSeventh)}`;
}

/** What tells the triads of one numeral apart: capitals have to mark the minor ones too. */
function qualitySign(quality: Degree['quality'], capitals: boolean, minorSeventh: boolean): string {
  if (quality === 'augmented') return '+';
  if (quality === 'diminished') return minorSeventh ? 'ø' : 'o';
  return quality === 'minor' && capitals ? 'm' : '';
}

/** In minor a diminished chord on the sixth degree can only stand on the raised one: no sign is needed. */
function impliedAlteration(degree: Degree, key: Key): boolean {
  return (
    degree.alteration === 0 ||
    (key.mode === 'minor' &&
      degree.degree === 6 &&
      degree.alteration === 1 &&
      degree.quality === 'diminished')
  );
}

/** The usual short figures of a numeral, without accidentals: `6`, `64`, `7`, `65`, `43`, `42`. */
function plainFigures(roman: Pick<Roman, 'inversion' | 'seventh' | 'special'>): string {
  if (roman.special === 'Italian sixth') return '6';
  if (roman.special === 'French sixth') return '43';
  if (roman.special === 'German sixth') return '65';
  return (roman.seventh === undefined ? TRIAD_FIGURES : SEVENTH_FIGURES)[roman.inversion];
}

/** `G major`, `E minor`, `F# minor`, `Bb major`. */
export function printKey(key: Key): string {
  return `${printNoteName(key.tonic)} ${key.mode}`;
}
