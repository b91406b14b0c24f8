/**
 * Pitch as written: step, alteration, octave. Spelling is never lost, so a diminished fifth and an
 * augmented fourth stay different things.
 */
export const STEPS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'] as const;
export type Step = (typeof STEPS)[number];

/** A note name without its octave: F sharp is `{ step: 'F', alteration: 1 }`. Alteration runs from -2 to 2. */
export interface NoteName {
  readonly step: Step;
  readonly alteration: number;
}

/** A note name in an octave of scientific pitch notation; middle C is `{ step: 'C', alteration: 0, octave: 4 }`. */
export interface Pitch extends NoteName {
  readonly octave: number;
}

const SEMITONES: Readonly<Record<Step, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };
/** Places on the line of fifths, C = 0. */
const FIFTHS: Readonly<Record<Step, number>> = { F: -1, C: 0, G: 1, D: 2, A: 3, E: 4, B: 5 };
const STEP_PLACES: Readonly<Record<Step, number>> = { C: 0, D: 1, E: 2, F: 3, G: 4, A: 5, B: 6 };
const FIFTHS_STEPS = ['F', 'C', 'G', 'D', 'A', 'E', 'B'] as const;

const SIGNS: Readonly<Record<string, number>> = {
  '': 0,
  '#': 1,
  '♯': 1,
  '##': 2,
  '♯♯': 2,
  x: 2,
  b: -1,
  '♭': -1,
  bb: -2,
  '♭♭': -2,
};

/** Where a step stands in the octave, C = 0 … B = 6. */
export function stepIndex(step: Step): number {
  return STEP_PLACES[step];
}

/** Reads `F#`, `Bb`, `C`, `G##`; undefined for anything else. */
export function parseNoteName(text: string): NoteName | undefined {
  const step = STEPS.find((s) => s === text[0]);
  const alteration = SIGNS[text.slice(1)];
  return step === undefined || alteration === undefined || !Object.hasOwn(SIGNS, text.slice(1))
    ? undefined
    : { step, alteration };
}

/** Reads a scientific pitch name, `F#4` or `Bb3`, octaves 0 to 9; undefined for anything else. */
export function parsePitch(text: string): Pitch | undefined {
  const octave = text.at(-1);
  const name = parseNoteName(text.slice(0, -1));
  return name && octave !== undefined && /^[0-9]$/.test(octave)
    ? { ...name, octave: Number(octave) }
    : undefined;
}

/** The name as text: `F#`, `Bb`, `C##`. */
export function printNoteName(name: NoteName): string {
  const sign = name.alteration > 0 ? '#'.repeat(name.alteration) : 'b'.repeat(-name.alteration);
  return name.step + sign;
}

/** The pitch in scientific notation: `F#4`. */
export function printPitch(pitch: Pitch): string {
  return printNoteName(pitch) + String(pitch.octave);
}

/** Semitones above C0 (so middle C is 48; add 12 for the MIDI number). B#3 and C4 are equal here. */
export function semitone(pitch: Pitch): number {
  return pitch.octave * 12 + SEMITONES[pitch.step] + pitch.alteration;
}

/** The MIDI note number, middle C = 60. */
export function midiNumber(pitch: Pitch): number {
  return semitone(pitch) + 12;
}

/** Staff places above C0, whatever the accidentals: C4 is 28, D4 and Db4 are 29. */
export function staffPlace(pitch: Pitch): number {
  return pitch.octave * 7 + stepIndex(pitch.step);
}

/** Semitone of a note name within the octave, 0 to 11. */
export function pitchClass(name: NoteName): number {
  return (((SEMITONES[name.step] + name.alteration) % 12) + 12) % 12;
}

/** Place on the line of fifths, C = 0, G = 1, F = -1, F# = 6. Equal only for equal spelling. */
export function fifthsPlace(name: NoteName): number {
  return FIFTHS[name.step] + 7 * name.alteration;
}

/** The note name at a place on the line of fifths: the inverse of {@link fifthsPlace}. */
export function noteNameAtFifths(place: number): NoteName {
  const index = (((place + 1) % 7) + 7) % 7;
  return { step: FIFTHS_STEPS[index]!, alteration: Math.floor((place + 1) / 7) };
}

export function sameNoteName(a: NoteName, b: NoteName): boolean {
  return a.step === b.step && a.alteration === b.alteration;
}

export function samePitch(a: Pitch, b: Pitch): boolean {
  return a.octave === b.octave && sameNoteName(a, b);
}

/** Orders by sound, then by staff place. */
export function comparePitch(a: Pitch, b: Pitch): number {
  return semitone(a) - semitone(b) || staffPlace(a) - staffPlace(b);
}
