/** Questions about how voices move against each other that need nothing but the texture. */
import { type Interval, intervalBetween, isOctave, isPerfectFifth, isUnison } from './interval.ts';
import { semitone } from './pitch.ts';
import { remembered } from './remember.ts';
import { byVoice, VOICES, type VoiceName } from './score.ts';
import { type Move, type Texture, type Tone, type Transition, toneIn, writtenPitch } from './texture.ts';
import type { Ticks } from './time.ts';

/** Two voices, the upper one first. */
export type Pair = readonly [VoiceName, VoiceName];

/** All six pairs of voices, from the top. */
export const PAIRS: readonly Pair[] = [
  ['S', 'A'],
  ['S', 'T'],
  ['S', 'B'],
  ['A', 'T'],
  ['A', 'B'],
  ['T', 'B'],
];

/** The three pairs of voices that lie next to each other. */
export const NEIGHBOURS: readonly Pair[] = [
  ['S', 'A'],
  ['A', 'T'],
  ['T', 'B'],
];

/** Soprano and bass: the outer voices. */
export function isOuterPair(pair: Pair): boolean {
  return pair[0] === 'S' && pair[1] === 'B';
}

/** Alto and tenor. */
export function isInnerPair(pair: Pair): boolean {
  return isInner(pair[0]) && isInner(pair[1]);
}

export function isInner(voice: VoiceName): boolean {
  return voice === 'A' || voice === 'T';
}

/**
 * How two voices move against each other: `similar` both the same way, `contrary` opposite ways, `oblique` one of
 * them keeps its pitch, `still` both do.
 */
export type Motion = 'similar' | 'contrary' | 'oblique' | 'still';

export function motionOf(a: Pick<Move, 'direction'>, b: Pick<Move, 'direction'>): Motion {
  if (a.direction === 'level') return b.direction === 'level' ? 'still' : 'oblique';
  if (b.direction === 'level') return 'oblique';
  return a.direction === b.direction ? 'similar' : 'contrary';
}

/** Perfect consonances by spelling, compounds included; an octave and a unison are told apart. */
export type PerfectInterval = 'fifth' | 'octave' | 'unison';

export function perfectInterval(a: Tone, b: Tone): PerfectInterval | undefined {
  const interval = intervalBetween(a.pitch, b.pitch);
  if (isUnison(interval)) return 'unison';
  if (isOctave(interval)) return 'octave';
  return isPerfectFifth(interval) ? 'fifth' : undefined;
}

/**
 * True where a phrase ends between two slices: where one was found to end without a sign, or under a fermata, if the soprano does not sing on through it (a bass that
 * moves under a held note is still inside the phrase), or from a first ending to a second, which nobody sings in a row.
 */
export function crossesFermata(transition: Pick<Transition, 'from' | 'to'>): boolean {
  const { from, to } = transition;
  if (from.bar.ending !== undefined && from.bar.ending !== to.bar.ending && from.bar !== to.bar) return true;
  if (from.rests) return true;
  if (!from.fermata) return false;
  const leaders = from.parts.S.kind === 'tone' ? (['S'] as const) : VOICES;
  return leaders.some((voice) => {
    const part = from.parts[voice];
    return part.kind === 'tone' && part.tone.until <= to.at && (voice === 'S' || hasFermata(part.tone));
  });
}

function hasFermata(tone: Tone): boolean {
  return tone.notes.some((note) => note.fermata === true);
}

/** The next tone of the same voice where nothing lies between the two: no rest, no gap. */
export function nextTone(texture: Texture, tone: Tone): Tone | undefined {
  const next = texture.tones[tone.voice][tone.index + 1];
  return next !== undefined && next.at === tone.until ? next : undefined;
}

/** The tone before, likewise. */
export function previousTone(texture: Texture, tone: Tone): Tone | undefined {
  const previous = texture.tones[tone.voice][tone.index - 1];
  return previous !== undefined && previous.until === tone.at ? previous : undefined;
}

/** The moments at which a new phrase begins after a fermata: see {@link crossesFermata}. Remembered. */
export const phraseBreaks: (texture: Texture) => ReadonlySet<Ticks> = remembered(
  ({ transitions }) => new Set(transitions.filter(crossesFermata).map(({ to }) => to.at)),
);

/** A stretch in which something holds between two voices without a break. */
export interface Stretch {
  readonly pair: Pair;
  readonly from: Ticks;
  readonly until: Ticks;
  /** The tones that sound in it, each once: the upper voice's, then the lower's. */
  readonly tones: readonly Tone[];
  /** The greatest distance between the two, in semitones; negative where they are crossed. */
  readonly widest: number;
}

/** The stretches in which the distance from the lower to the upper voice, in semitones, passes a test. */
export function stretchesWhere(
  texture: Texture,
  pair: Pair,
  holds: (semitones: number) => boolean,
): Stretch[] {
  const stretches: Stretch[] = [];
  let open: { from: Ticks; until: Ticks; upper: Tone[]; lower: Tone[]; widest: number } | undefined;
  const close = () => {
    if (open !== undefined)
      stretches.push({
        pair,
        from: open.from,
        until: open.until,
        tones: [...new Set([...open.upper, ...open.lower])],
        widest: open.widest,
      });
    open = undefined;
  };
  for (const slice of texture.slices) {
    const upper = toneIn(slice, pair[0]);
    const lower = toneIn(slice, pair[1]);
    const distance = upper && lower && semitone(upper.pitch) - semitone(lower.pitch);
    if (upper === undefined || lower === undefined || distance === undefined || !holds(distance)) {
      close();
      continue;
    }
    open ??= { from: slice.at, until: slice.until, upper: [], lower: [], widest: distance };
    open.until = slice.until;
    open.upper.push(upper);
    open.lower.push(lower);
    if (Math.abs(distance) > Math.abs(open.widest)) open.widest = distance;
  }
  close();
  return stretches;
}

/** One voice's way from a tone to the next, with nothing between. */
export interface MelodicMove {
  readonly from: Tone;
  readonly to: Tone;
  /** As it is written: singers read the letters, a wrong one too. */
  readonly interval: Interval;
  /** A new phrase begins with the second tone. */
  readonly acrossFermata: boolean;
}

/** All melodic moves of a voice, in order, repeated notes included. Remembered. */
export function melodyOf(texture: Texture, voice: VoiceName): readonly MelodicMove[] {
  return melodiesOf(texture)[voice];
}

const melodiesOf = remembered((texture: Texture) => {
  const breaks = phraseBreaks(texture);
  return byVoice((voice) =>
    texture.tones[voice].flatMap((from): MelodicMove[] => {
      const to = nextTone(texture, from);
      if (to === undefined) return [];
      const interval = intervalBetween(writtenPitch(from), writtenPitch(to));
      return [{ from, to, interval, acrossFermata: breaks.has(to.at) }];
    }),
  );
});
