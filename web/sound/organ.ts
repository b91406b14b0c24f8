/** The stop that everything sounds on: four voices in their seats, a click, and the echo of a small church. */
import { VOICES, type VoiceName } from '../../src/score/score.ts';

export type Tone = typeof import('tone');

/** Pipes of a stopped flute with a little principal above it: strength of the partials from the fundamental up. */
export const PARTIALS = [1, 0.42, 0.24, 0.16, 0.05, 0.08, 0.02, 0.05];
/** Seats of the voices from left to right, -1 to 1. */
export const SEATS: Readonly<Record<VoiceName, number>> = { S: -0.35, A: -0.12, T: 0.12, B: 0.35 };

/**
 * How strong each stop is. The ear needs more of low notes: by these, each voice alone is as loud as the others to 3 dB,
 * A-weighted, over eight bars (`npm run bench:sound`).
 */
export const GAINS: Readonly<Record<VoiceName, number>> = { S: 0.18, A: 0.21, T: 0.27, B: 0.36 };

export interface Organ {
  readonly tone: Tone;
  readonly stops: Readonly<Record<VoiceName, InstanceType<Tone['Synth']>>>;
  readonly levels: Readonly<Record<VoiceName, InstanceType<Tone['Gain']>>>;
  readonly click: InstanceType<Tone['Synth']>;
}

/** How loud each voice is, 0 to 1. */
export type Levels = Readonly<Record<VoiceName, number>>;

export function setLevels({ levels: gains }: Organ, levels: Levels): void {
  for (const voice of VOICES) gains[voice].gain.rampTo(levels[voice] * GAINS[voice], 0.05);
}

/** Nothing sounds any more, and nothing more is to come. */
export function silence({ tone, stops, click }: Organ): void {
  const transport = tone.getTransport();
  transport.stop();
  transport.cancel();
  transport.loop = false;
  for (const voice of VOICES) stops[voice].triggerRelease();
  click.triggerRelease();
}

export function buildOrgan(tone: Tone): Organ {
  const soft = new tone.Filter({ type: 'lowpass', frequency: 3200, Q: 0.3 });
  const limit = new tone.Limiter(-2).toDestination();
  const room = new tone.Convolver(roomEcho(tone)).connect(limit);
  soft.connect(limit);
  soft.chain(new tone.Gain(0.25), room);
  const levels = perVoice((voice) => {
    const seat = new tone.Panner(SEATS[voice]).connect(soft);
    return new tone.Gain(GAINS[voice]).connect(seat);
  });
  const stops = perVoice((voice) =>
    new tone.Synth({
      oscillator: { type: 'custom', partials: PARTIALS },
      envelope: { attack: 0.045, decay: 0.1, sustain: 0.92, release: 0.22 },
    }).connect(levels[voice]),
  );
  const click = new tone.Synth({
    oscillator: { type: 'triangle' },
    envelope: { attack: 0.001, decay: 0.06, sustain: 0, release: 0.02 },
    volume: -14,
  }).toDestination();
  return { tone, stops, levels, click };
}

/**
 * The echo of a small church: noise that dies away, the same each time. The library's own reverberations load an audio
 * worklet from a blob, which the content security policy forbids.
 */
function roomEcho(tone: Tone): InstanceType<Tone['ToneAudioBuffer']> {
  const { sampleRate } = tone.getContext();
  const seconds = 1.6;
  let seed = 1;
  const noise = (): number => {
    seed = (seed * 48_271) % 2_147_483_647;
    return (2 * seed) / 2_147_483_647 - 1;
  };
  const channel = (): Float32Array => {
    const samples = new Float32Array(Math.round(sampleRate * seconds));
    let smooth = 0;
    for (let i = 0; i < samples.length; i++) {
      // High notes die sooner in a room: the noise is smoothed more and more.
      const t = i / sampleRate;
      smooth += (noise() - smooth) * (0.55 * Math.exp(-2 * t) + 0.08);
      samples[i] = smooth * Math.exp(-4.2 * t);
    }
    return samples;
  };
  return tone.ToneAudioBuffer.fromArray([channel(), channel()]);
}

function perVoice<T>(make: (voice: VoiceName) => T): Readonly<Record<VoiceName, T>> {
  return { S: make('S'), A: make('A'), T: make('T'), B: make('B') };
}
