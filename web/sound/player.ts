/**
 * Plays a stretch of an exercise on a soft organ stop made of sine waves: no samples, nothing downloaded. The audio
 * library comes when something is first to be played; until then the page does without it.
 */
import { midiNumber, type Pitch } from '../../src/score/pitch.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { buildOrgan, type Levels, type Organ, setLevels, silence } from './organ.ts';
import {
  beatsIn,
  countInFor,
  frequencyOf,
  loudness,
  soundingsOf,
  type startingNotes,
  timelineOf,
} from './timeline.ts';
import { soundNote } from './written-note.ts';

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

export function createPlayer(onEnd: () => void): Player {
  let building: Promise<Organ> | undefined;
  let organ: Organ | undefined;
  let levels: Levels = { S: 0.8, A: 0.8, T: 0.8, B: 0.8 };
  let playing: { order: Order; leadIn: number; begun: boolean } | undefined;
  let turn = 0;

  const ready = async (): Promise<Organ> => {
    building ??= import('tone').then(buildOrgan);
    organ = await building;
    await organ.tone.start();
    setLevels(organ, levels);
    return organ;
  };
  const stop = (): void => {
    turn++;
    playing = undefined;
    if (organ) silence(organ);
  };

  return {
    async play(order) {
      const mine = ++turn;
      playing = { order, leadIn: 0, begun: false };
      const built = await ready();
      if (mine !== turn) return;
      const leadIn = schedule(built, order, () => {
        if (mine !== turn) return;
        stop();
        onEnd();
      });
      playing = { order, leadIn, begun: true };
      built.tone.getTransport().start('+0.06');
    },
    stop,
    setLoudness(volume, alone, muted) {
      levels = loudness(volume, alone, muted);
      if (organ) setLevels(organ, levels);
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
      const built = await ready();
      if (playing === undefined) give(built, notes);
    },
    async sound(voice, pitch) {
      if (playing === undefined) await soundNote(voice, frequencyOf(midiNumber(pitch)), levels);
    },
  };
}

/** Puts an order on the transport, from its beginning; answers the seconds that are counted in before it. */
export function schedule(organ: Organ, order: Order, onEnd: () => void): number {
  const { tone, stops, click } = organ;
  silence(organ);
  const transport = tone.getTransport();
  transport.position = 0;
  const { score, from, until, tempo } = order;
  const timeline = timelineOf(score, tempo);
  const lead = order.countIn ? countInFor(score, from, tempo) : { clicks: [], seconds: 0 };
  const length = timeline.secondsAt(until) - timeline.secondsAt(from);
  const beats = order.metronome ? beatsIn(score, timeline, from, until) : [];
  for (const { at, strong } of [
    ...lead.clicks,
    ...beats.map((beat) => ({ ...beat, at: beat.at + lead.seconds })),
  ])
    transport.schedule((time) => click.triggerAttackRelease(strong ? 1568 : 1047, 0.05, time), at);
  for (const note of soundingsOf(score, timeline, from, until)) {
    // A breath between notes, so that a repeated one is heard as two.
    const held = Math.max(0.05, note.until - note.from - 0.04);
    transport.schedule(
      (time) => stops[note.voice].triggerAttackRelease(note.frequency, held, time),
      lead.seconds + note.from,
    );
  }
  if (order.loop) {
    transport.loop = true;
    transport.loopStart = lead.seconds;
    transport.loopEnd = lead.seconds + length;
  } else transport.schedule(onEnd, lead.seconds + length + 0.1);
  return lead.seconds;
}

/**
 * Gives the choir its notes: on the transport, not straight on the stops, so that what is pressed next can call off the
 * notes still to come.
 */
function give(organ: Organ, notes: readonly StartingNote[]): void {
  const { tone, stops } = organ;
  silence(organ);
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
}
