/** Pitches, keys and metres as MusicXML writes them. */

import { Refused } from '../refusal/refusal.ts';
import { fifthsPlace, type Pitch, printPitch, STEPS, semitone, staffPlace } from '../score/pitch.ts';
import type { KeySignature } from '../score/score.ts';
import { barLength, gcd, isBeatUnit, type Metre } from '../score/time.ts';
import { LIMITS } from './limits.ts';
import { decimal, wholeNumber } from './numbers.ts';
import { quoted } from './quoted.ts';
import { childOf, childrenOf, textOf, type XmlElement } from './xml.ts';

/** How a written pitch becomes the sounding one: staff steps and semitones, octaves included. */
export interface Transposition {
  readonly steps: number;
  readonly semitones: number;
}

export const AS_WRITTEN: Transposition = { steps: 0, semitones: 0 };

/** Steps that go with a chromatic transposition where the file does not say (0 to 11 semitones up). */
const USUAL_STEPS = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6] as const;

export function readTransposition(element: XmlElement): Transposition {
  const number = (name: string): number | undefined => {
    const child = childOf(element, name);
    return child && wholeNumber(child, -60, 60, `The transposition's ${name}`);
  };
  const chromatic = number('chromatic') ?? 0;
  const octaves = number('octave-change') ?? 0;
  const within = ((chromatic % 12) + 12) % 12;
  const usual = USUAL_STEPS[within]! + 7 * Math.floor(chromatic / 12);
  const diatonic = number('diatonic') ?? usual;
  return { steps: diatonic + 7 * octaves, semitones: chromatic + 12 * octaves };
}

/** A pitch moved by a transposition, spelt by its steps. The alteration may come out beyond a double one. */
function transposed(pitch: Pitch, by: Transposition): Pitch {
  if (by.steps === 0 && by.semitones === 0) return pitch;
  const place = staffPlace(pitch) + by.steps;
  const octave = Math.floor(place / 7);
  const natural: Pitch = { step: STEPS[place - 7 * octave]!, alteration: 0, octave };
  return { ...natural, alteration: semitone(pitch) + by.semitones - semitone(natural) };
}

/** A sounding pitch, and what was odd about it, if anything. */
export interface ReadPitch {
  readonly pitch: Pitch;
  readonly odd?: string;
}

/** @throws {Refused} for a step that is no letter or an octave outside 0 to 9. */
export function readPitch(element: XmlElement, by: Transposition): ReadPitch {
  const stepText = textOf(element, 'step') ?? '';
  const step = STEPS.find((s) => s === stepText.toUpperCase());
  if (step === undefined) {
    throw new Refused(
      `A pitch has the step ${quoted(stepText)}, where a letter from A to G is needed.`,
      element,
    );
  }
  const octaveElement = childOf(element, 'octave');
  if (octaveElement === undefined) {
    throw new Refused('A pitch has no octave; a number from 0 to 9 is needed.', element);
  }
  const octave = wholeNumber(octaveElement, 0, 9, 'The octave of a pitch');
  const alterElement = childOf(element, 'alter');
  const alter = alterElement === undefined ? { n: 0, d: 1 } : decimal(alterElement.text);
  if (alter === undefined || Math.abs(alter.n) > 12 * alter.d) {
    throw new Refused(
      `A pitch is altered by ${quoted(alterElement?.text ?? '')}, where a number of semitones from -2 to 2 is needed.`,
      alterElement ?? element,
    );
  }
  const nearest = Math.max(-LIMITS.alteration, Math.min(LIMITS.alteration, Math.round(alter.n / alter.d)));
  const written: Pitch = { step, alteration: nearest, octave };
  if (alter.d !== 1)
    return { pitch: written, odd: `${step}${octave} altered by ${alter.n / alter.d} semitones` };
  if (nearest !== alter.n) return { pitch: written, odd: `${step}${octave} altered by ${alter.n} semitones` };
  const pitch = transposed(written, by);
  if (Math.abs(pitch.alteration) > LIMITS.alteration || pitch.octave < 0 || pitch.octave > 9) {
    return { pitch: written, odd: `${printPitch(written)} as transposed` };
  }
  return { pitch };
}

/** The sounding key signature, or what is odd about it. */
export function readKey(element: XmlElement, by: Transposition): { key: KeySignature; odd?: string } {
  const fifthsElement = childOf(element, 'fifths');
  if (fifthsElement === undefined) {
    return {
      key: { fifths: 0 },
      ...(childOf(element, 'key-step') ? { odd: 'a key signature that is none of the usual ones' } : {}),
    };
  }
  const written = wholeNumber(fifthsElement, -100, 100, 'The key signature');
  const moved = transposed({ step: 'C', alteration: 0, octave: 4 }, by);
  const fifths = written + fifthsPlace(moved);
  const modeText = textOf(element, 'mode')?.toLowerCase();
  const mode = modeText === 'major' || modeText === 'minor' ? { mode: modeText } : {};
  if (Math.abs(fifths) <= 7) return { key: { fifths, ...mode } as KeySignature };
  // Twelve fifths round the circle is the same key in another spelling (8 sharps sound as 4 flats).
  if (written !== fifths && Math.abs(fifths) <= 12) {
    return { key: { fifths: fifths > 0 ? fifths - 12 : fifths + 12, ...mode } as KeySignature };
  }
  return {
    key: { fifths: 0 },
    odd: `a key signature of ${Math.abs(fifths)} ${fifths > 0 ? 'sharps' : 'flats'}`,
  };
}

/**
 * The metre; several added figures (3+2/8, 2/4+3/8) become one metre of the same length. 'free' where the file says
 * that there is none.
 * @throws {Refused} where the figures are no metre.
 */
export function readMetre(element: XmlElement): Metre | 'free' {
  if (childOf(element, 'senza-misura')) return 'free';
  const upper = childrenOf(element, 'beats');
  const lower = childrenOf(element, 'beat-type');
  if (upper.length === 0 || upper.length !== lower.length || upper.length > 16) {
    throw new Refused('A time signature has no upper and lower figure, as in 4/4.', element);
  }
  let sum: Metre | undefined;
  for (const [i, beatsElement] of upper.entries()) {
    const unit = wholeNumber(lower[i]!, 1, 32, "The time signature's lower figure");
    if (!isBeatUnit(unit)) {
      throw new Refused(
        `A time signature's lower figure is ${unit}, where 1, 2, 4, 8, 16 or 32 is needed.`,
        lower[i]!,
      );
    }
    let beats = 0;
    for (const figure of beatsElement.text.split('+')) {
      beats += wholeNumber(
        { ...beatsElement, text: figure },
        1,
        LIMITS.beats,
        "The time signature's upper figure",
      );
    }
    sum = sum === undefined ? { beats, unit } : added(sum, { beats, unit });
  }
  if (sum!.beats > LIMITS.beats)
    throw new Refused(`A time signature has more than ${LIMITS.beats} beats.`, element);
  return sum!;
}

function added(a: Metre, b: Metre): Metre {
  const unit = Math.max(a.unit, b.unit);
  return { beats: a.beats * (unit / a.unit) + b.beats * (unit / b.unit), unit };
}

/** The plainest metre whose bar has this length, in crotchets where it can be: 4/4, 3/4, 7/8. Undefined if there is none. */
export function metreOfLength(ticks: number): Metre | undefined {
  if (ticks <= 0) return undefined;
  const whole = barLength({ beats: 1, unit: 1 });
  const unit = Math.max(4, whole / gcd(ticks, whole));
  const beats = (ticks * unit) / whole;
  return isBeatUnit(unit) && Number.isInteger(beats) && beats <= LIMITS.beats ? { beats, unit } : undefined;
}
