/**
 * A score whose letters were lost, spelt anew by the keys in which it is read: what the rules then say owes nothing to
 * letters that nobody wrote.
 */
import type { Analysis, Key } from '../../../src/harmony/analysis.ts';
import { keyAt } from '../../../src/harmony/questions/moments.ts';
import { fifthsPlace, noteNameAtFifths, type Pitch, semitone } from '../../../src/score/pitch.ts';
import { byVoice, type Score } from '../../../src/score/score.ts';

/**
 * How far along the line of fifths from the tonic each of the twelve sounds above it lies, as it is most often spelt
 * (common practice, no source).
 */
const USUAL: Readonly<Record<Key['mode'], readonly number[]>> = {
  major: [0, 7, 2, -3, 4, -1, 6, 1, 8, 3, -2, 5],
  minor: [0, -5, 2, -3, 4, -1, 6, 1, -4, 3, -2, 5],
};

export function respelt(analysis: Analysis): Score {
  const { score } = analysis.texture;
  const last = analysis.keys.at(-1)?.key;
  return {
    ...score,
    voices: byVoice((voice) =>
      score.voices[voice].map((event) => {
        const key = keyAt(analysis, event.at) ?? last;
        return event.kind === 'note' && key !== undefined
          ? { ...event, pitch: inKey(event.pitch, key) }
          : event;
      }),
    ),
  };
}

function inKey(pitch: Pitch, { tonic, mode }: Key): Pitch {
  const above = (semitone(pitch) - semitone({ ...tonic, octave: 0 }) + 120) % 12;
  const name = noteNameAtFifths(fifthsPlace(tonic) + USUAL[mode][above]!);
  const octave = [-1, 0, 1].find(
    (shift) => semitone({ ...name, octave: pitch.octave + shift }) === semitone(pitch),
  );
  return { ...name, octave: pitch.octave + (octave ?? 0) };
}
