/**
 * Notes written with the wrong letter (A flat where the chord is E–G sharp–B) are read as what they sound like, so
 * that one slip of spelling does not upset the chord, the key and all that is judged by them.
 */
import { intervalBetween } from '../../score/interval.ts';
import { fifthsPlace, type NoteName, noteNameAtFifths, type Pitch, sameNoteName } from '../../score/pitch.ts';
import { VOICES } from '../../score/score.ts';
import { signatureAlteration } from '../../score/signature.ts';
import { isAllWritten, type Slice, type Texture, type Tone, textureOf, toneIn } from '../../score/texture.ts';
import { beatLength, type Ticks } from '../../score/time.ts';
import type { Misspelling } from '../analysis.ts';
import { rootAsSpelt } from '../questions/spelling.ts';

/** The texture with every misspelt note under the name it should have; the score in it stays as written. */
export interface Respelt {
  readonly texture: Texture;
  readonly misspelt: readonly Misspelling[];
}

/** A signature's seven notes lie at most 3 fifths from their middle; minor's raised degrees up to 6. */
const IN_SIGNATURE = 3;
const NEAR = 7;

export function respell(texture: Texture): Respelt {
  const meant = new Map<Tone, Pitch>();
  for (const slice of texture.slices)
    for (const voice of VOICES) {
      const tone = toneIn(slice, voice);
      if (tone === undefined || meant.has(tone) || tone.at !== slice.at) continue;
      const pitch = meantBy(texture, slice, tone);
      if (pitch !== undefined) meant.set(tone, pitch);
    }
  if (meant.size === 0) return { texture, misspelt: [] };
  const respelt = textureOf(texture.score, new Map([...meant].map(([tone, pitch]) => [tone.id, pitch])));
  return {
    texture: respelt,
    misspelt: [...meant.keys()].map((tone) => ({
      tone: respelt.tones[tone.voice][tone.index]!,
      written: tone.pitch,
    })),
  };
}

/** What a tone should have been called; undefined where it is rightly spelt, or nothing tells. */
function meantBy(texture: Texture, slice: Slice, tone: Tone): Pitch | undefined {
  const { fifths } = slice.bar.key;
  const other = otherName(tone.pitch, fifths);
  if (other === undefined) return undefined;
  const next = texture.tones[tone.voice][tone.index + 1];
  const after = next?.at === tone.until ? next : undefined;
  if (after !== undefined && leadsByLetter(tone.pitch, after.pitch)) return undefined;
  if (after !== undefined && isForgotten(texture, slice, tone, after)) return undefined;
  const leads =
    after !== undefined &&
    (risesByLetterOnly(texture, slice, tone, after) || fallsAsSeventh(texture, slice, tone, other, after));
  // A note of the signature under its other name has no other meaning, whatever chord it could be spelt into.
  const sure = leads || inSignature(other, fifths);
  return soundsAs(texture, slice, tone, other, sure) ? other : undefined;
}

/** The other name of a note far from the signature, where that is nearer; what lies in it or next to it is taken at its word. */
function otherName(pitch: Pitch, fifths: number): Pitch | undefined {
  const middle = fifths + 2;
  const place = fifthsPlace(pitch);
  if (Math.abs(place - middle) <= IN_SIGNATURE + 1) return undefined;
  const other = enharmonic(pitch, place > middle ? -12 : 12);
  return Math.abs(fifthsPlace(other) - middle) > NEAR ? undefined : other;
}

/** The same sound twelve places along the line of fifths, one letter away. */
function enharmonic(pitch: Pitch, places: number): Pitch {
  const name = noteNameAtFifths(fifthsPlace(pitch) + places);
  const octave =
    pitch.octave +
    (name.step === 'B' && pitch.step === 'C' ? -1 : name.step === 'C' && pitch.step === 'B' ? 1 : 0);
  return { ...name, octave };
}

/** A semitone to the next letter: spelt as it moves. */
function leadsByLetter(from: Pitch, to: Pitch): boolean {
  const { steps, semitones } = intervalBetween(from, to);
  return Math.abs(steps) === 1 && Math.abs(semitones) === 1;
}

/**
 * A plain letter that the signature alters, and that leads nowhere by semitone: its accidental was forgotten, if with
 * it the notes make a chord at some time.
 */
function isForgotten(texture: Texture, first: Slice, { pitch, until }: Tone, after: Tone): boolean {
  const { fifths } = first.bar.key;
  const { semitones } = intervalBetween(pitch, after.pitch);
  if (pitch.alteration !== 0 || inSignature(pitch, fifths) || Math.abs(semitones) === 1) return false;
  const asSigned = { step: pitch.step, alteration: signatureAlteration(fifths, pitch.step) };
  for (let i = first.index; i < texture.slices.length && texture.slices[i]!.at < until; i++) {
    const names = pitchesIn(texture.slices[i]!);
    if (rootAsSpelt(names.map((name) => (sameNoteName(name, pitch) ? asSigned : name))) !== undefined)
      return true;
  }
  return false;
}

/** Up a semitone without a change of letter, to the root of a chord in the signature: a leading note was meant. */
function risesByLetterOnly(texture: Texture, slice: Slice, tone: Tone, next: Tone): boolean {
  const { steps, semitones } = intervalBetween(tone.pitch, next.pitch);
  if (steps !== 0 || semitones !== 1 || tone.until - tone.at < beatLength(slice.bar.metre)) return false;
  const goal = texture.slices.find(({ at }) => at === next.at);
  const root = goal === undefined ? undefined : rootAsSpelt(pitchesIn(goal));
  return (
    root !== undefined && sameNoteName(root, next.pitch) && inSignature(next.pitch, slice.bar.key.fifths)
  );
}

/**
 * Down a semitone without a change of letter, as the seventh of a chord under the other name, to the chord a fifth
 * below: a dominant seventh was meant, though as spelt it may make an augmented sixth.
 */
function fallsAsSeventh(texture: Texture, slice: Slice, tone: Tone, other: Pitch, next: Tone): boolean {
  const { steps, semitones } = intervalBetween(tone.pitch, next.pitch);
  if (steps !== 0 || semitones !== -1) return false;
  const goal = texture.slices.find(({ at }) => at === next.at);
  const meant = pitchesIn(slice).map((name) => (sameNoteName(name, tone.pitch) ? other : name));
  const [from, to] = [rootAsSpelt(meant), goal && rootAsSpelt(pitchesIn(goal))];
  return (
    from !== undefined &&
    to !== undefined &&
    fifthsPlace(other) - fifthsPlace(from) === -2 &&
    fifthsPlace(from) - fifthsPlace(to) === 1
  );
}

function inSignature(note: NoteName, fifths: number): boolean {
  return Math.abs(fifthsPlace(note) - fifths - 2) <= IN_SIGNATURE;
}

/**
 * For half its length or more the note makes a chord under the other name, alone or with whatever else has a name as
 * far off, and at no time under its own, unless it is `sure` to be the other. Then the third of a chord without its
 * fifth is enough.
 */
function soundsAs(texture: Texture, first: Slice, tone: Tone, other: Pitch, sure: boolean): boolean {
  let explained: Ticks = 0;
  for (let i = first.index; i < texture.slices.length && texture.slices[i]!.at < tone.until; i++) {
    const slice = texture.slices[i]!;
    const pitches = pitchesIn(slice);
    // A voice still to be written may make a chord of it as it is spelt.
    if (!sure && (!isAllWritten(slice) || rootAsSpelt(pitches) !== undefined)) return false;
    const alone = pitches.map((pitch) => (sameNoteName(pitch, tone.pitch) ? other : pitch));
    const together = pitches.map((pitch) => {
      const meant = otherName(pitch, slice.bar.key.fifths);
      // A sharp beside a flat that should be a sharp is as it should be.
      return meant && isLower(meant, pitch) === isLower(other, tone.pitch) ? meant : pitch;
    });
    const isChord = [alone, together].some(
      (names) => rootAsSpelt(names) !== undefined || (sure && isThirdOverBass(names)),
    );
    if (isChord) explained += slice.until - slice.at;
  }
  return explained * 2 >= tone.until - tone.at;
}

function isLower(a: NoteName, b: NoteName): boolean {
  return fifthsPlace(a) < fifthsPlace(b);
}

/** Two notes alone, from the top, of which the lowest has the other for its third. */
function isThirdOverBass(notes: readonly NoteName[]): boolean {
  const root = fifthsPlace(notes.at(-1)!);
  const others = new Set(notes.map((note) => fifthsPlace(note) - root).filter((places) => places !== 0));
  return others.size === 1 && (others.has(4) || others.has(-3));
}

function pitchesIn(slice: Slice): Pitch[] {
  return VOICES.flatMap((voice) => toneIn(slice, voice)?.pitch ?? []);
}
