/** Everything the page shows, as one plain value. */
import type { LabelStyle } from '../../src/harmony/words/labels.ts';
import type { Assignment } from '../../src/musicxml/index.ts';
import type { Profile } from '../../src/profiles/profile.ts';
import type { Review } from '../../src/review/review.ts';
import type { Family, RuleWords } from '../../src/rules/rule.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { Room } from '../../src/style/room.ts';
import type { Extent, Passage } from '../../src/writing/passage.ts';
import type { PhrasePrecedents, PlainWaysOut } from '../worker/orders.ts';
import type { History } from './work.ts';

export const VIEWS = ['write', 'rules', 'check', 'shelf', 'help'] as const;
export type View = (typeof VIEWS)[number];

/** What stands beside the stave. */
export const SIDES = ['marks', 'style', 'text', 'chord', 'summary'] as const;
export type Side = (typeof SIDES)[number];

export interface Shown {
  readonly numerals: boolean;
  readonly figuredBass: boolean;
  readonly keys: boolean;
  readonly ornaments: boolean;
  readonly cadences: boolean;
  readonly lyrics: boolean;
  readonly findings: readonly Family[] | 'all';
  /** Findings that only inform. */
  readonly remarks: boolean;
}

/** Choices that hold for every exercise on this machine. */
export interface Settings {
  readonly labels: LabelStyle;
  readonly shown: Shown;
  readonly theme: 'system' | 'light' | 'dark';
  /** Name of the house profile. */
  readonly profile: string;
  /** A teacher's own profiles, read from files. */
  readonly ownProfiles: readonly Profile[];
  /** A teacher sits here: ways out are shown note by note. */
  readonly teacher: boolean;
  /** The marks are listed from bar to bar, and not by what costs most. */
  readonly byBar: boolean;
  /** Letters pressed on the stave are sounded. */
  readonly soundNotes: boolean;
  /** What a digit on the stave means: so many beats, or a note value (4 a crotchet, being a quarter of a semibreve). */
  readonly digits: 'beats' | 'values';
  /** The ways in have been seen and closed. */
  readonly welcomed: boolean;
  /** Width of the music: 1 is usual. */
  readonly scale: number;
}

/** An exercise on the shelf, without its music. */
export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
}

/** What belongs to the exercise besides its music. */
export interface Particulars {
  readonly id: string;
  /** Voices that can't be changed by accident, the given melody above all. */
  readonly locked: readonly VoiceName[];
  /** The pupil's own word on a finding, by the finding's id: "meant so, because …". */
  readonly notes: Readonly<Record<string, string>>;
  /** The brief it was set by, as text; empty where there is none. */
  readonly brief: string;
  /** Seconds the other composition lasts, for the last check. */
  readonly otherSeconds: number;
  /** The MusicXML file it was read from, so that its voices can be given out otherwise. */
  readonly source?: Source;
  /** It was begun from its brief, and not laid beside it later. */
  readonly begunFromBrief?: boolean;
  /** It is the page's own demonstration. */
  readonly demonstration?: boolean;
}

export interface Source {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly assignment: Assignment;
  /** Its voices were a guess at first, so that a person should look. */
  readonly doubtful?: true;
}

export interface Caret {
  readonly voice: VoiceName;
  readonly at: Ticks;
}

/** An earlier state of an exercise to go back to. */
export interface Version {
  readonly key: string;
  readonly exercise: string;
  readonly when: number;
  /** Given by the person, or why it was kept. */
  readonly label: string;
  readonly text: string;
  readonly score: Score;
}

/** The length of the next note, in beats unless `of` says that it is a part of a semibreve. */
export interface BeatLength {
  readonly numerator: number;
  readonly denominator: number;
  readonly of?: 'semibreve';
}

export interface Playing {
  readonly at: Ticks;
  readonly countingIn: boolean;
}

export interface Mixer {
  /** 0 silent, 1 as loud as it goes. */
  readonly volume: Readonly<Record<VoiceName, number>>;
  /** Voices heard alone; empty for all. */
  readonly alone: readonly VoiceName[];
  /** Voices not heard. */
  readonly muted: readonly VoiceName[];
  /** Crotchets a minute; undefined for the exercise's own. */
  readonly tempo: number | undefined;
  readonly countIn: boolean;
  /** A click on each beat. */
  readonly metronome: boolean;
  readonly loop: boolean;
}

/** A review as the page holds it. */
export interface Reviewed {
  readonly review: Review;
  /** The rules in words, by their ids. */
  readonly rules: ReadonlyMap<string, RuleWords>;
  /** The work it is a review of: while another is being made, it is the last one's. */
  readonly of: History['now'];
  /** False while only the bars around the caret were looked at anew. */
  readonly whole: boolean;
}

/** The ways out that were asked for, of one finding. */
export interface AskedWaysOut {
  readonly finding: string;
  readonly ways: PlainWaysOut | 'asked';
}

/**
 * How it is said: `said` aloud only, to those who don't see the stave; `shown` in the page too, for something that
 * went well and can't be seen on the stave; `refused` and `failed` shown, for what was not done.
 */
export type NoticeKind = 'said' | 'shown' | 'refused' | 'failed';

export interface Notice {
  readonly text: string;
  readonly kind: NoticeKind;
}

export interface PageState {
  readonly view: View;
  /** Rule shown in the browser. */
  readonly rule: string | undefined;
  readonly side: Side;
  /** Where there is no room beside the stave: the sheet with the panels is open over its lower half. */
  readonly sheet: boolean;
  readonly shelf: readonly ShelfEntry[];
  /** Earlier versions of the exercise shown, newest first. */
  readonly versions: readonly Version[];
  readonly exercise: Particulars;
  /** The question which voices are given stands open: the exercise has just come from a file. */
  readonly asking: boolean;
  readonly history: History;
  readonly reviewed: Reviewed | undefined;
  /** Id of the chosen finding. */
  readonly chosen: string | undefined;
  /** How many hints of a finding are open, by its id. */
  readonly hints: Readonly<Record<string, number>>;
  readonly caret: Caret;
  readonly length: BeatLength;
  readonly dotted: boolean;
  /** What is chosen on the stave, to be heard, copied or changed as a whole. */
  readonly stretch: Extent | undefined;
  readonly copied: Passage | undefined;
  readonly settings: Settings;
  readonly mixer: Mixer;
  /** When the tempo was tapped lately, in milliseconds. */
  readonly taps: readonly number[];
  readonly playing: Playing | undefined;
  readonly waysOut: AskedWaysOut | undefined;
  /** How the model closed the exercise's phrases, and for which score that was asked. */
  readonly precedents: { readonly phrases: readonly PhrasePrecedents[]; readonly of: Score } | undefined;
  /** Places with room for what the style uses, shown one at a time, once they are asked for. */
  readonly room: { readonly rooms: readonly Room[] | 'asked'; readonly shown: number } | undefined;
  /** The measure of style whose bars are shown. */
  readonly measure: string | undefined;
  readonly notice: Notice | undefined;
  /** Where the keeping of the work stands. */
  readonly kept: 'kept' | 'keeping' | 'not kept';
}

export const FIRST_SETTINGS: Settings = {
  labels: 'figures',
  shown: {
    numerals: true,
    figuredBass: false,
    keys: true,
    ornaments: false,
    cadences: true,
    lyrics: true,
    findings: 'all',
    remarks: false,
  },
  theme: 'system',
  profile: 'chorale',
  ownProfiles: [],
  teacher: false,
  byBar: false,
  soundNotes: true,
  digits: 'beats',
  welcomed: false,
  scale: 1,
};

export const FIRST_MIXER: Mixer = {
  volume: { S: 0.8, A: 0.8, T: 0.8, B: 0.8 },
  alone: [],
  muted: [],
  tempo: undefined,
  countIn: false,
  metronome: false,
  loop: false,
};

/** The voices that are given. While nobody has said, the melody is: it is the one that is taken for given in the question. */
export function givenVoices({
  asking,
  exercise,
}: Pick<PageState, 'asking' | 'exercise'>): readonly VoiceName[] {
  return asking ? ['S'] : exercise.locked;
}
