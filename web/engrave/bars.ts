/** A bar as written signs, in plain data: what `plan.ts` makes and everything after it reads. */
import type { Pitch } from '../../src/score/pitch.ts';
import type { ByVoice, KeySignature, VoiceName } from '../../src/score/score.ts';
import type { Metre, Ticks } from '../../src/score/time.ts';
import type { TupletRatio, Value } from './values.ts';

export type StaffName = 'treble' | 'bass';
export const STAFF_VOICES: Readonly<Record<StaffName, readonly [VoiceName, VoiceName]>> = {
  treble: ['S', 'A'],
  bass: ['T', 'B'],
};
export const STAFF_OF: ByVoice<StaffName> = { S: 'treble', A: 'treble', T: 'bass', B: 'bass' };
/** Staff place (see `staffPlace`) of each staff's lowest line: E4 and G2. */
export const LOWEST_LINE: Readonly<Record<StaffName, number>> = { treble: 30, bass: 18 };

/** One written sign. Times are ticks from the beginning of the score. */
export interface Sign {
  readonly kind: 'note' | 'rest' | 'gap';
  readonly at: Ticks;
  readonly duration: Ticks;
  readonly value: Value;
  /** Notes: staff place. Rests and gaps: where they stand, clear of the other voice. */
  readonly place: number;
  readonly pitch?: Pitch;
  /** Id of the tone it belongs to. */
  readonly tone?: string;
  readonly accidental?: 'needed' | 'courtesy';
  /** Tied to the voice's next sign, in this bar or the next. */
  readonly tied?: true;
  /** The sign before is tied to this one. */
  readonly continued?: true;
  readonly fermata?: true;
  /** A rest that fills the bar, to be set in its middle. */
  readonly wholeBar?: true;
  /** The other voice of the staff has the same rest at the same time: one is drawn for both. */
  readonly shared?: true;
  readonly grace?: readonly Pitch[];
  readonly lyrics?: readonly string[];
  /** Notes too many, drawn on the same stem; an accidental wherever they leave the signature. */
  readonly beside?: readonly { readonly pitch: Pitch; readonly accidental: boolean }[];
}

export interface PlannedTuplet {
  readonly voice: VoiceName;
  readonly first: number;
  readonly last: number;
  readonly ratio: TupletRatio;
}

export interface PlannedBar {
  readonly index: number;
  readonly number: string;
  readonly at: Ticks;
  readonly duration: Ticks;
  readonly metre: Metre;
  readonly key: KeySignature;
  /** The signature before, where this bar changes it. */
  readonly keyBefore?: number;
  readonly metreChanges?: true;
  /** Crotchets a minute, where they change after the first bar. */
  readonly tempo?: number;
  readonly repeatStart?: true;
  readonly repeatEnd?: true;
  readonly ending?: string;
  readonly endingBegins?: true;
  readonly endingEnds?: true;
  /** The last bar of the score. */
  readonly final?: true;
  readonly signs: ByVoice<readonly Sign[]>;
  /** Runs of signs under one beam, as first and last index. */
  readonly beams: ByVoice<readonly (readonly [number, number])[]>;
  readonly tuplets: readonly PlannedTuplet[];
  /** Moments at which something stands or may be written, in order. */
  readonly columns: readonly Ticks[];
}
