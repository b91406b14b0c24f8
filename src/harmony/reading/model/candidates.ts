/** Which chords are worth trying for a segment: those that hold most of it and contradict none of it. */
import { CHORD_TYPES } from '../../chord-types.ts';
import { admittedTypes, MEMBER_SLOTS, RARITY, REACH, SLOTS } from './admission.ts';
import type { ChordScorer } from './chord-scorer.ts';
import { memberAt, type Segment } from './segment.ts';

/** Chords tried with the weights, and chords kept for the search. */
const TRIED = 10;
const KEPT = 5;
/** The same where voices are silent or still to be written. */
const FEW_TRIED = 20;
const FEW_KEPT = 10;
/** Places on the line of fifths are stored from this one up. */
const LOWEST = 40;
const PLACES = 80;

/** Chords with their inversions and scores, in parallel arrays; reused from segment to segment. */
export interface Candidates {
  count: number;
  readonly root: Int8Array;
  readonly type: Int8Array;
  readonly inversion: Int8Array;
  readonly score: Float64Array;
}

/** As many candidates as a segment may have. */
const MOST_CANDIDATES = FEW_KEPT * 2;

interface Ranked {
  readonly root: Int8Array;
  readonly type: Int8Array;
  readonly score: Float64Array;
  count: number;
  /** So many are kept. */
  room: number;
}

const ranked = (size: number): Ranked => ({
  root: new Int8Array(size),
  type: new Int8Array(size),
  score: new Float64Array(size),
  count: 0,
  room: size,
});

/** Puts a chord among the best, which stay in order. */
function rank(list: Ranked, root: number, type: number, score: number): void {
  const { room } = list;
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

/** Finds the candidates of the segment in hand; what it gives is used up by the next call. */
export type CandidateFinder = () => Candidates;

/** Makes a finder for the segments taken in hand one after another. */
export function candidateFinder(segment: Segment, scorer: ChordScorer): CandidateFinder {
  const finder = new Finder(segment, scorer);
  return () => finder.find();
}

// Imports are read once: loaders that compile modules as they go make every later read a call.
const [reach, slots, memberSlots, rarity] = [REACH, SLOTS, MEMBER_SLOTS, RARITY];
const [admitted, member, types] = [admittedTypes, memberAt, CHORD_TYPES.length];

class Finder {
  /** How long each place sounds in the segment, and which do, in the order they are met. */
  private readonly lengths = new Float64Array(PLACES);
  private readonly places = new Int8Array(PLACES);
  private placeCount = 0;
  private total = 0;
  /** How long each note a chord may have above the root in hand sounds. */
  private readonly slotLengths = new Float64Array(SLOTS);
  private readonly rootSeen = new Uint8Array(PLACES);
  private readonly tried = ranked(FEW_TRIED);
  private readonly kept = ranked(FEW_KEPT);
  private readonly found: Candidates = {
    count: 0,
    root: new Int8Array(MOST_CANDIDATES),
    type: new Int8Array(MOST_CANDIDATES),
    inversion: new Int8Array(MOST_CANDIDATES),
    score: new Float64Array(MOST_CANDIDATES),
  };

  constructor(
    private readonly segment: Segment,
    private readonly scorer: ChordScorer,
  ) {}

  find(): Candidates {
    const { segment, scorer, tried, kept, found } = this;
    const full = segment.grid.few[segment.from]! < 0;
    tried.count = 0;
    tried.room = full ? TRIED : FEW_TRIED;
    kept.count = 0;
    kept.room = full ? KEPT : FEW_KEPT;
    found.count = 0;
    this.measure();
    this.tryRoots(false);
    // A cluster that no chord fits must still be read as something.
    if (tried.count === 0) this.tryRoots(true);
    for (let i = 0; i < tried.count; i++) {
      const [root, type] = [tried.root[i]!, tried.type[i]!];
      rank(kept, root, type, scorer.chord(root, type));
    }
    for (let i = 0; i < kept.count; i++) this.withInversions(kept.root[i]!, kept.type[i]!, kept.score[i]!);
    return found;
  }

  private measure(): void {
    const { segment, lengths, places } = this;
    lengths.fill(0);
    this.placeCount = 0;
    this.total = 0;
    for (let i = 0; i < segment.tones; i++) {
      const at = segment.place[i]! + LOWEST;
      if (lengths[at] === 0) places[this.placeCount++] = segment.place[i]!;
      lengths[at]! += segment.duration[i]!;
      this.total += segment.duration[i]!;
    }
  }

  private tryRoots(desperate: boolean): void {
    const { places, placeCount, rootSeen, segment } = this;
    const { grid, from, to } = segment;
    const allSing = grid.sounding[from] === 4 && grid.until[to - 1]! - grid.at[from]! >= grid.beat;
    const flags = (desperate ? 4 : 0) + (allSing ? 2 : 0) + (placeCount > 2 ? 1 : 0);
    rootSeen.fill(0);
    for (let i = 0; i < placeCount; i++) {
      for (let b = 0; b < ROOT_BELOW.length; b++) {
        const root = places[i]! - ROOT_BELOW[b]!;
        if (rootSeen[root + LOWEST]) continue;
        rootSeen[root + LOWEST] = 1;
        this.tryRoot(root, flags);
      }
    }
  }

  private tryRoot(root: number, flags: number): void {
    const { lengths, slotLengths, total, tried } = this;
    let reached = 0;
    let sounding = 0;
    for (let slot = 0; slot < slots; slot++) {
      const length = lengths[root + LOWEST + reach[slot]!]!;
      slotLengths[slot] = length;
      reached += length;
      if (length > 0) sounding |= 1 << slot;
    }
    if (reached * 2 < total) return;
    let left = admitted(sounding, flags);
    for (let type = 0; type < types && left !== 0; type++, left >>= 1) {
      if ((left & 1) === 0) continue;
      let held = 0;
      let lacking = 0;
      for (let m = type * 4; m < type * 4 + 4; m++) {
        const slot = memberSlots[m]!;
        if (slot < 0) break;
        if (slotLengths[slot]! > 0) held += slotLengths[slot]!;
        else lacking++;
      }
      if (held * 2 < total) continue;
      rank(tried, root, type, held / total - 0.15 * lacking - rarity[type]!);
    }
  }

  /** The members the bass has, the first two of them; the root where it has none. */
  private withInversions(root: number, type: number, score: number): void {
    const { segment } = this;
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
    this.add(root, type, Math.max(first, 0), score);
    if (second >= 0) this.add(root, type, second, score);
  }

  private add(root: number, type: number, inversion: number, score: number): void {
    const { found } = this;
    const i = found.count++;
    found.root[i] = root;
    found.type[i] = type;
    found.inversion[i] = inversion;
    found.score[i] = score + this.scorer.bass(root, type, inversion);
  }
}
