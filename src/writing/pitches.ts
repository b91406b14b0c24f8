/** Which pitch a writer means: the nearest note of a letter, the next step of the scale, what the key signature says. */
import { fifthsPlace, type Pitch, STEPS, type Step, semitone, staffPlace } from '../score/pitch.ts';
import type { ByVoice, KeySignature, Note, Score, VoiceName } from '../score/score.ts';
import { signatureAlteration } from '../score/signature.ts';
import type { Ticks } from '../score/time.ts';

/** Where a voice is likely to begin: the middle of its usual range. */
const MIDDLE: ByVoice<Pitch> = {
  S: { step: 'B', alteration: 0, octave: 4 },
  A: { step: 'E', alteration: 0, octave: 4 },
  T: { step: 'B', alteration: 0, octave: 3 },
  B: { step: 'C', alteration: 0, octave: 3 },
};

/** The last note a voice writes before a moment; failing that the first one after it. */
function neighbourNote(score: Score, voice: VoiceName, at: Ticks): Note | undefined {
  let before: Note | undefined;
  for (const event of score.voices[voice]) {
    if (event.kind !== 'note') continue;
    if (event.at < at) before = event;
    else return before ?? event;
  }
  return before;
}

/** The pitch of this letter nearest to what the voice last sang, with the key signature's accidental. */
export function nearestPitch(
  score: Score,
  voice: VoiceName,
  at: Ticks,
  step: Step,
  key: KeySignature,
): Pitch {
  const from = neighbourNote(score, voice, at)?.pitch ?? MIDDLE[voice];
  const alteration = signatureAlteration(key.fifths, step);
  const candidates = [-1, 0, 1].map((shift) => ({ step, alteration, octave: from.octave + shift }));
  const distance = (pitch: Pitch) => Math.abs(staffPlace(pitch) - staffPlace(from));
  return candidates.reduce((best, pitch) => (distance(pitch) < distance(best) ? pitch : best));
}

/** The pitch at a place of the staff (C4 is 28), with the key signature's accidental. */
export function pitchAtPlace(place: number, key: KeySignature): Pitch {
  const step = STEPS[((place % 7) + 7) % 7]!;
  return { step, alteration: signatureAlteration(key.fifths, step), octave: Math.floor(place / 7) };
}

/** As many steps up or down the key signature's scale. */
export function byStep(pitch: Pitch, steps: number, key: KeySignature): Pitch {
  return pitchAtPlace(staffPlace(pitch) + steps, key);
}

/**
 * The likeliest spelling of a key on a keyboard (MIDI number, middle C = 60): the note of the key signature, else a
 * raised degree in minor, else a sharp in sharp keys and a flat in flat keys.
 */
export function spelt(midi: number, key: KeySignature): Pitch {
  const spellings: Pitch[] = [];
  for (const step of STEPS) {
    for (const alteration of [-1, 0, 1]) {
      for (const octave of [Math.floor(midi / 12) - 2, Math.floor(midi / 12) - 1, Math.floor(midi / 12)]) {
        const pitch = { step, alteration, octave };
        if (semitone(pitch) + 12 === midi) spellings.push(pitch);
      }
    }
  }
  const tonic = key.fifths + (key.mode === 'minor' ? 3 : 0);
  const cost = (pitch: Pitch): number => {
    const place = fifthsPlace(pitch);
    if (pitch.alteration === signatureAlteration(key.fifths, pitch.step)) return 0;
    // The leading note stands five fifths above its tonic, the raised sixth three.
    if (place === tonic + 5) return 1;
    if (key.mode === 'minor' && place === tonic + 3) return 2;
    // Raised notes lead to near keys; the distance on the line of fifths from the middle of the scale decides the rest.
    return 3 + Math.abs(place - (key.fifths + 2) - 0.5);
  };
  return spellings.reduce((best, pitch) => (cost(pitch) < cost(best) ? pitch : best));
}
