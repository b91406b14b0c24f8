/**
 * What the written score sounds like, derived once and shared by everyone: tones (tied notes made one), the
 * sequence of vertical slices, and each voice's moves between adjacent slices.
 */
import { type Interval, intervalBetween } from './interval.ts';
import type { Pitch } from './pitch.ts';
import { metricalStrength } from './place.ts';
import {
  type Bar,
  type ByVoice,
  byVoice,
  endOf,
  type Note,
  type Score,
  VOICES,
  type VoiceEvent,
  type VoiceName,
} from './score.ts';
import { stretchAt } from './search.ts';
import type { Ticks } from './time.ts';

/** One sound of one voice: a note, or several tied ones. */
export interface Tone {
  /** Stable for one score: `T@40320` is the tenor's tone that begins at tick 40320. */
  readonly id: string;
  readonly voice: VoiceName;
  /** Position in the voice's list of tones. */
  readonly index: number;
  /** As it is meant: where a note was written with the wrong letter, not what stands on the page (`writtenPitch`). */
  readonly pitch: Pitch;
  readonly at: Ticks;
  readonly until: Ticks;
  /** The written notes, tied in this order. */
  readonly notes: readonly Note[];
}

/** What one voice does in a slice. */
export type Part =
  | {
      readonly kind: 'tone';
      readonly tone: Tone;
      /** The tone begins in this slice. */
      readonly attacked: boolean;
    }
  | { readonly kind: 'rest' | 'gap' };

/** A stretch of time in which nothing begins or ends. */
export interface Slice {
  readonly index: number;
  readonly at: Ticks;
  readonly until: Ticks;
  readonly bar: Bar;
  /** See `metricalStrength`, at the slice's beginning. */
  readonly strength: 0 | 1 | 2 | 3 | 4;
  readonly parts: ByVoice<Part>;
  /** Some voice has a fermata on an event that sounds here. */
  readonly fermata: boolean;
  /** A phrase was found to end with this slice, though no fermata says so. */
  readonly rests?: true;
}

/** How one voice gets from one slice to the next; absent where either has no tone in that voice. */
export interface Move {
  readonly voice: VoiceName;
  readonly from: Tone;
  readonly to: Tone;
  /** The tone is held through: nothing is struck again. */
  readonly held: boolean;
  readonly interval: Interval;
  readonly direction: 'up' | 'down' | 'level';
}

/** The step from slice `index` to slice `index + 1`. */
export interface Transition {
  readonly from: Slice;
  readonly to: Slice;
  readonly moves: Readonly<Partial<Record<VoiceName, Move>>>;
}

export interface Texture {
  readonly score: Score;
  readonly tones: ByVoice<readonly Tone[]>;
  readonly slices: readonly Slice[];
  /** `transitions[i]` leads from `slices[i]` to `slices[i + 1]`. */
  readonly transitions: readonly Transition[];
}

/** @param respelt the same sounds under other names, by the tones' ids: what was meant where the page has it wrong */
export function textureOf(score: Score, respelt?: ReadonlyMap<string, Pitch>): Texture {
  const tones = byVoice((voice) => {
    const written = tonesOf(score, voice);
    return respelt === undefined
      ? written
      : written.map((tone) => ({ ...tone, pitch: respelt.get(tone.id) ?? tone.pitch }));
  });
  const slices = slicesOf(score, tones);
  const transitions = slices.slice(1).map((to, i) => transition(slices[i]!, to));
  return { score, tones, slices, transitions };
}

function tonesOf(score: Score, voice: VoiceName): Tone[] {
  const tones: Tone[] = [];
  let open: Note[] = [];
  for (const event of score.voices[voice]) {
    if (event.kind !== 'note') continue;
    open.push(event);
    if (event.tied) continue;
    const first = open[0]!;
    tones.push({
      id: `${voice}@${first.at}`,
      voice,
      index: tones.length,
      pitch: first.pitch,
      at: first.at,
      until: event.at + event.duration,
      notes: open,
    });
    open = [];
  }
  return tones;
}

function slicesOf(score: Score, tones: ByVoice<readonly Tone[]>): Slice[] {
  const end = endOf(score);
  const edges = new Set<Ticks>([0]);
  for (const voice of VOICES) {
    for (const tone of tones[voice]) edges.add(tone.at).add(tone.until);
    for (const event of score.voices[voice])
      if (event.kind !== 'note') edges.add(event.at).add(event.at + event.duration);
  }
  const times = [...edges].filter((at) => at < end).sort((a, b) => a - b);
  const cursors = byVoice((voice) => cursor(score.voices[voice], tones[voice]));
  let barIndex = 0;
  return times.map((at, index) => {
    while (score.bars[barIndex + 1] !== undefined && score.bars[barIndex + 1]!.at <= at) barIndex++;
    const bar = score.bars[barIndex]!;
    const here = byVoice((voice) => cursors[voice](at));
    return {
      index,
      at,
      until: times[index + 1] ?? end,
      bar,
      strength: metricalStrength(bar, at),
      parts: byVoice((voice) => here[voice].part),
      fermata: VOICES.some((voice) => here[voice].fermata),
    };
  });
}

/** Walks a voice once, from left to right: asked for rising times, it says what the voice does there. */
function cursor(
  events: readonly VoiceEvent[],
  tones: readonly Tone[],
): (at: Ticks) => { part: Part; fermata: boolean } {
  let e = 0;
  let t = 0;
  return (at) => {
    while (e + 1 < events.length && events[e + 1]!.at <= at) e++;
    while (t + 1 < tones.length && tones[t + 1]!.at <= at) t++;
    const event = events[e];
    if (event === undefined || event.kind === 'gap') return { part: { kind: 'gap' }, fermata: false };
    const fermata = event.fermata === true;
    if (event.kind === 'rest') return { part: { kind: 'rest' }, fermata };
    const tone = tones[t]!;
    return { part: { kind: 'tone', tone, attacked: tone.at === at }, fermata };
  };
}

function transition(from: Slice, to: Slice): Transition {
  const moves: Partial<Record<VoiceName, Move>> = {};
  for (const voice of VOICES) {
    const a = from.parts[voice];
    const b = to.parts[voice];
    if (a.kind !== 'tone' || b.kind !== 'tone') continue;
    const interval = intervalBetween(a.tone.pitch, b.tone.pitch);
    const rise = interval.semitones || interval.steps;
    moves[voice] = {
      voice,
      from: a.tone,
      to: b.tone,
      held: a.tone === b.tone,
      interval,
      direction: rise > 0 ? 'up' : rise < 0 ? 'down' : 'level',
    };
  }
  return { from, to, moves };
}

/** The same texture with phrase ends that nobody marked: what rules ask of a fermata holds of them too. */
export function withPhraseEnds(texture: Texture, ends: ReadonlySet<Ticks>): Texture {
  if (ends.size === 0) return texture;
  const slices = texture.slices.map((slice) =>
    ends.has(slice.until) ? { ...slice, rests: true as const } : slice,
  );
  const transitions = texture.transitions.map((step, i) => ({
    ...step,
    from: slices[i]!,
    to: slices[i + 1]!,
  }));
  return { ...texture, slices, transitions };
}

/** What stands on the page for a tone. */
export function writtenPitch(tone: Tone): Pitch {
  return tone.notes[0]?.pitch ?? tone.pitch;
}

/** A tone as it stands on the page, where it was read under another name. */
export function asWritten(tone: Tone): Tone {
  const pitch = writtenPitch(tone);
  const same = pitch.step === tone.pitch.step && pitch.alteration === tone.pitch.alteration;
  return same ? tone : { ...tone, pitch };
}

/** No voice is still to be written in the slice: each sings or rests. */
export function isAllWritten({ parts }: Slice): boolean {
  return VOICES.every((voice) => parts[voice].kind !== 'gap');
}

/** The tone a voice sounds in a slice, or undefined for a rest or a gap. */
export function toneIn(slice: Slice, voice: VoiceName): Tone | undefined {
  const part = slice.parts[voice];
  return part.kind === 'tone' ? part.tone : undefined;
}

/** The slice that sounds at a moment; undefined outside the score. */
export function sliceAt(texture: Texture, at: Ticks): Slice | undefined {
  return stretchAt(texture.slices, at);
}
