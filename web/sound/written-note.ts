/**
 * One short note, as a check on what was just written: straight on the browser's own oscillator. The audio library, which
 * plays whole exercises, takes a quarter of a second of a processor to start; nobody who only writes waits for that.
 */
import type { VoiceName } from '../../src/score/score.ts';
import { GAINS, type Levels, PARTIALS, SEATS } from './organ.ts';

/** Seconds from nothing to full, the note's length, and back to nothing. */
const [ATTACK, HELD, RELEASE] = [0.045, 0.35, 0.22] as const;

/** A note that comes so many milliseconds after it was written says nothing any more. */
const TOO_LATE = 500;

let made: { readonly context: AudioContext; readonly wave: PeriodicWave } | undefined;

function instrument(): NonNullable<typeof made> {
  if (made === undefined) {
    const context = new AudioContext();
    const strengths = Float32Array.from([0, ...PARTIALS]);
    made = { context, wave: context.createPeriodicWave(new Float32Array(strengths.length), strengths) };
  }
  return made;
}

/** Sounds a frequency in hertz from a voice's seat, as loud as the voice is. Rejects where there is no sound. */
export async function soundNote(voice: VoiceName, frequency: number, levels: Levels): Promise<void> {
  const { context, wave } = instrument();
  const asked = performance.now();
  if (context.state === 'suspended') await context.resume();
  // A browser that waits for a click before it sounds anything is not to sound all of it then.
  if (performance.now() - asked > TOO_LATE) return;
  const pipe = new OscillatorNode(context, { type: 'custom', periodicWave: wave, frequency });
  const wind = new GainNode(context, { gain: 0 });
  const seat = new StereoPannerNode(context, { pan: SEATS[voice] });
  pipe.connect(wind).connect(seat).connect(context.destination);
  const now = context.currentTime;
  const full = levels[voice] * GAINS[voice];
  wind.gain.linearRampToValueAtTime(full, now + ATTACK);
  wind.gain.setValueAtTime(full, now + HELD);
  wind.gain.linearRampToValueAtTime(0, now + HELD + RELEASE);
  pipe.start(now);
  pipe.stop(now + HELD + RELEASE);
}
