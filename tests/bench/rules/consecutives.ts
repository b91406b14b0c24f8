/** Plain definitions and plants of the family *consecutives*. */
import type { Pitch } from '../../../src/score/pitch.ts';
import type { Score, VoiceName } from '../../../src/score/score.ts';
import type { Ticks } from '../../../src/score/time.ts';
import { oneNoteChanges, scaleAt, split, withPitch } from './edits.ts';
import { ALL, type Plain, type PlainNote, phraseEndsBetween, QUARTER, sounding } from './plain.ts';
import type { Piece, Place, Planter } from './planter.ts';
import type { Random } from './random.ts';

const TWO: readonly (readonly [VoiceName, VoiceName])[] = ALL.flatMap((upper, i) =>
  ALL.slice(i + 1).map((lower) => [upper, lower] as const),
);

interface Step {
  readonly pair: readonly [VoiceName, VoiceName];
  readonly before: readonly [PlainNote, PlainNote];
  readonly after: readonly [PlainNote, PlainNote];
}

/** Both voices go to a new pitch at the same moment, inside a phrase. */
function jointSteps(plain: Plain): Step[] {
  const steps: Step[] = [];
  for (const pair of TWO) {
    const struck = new Set(plain.voices[pair[1]].map((note) => note.at));
    for (const after of plain.voices[pair[0]]) {
      if (!struck.has(after.at)) continue;
      const step = stepInto(plain, pair, after);
      if (step !== undefined) steps.push(step);
    }
  }
  return steps;
}

function stepInto(plain: Plain, pair: Step['pair'], c: PlainNote): Step | undefined {
  const d = sounding(plain, pair[1], c.at);
  const a = sounding(plain, pair[0], c.at - 1);
  const b = sounding(plain, pair[1], c.at - 1);
  if (!a || !b || !d || a.midi === c.midi || b.midi === d.midi) return undefined;
  if (phraseEndsBetween(plain, c.at - 1, c.at)) return undefined;
  return { pair, before: [a, b], after: [c, d] };
}

/** Semitones from the lower to the higher note, and staff places: `7 4` is a perfect fifth. */
function width([a, b]: readonly [PlainNote, PlainNote]): { semitones: number; places: number } {
  const sign = a.midi < b.midi || (a.midi === b.midi && a.place < b.place) ? -1 : 1;
  return { semitones: sign * (a.midi - b.midi), places: sign * (a.place - b.place) };
}

const isFifth = (two: readonly [PlainNote, PlainNote]) =>
  width(two).semitones % 12 === 7 && width(two).places % 7 === 4;
const isTritoneFifth = (two: readonly [PlainNote, PlainNote]) =>
  width(two).semitones % 12 === 6 && width(two).places % 7 === 4;
const isUnison = (two: readonly [PlainNote, PlainNote]) =>
  two[0].midi === two[1].midi && two[0].place === two[1].place;
const isOctave = (two: readonly [PlainNote, PlainNote]) =>
  !isUnison(two) && width(two).semitones % 12 === 0 && width(two).places % 7 === 0;
const sameDirection = ({ before, after }: Step) =>
  after[0].midi > before[0].midi === after[1].midi > before[1].midi;
/** Only octaves change: C3–G3 to C4–G4. */
const sameNames = ({ before, after }: Step) =>
  before[0].name === after[0].name && before[1].name === after[1].name;

function stepPlace({ pair, before, after }: Step): Place {
  return {
    at: Math.max(before[0].at, before[1].at),
    until: Math.min(after[0].until, after[1].until),
    voices: pair,
  };
}

function stepsWhere(test: (step: Step) => boolean): (plain: Plain) => Place[] {
  return (plain) =>
    jointSteps(plain)
      .filter((step) => !sameNames(step) && test(step))
      .map(stepPlace);
}

/** From one beat to the next, with something between: only what sounds on the two beats counts. */
function beatSteps(plain: Plain, test: (step: Step) => boolean): Place[] {
  const places: Place[] = [];
  for (const [i, to] of plain.beats.entries()) {
    const from = plain.beats[i - 1];
    if (from === undefined || phraseEndsBetween(plain, from, to)) continue;
    for (const pair of TWO) {
      const step = beatStep(plain, pair, from, to);
      if (step !== undefined && !sameNames(step) && test(step))
        places.push({ at: from, until: to + 1, voices: pair });
    }
  }
  return places;
}

function beatStep(plain: Plain, pair: Step['pair'], from: Ticks, to: Ticks): Step | undefined {
  const a = sounding(plain, pair[0], from);
  const b = sounding(plain, pair[1], from);
  const c = sounding(plain, pair[0], to);
  const d = sounding(plain, pair[1], to);
  if (!a || !b || !c || !d || c.at !== to || d.at !== to || a.midi === c.midi || b.midi === d.midi)
    return undefined;
  // One of the two goes by way of another note, and the last interval before the beat is another.
  if (a.until === to && b.until === to) return undefined;
  return { pair, before: [a, b], after: [c, d] };
}

const anyNote: Planter['tries'] = (piece, random) => oneNoteChanges(piece, random);

export const CONSECUTIVES: readonly Planter[] = [
  {
    rule: 'parallel-fifths',
    family: 'consecutives',
    definition: 'two voices move together in one direction from a perfect fifth to a perfect fifth',
    tries: anyNote,
    find: stepsWhere((step) => sameDirection(step) && isFifth(step.before) && isFifth(step.after)),
  },
  {
    rule: 'parallel-octaves',
    family: 'consecutives',
    definition: 'two voices move together in one direction from an octave to an octave',
    tries: anyNote,
    find: stepsWhere((step) => sameDirection(step) && isOctave(step.before) && isOctave(step.after)),
  },
  {
    rule: 'parallel-unisons',
    family: 'consecutives',
    definition: 'two voices move together from a unison to a unison',
    tries: anyNote,
    find: stepsWhere((step) => isUnison(step.before) && isUnison(step.after)),
  },
  {
    rule: 'parallel-fifths',
    family: 'consecutives',
    definition: 'outer voices: fifths on two successive beats in one direction, with a note between',
    tries: anyNote,
    find: (plain) =>
      beatSteps(
        plain,
        (step) =>
          step.pair.join('') === 'SB' && sameDirection(step) && isFifth(step.before) && isFifth(step.after),
      ),
  },
  {
    rule: 'parallel-octaves',
    family: 'consecutives',
    definition: 'outer voices: octaves on two successive beats in one direction, with a note between',
    tries: anyNote,
    find: (plain) =>
      beatSteps(
        plain,
        (step) =>
          step.pair.join('') === 'SB' && sameDirection(step) && isOctave(step.before) && isOctave(step.after),
      ),
    // From an octave by way of a unison: both names are right.
    alsoNamed: ['contrary-octaves'],
  },
  {
    rule: 'parallel-fifths',
    family: 'consecutives',
    definition:
      'any two voices: fifths on successive beats in one direction, a passing, neighbour or anticipating note between',
    tries: (piece, random) => decorated(piece, random, isFifth, 4),
    find: (plain) =>
      beatSteps(plain, (step) => sameDirection(step) && isFifth(step.before) && isFifth(step.after)),
  },
  {
    rule: 'parallel-octaves',
    family: 'consecutives',
    definition:
      'any two voices: octaves on successive beats in one direction, a passing, neighbour or anticipating note between',
    tries: (piece, random) => decorated(piece, random, isOctave, 7),
    find: (plain) =>
      beatSteps(plain, (step) => sameDirection(step) && isOctave(step.before) && isOctave(step.after)),
    alsoNamed: ['contrary-octaves'],
  },
  {
    rule: 'contrary-fifths',
    family: 'consecutives',
    definition: 'two voices move in opposite directions from a perfect fifth or its compound to another',
    tries: anyNote,
    find: stepsWhere((step) => !sameDirection(step) && isFifth(step.before) && isFifth(step.after)),
  },
  {
    rule: 'contrary-octaves',
    family: 'consecutives',
    definition: 'two voices move in opposite directions from an octave or unison to another',
    tries: anyNote,
    find: stepsWhere(
      (step) =>
        !sameDirection(step) &&
        (isOctave(step.before) || isUnison(step.before)) &&
        (isOctave(step.after) || isUnison(step.after)),
    ),
  },
  {
    rule: 'unequal-fifths',
    family: 'consecutives',
    definition: 'two voices move together in one direction from a diminished fifth to a perfect one',
    tries: (piece, random) => oneNoteChanges(piece, random, { pitches: 'chromatic' }),
    find: stepsWhere((step) => sameDirection(step) && isTritoneFifth(step.before) && isFifth(step.after)),
  },
  {
    rule: 'exposed-fifths',
    family: 'consecutives',
    definition:
      'soprano and bass move in one direction to a fifth from another interval, the soprano by leap',
    tries: (piece, random) => oneNoteChanges(piece, random, { voices: ['B', 'S'] }),
    find: stepsWhere((step) => isExposed(step) && isFifth(step.after) && !isFifth(step.before)),
  },
  {
    rule: 'exposed-octaves',
    family: 'consecutives',
    definition:
      'soprano and bass move in one direction to an octave from another interval, the soprano by leap',
    tries: (piece, random) => oneNoteChanges(piece, random, { voices: ['B', 'S'] }),
    find: stepsWhere((step) => isExposed(step) && isOctave(step.after) && !isOctave(step.before)),
  },
];

function isExposed(step: Step): boolean {
  return (
    step.pair.join('') === 'SB' &&
    sameDirection(step) &&
    Math.abs(step.after[0].place - step.before[0].place) > 1
  );
}

/**
 * Consecutives put off by an ornament: where two voices stand in the interval, the lower of them is led to the same
 * interval under the upper one's next note, and the upper one's first note is cut in half.
 */
function* decorated(
  { plain, score }: Piece,
  random: Random,
  isInterval: (two: readonly [PlainNote, PlainNote]) => boolean,
  places: number,
): Generator<Score> {
  for (const { before, after } of random.shuffled(
    jointSteps(plain).filter((step) => isInterval(step.before)),
  )) {
    const [a, b] = before;
    const [c, d] = after;
    const half = a.at + (a.until - a.at) / 2;
    if (a.until !== c.at || b.until !== d.at || a.until - a.at < QUARTER) continue;
    const under = c.place - places - 7 * Math.round((a.place - b.place - places) / 7);
    const lower = spelt(score, under, c.at);
    const up = c.place > a.place ? 1 : -1;
    const between = random.below(3) === 0 ? c.pitch : spelt(score, a.place + up, a.at);
    yield split(withPitch(score, d, lower), a, half, between);
  }
}

/** The note of the key signature on a staff place. */
function spelt(score: Score, place: number, at: Ticks): Pitch {
  const name = scaleAt(score, at)[((place % 7) + 7) % 7]!;
  return { ...name, octave: Math.floor(place / 7) };
}
