/** Which chords are worth trying for a segment: those that hold most of it and contradict none of it. */
import { CROTCHET } from '../../../score/time.ts';
import { CHORD_TYPES, TYPE } from '../../chord-types.ts';
import { type ChordScorer, memberAt, type Segment } from './segment.ts';

/** Chords tried with the weights, and chords kept for the search. */
const TRIED = 10;
const KEPT = 5;
/** The same where voices are silent or still to be written. */
const FEW_TRIED = 20;
const FEW_KEPT = 10;
/** Places on the line of fifths are stored from this one up. */
const LOWEST = 40;
const PLACES = 80;
/** Stands for no place at all: no member lies thirteen fifths from its root. */
const NOWHERE = 13;

/** Chords with their inversions and scores, in parallel arrays; reused from segment to segment. */
export interface Candidates {
  count: number;
  readonly root: Int8Array;
  readonly type: Int8Array;
  readonly inversion: Int8Array;
  readonly score: Float64Array;
}

interface Ranked {
  readonly root: Int8Array;
  readonly type: Int8Array;
  readonly score: Float64Array;
  count: number;
}

const ranked = (size: number): Ranked => ({
  root: new Int8Array(size),
  type: new Int8Array(size),
  score: new Float64Array(size),
  count: 0,
});

/** Puts a chord among the best, which stay in order. */
function rank(list: Ranked, room: number, root: number, type: number, score: number): void {
  if (list.count === room && score <= list.score[room - 1]!) return;
  let at = list.count < room ? list.count++ : room - 1;
  while (at > 0 && list.score[at - 1]! < score) {
    list.root[at] = list.root[at - 1]!;
    list.type[at] = list.type[at - 1]!;
    list.score[at] = list.score[at - 1]!;
    at--;
  }
  list.root[at] = root;
  list.type[at] = type;
  list.score[at] = score;
}

/** A root is a note that sounds, or lacks: it lies so far below one that does. */
const ROOT_BELOW = [0, 1, 4, -3, -6] as const;
/** Four a type; NOWHERE for the seventh that a triad lacks. */
const OFFSETS = Int8Array.from(
  CHORD_TYPES.flatMap(({ offsets }) => [0, 1, 2, 3].map((m) => offsets[m] ?? NOWHERE)),
);
/** Every distance a member may lie from its root. */
const REACH = Int8Array.from(new Set(CHORD_TYPES.flatMap(({ offsets }) => offsets)));
/** Sevenths whose third is the leading note: they may lack their root. */
const dominant = (type: number): boolean => type === TYPE.M7 || type === TYPE.Fr;
/** What a chord's rarity costs before any weight is asked. */
const RARITY = CHORD_TYPES.map((_, type) =>
  type === TYPE.M || type === TYPE.m ? 0 : type >= TYPE.mmaj7! ? 0.1 : 0.02,
);

/** The third a triad's own third excludes, in fifths from the root; NOWHERE where there is none to mistake it for. */
const OTHER_THIRD = Int8Array.from(CHORD_TYPES, ({ offsets }) =>
  offsets[1] === 4 ? -3 : offsets[1] === -3 ? 4 : NOWHERE,
);

/** Makes a function that finds the candidates of the segment in hand. */
export function candidateFinder(segment: Segment, scorer: ChordScorer): () => Candidates {
  // Imports are read once: loaders that compile modules as they go make every later read a call.
  const member = memberAt;
  const [below, types, nowhere] = [LOWEST, CHORD_TYPES.length, NOWHERE];
  let room = TRIED;
  const [offsets, reach, rarity, rootsBelow] = [OFFSETS, REACH, RARITY, ROOT_BELOW];
  const [otherThird, fullBeat] = [OTHER_THIRD, CROTCHET];
  const lengths = new Float64Array(PLACES);
  const tried = ranked(FEW_TRIED);
  const kept = ranked(FEW_KEPT);
  const found: Candidates = {
    count: 0,
    root: new Int8Array(FEW_KEPT * 2),
    type: new Int8Array(FEW_KEPT * 2),
    inversion: new Int8Array(FEW_KEPT * 2),
    score: new Float64Array(FEW_KEPT * 2),
  };
  const rootSeen = new Uint8Array(PLACES);
  return () => {
    lengths.fill(0);
    tried.count = 0;
    kept.count = 0;
    found.count = 0;
    const full = segment.grid.few[segment.from]! < 0;
    room = full ? TRIED : FEW_TRIED;
    let total = 0;
    let places = 0;
    for (let i = 0; i < segment.tones; i++) {
      const place = segment.place[i]! + LOWEST;
      if (lengths[place] === 0) places++;
      lengths[place]! += segment.duration[i]!;
      total += segment.duration[i]!;
    }
    tryRoots(total, places, false);
    // A cluster that no chord fits must still be read as something.
    if (tried.count === 0) tryRoots(total, places, true);
    for (let i = 0; i < tried.count; i++)
      rank(
        kept,
        full ? KEPT : FEW_KEPT,
        tried.root[i]!,
        tried.type[i]!,
        scorer.chord(tried.root[i]!, tried.type[i]!),
      );
    for (let i = 0; i < kept.count; i++) withInversions(kept.root[i]!, kept.type[i]!, kept.score[i]!);
    return found;
  };

  function tryRoots(total: number, places: number, desperate: boolean): void {
    rootSeen.fill(0);
    for (let i = 0; i < segment.tones; i++) {
      for (let b = 0; b < rootsBelow.length; b++) {
        const root = segment.place[i]! - rootsBelow[b]!;
        if (rootSeen[root + below]) continue;
        rootSeen[root + below] = 1;
        tryRoot(root, total, places, desperate);
      }
    }
  }

  /**
   * What no ear allows: a chord against its own third; a seventh, or an augmented sixth, that lacks both its root and
   * its leading note; a triad that lacks its root where every voice sings for a beat or more.
   */
  function denied(at: number, type: number): boolean {
    const third = lengths[at + offsets[type * 4 + 1]!]! > 0;
    if (!third && otherThird[type] !== nowhere && lengths[at + otherThird[type]!]! > 0) return true;
    if (lengths[at]! > 0) return false;
    if (type >= TYPE.It! || offsets[type * 4 + 3] !== nowhere) return !(third && dominant(type));
    const { grid, from, to } = segment;
    return grid.sounding[from] === 4 && grid.until[to - 1]! - grid.at[from]! >= fullBeat;
  }

  function tryRoot(root: number, total: number, places: number, desperate: boolean): void {
    const at = root + below;
    let reached = 0;
    for (let r = 0; r < reach.length; r++) reached += lengths[at + reach[r]!]!;
    if (reached * 2 < total) return;
    for (let type = 0; type < types; type++) {
      if (!desperate && denied(at, type)) continue;
      const row = type * 4;
      let held = 0;
      let lacking = 0;
      for (let m = 0; m < 4; m++) {
        const offset = offsets[row + m]!;
        if (offset === nowhere) break;
        const length = lengths[at + offset]!;
        if (length > 0) held += length;
        else lacking += m === 3 ? 9 : 1;
      }
      if (held * 2 < total || lacking > 2 || (lacking === 2 && places > 2)) continue;
      rank(tried, room, root, type, held / total - 0.15 * lacking - rarity[type]!);
    }
  }

  /** The members the bass has, the first two of them; the root where it has none. */
  function withInversions(root: number, type: number, score: number): void {
    let first = -1;
    let second = -1;
    for (let i = segment.bassFrom; i < segment.bassTo; i++) {
      const found = member(type, root, segment.place[i]!);
      if (found < 0 || found === first) continue;
      if (first < 0) first = found;
      else {
        second = found;
        break;
      }
    }
    add(root, type, Math.max(first, 0), score);
    if (second >= 0) add(root, type, second, score);
  }

  function add(root: number, type: number, inversion: number, score: number): void {
    const i = found.count++;
    found.root[i] = root;
    found.type[i] = type;
    found.inversion[i] = inversion;
    found.score[i] = score + scorer.bass(root, type, inversion);
  }
}
