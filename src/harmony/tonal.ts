/**
 * The only door to the tonal library. It answers wrong questions with empty values instead of errors, so every
 * question is checked before it is asked; what it says about a key is asked once and kept.
 */
import { ChordType, Note, RomanNumeral, Key as TonalKey } from 'tonal';
import { fifthsPlace, type NoteName, noteNameAtFifths, parseNoteName } from '../score/pitch.ts';
import type { Degree, Key } from './analysis.ts';

/** A key's notes and signature. Degrees are listed from the tonic, seven of them. */
export interface KeyFacts {
  /** Sharps positive, flats negative; beyond ±7 for keys that need double accidentals. */
  readonly signature: number;
  /** Major, or natural minor. */
  readonly scale: readonly NoteName[];
  /** Major, or harmonic minor: the seventh degree is the leading note. */
  readonly harmonic: readonly NoteName[];
  /** Major, or ascending melodic minor. */
  readonly melodic: readonly NoteName[];
  /** The places on the line of fifths of the notes of all three. */
  readonly places: ReadonlySet<number>;
}

/** By the tonic's place on the line of fifths: majors, and minors. */
const facts = { major: new Map<number, KeyFacts>(), minor: new Map<number, KeyFacts>() };

/**
 * Scale and signature of a key, whatever its tonic: the library is asked about C, and the answer moved along the
 * line of fifths, so that a key too remote to be written (an applied chord's in a key of seven flats) has one too.
 */
export function keyFacts(key: Key): KeyFacts {
  const place = fifthsPlace(key.tonic);
  const known = facts[key.mode].get(place);
  if (known) return known;
  const onC = key.mode === 'major' ? C_MAJOR : C_MINOR;
  const moved = (scale: readonly NoteName[]): NoteName[] =>
    scale.map((name) => noteNameAtFifths(fifthsPlace(name) + place));
  const [scale, harmonic, melodic] = [moved(onC.scale), moved(onC.harmonic), moved(onC.melodic)];
  const places = new Set([...scale, ...harmonic, ...melodic].map(fifthsPlace));
  const fresh = { signature: onC.signature + place, scale, harmonic, melodic, places };
  facts[key.mode].set(place, fresh);
  return fresh;
}

const C_MAJOR = majorFacts('C');
const C_MINOR = minorFacts('C');

/** What the library is asked of a key. */
type Asked = Omit<KeyFacts, 'places'>;

function majorFacts(tonic: string): Asked {
  const key = TonalKey.majorKey(tonic);
  const scale = names(key.scale);
  return { signature: key.alteration, scale, harmonic: scale, melodic: scale };
}

function minorFacts(tonic: string): Asked {
  const key = TonalKey.minorKey(tonic);
  return {
    signature: key.alteration,
    scale: names(key.natural.scale),
    harmonic: names(key.harmonic.scale),
    melodic: names(key.melodic.scale),
  };
}

function names(scale: readonly string[]): NoteName[] {
  return scale.map((text) => {
    const name = parseNoteName(text);
    if (name === undefined) throw new RangeError(`"${text}" is no note name of ours.`);
    return name;
  });
}

/** A plain degree as a numeral: `bVII` for the seventh, lowered; in small letters where it is not `large`. */
export function romanNumeral(
  degree: Degree['degree'],
  alteration: Degree['alteration'],
  large: boolean,
): string {
  const numeral = NUMERALS[degree - 1]![alteration + 1]!;
  return large ? numeral : numeral.toLowerCase();
}

/** By degree and then by alteration, lowered first. */
const NUMERALS = [0, 1, 2, 3, 4, 5, 6].map((step) =>
  [-1, 0, 1].map((alt) => {
    const { name, empty } = RomanNumeral.get(RomanNumeral.get({ step, alt }).name);
    if (empty) throw new RangeError(`There is no numeral for degree ${step + 1}.`);
    return name;
  }),
);

/**
 * The members of a kind of chord from the root up, in fifths from the root, by the library's symbol for it: `maj7` is
 * `[0, 4, 1, 5]`. Throws for a symbol that it does not know.
 */
export function chordOffsets(symbol: string): readonly number[] {
  const { intervals, empty } = ChordType.get(symbol);
  if (empty) throw new RangeError(`"${symbol}" is no kind of chord.`);
  return names(intervals.map((interval) => Note.transpose('C', interval))).map(fifthsPlace);
}
