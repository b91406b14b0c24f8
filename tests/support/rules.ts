/**
 * What every rule's test is written with: failing bars, each pinned to bar, beat, voices and notes, and passing
 * bars, among them near misses.
 */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis } from '../../src/harmony/analysis.ts';
import { readNotation } from '../../src/notation/index.ts';
import type { Occurrence, Parameters, ParameterValues, Rule, Severity } from '../../src/rules/rule.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { placeAt, printBeat } from '../../src/score/place.ts';
import type { Score } from '../../src/score/score.ts';
import { textureOf, writtenPitch } from '../../src/score/texture.ts';

type Values = Readonly<Record<string, number | string>>;

/** One occurrence as a test pins it. */
export interface Expected {
  readonly bar: string;
  /** As printed: `2`, `2½`. */
  readonly beat: string;
  /** From the top: `TB`. */
  readonly voices: string;
  /** All notes concerned, by voice from the top and then in time: `T:G3 A3 B:C3 D3`. Empty where there is none. */
  readonly notes: string;
  readonly severity?: Severity;
  /** Part of the message, or all of it. */
  readonly says?: string;
}

export interface FailingCase {
  readonly name: string;
  readonly text: string;
  readonly parameters?: Values;
  readonly expect: readonly Expected[];
}

export interface PassingCase {
  readonly name: string;
  readonly text: string;
  readonly parameters?: Values;
}

export interface RuleCases {
  readonly failing: readonly FailingCase[];
  readonly passing: readonly PassingCase[];
}

/** Declares the tests of one rule. Refuses a text that is used twice: it would test nothing new. */
export function testRule(rule: Rule, cases: RuleCases): void {
  describe(rule.id, () => {
    it('has failing and passing cases, none of them twice', () => {
      expect(cases.failing.length).toBeGreaterThan(0);
      expect(cases.passing.length).toBeGreaterThan(0);
      const keys = [...cases.failing, ...cases.passing].map(
        ({ text, parameters }) => text.replace(/\s+/g, ' ') + JSON.stringify(parameters ?? {}),
      );
      expect(new Set(keys).size).toBe(keys.length);
    });
    for (const { name, text, parameters, expect: expected } of cases.failing) {
      it(`finds: ${name}`, () => {
        const score = scoreOf(text);
        const occurrences = check(rule, score, parameters);
        expect(occurrences.map((occurrence) => pinned(score, occurrence))).toEqual(
          expected.map(({ bar, beat, voices, notes }) => ({ bar, beat, voices, notes })),
        );
        for (const [i, { severity, says }] of expected.entries()) {
          const occurrence = occurrences[i]!;
          if (severity !== undefined) expect(occurrence.severity ?? rule.severity).toBe(severity);
          if (says !== undefined) expect(occurrence.message).toContain(says);
        }
      });
    }
    for (const { name, text, parameters } of cases.passing) {
      it(`leaves alone: ${name}`, () => {
        const score = scoreOf(text);
        expect(check(rule, score, parameters).map((occurrence) => occurrence.message)).toEqual([]);
      });
    }
  });
}

/** Reads a test's bars; any problem in them fails the test. */
export function scoreOf(text: string): Score {
  const { score, problems } = readNotation(text);
  expect(problems, 'the bars of this test cannot be read').toEqual([]);
  return score;
}

/** Runs one rule on a frozen analysis, with its own parameters unless others are given. */
export function check(rule: Rule, score: Score, parameters: Values = {}): Occurrence[] {
  return rule.check(frozenAnalysis(score), valuesOf(rule, parameters));
}

/** A rule's parameters with their own values, or those given instead. */
export function valuesOf(rule: Rule, set: Values = {}): ParameterValues<Parameters> {
  const values: Record<string, number | string> = {};
  for (const [name, parameter] of Object.entries(rule.parameters))
    values[name] = set[name] ?? parameter.value;
  return values as ParameterValues<Parameters>;
}

/** The analysis of a score, with score and analysis frozen to the last leaf: a rule that writes into them throws. */
export function frozenAnalysis(score: Score): Analysis {
  return deepFreeze(analyse(deepFreeze(textureOf(deepFreeze(score)))));
}

/** An occurrence as tests pin it. */
export function pinned(
  score: Score,
  occurrence: Occurrence,
): Pick<Expected, 'bar' | 'beat' | 'voices' | 'notes'> {
  const place = placeAt(score, occurrence.from);
  const notes: string[] = [];
  let voice = '';
  for (const tone of occurrence.tones) {
    const pitch = printPitch(writtenPitch(tone));
    notes.push(tone.voice === voice ? pitch : `${tone.voice}:${pitch}`);
    voice = tone.voice;
  }
  return {
    bar: place.bar.number,
    beat: printBeat(place),
    voices: occurrence.voices.join(''),
    notes: notes.join(' '),
  };
}

function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const inner of Object.values(value)) deepFreeze(inner);
  return value;
}
