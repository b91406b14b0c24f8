/** What the desk's page shows, as one value. */

import { printSheetOptions, readSheetOptions, type SheetOptions } from '../../src/desk/sheet-options.ts';
import type {
  ClassView,
  DifferencesView,
  LikenessView,
  ModerationView,
  Queue,
  ScriptView,
  SheetView,
  Stack,
  StackLine,
} from '../../src/desk/wire-shapes.ts';
import type { Score } from '../../src/score/score.ts';

/** How many of a long list are shown at a time: what a browser draws, and a person looks through, at one go. */
export const SHOWN_AT_ONCE = { queue: 50, moderation: 8, sheets: 50, differences: 50, likeness: 50 } as const;

/** Where the page is, kept in the address after `#`. */
export type Place =
  | { readonly view: 'stacks' }
  /** `link`: an exercise to begin from, packed as in a pupil's link; empty for none. */
  | { readonly view: 'set'; readonly link: string }
  /** `rules`: what to practise, by ids with commas between; empty for nothing chosen yet. */
  | { readonly view: 'practice'; readonly rules: string }
  | { readonly view: 'class' | 'settings'; readonly stack: number }
  /** `after`: so many come before what is shown. */
  | { readonly view: 'queue'; readonly stack: number; readonly after: number }
  | { readonly view: 'differences'; readonly stack: number; readonly after: number }
  | { readonly view: 'likeness'; readonly stack: number; readonly after: number }
  | {
      readonly view: 'sheets';
      readonly stack: number;
      readonly after: number;
      readonly options: SheetOptions;
    }
  | {
      readonly view: 'moderation';
      readonly stack: number;
      readonly criterion: string;
      readonly after: number;
    }
  | { readonly view: 'script'; readonly script: number };

export interface Writing {
  /** Where the remark will stand, in crotchets; left out where it is about the whole script. */
  readonly from?: number;
  readonly until?: number;
  /** Id of the finding it is written beside. */
  readonly finding?: string;
  /** That finding's rule. */
  readonly beside?: string;
  readonly text: string;
  readonly offered: readonly { readonly text: string; readonly uses: number }[];
}

/** A decision that can be taken back, the latest last. */
export interface Made {
  readonly id: string;
  readonly what: string;
  readonly forAll: boolean;
  /** The script it was made on. */
  readonly script: number;
}

/** Two scores in which bars are alike. */
export interface PairScores {
  readonly first: Score;
  readonly second: Score;
}

export interface Reviewing {
  readonly stack: number;
  readonly left: number;
  readonly of: number;
  /** False where it waits to be asked for. */
  readonly going: boolean;
  /** How much longer it takes, in words; empty as long as that can't be told. */
  readonly timeLeft: string;
}

/** A stack's settings being changed. */
export interface Editing {
  /** As the form was filled with them. */
  readonly base: Stack;
  /** As they stand, where somebody has changed them meanwhile. */
  readonly now: Stack;
}

export interface DeskState {
  readonly place: Place;
  readonly signedIn: boolean | undefined;
  /** Of whoever sits at this window; empty where nobody said. */
  readonly initials: string;
  /** The keys are being shown. */
  readonly help: boolean;
  readonly stacks: readonly StackLine[];
  readonly stack: Stack | undefined;
  readonly editing: Editing | undefined;
  readonly queue: Queue | undefined;
  /** Files being taken in. */
  readonly taking:
    | { readonly done: number; readonly of: number; readonly messages: readonly string[] }
    | undefined;
  readonly script: ScriptView | undefined;
  /** Id of the finding under hand. */
  readonly chosen: string | undefined;
  readonly writing: Writing | undefined;
  /** Id of the criterion at which a mark is being given. */
  readonly marking: string | undefined;
  /** On a small screen: the findings lie over the score. */
  readonly sheetOpen: boolean;
  readonly made: readonly Made[];
  readonly classView: ClassView | undefined;
  readonly moderation: ModerationView | undefined;
  readonly differences: DifferencesView | undefined;
  /** Scores of the scripts laid side by side, by script. */
  readonly beside: Readonly<Record<number, ScriptView>>;
  readonly likeness: LikenessView | undefined;
  /** Scores of pairs laid side by side, by {@link pairKey}. */
  readonly pairs: Readonly<Record<string, PairScores>>;
  /** A stack being reviewed again, since its settings have changed. */
  readonly reviewing: Reviewing | undefined;
  readonly sheets:
    | { readonly total: number; readonly unseen: number; readonly shown: readonly SheetView[] }
    | undefined;
  /** Scripts ticked among the sheets. */
  readonly ticked: ReadonlySet<number>;
  /** What went wrong or was done last, in a sentence. */
  readonly notice: { readonly text: string; readonly wrong: boolean } | undefined;
}

export const EMPTY_DESK: DeskState = {
  place: { view: 'stacks' },
  signedIn: undefined,
  initials: '',
  help: false,
  stacks: [],
  stack: undefined,
  editing: undefined,
  queue: undefined,
  taking: undefined,
  script: undefined,
  chosen: undefined,
  writing: undefined,
  marking: undefined,
  sheetOpen: false,
  made: [],
  classView: undefined,
  moderation: undefined,
  differences: undefined,
  beside: {},
  likeness: undefined,
  pairs: {},
  reviewing: undefined,
  sheets: undefined,
  ticked: new Set(),
  notice: undefined,
};

/** Setting work and practice ask nothing of the service: they need no leave, nor a desk. */
export function asksNothing(
  place: Place,
): place is Extract<Place, { view: 'set' }> | Extract<Place, { view: 'practice' }> {
  return place.view === 'set' || place.view === 'practice';
}

/**
 * Reads `#/stack/3/class`, `#/script/7`, `#/stack/3/queue/50`, `#/stack/3/moderation/8/chords`,
 * `#/stack/3/sheets/0/marks.list/12.15`; the list of stacks for anything else.
 */
export function placeOf(hash: string): Place {
  const [what, number, view, from, fifth, sixth] = hash.replace(/^#\/?/, '').split('/');
  const after = /^\d{1,9}$/.test(from ?? '') ? Number(from) : 0;
  if (what === 'set') return { view: 'set', link: number ?? '' };
  if (what === 'practice') return { view: 'practice', rules: number ?? '' };
  const id = Number(number);
  if (!Number.isInteger(id) || id <= 0) return { view: 'stacks' };
  if (what === 'script') return { view: 'script', script: id };
  if (what !== 'stack') return { view: 'stacks' };
  if (view === 'moderation') return { view, stack: id, criterion: fifth ?? '', after };
  if (view === 'class' || view === 'settings') return { view, stack: id };
  if (view === 'sheets') return { view, stack: id, after, options: readSheetOptions(fifth, sixth) };
  return { view: view === 'differences' || view === 'likeness' ? view : 'queue', stack: id, after };
}

/** The inverse of {@link placeOf}. */
export function hashOf(place: Place): string {
  switch (place.view) {
    case 'stacks':
      return '#/';
    case 'set':
      return `#/set${place.link === '' ? '' : `/${place.link}`}`;
    case 'practice':
      return `#/practice${place.rules === '' ? '' : `/${place.rules}`}`;
    case 'script':
      return `#/script/${place.script}`;
    case 'queue':
      return `#/stack/${place.stack}${place.after === 0 ? '' : `/queue/${place.after}`}`;
    case 'sheets':
      return `#/stack/${place.stack}/sheets/${place.after}/${printSheetOptions(place.options)}`;
    case 'differences':
    case 'likeness':
      return `#/stack/${place.stack}/${place.view}${place.after === 0 ? '' : `/${place.after}`}`;
    case 'moderation':
      return `#/stack/${place.stack}/moderation/${place.after}/${place.criterion}`;
    default:
      return `#/stack/${place.stack}/${place.view}`;
  }
}
