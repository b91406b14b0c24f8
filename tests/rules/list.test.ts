import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import { PROFILES } from '../../src/profiles/list.ts';
import { explainRule } from '../../src/report/explain.ts';
import { completed } from '../../src/rules/example.ts';
import { RULES } from '../../src/rules/list.ts';
import { type Example, FAMILIES, type Rule } from '../../src/rules/rule.ts';
import { printPitch, semitone } from '../../src/score/pitch.ts';
import { endOf, type Score, VOICES } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { PLANTERS } from '../bench/rules/all.ts';
import { unplanted } from '../bench/rules/plant.ts';
import { check, frozenAnalysis, scoreOf, valuesOf } from '../support/rules.ts';

/** The ids that people and files already rely on. */
const FIRST_SET = [
  'parallel-fifths',
  'parallel-octaves',
  'parallel-unisons',
  'contrary-fifths',
  'contrary-octaves',
  'exposed-fifths',
  'exposed-octaves',
  'voice-range',
  'voice-spacing',
  'voice-crossing',
  'voice-overlap',
  'unresolved-leading-note',
  'doubled-leading-note',
  'unresolved-seventh',
  'augmented-step',
  'wide-leap',
  'missing-third',
  'weak-cadence',
  'unfinished',
  'bar-length',
];

/** Files of src/rules that hold no rule. */
const NO_RULES = ['consecutive', 'example', 'exposed', 'list', 'occurrence', 'rule', 'wording'];

/** Rules about what no open chorale has: printed figures. */
const UNPLANTABLE = ['figures-disagree', 'root-positions-throughout'];

const SENTENCE = /^["'“‘A-Z0-9].*[.!?][)”’]?$/s;

describe('the list of rules', () => {
  it('names every rule once, in kebab case', () => {
    const ids = RULES.map((rule) => rule.id);
    expect(ids.filter((id) => !/^[a-z]+(-[a-z]+)*$/.test(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
    const names = RULES.map((rule) => rule.name.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
  });

  it('holds the first set', () => {
    const ids = new Set(RULES.map((rule) => rule.id));
    expect(FIRST_SET.filter((id) => !ids.has(id))).toEqual([]);
  });

  it('has every rule file in src/rules', () => {
    const files = readdirSync('src/rules').map((file) => file.replace(/\.ts$/, ''));
    expect(RULES.map(({ id }) => id).toSorted()).toEqual(
      files.filter((file) => !NO_RULES.includes(file)).toSorted(),
    );
  });

  it.each(RULES.map((rule) => [rule.id, rule] as const))(
    '%s has its test, its planter and its page',
    (id, rule) => {
      expect(existsSync(`tests/rules/${id}.test.ts`), `tests/rules/${id}.test.ts`).toBe(true);
      if (!UNPLANTABLE.includes(id))
        expect(unplanted(PLANTERS), `${id} in tests/bench/rules`).not.toContain(id);
      expect(explainRule(rule), 'partwise explain').toContain(rule.name);
    },
  );

  it('keeps families together, in their order', () => {
    const order = RULES.map((rule) => FAMILIES.indexOf(rule.family));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(new Set(order).size).toBe(FAMILIES.length);
  });
});

describe('where handbooks disagree', () => {
  it.each(['exposed-octaves', 'exposed-fifths', 'unequal-fifths', 'doubled-third'])(
    '%s says who allows what, and how each profile takes it',
    (id) => {
      const page = explainRule(RULES.find((rule) => rule.id === id)!).replace(/\s+/g, ' ');
      expect(page).toMatch(/Where handbooks disagree .*from memory/);
      for (const { name } of PROFILES)
        expect(page).toMatch(new RegExp(`\\b${name} (takes it as a (fault|query|remark)|leaves it out)`));
    },
  );
});

describe.each(RULES.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
  it('explains itself in whole sentences', () => {
    const sentences = [
      rule.statement,
      rule.why,
      ...rule.hints,
      ...Object.values(rule.parameters).map((parameter) => parameter.statement),
      ...examplesOf(rule).map((example) => example.caption),
    ];
    expect(sentences.filter((text) => !SENTENCE.test(text.trim()))).toEqual([]);
    expect(rule.hints).toHaveLength(3);
    expect(rule.name).toMatch(/^[A-Z]/);
    expect(rule.disagreement ?? 'None.').toMatch(SENTENCE);
  });

  it('names a real place to read, and says where that is from memory', () => {
    expect(rule.source).not.toMatch(/no source/i);
    // A printed book by its author and title; from memory, or with the year that its title page bears.
    expect(rule.source).toMatch(/[A-Z]\. [A-Z][A-Za-z. ]+(and [A-Z]\. [A-Z]\w+)?, [A-Z]/);
    expect(rule.source).toMatch(/\(from memory\)|\(both from memory\)|, 1\d{3}\b|\(open to all\)/);
  });

  it('hints without naming a note to write', () => {
    expect(rule.hints.filter((hint) => /\b[A-G][#b]?\d\b/.test(hint))).toEqual([]);
  });

  it('gives parameters that keep to their own bounds', () => {
    for (const [name, parameter] of Object.entries(rule.parameters)) {
      expect(name).toMatch(/^[a-z][A-Za-z0-9]*$/);
      const { value } = parameter;
      if (parameter.kind === 'range') {
        expect(value).toBeGreaterThanOrEqual(parameter.least);
        expect(value).toBeLessThanOrEqual(parameter.most);
      } else if (parameter.kind === 'choice') expect(parameter.choices).toContain(value);
      else {
        expect(value).toMatch(new RegExp(parameter.form.pattern));
        expect(parameter.form.example).toMatch(new RegExp(parameter.form.pattern));
      }
    }
  });

  it('has a wrong and a right example', () => {
    expect(rule.examples.wrong.length).toBeGreaterThan(0);
    expect(rule.examples.right.length).toBeGreaterThan(0);
  });

  it.each(rule.examples.wrong.map((e) => [e.caption, e] as const))(
    'is broken by: %s',
    (_caption, example) => {
      const score = exampleScore(example);
      const occurrences = check(rule, score);
      expect(occurrences.length).toBeGreaterThan(0);
      const tones = new Set(VOICES.flatMap((voice) => textureOf(score).tones[voice].map((tone) => tone.id)));
      let before = 0;
      for (const occurrence of occurrences) {
        expect(occurrence.message).toMatch(SENTENCE);
        expect(occurrence.hint ?? 'None.').toMatch(SENTENCE);
        expect(occurrence.hint ?? '').not.toMatch(/\b[A-G][#b]?\d\b/);
        expect(occurrence.from).toBeGreaterThanOrEqual(before);
        expect(occurrence.until).toBeGreaterThan(occurrence.from);
        expect(occurrence.until).toBeLessThanOrEqual(endOf(score));
        expect(occurrence.voices.length).toBeGreaterThan(0);
        expect(occurrence.voices).toEqual(VOICES.filter((voice) => occurrence.voices.includes(voice)));
        expect(occurrence.tones.filter((tone) => !tones.has(tone.id))).toEqual([]);
        before = occurrence.from;
      }
    },
  );

  it.each(rule.examples.right.map((e) => [e.caption, e] as const))('is kept by: %s', (_caption, example) => {
    expect(check(rule, exampleScore(example)).map((occurrence) => occurrence.message)).toEqual([]);
  });

  it('answers alike every time and leaves what it is given as it was', () => {
    for (const example of examplesOf(rule)) {
      const score = exampleScore(example);
      const analysis = frozenAnalysis(score);
      const values = Object.freeze(valuesOf(rule));
      const first = rule.check(analysis, values);
      expect(rule.check(analyse(textureOf(score)), values)).toEqual(first);
    }
  });

  it('has nothing to say about no music', () => {
    const empty = scoreOf('S: ? ? ? ? |');
    if (rule.family !== 'rhythm and notation') expect(check(rule, empty)).toEqual([]);
    else expect(() => check(rule, empty)).not.toThrow();
  });

  it('is shown with music that voices can sing', () => {
    const wild = examplesOf(rule).flatMap((example) => {
      const { tones } = textureOf(scoreOf(example.text));
      return VOICES.flatMap((voice) =>
        tones[voice]
          .filter(({ pitch }) => semitone(pitch) < 24 || semitone(pitch) > 70)
          .map((tone) => printPitch(tone.pitch)),
      );
    });
    expect(wild).toEqual([]);
  });
});

/** An example's bars with the figures and notes that come with it. */
function exampleScore(example: Example): Score {
  return completed(scoreOf(example.text), example);
}

function examplesOf(rule: Rule): readonly Example[] {
  return [...rule.examples.wrong, ...rule.examples.right];
}
