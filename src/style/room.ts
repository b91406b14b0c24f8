/**
 * Where a piece has room for what the style uses and it has little of, found by trial: a change is made, the whole is
 * reviewed again, and only where no fault and no query comes of it is the place named. The note itself is the pupil's
 * business and is never told.
 */
import { type Finding, type Review, reviewScore } from '../review/review.ts';
import { excerpt } from '../score/excerpt.ts';
import { barAt } from '../score/place.ts';
import type { Score, VoiceName } from '../score/score.ts';
import type { Ticks } from '../score/time.ts';
import { musicOf } from './music.ts';
import type { Style } from './profile.ts';
import { ROOM_KINDS, ROOM_TRIALS, type RoomKind, type Trial } from './room-trials.ts';

/** A place with room. What would fill it is not part of it. */
export interface Room {
  readonly kind: RoomKind;
  readonly voice: VoiceName;
  readonly at: Ticks;
  readonly until: Ticks;
}

/** Which measures, lying on which side of the middle half, make it worth while to look for which kind. */
const WANTED_BY: Readonly<Record<RoomKind, readonly (readonly [measure: string, side: 'low' | 'high'])[]>> = {
  'passing note': [
    ['movement-below-tune', 'low'],
    ['off-beat-tenor', 'low'],
    ['off-beat-bass', 'low'],
    ['ornaments', 'low'],
  ],
  suspension: [['suspensions', 'low']],
  move: [['repeated-alto', 'high']],
  seventh: [['sevenths', 'low']],
};

/** Never more than the style uses: so many places for so many beats (three in eight bars of four). */
const MOST_PLACES = 3;
const IN_BEATS = 32;
/** Bars on either side in which a change is tried first; what passes there is tried in the whole. */
const BARS_AROUND = 2;

/** The kinds of room a piece of this style wants: those whose measures lie outside the middle half on that side. */
export function roomWanted(style: Style): readonly RoomKind[] {
  if (style.kind !== 'told') return [];
  return ROOM_KINDS.filter((kind) =>
    WANTED_BY[kind].some(([id, side]) => {
      const value = style.values.find(({ measure }) => measure.id === id);
      return value !== undefined && (side === 'low' ? value.percentile < 25 : value.percentile > 75);
    }),
  );
}

/**
 * Places with room for these kinds, in order of time: three in eight bars of four at the most, the kinds in turn.
 * Given voices are left alone. Pure, and takes a second or so: it tries some hundred changes.
 */
export function findRoom(
  review: Review,
  kinds: readonly RoomKind[],
  locked: readonly VoiceName[] = ['S'],
): readonly Room[] {
  const most = Math.max(1, Math.round((MOST_PLACES * musicOf(review.analysis).beats.length) / IN_BEATS));
  const queues = kinds.map((kind) => ({
    kind,
    trials: spread(
      ROOM_TRIALS[kind](review.analysis).filter(({ voice }) => !locked.includes(voice)),
      most * 3,
    ).values(),
  }));
  const rooms: Room[] = [];
  let tried = true;
  while (tried && rooms.length < most) {
    tried = false;
    for (const { kind, trials } of queues) {
      const { value: trial } = trials.next();
      if (trial === undefined) continue;
      tried = true;
      const { voice, at, until } = trial;
      const taken = rooms.some((room) => room.voice === voice && room.at < until && at < room.until);
      if (rooms.length < most && !taken && passes(review, trial)) rooms.push({ kind, voice, at, until });
    }
  }
  return rooms.sort((a, b) => a.at - b.at);
}

/** Some of many, far apart first, so that the places found do not crowd into the first bars. */
function spread<T extends { readonly at: Ticks }>(trials: readonly T[], most: number): readonly T[] {
  if (trials.length <= most) return trials;
  return Array.from({ length: most }, (_, i) => trials[Math.floor((i * trials.length) / most)]!);
}

function passes(review: Review, trial: Trial): boolean {
  const { score, profile } = review;
  const first = Math.max(0, barAt(score, trial.at).index - BARS_AROUND);
  const last = Math.min(score.bars.length - 1, barAt(score, trial.until - 1).index + BARS_AROUND);
  const before = excerpt(score, first, last);
  const worse = (whole: Score, changed: Score) =>
    hasNew(reviewScore(whole, profile).findings, reviewScore(changed, profile).findings);
  return trial.tries.some((changed) => {
    if (worse(before.score, excerpt(changed, first, last).score)) return false;
    const after = reviewScore(changed, profile);
    return !hasNew(review.findings, after.findings) && trial.holds(after.analysis);
  });
}

/** True where something that is more than a remark is said now and was not before. */
function hasNew(before: readonly Finding[], after: readonly Finding[]): boolean {
  return after.some(
    (now) =>
      now.severity !== 'remark' &&
      !before.some((was) => was.rule === now.rule && was.from < now.until && now.from < was.until),
  );
}
