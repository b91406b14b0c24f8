/**
 * Scores chords over one segment as the features of `segment.ts` would, but faster: what a tone is worth in each role
 * is summed once for all tones that are alike. `tests/harmony/scorers.test.ts` holds the two together.
 */
import { CHORD_TYPES } from '../../chord-types.ts';
import { featureList } from './features.ts';
import { KIND_OF_SHAPE } from './grid.ts';
import {
  BASS_PLACE,
  FEW_MEMBERS,
  MEMBERS_AT_START,
  MEMBERS_PRESENT,
  SEVENTH_KIND,
  TONE_KIND,
  TONE_PLACE,
  TONE_SHAPE,
} from './layout.ts';
import {
  ACCENT_COUNT,
  bassFeatures,
  FOREIGN,
  fewKind,
  KIND_COUNT,
  LENGTH_COUNT,
  MEMBERS_BY_PLACE,
  PLACE_ROOT,
  PLACE_SPAN,
  ROOM,
  type Segment,
  SHAPES,
  TYPES,
} from './segment.ts';

/** A tone's roles: the four members, and foreign in four ways. */
const ROLES = 8;

/** Of two voices one is taken to sing the root: full chords, from which the weights are learnt, hardly say so. */
export const ROOTLESS_COST = 3;

export interface ChordScorer {
  /** Takes the segment in hand. */
  readonly prepare: () => void;
  readonly chord: (root: number, type: number) => number;
  readonly bass: (root: number, type: number, inversion: number) => number;
}

/** Makes a scorer for the segments taken in hand one after another. The weights must stay as they are meanwhile. */
export function chordScorer(segment: Segment, weights: Float64Array): ChordScorer {
  return new FastChords(segment, weights);
}

/** Tones of so many kinds: by voices sounding, whether in the bass, shape, accent and length. */
const TONE_KINDS = 3 * 2 * SHAPES * ACCENT_COUNT * LENGTH_COUNT;
const HAS_SEVENTH = Uint8Array.from(CHORD_TYPES, ({ offsets }) => (offsets.length > 3 ? 1 : 0));

// Imports are read once: loaders that compile modules as they go make every later read a call.
const [shapeFrom, placeFrom, kindFrom, bassFrom] = [TONE_SHAPE, TONE_PLACE, TONE_KIND, BASS_PLACE];
const [seventhFrom, presentFrom, startFrom] = [SEVENTH_KIND, MEMBERS_PRESENT, MEMBERS_AT_START];
const [fewMembers, kindOfFew, bassOf] = [FEW_MEMBERS, fewKind, bassFeatures];
const [kindOfShape, members, span, rootAt] = [KIND_OF_SHAPE, MEMBERS_BY_PLACE, PLACE_SPAN, PLACE_ROOT];
const [shapes, accents, lengths, kinds, types] = [SHAPES, ACCENT_COUNT, LENGTH_COUNT, KIND_COUNT, TYPES];
const foreign = FOREIGN;

class FastChords implements ChordScorer {
  /** By kind of tone: where its row begins in `worth`, one number a role; -1 where none was met yet. */
  private readonly rows = new Int32Array(TONE_KINDS).fill(-1);
  private worth = new Float64Array(256 * ROLES);
  private used = 0;
  /** By tone of the segment in hand. */
  private readonly row = new Int32Array(ROOM);
  private readonly bassList = featureList(4);

  constructor(
    private readonly segment: Segment,
    private readonly weights: Float64Array,
  ) {}

  prepare(): void {
    const { segment, rows, row } = this;
    const few = segment.grid.few[segment.from]!;
    for (let i = 0; i < segment.tones; i++) {
      const inBass = i >= segment.bassFrom && i < segment.bassTo ? 1 : 0;
      const kind =
        ((((few + 1) * 2 + inBass) * shapes + segment.shape[i]!) * accents + segment.accent[i]!) * lengths +
        segment.length[i]!;
      const known = rows[kind]!;
      row[i] = known >= 0 ? known : this.weigh(i, kind, inBass === 1);
    }
  }

  /** Works out what a kind of tone is worth in each role; gives where its row begins. */
  private weigh(tone: number, kind: number, inBass: boolean): number {
    const { segment, weights } = this;
    const few = segment.grid.few[segment.from]!;
    const shape = segment.shape[tone]!;
    const accent = segment.accent[tone]!;
    const place = accent * lengths + segment.length[tone]!;
    const row = this.used;
    this.used += ROLES;
    if (this.used > this.worth.length) {
      const larger = new Float64Array(this.worth.length * 2);
      larger.set(this.worth);
      this.worth = larger;
    }
    for (let detailed = 0; detailed < ROLES; detailed++) {
      const role = Math.min(detailed, foreign);
      let score =
        weights[shapeFrom + detailed * shapes + shape]! +
        weights[placeFrom + detailed * accents * lengths + place]! +
        weights[kindFrom + (role * kinds + kindOfShape[shape]!) * accents + accent]!;
      if (inBass) score += weights[bassFrom + role * accents * lengths + place]!;
      if (few >= 0) score += weights[kindOfFew(few, role, kindOfShape[shape]!, accent)]!;
      this.worth[row + detailed] = score;
    }
    this.rows[kind] = row;
    return row;
  }

  chord(root: number, type: number): number {
    const { segment, weights, worth, row } = this;
    const { place, before, after, atStart } = segment;
    const seventhMatters = HAS_SEVENTH[type] === 1;
    const origin = type * span + rootAt - root;
    let present = 0;
    let begun = 0;
    let score = 0;
    for (let i = 0; i < segment.tones; i++) {
      const member = members[origin + place[i]!]!;
      if (member < 0) {
        const toMember = members[origin + after[i]!]! >= 0 ? 1 : 0;
        const fromMember = members[origin + before[i]!]! >= 0 ? 2 : 0;
        score += worth[row[i]! + foreign + toMember + fromMember]!;
        continue;
      }
      present |= 1 << member;
      if (atStart[i]) begun |= 1 << member;
      score += worth[row[i]! + member]!;
      if (seventhMatters && member === 3) {
        const kind = kindOfShape[segment.shape[i]!]!;
        score += weights[seventhFrom + (type * kinds + kind) * accents + segment.accent[i]!]!;
      }
    }
    const few = segment.grid.few[segment.from]!;
    if (few >= 0) {
      score += weights[fewMembers + (few * types + type) * 16 + present]!;
      if ((present & 1) === 0 && few === 0) score -= ROOTLESS_COST;
    }
    return score + weights[presentFrom + type * 16 + present]! + weights[startFrom + type * 16 + begun]!;
  }

  bass(root: number, type: number, inversion: number): number {
    const { bassList, weights } = this;
    bassList.count = 0;
    bassOf(this.segment, root, type, inversion, bassList);
    const { indices, count } = bassList;
    return weights[indices[0]!]! + (count > 1 ? weights[indices[1]!]! : 0);
  }
}
