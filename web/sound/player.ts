/**
 * Plays a stretch of an exercise on a soft organ stop made of sine waves: no samples, nothing downloaded. The audio
 * library comes with the first note; until then the page does without it.
 */
import { midiNumber, type Pitch } from '../../src/score/pitch.ts';
import { type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import {
  beatsIn,
  countInFor,
  frequencyOf,
  loudness,
  soundingsOf,
  type startingNotes,
  timelineOf,
} from './timeline.ts';

export interface Order {
  readonly score: Score;
  readonly from: Ticks;
  readonly until: Ticks;
  /** Crotchets a minute. */
  readonly tempo: number;
  readonly countIn: boolean;
  readonly metronome: boolean;
  readonly loop: boolean;
}

export interface Player {
  /** Starts from the beginning of the order; whatever sounded before stops. Resolves when sound has begun. */
  play(order: Order): Promise<void>;
  stop(): void;
  setLoudness(
    volume: Readonly<Record<VoiceName, number>>,
    alone: readonly VoiceName[],
    muted: readonly VoiceName[],
  ): void;
  /** The notes one after another, from the bass up, then together. */
  giveNotes(notes: readonly StartingNote[]): Promise<void>;
  /** Where the music is now; undefined while nothing plays. Before the first note it stands at the beginning. */
  position(): { readonly at: Ticks; readonly countingIn: boolean } | undefined;
  /** One short note, as a check on what was just written. */
  sound(voice: VoiceName, pitch: Pitch): Promise<void>;
}

type StartingNote = ReturnType<typeof startingNotes>[number];

/** From one note given to the choir to the next, in seconds. */
const GIVEN_APART = 0.7;

type Tone = typeof import('tone');

/** Pipes of a stopped flute with a little principal above it: strength of the partials from the fundamental up. */
const PARTIALS = [1, 0.42, 0.24, 0.16, 0.05, 0.08, 0.02, 0.05];
/** Seats of the voices from left to right, -1 to 1. */
const SEATS: Readonly<Record<VoiceName, number>> = { S: -0.35, A: -0.12, T: 0.12, B: 0.35 };

interface Organ {
  readonly tone: Tone;
  readonly stops: Readonly<Record<VoiceName, InstanceType<Tone['Synth']>>>;
  readonly levels: Readonly<Record<VoiceName, InstanceType<Tone['Gain']>>>;
  readonly click: InstanceType<Tone['Synth']>;
}

export function createPlayer(onEnd: () => void): Player {
  let building: Promise<Organ> | undefined;
  let organ: Organ | undefined;
  let levels: Readonly<Record<VoiceName, number>> = { S: 0.8, A: 0.8, T: 0.8, B: 0.8 };
  let playing: { order: Order; leadIn: number; begun: boolean } | undefined;
  let turn = 0;

  const ready = async (): Promise<Organ> => {
    building ??= import('tone').then(build);
    organ = await building;
    await organ.tone.start();
    setLevels(organ);
    return organ;
  };

  const setLevels = ({ levels: gains }: Organ): void => {
    for (const voice of VOICES) gains[voice].gain.rampTo(levels[voice] * 0.22, 0.05);
  };

  const silence = ({ tone, stops, click }: Organ): void => {
    const transport = tone.getTransport();
    transport.stop();
    transport.cancel();
    transport.loop = false;
    for (const voice of VOICES) stops[voice].triggerRelease();
    click.triggerRelease();
  };

  return {
    async play(order) {
      const mine = ++turn;
      playing = { order, leadIn: 0, begun: false };
      const { tone, stops, click } = await ready();
      if (mine !== turn) return;
      silence(organ!);
      const transport = tone.getTransport();
      transport.position = 0;
      const timeline = timelineOf(order.score, order.tempo);
      const lead = order.countIn
        ? countInFor(order.score, order.from, order.tempo)
        : { clicks: [], seconds: 0 };
      const length = timeline.secondsAt(order.until) - timeline.secondsAt(order.from);
      for (const { at, strong } of lead.clicks)
        transport.schedule((time) => click.triggerAttackRelease(strong ? 1568 : 1047, 0.05, time), at);
      for (const { voice, frequency, from, until } of soundingsOf(
        order.score,
        timeline,
        order.from,
        order.until,
      )) {
        // A breath between notes, so that a repeated one is heard as two.
        const held = Math.max(0.05, until - from - 0.04);
        transport.schedule(
          (time) => stops[voice].triggerAttackRelease(frequency, held, time),
          lead.seconds + from,
        );
      }
      if (order.metronome)
        for (const { at, strong } of beatsIn(order.score, timeline, order.from, order.until))
          transport.schedule(
            (time) => click.triggerAttackRelease(strong ? 1568 : 1047, 0.05, time),
            lead.seconds + at,
          );
      if (order.loop) {
        transport.loop = true;
        transport.loopStart = lead.seconds;
        transport.loopEnd = lead.seconds + length;
      } else {
        transport.schedule(
          () => {
            if (mine !== turn) return;
            this.stop();
            onEnd();
          },
          lead.seconds + length + 0.1,
        );
      }
      playing = { order, leadIn: lead.seconds, begun: true };
      transport.start('+0.06');
    },
    stop() {
      turn++;
      playing = undefined;
      if (organ) silence(organ);
    },
    setLoudness(volume, alone, muted) {
      levels = loudness(volume, alone, muted);
      if (organ) setLevels(organ);
    },
    position() {
      if (playing === undefined) return undefined;
      const { order, leadIn, begun } = playing;
      if (!begun || !organ) return { at: order.from, countingIn: order.countIn };
      const seconds = organ.tone.getTransport().seconds - leadIn;
      if (seconds < 0) return { at: order.from, countingIn: order.countIn };
      const timeline = timelineOf(order.score, order.tempo);
      return { at: timeline.ticksAt(timeline.secondsAt(order.from) + seconds), countingIn: false };
    },
    async giveNotes(notes) {
      if (playing !== undefined) return;
      const { tone, stops } = await ready();
      if (playing !== undefined) return;
      // On the transport, not straight on the stops: what is pressed next can call off the notes still to come.
      silence(organ!);
      const transport = tone.getTransport();
      transport.position = 0;
      const together = notes.length * GIVEN_APART;
      for (const [i, { voice, frequency }] of notes.entries()) {
        transport.schedule(
          (time) => stops[voice].triggerAttackRelease(frequency, GIVEN_APART - 0.1, time),
          i * GIVEN_APART,
        );
        transport.schedule((time) => stops[voice].triggerAttackRelease(frequency, 1.2, time), together);
      }
      transport.schedule(() => transport.stop(), together + 1.5);
      transport.start('+0.06');
    },
    async sound(voice, pitch) {
      if (playing !== undefined) return;
      const { stops } = await ready();
      if (playing === undefined) stops[voice].triggerAttackRelease(frequencyOf(midiNumber(pitch)), 0.35);
    },
  };
}

function build(tone: Tone): Organ {
  const soft = new tone.Filter({ type: 'lowpass', frequency: 3200, Q: 0.3 });
  const limit = new tone.Limiter(-2).toDestination();
  const room = new tone.Convolver(roomEcho(tone)).connect(limit);
  soft.connect(limit);
  soft.chain(new tone.Gain(0.25), room);
  const levels = perVoice((voice) => {
    const seat = new tone.Panner(SEATS[voice]).connect(soft);
    return new tone.Gain(0.2).connect(seat);
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
