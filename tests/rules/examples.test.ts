/**
 * The model answers are models. The whole review finds nothing but remarks in any right example and in any
 * exercise said to be clean. A wrong example shows its own fault as heavily as its page claims, and besides
 * only what follows from it. What must be overlooked is named example by example, each with its reason.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CHORALE, type Profile } from '../../src/profiles/profile.ts';
import type { Finding } from '../../src/review/finding.ts';
import { reviewScore } from '../../src/review/review.ts';
import { completed } from '../../src/rules/example.ts';
import { RULES } from '../../src/rules/list.ts';
import type { Example } from '../../src/rules/rule.ts';
import { scoreOf } from '../support/rules.ts';

/** What is overlooked in an example, by `rule right 1` or `rule wrong 1`, and why. */
interface Exception {
  readonly rules: readonly string[];
  readonly why: string;
}

const EXCEPTIONS: Readonly<Record<string, Exception>> = {
  'doubled-seventh wrong 1': {
    rules: ['parallel-octaves'],
    why: 'Both sevenths fall as they should, and so in octaves: the doubling is what brings them about.',
  },
  'parallel-fifths wrong 1': {
    rules: ['weak-cadence'],
    why: 'Two chords alone show the parallels, and make no close.',
  },
  'parallel-octaves wrong 1': {
    rules: ['weak-cadence'],
    why: 'Two chords alone show the parallels, and make no close.',
  },
  'voices-end-apart wrong 1': {
    rules: ['unfinished'],
    why: 'The rest by which the alto ends early is a beat without a note.',
  },
};

const EXAMPLES = RULES.flatMap((rule) =>
  (['right', 'wrong'] as const).flatMap((side) =>
    rule.examples[side].map((example, i) => ({ name: `${rule.id} ${side} ${i + 1}`, rule, side, example })),
  ),
);

describe('right examples', () => {
  const rights = EXAMPLES.filter(({ side }) => side === 'right');

  it.each(rights)('$name has neither fault nor query', ({ name, example }) => {
    expect(told(reviewed(example, EXCEPTIONS[name]?.rules))).toEqual([]);
  });
});

describe('wrong examples', () => {
  const wrongs = EXAMPLES.filter(({ side }) => side === 'wrong');

  it.each(wrongs)('$name shows its own fault, and what follows from it', ({ name, rule, example }) => {
    const findings = reviewed(example, EXCEPTIONS[name]?.rules);
    const own = findings.filter((finding) => finding.rule.id === rule.id);
    expect(own.map(({ severity }) => severity)).toContain(rule.severity);
    expect(told(findings.filter((finding) => !own.includes(finding) && !followsFrom(finding, own)))).toEqual(
      [],
    );
  });
});

describe('what is overlooked', () => {
  it.each(Object.entries(EXCEPTIONS))('in %s would be told', (name, { rules }) => {
    const found = EXAMPLES.find((example) => example.name === name);
    expect(found, 'the example is there').toBeDefined();
    const ids = told(reviewed(found!.example)).map(({ rule }) => rule);
    expect(rules.filter((id) => !ids.includes(id))).toEqual([]);
  });
});

describe('exercises said to be clean', () => {
  const folder = new URL('../../fixtures/exercises/', import.meta.url);
  const clean = readdirSync(folder)
    .filter((name) => name.endsWith('.txt'))
    .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }))
    .filter(({ text }) => text.startsWith('# Clean'));

  it('are there', () => {
    expect(clean.length).toBeGreaterThan(0);
  });

  it.each(clean)('$name has neither fault nor query', ({ text }) => {
    expect(told(reviewScore(scoreOf(text), CHORALE).findings)).toEqual([]);
  });
});

/** What the review finds, but for some rules. */
function reviewed(example: Example, overlooked: readonly string[] = []): readonly Finding[] {
  const score = scoreOf(example.text);
  const off = Object.fromEntries(overlooked.map((id) => [id, { severity: 'off' as const }]));
  const profile: Profile = { ...CHORALE, rules: { ...CHORALE.rules, ...off } };
  return reviewScore(completed(score, example), profile).findings;
}

function followsFrom({ because }: Finding, causes: readonly Finding[]): boolean {
  return causes.some(({ id }) => id === because);
}

/** What is more than a remark. */
function told(findings: readonly Finding[]): { rule: string; message: string }[] {
  return findings
    .filter(({ severity }) => severity !== 'remark')
    .map(({ rule, message }) => ({ rule: rule.id, message }));
}
