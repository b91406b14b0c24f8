/**
 * What the engraver is given and what it tells: the contract with the rest of the page. Plain data only, so that a
 * review that crossed over from a worker (without its rules' functions) serves as well as one made in place.
 */
import type { Cadence, Chord, KeyRegion, Ornament, SecondReading } from '../../src/harmony/analysis.ts';
import type { Review } from '../../src/review/review.ts';
import type { Family, Severity } from '../../src/rules/rule.ts';
import type { Score, VoiceName, WrittenFigure } from '../../src/score/score.ts';
import type { Tone } from '../../src/score/texture.ts';
import type { Ticks } from '../../src/score/time.ts';

/** A finding as far as the drawing needs it. A `Finding` with a label is one; so is a teacher's own remark. */
export interface MarkedFinding {
  readonly id: string;
  /** What stands in the tag: the finding's number in the list beside the score. Three characters at most. */
  readonly label: string;
  readonly severity: Severity;
  readonly family: Family;
  readonly voices: readonly VoiceName[];
  readonly from: Ticks;
  readonly until: Ticks;
  /** The notes that strokes tie the tag to; where there are none, the tag points at the place. */
  readonly tones: readonly Tone[];
  /** Struck out: overruled by a teacher, or meant so by the pupil. Drawn pale, with a line through the tag. */
  readonly waived?: boolean;
  /** A person's own remark: a slip of another shape and ink than what the program says. */
  readonly own?: true;
}

/** Everything that can be marked on a score. */
export interface Marks {
  readonly findings: readonly MarkedFinding[];
  readonly chords: readonly Chord[];
  readonly keys: readonly KeyRegion[];
  /** Where a second reading lies close: told under the keys. */
  readonly seconds: readonly SecondReading[];
  readonly ornaments: readonly Ornament[];
  readonly cadences: readonly Cadence[];
  /** Figures that are given under the bass: drawn whatever is switched on, in place of the harmony's. */
  readonly figures?: readonly WrittenFigure[];
}

export const NO_MARKS: Marks = {
  findings: [],
  chords: [],
  keys: [],
  seconds: [],
  ornaments: [],
  cadences: [],
};

/**
 * The marks of a review, with their numbers in the list beside the score. What follows from another finding has no
 * tag of its own, and what is still to be written shows by itself.
 */
export function marksOf(review: Review): Marks {
  const { chords, keys, seconds, ornaments, cadences } = review.analysis;
  const findings = review.findings
    .filter(({ mark, because }) => mark !== undefined && because === undefined)
    .map((finding) => markedFinding(finding, String(finding.mark)));
  const { figures } = review.score;
  return { findings, chords, keys, seconds, ornaments, cadences, ...(figures && { figures }) };
}

/** A finding as the drawing needs it, with what is to stand in its tag. */
export function markedFinding(finding: Review['findings'][number], label: string): MarkedFinding {
  const { id, severity, rule, voices, from, until, tones } = finding;
  return { id, label, severity, family: rule.family, voices, from, until, tones };
}

/** What is shown besides the notes. */
export interface Layers {
  readonly numerals: boolean;
  readonly figuredBass: boolean;
  /** A lane with the local keys under the numerals, and second readings under it. */
  readonly keys: boolean;
  /** Letters at non-harmony notes: P passing, N neighbour, S suspension … (`ORNAMENT_LETTERS`). */
  readonly ornaments: boolean;
  readonly cadences: boolean;
  readonly lyrics: boolean;
  /** Numbers above the bars; shown unless false. */
  readonly barNumbers?: boolean;
  /** Families of findings shown; `'all'` for every one. */
  readonly findings: 'all' | readonly Family[];
  /** Findings that only inform; shown unless false. */
  readonly remarks?: boolean;
}

export const ALL_LAYERS: Layers = {
  numerals: true,
  figuredBass: false,
  keys: true,
  ornaments: false,
  cadences: true,
  lyrics: false,
  findings: 'all',
};

/** Notes alone: for the rule browser's examples and a clean print. */
export const NO_LAYERS: Layers = {
  numerals: false,
  figuredBass: false,
  keys: false,
  ornaments: false,
  cadences: false,
  lyrics: false,
  barNumbers: false,
  findings: 'all',
};

/** Whether a finding of this family and severity is among what is shown. */
export function isShown(
  { findings, remarks }: Pick<Layers, 'findings' | 'remarks'>,
  family: Family,
  severity: Severity,
): boolean {
  return (findings === 'all' || findings.includes(family)) && (remarks !== false || severity !== 'remark');
}

/** Where the next note would be written. */
export interface Caret {
  readonly voice: VoiceName;
  readonly at: Ticks;
}

/** A note that is not there yet. */
export interface Ghost extends Caret {
  readonly place: number;
}

/** A stretch chosen by the person, to be heard again or worked on. */
export interface Stretch {
  readonly from: Ticks;
  readonly until: Ticks;
  /** The voices whose notes are chosen with it, ringed; none where it is only a time. */
  readonly voices?: readonly VoiceName[];
}

export interface EngravingInput {
  readonly score: Score;
  /** For the same music as `score`; marks of an older review may be given while the next is being made. */
  readonly marks: Marks;
  /** The marks given are an older review's: those on paper stay as they are until the new ones come, and are placed then. */
  readonly marksToCome?: boolean;
  /** Somebody is writing: a bar that is new is set into the room it finds, if it can be, and no other bar is touched. */
  readonly hold?: boolean;
  /** Width to fill, in CSS pixels; 0, as a hidden container has, draws nothing and keeps what is there. */
  readonly width: number;
  /** Size of the music: 1 is a staff of 40 px. Left out: 1, and down to 0.75 where the width is that of a phone. */
  readonly scale?: number;
  readonly layers: Layers;
  /** How a chord is written under the bass; plain numerals (`V65`, `viio6/V`) unless given. */
  readonly chordLabel?: (chord: Chord) => string;
}

/** What lies under the pointer. */
export interface Hit {
  readonly staff: 'treble' | 'bass';
  /** The voice whose note is nearest, or by the half of the staff where nothing is near. */
  readonly voice: VoiceName;
  /** The beginning of the nearest column at or before the pointer: a note's or rest's start, or a beat's. */
  readonly at: Ticks;
  /** The moment itself, by proportion between the columns; round it as you need. */
  readonly moment: Ticks;
  /** Staff place under the pointer, as `staffPlace` counts: C4 is 28. */
  readonly place: number;
  /** The unwritten stretch pointed at: of two in a staff, the one whose box is nearer. */
  readonly gap?: { readonly voice: VoiceName; readonly at: Ticks; readonly until: Ticks };
  /** The tone whose head is under the pointer (or within a finger's width of it). */
  readonly tone?: string;
  /** The finding whose tag is under the pointer. */
  readonly finding?: string;
}

export interface EngravingEvents {
  /** A tag was chosen by pointer or keyboard; undefined when the chosen one is let go. */
  readonly onSelectFinding?: (id: string | undefined) => void;
  /** The music was clicked or tapped, and not a tag. */
  readonly onPoint?: (hit: Hit) => void;
  /** A drawing is complete: all systems are there. Milliseconds since `update`. */
  readonly onDrawn?: (milliseconds: number) => void;
}

/** A box in CSS pixels, relative to the viewport, as `getBoundingClientRect` gives them. */
export interface ClientBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Engraving {
  /**
   * Draws, or draws anew what has changed. Systems whose plain data are the same stay as they are. The systems in
   * view come at once, the others in idle time; `drawn` resolves when all are there.
   */
  update(input: EngravingInput): void;
  readonly drawn: Promise<void>;
  /** Shows one finding strongly, its notes highlighted, all others pale. Nothing is redrawn. */
  select(id: string | undefined): void;
  /** Highlights tones (ids as in `Tone`) in another way than a finding does: chosen by the person, or sounding. */
  highlight(tones: readonly string[]): void;
  /** The place where the next note is written. */
  setCaret(caret: Caret | undefined): void;
  setStretch(stretch: Stretch | undefined): void;
  /** A pale head where a click would write, or where a dragged note would land; undefined takes it away. */
  setGhost(ghost: Ghost | undefined): void;
  /** A line that moves with the playback; undefined takes it away. Cheap: call it each frame. */
  setCursor(at: Ticks | undefined): void;
  /** Coordinates as in a pointer event (`clientX`, `clientY`). */
  hitTest(clientX: number, clientY: number): Hit | undefined;
  /** Where the heads of a tone stand; empty while it is not drawn. */
  boxesOf(tone: string): readonly ClientBox[];
  /** Brings a moment, or a finding with its notes, into view. `smooth` is ignored under reduced motion. */
  scrollTo(target: { readonly at: Ticks } | { readonly finding: string }, smooth?: boolean): void;
  /** Draws everything at once, for printing. */
  complete(): void;
  /** Takes the drawing and its listeners away. */
  destroy(): void;
}
