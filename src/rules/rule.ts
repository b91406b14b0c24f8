/** What a rule is. One file a rule; `list.ts` names them all. */
import type { Analysis } from '../harmony/analysis.ts';
import type { Pitch } from '../score/pitch.ts';
import type { VoiceName, WrittenFigure } from '../score/score.ts';
import type { Tone } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';

/** `fault` breaks the style, `query` is worth a second look, `remark` informs. */
export const SEVERITIES = ['fault', 'query', 'remark'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** 0 for the gravest. */
export function severityRank(severity: Severity): number {
  return SEVERITIES.indexOf(severity);
}

export const FAMILIES = [
  'consecutives',
  'melody',
  'spacing and range',
  'chords',
  'dissonance',
  'cadences and phrases',
  'rhythm and notation',
] as const;
export type Family = (typeof FAMILIES)[number];

interface Set<Value> {
  readonly value: Value;
  /** What it sets, with its unit, in one sentence. */
  readonly statement: string;
}

/** Something about a rule that a profile may set: made by {@link range}, {@link choice} or {@link text}. */
export type Parameter<Value extends number | string = number | string> = Set<Value> &
  (
    | { readonly kind: 'range'; readonly least: number; readonly most: number }
    | { readonly kind: 'choice'; readonly choices: readonly string[] }
    | {
        readonly kind: 'text';
        /** What the text must match, and an example to show whoever got it wrong. */
        readonly form: { readonly pattern: string; readonly example: string };
      }
  );

/** A number between two others, both included. */
export function range(
  value: number,
  [least, most]: readonly [number, number],
  statement: string,
): Parameter<number> {
  return { kind: 'range', value, least, most, statement };
}

/** One of a few words; the rule's check sees it as one of them. */
export function choice<const Choice extends string>(
  value: NoInfer<Choice>,
  choices: readonly Choice[],
  statement: string,
): Parameter<Choice> {
  return { kind: 'choice', value, choices, statement };
}

/** A text of a given form. */
export function text(
  value: string,
  form: { readonly pattern: string; readonly example: string },
  statement: string,
): Parameter<string> {
  return { kind: 'text', value, form, statement };
}

export type Parameters = Readonly<Record<string, Parameter>>;
/** The values of a rule's parameters, defaults or a profile's. */
export type ParameterValues<P extends Parameters> = {
  readonly [K in keyof P]: P[K] extends Parameter<infer Value> ? Value : never;
};

/** A rule's own word about one place. The review adds the rule's name, why and hints. */
export interface Occurrence {
  /** Where it differs from the rule's own severity. */
  readonly severity?: Severity;
  readonly voices: readonly VoiceName[];
  readonly from: Ticks;
  readonly until: Ticks;
  /** The notes concerned, by voice from the top and then in time. Empty where the point is that there is none. */
  readonly tones: readonly Tone[];
  /** What happened, with the actual notes, as one sentence. */
  readonly message: string;
  /** The first step of the hint where this place deserves another than the rule's own. It never names the note to write. */
  readonly hint?: string;
}

/** A few bars in our text notation, with what they show. */
export interface Example {
  readonly text: string;
  readonly caption: string;
  /** Figures printed under the bass, which the notation has no place for. */
  readonly figures?: readonly WrittenFigure[];
  /** Notes too many, each beside one event of a voice (counted from 0): the notation has no place for them either. */
  readonly beside?: readonly { readonly voice: VoiceName; readonly note: number; readonly pitch: Pitch }[];
}

/** A rule in words: all that a finding's reader is told of it. */
export interface RuleWords {
  /** Kebab case, in trade words: `parallel-fifths`. */
  readonly id: string;
  /** Trade name: `Parallel fifths`. */
  readonly name: string;
  readonly family: Family;
  /** The rule in one sentence. */
  readonly statement: string;
  /** Why the ear or the style minds, in one or two sentences for a sixteen-year-old. */
  readonly why: string;
  /** Three steps: where to look; which movement would cure it; which textbook rule it is. */
  readonly hints: readonly [string, string, string];
  /** A published source with chapter where known, or why none is needed; says when it is from memory. */
  readonly source: string;
  /** Where handbooks disagree: who allows what, in sentences, and whom which severity follows. */
  readonly disagreement?: string;
  readonly severity: Severity;
  /**
   * How much it takes from the music beside other rules of its severity, 1 to 10: what ought to be mended first, because
   * it is heard most or because the rest hangs on it. A teacher's order; common practice, no source.
   */
  readonly weight: number;
}

export interface Rule<P extends Parameters = Parameters> extends RuleWords {
  readonly parameters: P;
  readonly examples: { readonly wrong: readonly Example[]; readonly right: readonly Example[] };
  /** Pure: the same analysis gives the same occurrences, in order of time. */
  readonly check: (analysis: Analysis, parameters: ParameterValues<P>) => Occurrence[];
}

/** Gives a rule its types: parameters are inferred, so that `check` sees each value as what it is. */
export function defineRule<const P extends Parameters>(rule: Rule<P>): Rule {
  return rule as unknown as Rule;
}
