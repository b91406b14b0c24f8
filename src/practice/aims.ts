/**
 * What short exercises can be made for, and which rules each of them gives practice in. Not everything that goes wrong
 * has one: ornaments and suspensions, and slips of notation, are better practised in longer work.
 */
import type { Family } from '../rules/rule.ts';
import type { ChordName } from './chords.ts';
import type { Mode } from './scale.ts';

export interface Aim {
  readonly id: string;
  /** For the teacher: `closes on the tonic`. */
  readonly name: string;
  /** Ids of the rules it is for, the nearest first. */
  readonly rules: readonly string[];
  /** Families it is for where no rule is named. */
  readonly families: readonly Family[];
  /** What the pupil is asked for besides the lower voices. */
  readonly task?: string;
  readonly modes: readonly Mode[];
  /** Chords that the last ones must be, in order, the last one included. */
  readonly endsWith?: readonly (readonly ChordName[])[];
  /** The tune asks for it: so many steps the same way one after the other, or a leap of so many steps. */
  readonly tune?: { readonly run?: number; readonly leap?: number };
  /** Four crotchets in a bar only, so that the last chords stand rightly in it. */
  readonly inFour?: true;
}

const BOTH: readonly Mode[] = ['major', 'minor'];

export const AIMS: readonly Aim[] = [
  {
    id: 'close',
    name: 'closes on the tonic',
    rules: [
      'unresolved-leading-note',
      'doubled-leading-note',
      'no-cadence',
      'weak-cadence',
      'missing-predominant',
      'incomplete-last-chord',
      'inverted-phrase-end',
      'early-home-close',
      'no-tierce',
      'missing-third',
      'missing-root',
      'submediant-out-of-place',
      'mediant-out-of-place',
      'doubled-third',
    ],
    families: ['cadences and phrases', 'chords'],
    modes: BOTH,
  },
  {
    id: 'seventh',
    name: 'the dominant seventh at a close',
    rules: [
      'unresolved-seventh',
      'doubled-seventh',
      'unprepared-seventh',
      'outlined-seventh',
      'seventh-leap',
    ],
    families: [],
    task: 'use a dominant seventh just before the last chord',
    modes: BOTH,
    endsWith: [['V7'], ['I']],
  },
  {
    id: 'six-four',
    name: 'the cadential six-four',
    rules: ['stray-six-four', 'weak-six-four'],
    families: [],
    task: 'lead into the last dominant by a cadential six-four',
    modes: BOTH,
    endsWith: [['I64'], ['V', 'V7'], ['I']],
    inFour: true,
  },
  {
    id: 'consecutives',
    name: 'contrary motion under a tune that goes by step',
    rules: [
      'parallel-fifths',
      'parallel-octaves',
      'parallel-unisons',
      'contrary-fifths',
      'contrary-octaves',
      'unequal-fifths',
      'repeated-bass',
      'circling-line',
    ],
    families: ['consecutives'],
    modes: BOTH,
    tune: { run: 4 },
  },
  {
    id: 'minor',
    name: 'the leading note and the augmented second in minor',
    rules: [
      'unraised-leading-note',
      'augmented-step',
      'augmented-leap',
      'minor-scale-degrees',
      'diminished-leap',
      'misspelt-note',
      'accidental-slip',
    ],
    families: [],
    modes: ['minor'],
  },
  {
    id: 'leaps',
    name: 'spacing and range under a tune that leaps',
    rules: [
      'voice-spacing',
      'voice-range',
      'voice-overlap',
      'voice-crossing',
      'exposed-fifths',
      'exposed-octaves',
      'wide-leap',
      'unrecovered-leap',
    ],
    families: ['spacing and range', 'melody'],
    modes: BOTH,
    tune: { leap: 3 },
  },
];

export function aimNamed(id: string): Aim | undefined {
  return AIMS.find((aim) => aim.id === id);
}

/** The aims that are for these rules, in the order of the rules; a rule that none is for is left out. */
export function aimsFor(rules: readonly { readonly rule: string; readonly family: Family }[]): Aim[] {
  const found = rules.flatMap(({ rule, family }) => {
    const named = AIMS.find((aim) => aim.rules.includes(rule));
    return named ?? AIMS.find((aim) => aim.families.includes(family)) ?? [];
  });
  return [...new Set(found)];
}
