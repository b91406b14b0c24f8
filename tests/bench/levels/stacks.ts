/** One tune's lower voices, as they may be handed in: a master's, the same spoilt, plain, half done, or thrown. */
import type { Analysis } from '../../../src/harmony/analysis.ts';
import type { KeySignature, Note, Score, VoiceEvent, VoiceName } from '../../../src/score/score.ts';
import { beatLength, type Ticks } from '../../../src/score/time.ts';
import { byStep, pitchAtPlace } from '../../../src/writing/pitches.ts';
import { type Chance, chance } from '../../support/chance.ts';

const LOWER = ['A', 'T', 'B'] as const;

/** The made kinds, the best first. */
export const KINDS = ['master', '6 wrong', '18 wrong', 'block chords', 'bass only', 'random'] as const;
export type Kind = (typeof KINDS)[number];

export function made(kind: Kind, { texture: { score }, ...analysis }: Analysis, seed: number): Score {
  const random = chance(seed);
  switch (kind) {
    case 'master':
      return score;
    case '6 wrong':
      return withWrong(score, 6, random);
    case '18 wrong':
      return withWrong(score, 18, random);
    case 'block chords':
      return withLower(score, (voice) => inBlocks(score, voice, analysis.ornaments));
    case 'bass only':
      return withLower(score, (voice) => (voice === 'B' ? score.voices.B : unwritten(score)));
    case 'random':
      return withLower(score, (voice) => thrown(score, voice, random));
  }
}

/** The tune alone, as it was given. */
export function tuneOf(score: Score): Score {
  return withLower(score, () => unwritten(score));
}

function withLower(score: Score, line: (voice: (typeof LOWER)[number]) => readonly VoiceEvent[]): Score {
  return { ...score, voices: { S: score.voices.S, A: line('A'), T: line('T'), B: line('B') } };
}

function unwritten({ bars }: Score): VoiceEvent[] {
  return bars.map(({ at, duration }) => ({ kind: 'gap', at, duration }));
}

/** So many notes of the lower voices one to four steps away from where they belong. */
function withWrong(score: Score, count: number, random: Chance): Score {
  const notes = LOWER.flatMap((voice) =>
    score.voices[voice].flatMap((event, i, line) => {
      const before = line[i - 1];
      const free = event.kind === 'note' && !event.tied && !(before?.kind === 'note' && before.tied);
      return free ? [{ voice, i }] : [];
    }),
  );
  const changed = { A: [...score.voices.A], T: [...score.voices.T], B: [...score.voices.B] };
  for (let k = 0; k < count && notes.length > 0; k++) {
    const [{ voice, i }] = notes.splice(Math.floor(random() * notes.length), 1) as [(typeof notes)[number]];
    const note = changed[voice][i] as Note;
    const steps = (1 + Math.floor(random() * 4)) * (random() < 0.5 ? -1 : 1);
    changed[voice][i] = { ...note, pitch: byStep(note.pitch, steps, keyAt(score, note.at)) };
  }
  return withLower(score, (voice) => changed[voice]);
}

/** One note a beat: the first that sounds in it and belongs to its chord. */
function inBlocks(score: Score, voice: VoiceName, ornaments: Analysis['ornaments']): VoiceEvent[] {
  const foreign = new Set(ornaments.filter((o) => o.voice === voice).map(({ tone }) => tone.at));
  return beats(score).map(([at, until]): VoiceEvent => {
    const sounding = score.voices[voice].filter(
      (event): event is Note => event.kind === 'note' && event.at < until && event.at + event.duration > at,
    );
    const note = sounding.find((event) => !foreign.has(event.at)) ?? sounding[0];
    return note === undefined
      ? { kind: 'rest', at, duration: until - at }
      : { kind: 'note', at, duration: until - at, pitch: note.pitch };
  });
}

/** Staff places, C4 being 28. */
const RANGES: Readonly<Record<(typeof LOWER)[number], readonly [number, number]>> = {
  A: [25, 36],
  T: [21, 32],
  B: [16, 28],
};

/** Any note of the key signature in the voice's range on every beat. */
function thrown(score: Score, voice: (typeof LOWER)[number], random: Chance): VoiceEvent[] {
  const [low, high] = RANGES[voice];
  return beats(score).map(([at, until]) => {
    const place = low + Math.floor(random() * (high - low + 1));
    return { kind: 'note', at, duration: until - at, pitch: pitchAtPlace(place, keyAt(score, at)) };
  });
}

function keyAt({ bars }: Score, at: Ticks): KeySignature {
  return bars.findLast((bar) => bar.at <= at)!.key;
}

function beats({ bars }: Score): [from: Ticks, until: Ticks][] {
  return bars.flatMap((bar) => {
    const beat = beatLength(bar.metre);
    const end = bar.at + bar.duration;
    return Array.from({ length: Math.ceil(bar.duration / beat) }, (_, i): [Ticks, Ticks] => [
      bar.at + i * beat,
      Math.min(end, bar.at + (i + 1) * beat),
    ]);
  });
}
