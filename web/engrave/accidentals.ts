/** Which notes need an accidental: pure, per bar and staff, both voices together. */
import { type Pitch, STEPS, type Step, staffPlace, stepIndex } from '../../src/score/pitch.ts';
import { signatureAlteration } from '../../src/score/signature.ts';
import type { Ticks } from '../../src/score/time.ts';

export interface NoteInBar {
  readonly at: Ticks;
  readonly pitch: Pitch;
  /** It goes on from the bar before by a tie, or from an earlier sign of the same note. */
  readonly continued: boolean;
}

/** 'needed' by the rules of notation, 'courtesy' a reminder in brackets. */
export type AccidentalNeed = 'needed' | 'courtesy' | undefined;

/** Alterations that the bar before used against its key, by step. */
export type Reminders = ReadonlyMap<Step, ReadonlySet<number>>;

export interface StaffBarAccidentals {
  /** In the order of the notes given. */
  readonly needs: readonly AccidentalNeed[];
  /** To be handed to the next bar. */
  readonly reminders: Reminders;
}

/**
 * An accidental holds for its own staff place until the barline, in both voices of the staff. A note tied over the
 * barline needs none, and its accidental does not hold for later notes of the new bar. Courtesy accidentals (common
 * practice, no source) remind where the same step was altered in another octave earlier in this bar, or anywhere in
 * the bar before.
 * Notes must come in the order of time, upper voice first. Two voices in unison show one accidental.
 */
export function accidentalsInBar(
  notes: readonly NoteInBar[],
  fifths: number,
  before: Reminders,
): StaffBarAccidentals {
  const inForce = new Map<number, number>();
  const shown = new Set<number>();
  const seen = new Map<Step, Set<number>>();
  const settled = new Set<number>();
  const reminded = new Set<Step>();
  const needs = notes.map((note): AccidentalNeed => {
    const { step, alteration } = note.pitch;
    const place = staffPlace(note.pitch);
    const signature = signatureAlteration(fifths, step);
    const holding = inForce.get(place) ?? signature;
    const alterations = seen.get(step) ?? new Set<number>();
    let need: AccidentalNeed;
    if (note.continued) {
      need = undefined;
    } else if (alteration !== holding) {
      need = 'needed';
    } else if (!settled.has(place) && !shown.has(place)) {
      // One reminder a bar will do for what the bar before altered; one for each place for what this bar did.
      const elsewhere = [...alterations, ...(reminded.has(step) ? [] : (before.get(step) ?? []))];
      need = elsewhere.some((other) => other !== alteration) ? 'courtesy' : undefined;
    }
    if (need !== undefined || note.continued === false) reminded.add(step);
    if (need === 'needed') {
      inForce.set(place, alteration);
      shown.add(place);
    }
    if (!note.continued) settled.add(place);
    // A step that keeps to its signature warns nobody; only what was altered, or taken back, does.
    if (alteration !== signature || alterations.size > 0) {
      alterations.add(alteration);
      seen.set(step, alterations);
    }
    return need;
  });
  const reminders = new Map<Step, ReadonlySet<number>>();
  for (const [step, alterations] of seen) {
    const signature = signatureAlteration(fifths, step);
    const altered = [...alterations].filter((alteration) => alteration !== signature);
    if (altered.length > 0) reminders.set(step, new Set(altered));
  }
  return { needs, reminders };
}

/** The sign's name for the engraver: `#`, `b`, `n`, `##`, `bb`. */
export function accidentalSign(alteration: number): string {
  return alteration > 0 ? '#'.repeat(alteration) : alteration < 0 ? 'b'.repeat(-alteration) : 'n';
}

/** Steps of a key signature in the order of drawing, for width estimates and changes. */
export function signatureSize(fifths: number): number {
  return Math.min(STEPS.length, Math.abs(fifths));
}

/** The major key that has this signature, as VexFlow names it: 2 is `D`, -3 is `Eb`. */
export function signatureName(fifths: number): string {
  const names = ['Cb', 'Gb', 'Db', 'Ab', 'Eb', 'Bb', 'F', 'C', 'G', 'D', 'A', 'E', 'B', 'F#', 'C#'];
  return names[Math.max(-7, Math.min(7, fifths)) + 7]!;
}

/** The key string VexFlow wants for a pitch: `f#/4`. */
export function keyString(pitch: Pitch): string {
  const sign = pitch.alteration === 0 ? '' : accidentalSign(pitch.alteration);
  return `${STEPS[stepIndex(pitch.step)]!.toLowerCase()}${sign}/${pitch.octave}`;
}
