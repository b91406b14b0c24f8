/** The music in words, for those who don't see the drawing. */
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printBeat } from '../../src/score/place.ts';
import { VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import { sliceAt, type Texture } from '../../src/score/texture.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Marks } from './input.ts';

/**
 * One moment voice by voice, then its chord and key: "Bar 3, beat 2: soprano D5, alto B4, tenor G4, bass G3." A note
 * that goes on from before is "held", a gap "not written". Empty outside the score.
 */
export function describeMoment(texture: Texture, _marks: Pick<Marks, 'chords'>, at: Ticks): string {
  const slice = sliceAt(texture, at);
  if (slice === undefined) return '';
  const place = placeAt(texture.score, at);
  const voices = VOICES.map((voice) => {
    const part = slice.parts[voice];
    if (part.kind !== 'tone') return `${VOICE_WORDS[voice]} ${part.kind === 'rest' ? 'rest' : 'not written'}`;
    return `${VOICE_WORDS[voice]} ${printPitch(part.tone.pitch)}${part.attacked ? '' : ' held'}`;
  });
  return `Bar ${place.bar.number}, beat ${printBeat(place)}: ${voices.join(', ')}.`;
}
