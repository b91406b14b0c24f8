/** The analysis in words, for sentences and tables. */
import type { Cadence, CadenceKind, Chord, Degree, OrnamentKind, SixFourKind } from '../analysis.ts';

const DEGREE_WORDS = [
  'tonic',
  'supertonic',
  'mediant',
  'subdominant',
  'dominant',
  'submediant',
  'leading note',
] as const;

/** `tonic`, `dominant`, …; the seventh degree is `leading note` or, a tone below the tonic, `subtonic`. */
function degreeWord(degree: Degree['degree'], leading = true): string {
  return degree === 7 && !leading ? 'subtonic' : DEGREE_WORDS[degree - 1]!;
}

const INVERSION_WORDS = ['root position', 'first inversion', 'second inversion', 'third inversion'] as const;

export function inversionWords(inversion: 0 | 1 | 2 | 3): string {
  return INVERSION_WORDS[inversion];
}

const SIX_FOUR_WORDS: Readonly<Record<SixFourKind, string>> = {
  cadential: 'cadential six-four',
  passing: 'passing six-four',
  pedal: 'pedal six-four',
  arpeggiated: 'six-four of a broken chord',
  free: 'six-four that stands alone',
};

/**
 * What the chord does in its key: `dominant seventh in first inversion`,
 * `dominant of the dominant in root position`, `cadential six-four (tonic in second inversion)`.
 */
export function functionOf(chord: Pick<Chord, 'roman' | 'sixFour' | 'key'>): string {
  const { roman } = chord;
  const place = inversionWords(roman.inversion);
  if (roman.special === 'Neapolitan') return `Neapolitan chord in ${place}`;
  if (roman.special !== undefined) return `${roman.special}, an augmented sixth that leads to the dominant`;
  const name = chordName(roman, chord.key.mode);
  const of = roman.applied === undefined ? '' : ` of the ${targetWord(roman.applied)}`;
  const whole = `${name}${of} in ${place}`;
  return chord.sixFour === undefined ? whole : `${SIX_FOUR_WORDS[chord.sixFour]} (${whole})`;
}

function chordName(roman: Chord['roman'], mode: 'major' | 'minor'): string {
  const leading = roman.quality === 'diminished' || mode === 'major';
  const word = degreeWord(roman.degree, leading);
  const altered = roman.alteration === 0 ? '' : roman.alteration > 0 ? 'raised ' : 'lowered ';
  if (roman.degree === 7 && leading) {
    if (roman.seventh === 'diminished') return `${altered}leading-note diminished seventh`;
    return `${altered}leading-note ${roman.seventh ? 'seventh' : 'chord'}`;
  }
  if (roman.degree === 1 && mode === 'minor' && roman.quality === 'major' && roman.applied === undefined)
    return roman.seventh ? 'major tonic seventh' : 'major tonic';
  const diminished =
    roman.quality === 'diminished' ? 'diminished ' : roman.quality === 'augmented' ? 'augmented ' : '';
  const minorDominant = roman.degree === 5 && roman.quality === 'minor' ? 'minor ' : '';
  return `${altered}${diminished}${minorDominant}${word}${roman.seventh ? ' seventh' : ''}`;
}

function targetWord(degree: Degree): string {
  return degreeWord(degree.degree, degree.quality === 'diminished');
}

/** The pupil's word for a cadence and other schools' name for it. */
export interface CadenceWords {
  /** `perfect cadence`, `imperfect cadence (Phrygian)`, `inverted perfect cadence`, … */
  readonly name: string;
  /** `authentic`, `half`, `plagal`, `deceptive`, with their shades. */
  readonly otherName: string;
}

/** What the kinds of cadence are called, whatever else is to be said of one. */
export const CADENCE_NAMES: Readonly<Record<CadenceKind, string>> = {
  perfect: 'perfect cadence',
  imperfect: 'imperfect cadence',
  plagal: 'plagal cadence',
  interrupted: 'interrupted cadence',
};

export function cadenceWords(cadence: Cadence): CadenceWords {
  const turned = cadence.inverted && cadence.kind !== 'imperfect' ? 'inverted ' : '';
  const picardy = cadence.tierce ? ' with tierce de Picardie' : '';
  const name = CADENCE_NAMES[cadence.kind];
  switch (cadence.kind) {
    case 'perfect':
      return {
        name: `${turned}${name}${picardy}`,
        otherName: cadence.full ? 'perfect authentic' : 'imperfect authentic',
      };
    case 'imperfect':
      return {
        name: cadence.phrygian ? `${name} (Phrygian)` : name,
        otherName: cadence.phrygian ? 'Phrygian half' : 'half',
      };
    case 'plagal':
      return { name: `${turned}${name}${picardy}`, otherName: 'plagal' };
    case 'interrupted':
      return { name: `${turned}${name}`, otherName: 'deceptive' };
  }
}

const ORNAMENT_WORDS: Readonly<Record<OrnamentKind, string>> = {
  passing: 'passing note',
  'accented passing': 'accented passing note',
  neighbour: 'neighbour note (auxiliary)',
  suspension: 'suspension',
  retardation: 'retardation',
  anticipation: 'anticipation',
  échappée: 'échappée (escape note)',
  appoggiatura: 'appoggiatura',
  pedal: 'pedal note',
  'changing notes': 'changing notes',
  unclassified: 'note foreign to its chord',
};

export function ornamentWords(kind: OrnamentKind): string {
  return ORNAMENT_WORDS[kind];
}
