/** The same exercise in another key and with another beat: the music does not change, only how it is written. */
import type { NoteName } from '../../../src/score/pitch.ts';
import { fifthsPlace, noteNameAtFifths, type Pitch, semitone } from '../../../src/score/pitch.ts';
import { byVoice, type Score, type VoiceEvent } from '../../../src/score/score.ts';

/** Moves a score along the line of fifths, by no more than a tritone up or down; signatures move with it. */
export function transposed(score: Score, fifths: number): Score {
  const up = (((7 * fifths) % 12) + 12) % 12;
  const by = up > 6 ? up - 12 : up;
  return {
    ...score,
    bars: score.bars.map((bar) => ({ ...bar, key: { ...bar.key, fifths: bar.key.fifths + fifths } })),
    voices: byVoice((voice) =>
      score.voices[voice].map(
        (event): VoiceEvent =>
          event.kind === 'note' ? { ...event, pitch: movedPitch(event.pitch, fifths, by) } : event,
      ),
    ),
  };
}

function movedName(name: NoteName, fifths: number): NoteName {
  return noteNameAtFifths(fifthsPlace(name) + fifths);
}

function movedPitch(pitch: Pitch, fifths: number, semitones: number): Pitch {
  const name = movedName(pitch, fifths);
  const wanted = semitone(pitch) + semitones;
  const octave = Math.round((wanted - semitone({ ...name, octave: 0 })) / 12);
  return { ...name, octave };
}
