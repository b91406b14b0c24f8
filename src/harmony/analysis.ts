/**
 * What the analysis says about a texture, as plain data. Rules, reports and the page read only this file's
 * types and the questions beside them; how the answers are found is `analyse.ts`'s business.
 */
import type { NoteName, Pitch } from '../score/pitch.ts';
import type { VoiceName } from '../score/score.ts';
import type { Texture, Tone } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';

export interface Key {
  readonly tonic: NoteName;
  readonly mode: 'major' | 'minor';
}

export type TriadQuality = 'major' | 'minor' | 'diminished' | 'augmented';
/** Quality of the seventh above the root, where the chord has one. */
export type SeventhQuality = 'major' | 'minor' | 'diminished';

/** Chords with a name of their own instead of a plain degree. */
export type SpecialChord = 'Neapolitan' | 'Italian sixth' | 'French sixth' | 'German sixth';

/** A degree of the scale with the triad on it: `{ degree: 7, alteration: 0, quality: 'diminished' }` is viio. */
export interface Degree {
  readonly degree: 1 | 2 | 3 | 4 | 5 | 6 | 7;
  /** How far the root is altered from the key's scale (natural minor in minor, but the leading note is raised: 0 there means raised for viio and V). */
  readonly alteration: -1 | 0 | 1;
  readonly quality: TriadQuality;
}

/** A chord as a Roman numeral, still in parts, so that any way of writing it can be printed (see `labels.ts`). */
export interface Roman extends Degree {
  readonly seventh?: SeventhQuality;
  /** 0 root position, 1 first inversion, 2 second, 3 third. */
  readonly inversion: 0 | 1 | 2 | 3;
  /** The degree this chord is dominant (or leading-note chord) to: V/V has `applied` V. */
  readonly applied?: Degree;
  readonly special?: SpecialChord;
}

/** The notes a chord is made of, spelt. */
export interface Members {
  readonly root: NoteName;
  readonly third: NoteName;
  readonly fifth: NoteName;
  readonly seventh?: NoteName;
}

export type SixFourKind = 'cadential' | 'passing' | 'pedal' | 'arpeggiated' | 'free';

export interface Chord {
  readonly index: number;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly key: Key;
  readonly roman: Roman;
  readonly root: NoteName;
  /** The lowest chord note, as the harmony is heard (a bass suspension or passing note does not count). */
  readonly bass: NoteName;
  readonly quality: TriadQuality;
  readonly members: Members;
  /** For chords in 6/4 position: what kind. */
  readonly sixFour?: SixFourKind;
  /** How likely people hear it in this key, 0 to 1; calibrated on chorales that the reading had not seen. */
  readonly sure: number;
}

/** A stretch for which a second reading lies so close that it is told beside the first. */
export interface SecondReading {
  readonly from: Ticks;
  readonly until: Ticks;
  /** Another than the first reading's; or the same, where one chord is in doubt. */
  readonly key: Key;
  /** The chords that begin in it, as indices into `chords`, each as a numeral of this reading. */
  readonly chords: readonly { readonly index: number; readonly roman: Roman }[];
}

export interface KeyRegion {
  readonly from: Ticks;
  readonly until: Ticks;
  readonly key: Key;
}

export type OrnamentKind =
  | 'passing'
  | 'accented passing'
  | 'neighbour'
  | 'suspension'
  | 'retardation'
  | 'anticipation'
  | 'échappée'
  | 'appoggiatura'
  | 'pedal'
  | 'changing notes'
  /** Foreign to its chord and none of the above: for the dissonance rules to look at. */
  | 'unclassified';

/** A note that does not belong to its chord, for the stretch in which it does not. */
export interface Ornament {
  readonly voice: VoiceName;
  readonly tone: Tone;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly kind: OrnamentKind;
  /** For a suspension: `4–3`, `7–6`, `9–8`, `2–3` … counted from the bass (for a bass suspension, to the voice above). */
  readonly figures?: string;
  readonly preparation?: Tone;
  readonly resolution?: Tone;
  /** Index into `chords` of the chord it is foreign to. */
  readonly chord: number;
}

export type CadenceKind = 'perfect' | 'imperfect' | 'plagal' | 'interrupted';

export interface Cadence {
  /** Where the last chord of the cadence begins. */
  readonly at: Ticks;
  readonly key: Key;
  readonly kind: CadenceKind;
  /** Indices into `chords`. */
  readonly approach: number;
  readonly goal: number;
  /** Perfect with both chords in root position and the tonic in the soprano. */
  readonly full: boolean;
  /** Either chord is inverted. */
  readonly inverted: boolean;
  /** iv6–V in minor. */
  readonly phrygian: boolean;
  /** The tonic chord is major in a minor key, and its third sounds. */
  readonly tierce: boolean;
}

export interface Phrase {
  readonly index: number;
  readonly from: Ticks;
  /** The end of the sound under the fermata (or of the last bar). */
  readonly until: Ticks;
  /** Where the melody's last note begins. */
  readonly goal: Ticks;
  /** Why the phrase is taken to end here: `set` by hand, `inferred` from the melody where nothing is marked. */
  readonly end: 'fermata' | 'set' | 'inferred' | 'final bar' | 'unfinished';
  /** Index into `cadences`, where there is one. */
  readonly cadence?: number;
}

/** A note written with the wrong letter: `tone` has the pitch it is read as, `written` the one in the score. */
export interface Misspelling {
  readonly tone: Tone;
  readonly written: Pitch;
}

export interface Analysis {
  /**
   * What sounds. A phrase that ends unmarked `rests` in its last slice;
   * misspelt notes have the name they should have. The score in it is as written.
   */
  readonly texture: Texture;
  readonly misspelt: readonly Misspelling[];
  readonly phrases: readonly Phrase[];
  readonly keys: readonly KeyRegion[];
  /** In order of time. Stretches where fewer than two voices sound have no chord. */
  readonly chords: readonly Chord[];
  /** In order of time; few, and none where the first reading stands clear. */
  readonly seconds: readonly SecondReading[];
  readonly ornaments: readonly Ornament[];
  readonly cadences: readonly Cadence[];
}
