/** Tunes for short exercises: a close from the table of melody closes, led up to by steps and small leaps. */
import { semitone } from '../score/pitch.ts';
import { precedents } from '../style/precedents.ts';
import type { Aim } from './aims.ts';
import type { Chance } from './random.ts';
import { degreeAt, type PracticeKey, pitchOf, type Sung } from './scale.ts';

export interface PracticeTune {
  readonly key: PracticeKey;
  /** Crotchets in a bar. */
  readonly beats: 3 | 4;
  readonly bars: number;
  /** One crotchet each, but the last, which lasts to the end of its bar. */
  readonly notes: readonly Sung[];
  /** Crotchets that the last note lasts. */
  readonly lastBeats: number;
}

/** D4 to F5, as {@link semitone} counts. */
const RANGE = [50, 65] as const;
const MOST_SIGNS = 4;
const KEYS: readonly number[] = Array.from({ length: 2 * MOST_SIGNS + 1 }, (_, i) => i - MOST_SIGNS);

/** A tune for an aim; undefined where what chance brought together is of no use. */
export function tuneFor(aim: Aim, by: Chance): PracticeTune | undefined {
  const mode = by.pick(aim.modes);
  const key: PracticeKey = { fifths: by.pick(KEYS), mode };
  const degrees = by.pick(closesFor(mode));
  const beats = aim.inFour ? 4 : by.pick([3, 4, 4] as const);
  const bars = beats === 3 ? 3 + by.next(2) : 2 + by.next(2);
  // In four the last note falls on the third beat or on the first, in three on the first. Fewer than seven notes would
  // leave so little room before the close that the same tune came again and again.
  const lastBeats = beats === 3 ? 3 : bars === 2 ? 2 : by.pick([2, 4] as const);
  const number = beats * bars - lastBeats + 1;
  const end = degrees.map(degreeOf);
  for (let tonic = 21; tonic < 35; tonic++) {
    if (degreeAt(key, tonic) !== 0) continue;
    const notes = ledUpTo(placed(tonic + by.pick([0, 7]), end), number, key, by);
    if (notes !== undefined && inRange(key, notes) && suits(aim, notes))
      return { key, beats, bars, notes, lastBeats };
  }
  return undefined;
}

/**
 * How tunes came to a perfect close in the home key on a strong beat, where they move and stay in the scale. Closes on
 * the dominant are left out: as the end of a whole piece, the review asks about them.
 */
function closesFor(mode: 'major' | 'minor'): readonly (readonly string[])[] {
  const closes = precedents().flatMap(({ degrees, ...close }) => {
    const home = close.mode === mode && close.key === (mode === 'major' ? 'I' : 'i');
    const plain = degrees.every((degree) => /^[1-7]$/.test(degree) || (mode === 'minor' && degree === '♯7'));
    const moves = degrees.every((degree, i) => degree !== degrees[i - 1]);
    const natural = mode === 'minor' && degrees.includes('7');
    const fits = home && close.kind === 'perfect' && close.strong && plain && moves && !natural;
    return fits && degrees.length >= 3 ? [degrees] : [];
  });
  // Each once, however common: the commonest few would come again and again.
  return [...new Map(closes.map((degrees) => [degrees.join(), degrees])).values()];
}

function degreeOf(text: string): { degree: number; raised: boolean } {
  return { degree: Number(text.at(-1)) - 1, raised: text.startsWith('♯') };
}

/** The degrees as notes, each as near as can be to the one before. */
function placed(tonic: number, degrees: readonly { degree: number; raised: boolean }[]): Sung[] {
  const notes: Sung[] = [];
  for (const each of degrees) {
    const before = notes.at(-1);
    const plain = tonic + each.degree;
    const place =
      before === undefined
        ? plain
        : [plain - 7, plain, plain + 7].reduce((a, b) =>
            Math.abs(b - before.place) < Math.abs(a - before.place) ? b : a,
          );
    notes.push({ ...each, place });
  }
  return notes;
}

/** Notes are put before the close, mostly by step, until the tune is long enough; it begins on the tonic chord. */
function ledUpTo(end: readonly Sung[], number: number, key: PracticeKey, by: Chance): Sung[] | undefined {
  const notes = end.slice(-number);
  while (notes.length < number) {
    const [first, second] = notes;
    const begins = notes.length === number - 1;
    const steps = by.shuffled([1, 1, 1, -1, -1, -1, 2, -2, 3, -3, 4]).filter((by_) => {
      const place = first!.place + by_;
      const degree = degreeAt(key, place);
      if (begins && ![0, 2, 4].includes(degree)) return false;
      // In minor the sixth and seventh degrees are where the scale changes: the close alone has them, or the neighbour of the fifth.
      if (key.mode === 'minor' && (degree === 6 || (degree === 5 && degreeAt(key, first!.place) !== 4)))
        return false;
      // After a leap the tune turns back.
      const next = second === undefined ? 0 : second.place - first!.place;
      return Math.abs(by_) < 2 || Math.sign(next) === Math.sign(by_)
        ? place !== second?.place || by.next(3) === 0
        : false;
    });
    const step = steps[0];
    if (step === undefined) return undefined;
    const place = first!.place + step;
    notes.unshift({ place, degree: degreeAt(key, place), raised: false });
  }
  return notes;
}

function inRange(key: PracticeKey, notes: readonly Sung[]): boolean {
  const heights = notes.map((note) => semitone(pitchOf(key, note)));
  return Math.min(...heights) >= RANGE[0] && Math.max(...heights) <= RANGE[1];
}

function suits({ tune }: Aim, notes: readonly Sung[]): boolean {
  const moves = notes.slice(1).map(({ place }, i) => place - notes[i]!.place);
  if (moves.some((move) => Math.abs(move) > 5)) return false;
  if (tune?.leap !== undefined && !moves.some((move) => Math.abs(move) >= tune.leap!)) return false;
  if (tune?.run === undefined) return true;
  let run = 0;
  return moves.some((move, i) => {
    run =
      Math.abs(move) === 1 && (i === 0 || run === 0 || move === moves[i - 1])
        ? run + 1
        : Math.abs(move) === 1
          ? 1
          : 0;
    return run >= tune.run!;
  });
}
