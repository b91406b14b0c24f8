/** Small changes to a chorale: the raw material of the plants. All give a new score and leave the old one alone. */
import type { Pitch, Step } from '../../../src/score/pitch.ts';
import { STEPS } from '../../../src/score/pitch.ts';
import type { Score, VoiceEvent, VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';
import { ALL, midiOf, nameOf, type PlainNote, placeOf } from './plain.ts';
import type { Piece } from './planter.ts';
import type { Random } from './random.ts';

/** The score with one sound (all its tied notes) at another pitch. */
export function withPitch(
  score: Score,
  note: Pick<PlainNote, 'voice' | 'at' | 'until'>,
  pitch: Pitch,
): Score {
  return withEvents(score, note.voice, (event) =>
    event.kind === 'note' && event.at >= note.at && event.at < note.until ? [{ ...event, pitch }] : [event],
  );
}

/** The score with every event of a voice replaced by what `change` makes of it; lengths must stay the same in sum. */
export function withEvents(
  score: Score,
  voice: VoiceName,
  change: (event: VoiceEvent) => readonly VoiceEvent[],
): Score {
  return { ...score, voices: { ...score.voices, [voice]: score.voices[voice].flatMap(change) } };
}

/** The score with one note cut in two at a moment inside it, the second half at another pitch. */
export function split(score: Score, note: PlainNote, at: Ticks, second: Pitch): Score {
  return withEvents(score, note.voice, (event) => {
    if (event.kind !== 'note' || at <= event.at || at >= event.at + event.duration) return [event];
    const { tied: _tied, ...loose } = event;
    return [
      { ...loose, duration: at - event.at },
      { ...event, at, duration: event.at + event.duration - at, pitch: second },
    ];
  });
}

/** Widest ranges in which plants are made, as MIDI numbers: what a choir can sing. */
const SINGABLE: Readonly<Record<VoiceName, readonly [number, number]>> = {
  S: [60, 79],
  A: [55, 74],
  T: [48, 67],
  B: [40, 62],
};

const SHARPS: readonly Step[] = ['F', 'C', 'G', 'D', 'A', 'E', 'B'];

/** The note names of the key signature in force at a moment. */
export function scaleAt(score: Score, at: Ticks): { step: Step; alteration: number }[] {
  const fifths = score.bars.findLast((bar) => bar.at <= at)?.key.fifths ?? 0;
  return STEPS.map((step) => {
    const place = SHARPS.indexOf(step);
    if (fifths > 0 && place < fifths) return { step, alteration: 1 };
    if (fifths < 0 && 6 - place < -fifths) return { step, alteration: -1 };
    return { step, alteration: 0 };
  });
}

export interface Wanted {
  readonly voices?: readonly VoiceName[];
  /** Which notes may be changed. */
  readonly only?: (note: PlainNote) => boolean;
  /** Which pitches may be put there. */
  readonly to?: (pitch: Pitch, note: PlainNote) => boolean;
  /** `chord`: notes that the other voices sing then, in any octave. `scale` (the usual): these first, then the scale's. `chromatic`: with sharps and flats too. */
  readonly pitches?: 'chord' | 'scale' | 'chromatic';
  /** Beyond what a choir can sing. */
  readonly anyRange?: boolean;
  /** How many changes to offer at most. */
  readonly limit?: number;
}

/** The chorale with one note changed, in every way wanted, in an order of chance; chord notes come before others. */
export function* oneNoteChanges(piece: Piece, random: Random, wanted: Wanted = {}): Generator<Score> {
  const { voices = ALL, only = () => true, to = () => true, pitches = 'scale', limit = 4000 } = wanted;
  const notes = random.shuffled(voices.flatMap((voice) => piece.plain.voices[voice].filter(only)));
  let given = 0;
  for (const note of notes) {
    for (const pitch of pitchesFor(piece, note, pitches, random)) {
      if (!wanted.anyRange && !isSingable(note.voice, pitch)) continue;
      if (!to(pitch, note) || midiOf(pitch) === note.midi) continue;
      if (++given > limit) return;
      yield withPitch(piece.score, note, pitch);
    }
  }
}

export function isSingable(voice: VoiceName, pitch: Pitch): boolean {
  const [low, high] = SINGABLE[voice];
  return midiOf(pitch) >= low && midiOf(pitch) <= high;
}

function pitchesFor(
  piece: Piece,
  note: PlainNote,
  kind: NonNullable<Wanted['pitches']>,
  random: Random,
): Pitch[] {
  const { plain, score } = piece;
  const around = ALL.flatMap((voice) =>
    plain.voices[voice].filter((n) => n.at < note.until && n.until > note.at),
  );
  const chord = new Map(around.map((n) => [n.name, { step: n.pitch.step, alteration: n.pitch.alteration }]));
  const names = [...random.shuffled([...chord.values()])];
  if (kind !== 'chord') {
    const scale = scaleAt(score, note.at);
    names.push(...random.shuffled(scale.filter((name) => !chord.has(nameOf(name)))));
    if (kind === 'chromatic') {
      names.push(
        ...random.shuffled(
          scale.flatMap((n) => [-1, 1].map((by) => ({ ...n, alteration: n.alteration + by }))),
        ),
      );
    }
  }
  return names
    .filter((name) => Math.abs(name.alteration) < 2)
    .flatMap((name) =>
      [-2, -1, 0, 1, 2]
        .map((by) => ({ ...name, octave: note.pitch.octave + by }))
        .filter((p) => p.octave >= 0),
    )
    .filter((pitch) => Math.abs(placeOf(pitch) - note.place) <= 12);
}
