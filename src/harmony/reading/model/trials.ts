/** The chords that may begin at an atom, each with the lengths it may have and how well it fits what it covers. */
import { CHORD_TYPES } from '../../chord-types.ts';
import type { Candidates } from './candidates.ts';
import { featureList, worthOf } from './features.ts';
import type { Grid } from './grid.ts';
import type { Scorers } from './scorers.ts';
import { LONGEST, loadSegment, spanFeatures } from './segment.ts';
import type { ChordNumber } from './transition.ts';

/** A chord on trial at one boundary, and for each length it may have its own score. */
export interface Trial {
  chord: ChordNumber;
  lengths: number;
  readonly to: Int32Array;
  readonly scores: Float64Array;
}

/** Chords that fit a segment so much worse than the best are not tried. */
const MARGIN = 3;
/** The same where voices are silent or still to be written: much is left open there. */
const FEW_MARGIN = 6;

/** Roots are stored from this place on the line of fifths up. */
const LOWEST = 40;
const ROOTS = 80;
const TYPES = CHORD_TYPES.length;

/** Finds the trials of one atom after another; what it found is used up when it is asked for the next. */
export class TrialFinder {
  /** The trials found, so many of them; the rest is room from earlier atoms. */
  readonly trials: Trial[] = [];
  count = 0;
  /** By chord: the number of its trial, from 1; 0 where it has none. */
  private readonly numbers = new Int16Array(ROOTS * TYPES * 4);
  private readonly spanList = featureList(4);

  constructor(private readonly scorers: Scorers) {}

  /** Finds the chords that may begin at an atom. */
  findAt(at: number): void {
    const { grid, weights, segment, chords, find } = this.scorers;
    this.forget();
    const limit = longest(grid, at);
    for (let to = at + 1; to <= limit; to++) {
      loadSegment(segment, at, to);
      chords.prepare();
      spanFeatures(segment, this.spanList);
      this.take(at, to, find(), worthOf(this.spanList, weights));
    }
  }

  private take(at: number, to: number, found: Candidates, spanScore: number): void {
    const { grid, leaning } = this.scorers;
    let top = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < found.count; i++) top = Math.max(top, found.score[i]!);
    const least = top - (grid.few[at]! < 0 ? MARGIN : FEW_MARGIN);
    for (let i = 0; i < found.count; i++) {
      if (found.score[i]! < least) continue;
      const trial = this.trialOf(found.root[i]!, found.type[i]!, found.inversion[i]!);
      const extra = leaning ? leaning.chord(at, to, trial.chord) : 0;
      const n = trial.lengths++;
      trial.to[n] = to;
      trial.scores[n] = found.score[i]! + spanScore + extra;
    }
  }

  /** The trial of a chord; a new one where it has none. */
  private trialOf(root: number, type: number, inversion: number): Trial {
    const id = ((root + LOWEST) * TYPES + type) * 4 + inversion;
    const number = this.numbers[id]!;
    if (number > 0) return this.trials[number - 1]!;
    const chord = { root, type, inversion };
    this.trials[this.count] ??= {
      chord,
      lengths: 0,
      to: new Int32Array(LONGEST),
      scores: new Float64Array(LONGEST),
    };
    const trial = this.trials[this.count]!;
    trial.chord = chord;
    trial.lengths = 0;
    this.numbers[id] = ++this.count;
    return trial;
  }

  private forget(): void {
    for (let i = 0; i < this.count; i++) {
      const { root, type, inversion } = this.trials[i]!.chord;
      this.numbers[((root + LOWEST) * TYPES + type) * 4 + inversion] = 0;
    }
    this.count = 0;
  }
}

/** No segment crosses a silence or a phrase's end. */
function longest(grid: Grid, at: number): number {
  let to = at + 1;
  while (to < grid.atoms && to < at + LONGEST && grid.gapBefore[to] === 0 && grid.phraseStart[to] === 0) to++;
  return to;
}
