/**
 * A phrase's close as a thing to be looked up: the tune's last degrees in the home key, and, where the lower voices are
 * there, the key it closes in, the cadence, its chords, its bass and what is suspended.
 */
import type { Analysis, CadenceKind, Key, Phrase } from '../harmony/analysis.ts';
import { degreeOf } from '../harmony/questions/degrees.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { numeral } from '../harmony/words/labels.ts';
import { fifthsPlace, type NoteName, noteNameAtFifths, sameNoteName } from '../score/pitch.ts';
import { barAt, metricalStrength } from '../score/place.ts';

/** How a tune comes to the end of a phrase. */
export interface TuneEnd {
  readonly mode: Key['mode'];
  /** The last degrees of the home key, four at the most: `['5', '4', '3', '2']`. */
  readonly degrees: readonly string[];
  /** The last note falls on a strong beat. */
  readonly strong: boolean;
}

/** How it is harmonised. */
export interface Close {
  /** The key it closes in, as a degree of the home key: `I`, `V`, `vi`. */
  readonly key: string;
  readonly kind: CadenceKind;
  /** The last two chords, in that key: `V7–I`. */
  readonly chords: string;
  /** Their bass notes as degrees of that key: `5–1`. */
  readonly bass: string;
  /** Suspensions over them, by figure: `4–3`. */
  readonly suspensions: readonly string[];
}

/** Most of the tune's notes that are looked at. */
const MOST_DEGREES = 4;

export interface PhraseEnd {
  readonly phrase: Phrase;
  readonly home: Key;
  readonly tune: TuneEnd;
  /** What the exercise itself has there; undefined before it is written. */
  readonly own?: Close;
}

/** The ends of the phrases of an exercise whose tune is written, in order of time. Pure. */
export function phraseEnds(analysis: Analysis): readonly PhraseEnd[] {
  const home = homeOf(analysis);
  return analysis.phrases.flatMap((phrase) => {
    const tune = phrase.end === 'unfinished' ? undefined : tuneEnd(analysis, phrase, home);
    if (tune === undefined) return [];
    const own = closeOf(analysis, phrase, home);
    return [{ phrase, home, tune, ...(own === undefined ? {} : { own }) }];
  });
}

/** The home key; a tune alone that states no mode is in minor where it ends on the minor tonic. */
function homeOf(analysis: Analysis): Key {
  const home = homeKey(analysis);
  const { score, tones } = analysis.texture;
  const last = tones.S.at(-1);
  if (analysis.keys.length > 0 || last === undefined || score.bars[0]?.key.mode !== undefined) return home;
  const minorTonic = noteNameAtFifths(fifthsPlace(home.tonic) + 3);
  return sameNoteName(last.pitch, minorTonic) ? { tonic: minorTonic, mode: 'minor' } : home;
}

function tuneEnd(analysis: Analysis, phrase: Phrase, home: Key): TuneEnd | undefined {
  const tones = analysis.texture.tones.S.filter(({ at }) => at >= phrase.from && at < phrase.until);
  const last = tones.at(-1);
  if (last === undefined || tones.length < 2 || last.until < phrase.until) return undefined;
  const strong = metricalStrength(barAt(analysis.texture.score, last.at), last.at) >= 3;
  return {
    mode: home.mode,
    degrees: tones.slice(-MOST_DEGREES).map(({ pitch }) => printDegree(pitch, home)),
    strong,
  };
}

function closeOf(analysis: Analysis, phrase: Phrase, home: Key): Close | undefined {
  const cadence = phrase.cadence === undefined ? undefined : analysis.cadences[phrase.cadence];
  if (cadence === undefined) return undefined;
  const approach = analysis.chords[cadence.approach]!;
  const goal = analysis.chords[cadence.goal]!;
  const figures = analysis.ornaments
    .filter(({ kind, at }) => kind === 'suspension' && at >= approach.at && at < goal.until)
    .map((ornament) => ornament.figures ?? '');
  return {
    key: keyDegree(cadence.key, home),
    kind: cadence.kind,
    chords: `${numeral(approach.roman, cadence.key)}–${numeral(goal.roman, cadence.key)}`,
    bass: `${printDegree(approach.bass, cadence.key)}–${printDegree(goal.bass, cadence.key)}`,
    suspensions: [...new Set(figures)].filter((text) => text !== ''),
  };
}

/** A note as a degree of a key: `3`, `♯4`, `♭7`; the sixth and seventh of minor as the melodic scale has them, told by a sign where raised. */
function printDegree(note: NoteName, key: Key): string {
  const { degree, alteration } = degreeOf(note, key);
  return (alteration > 0 ? '♯' : '♭').repeat(Math.abs(alteration)) + degree;
}

/** A key by the home key's degree it stands on: `V`, `vi`; capitals for major. */
function keyDegree(key: Key, home: Key): string {
  const { degree, alteration } = degreeOf(key.tonic, home);
  const roman = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII'][degree - 1]!;
  const sign = (alteration > 0 ? '♯' : '♭').repeat(Math.abs(alteration));
  return sign + (key.mode === 'major' ? roman : roman.toLowerCase());
}
