import { describe, expect, test } from 'vitest';
import { classPicture, joined, NO_SCRIPTS, withScript } from '../../src/desk/class-picture.ts';
import { applyDecisions } from '../../src/desk/decisions.ts';
import { feedbackFor } from '../../src/desk/feedback.ts';
import { figuresOf } from '../../src/desk/figures.ts';
import { rankRemarks, rememberRemark } from '../../src/desk/remarks.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { RULES } from '../../src/rules/list.ts';
import { decided, exercise, scriptFrom, type TestScript } from './scripts.ts';

const NAMES = [
  'fault-consecutives',
  'fault-chords',
  'fault-melody',
  'fault-spacing',
  'fault-dissonance',
  'morning-walk',
  'lantern',
];
const CLASS = NAMES.map(exercise);
/** Scripts have the numbers of their places. */
const tally = (scripts: readonly TestScript[], first = 0) =>
  scripts.reduce(
    (before, { facts, findings }, i) =>
      withScript(before, { script: first + i, figures: figuresOf(facts), findings }),
    NO_SCRIPTS,
  );
const pictureOf = (scripts: readonly TestScript[]) =>
  classPicture(tally(scripts), (script) => scripts[script]!.facts);

describe('what a class has in common', () => {
  const picture = pictureOf([...CLASS, exercise('fault-consecutives')]);

  test('faults by the number of scripts they are in', () => {
    expect(picture.scripts).toBe(8);
    const fifths = picture.rules.find(({ rule }) => rule === 'parallel-fifths')!;
    expect(fifths.scripts).toBeGreaterThanOrEqual(2);
    expect(fifths.sentence).toMatch(/^Parallel fifths: in \d of 8 scripts, \d+ places?\.$/);
    // What is a fault wherever it stands weighs three times what is a query wherever it stands.
    const only = (severity: 'fault' | 'query') =>
      picture.rules.filter(({ bySeverity, places }) => bySeverity[severity] === places && places > 0);
    for (const list of [only('fault'), only('query')]) {
      const scripts = list.map((rule) => rule.scripts);
      expect(scripts).toEqual([...scripts].sort((a, b) => b - a));
    }
    // The heavy ones first, each kind by scripts.
    const heavy = picture.rules.filter((rule) => rule.heavy);
    const light = picture.rules.slice(heavy.length);
    expect(light.every((rule) => !rule.heavy)).toBe(true);
    for (const list of [heavy, light])
      expect(
        list.length > 0 && list.every(({ scripts }, i) => i === 0 || scripts <= list[i - 1]!.scripts),
      ).toBe(true);
    expect(picture.practise[0]!.rules[0]).toBe(picture.rules[0]!.rule);
    expect(picture.board[0]!.rule).toBe(picture.rules[0]!.rule);
    expect(picture.faultless).toBeGreaterThanOrEqual(2);
    expect(picture.summary).toMatch(
      /^\d scripts of 8 have no fault\. The commonest: [a-z].* in \d of 8 scripts\.$/,
    );
  });

  test('bars for the board are real music, show what they say, and name nobody', () => {
    expect(picture.board.length).toBeGreaterThan(2);
    for (const bar of picture.board) {
      const { score, problems } = readNotation(bar.text);
      expect(problems).toEqual([]);
      expect(score.title).toBe('');
      const found = reviewScore(score, CHORALE).findings.filter(({ rule }) => rule.id === bar.rule);
      expect(found.length, `${bar.rule} is in the bars shown`).toBeGreaterThan(0);
    }
    expect(new Set(picture.board.map(({ rule }) => rule)).size).toBe(picture.board.length);
  });

  test('good bars have nothing against them', () => {
    expect(picture.good.length).toBeGreaterThan(0);
    for (const bar of picture.good) {
      const { score, problems } = readNotation(bar.text);
      expect(problems).toEqual([]);
      expect(score.title).toBe('');
      expect(bar.message).toMatch(/^Bar .*\.$/);
    }
  });

  test('what to practise comes in sentences, with pages that there are', () => {
    expect(picture.practise.length).toBeGreaterThan(0);
    for (const { sentence, rules } of picture.practise) {
      expect(sentence).toMatch(/^[A-Z].*\(\d of 8 scripts\).*\.$/);
      for (const id of rules) expect(RULES.some((rule) => rule.id === id)).toBe(true);
    }
    expect(picture.practise[0]!.family).toBe('consecutives');
  });

  test('one pupil’s fault is no lesson for a class', () => {
    const one = pictureOf([
      exercise('fault-consecutives'),
      ...['morning-walk', 'lantern', 'kite-hill'].map(exercise),
    ]);
    expect(one.practise.flatMap(({ rules }) => rules)).not.toContain('parallel-octaves');
  });

  test('what is overruled is neither counted nor shown', () => {
    const { facts } = exercise('fault-consecutives');
    const { findings } = applyDecisions(
      'x',
      facts.findings,
      decided({ kind: 'overrule for all', rule: 'parallel-fifths' }),
    );
    const { rules, board } = classPicture(
      withScript(NO_SCRIPTS, { script: 1, figures: figuresOf(facts), findings }),
      () => facts,
    );
    expect(rules.map(({ rule }) => rule)).not.toContain('parallel-fifths');
    expect(board.map(({ rule }) => rule)).not.toContain('parallel-fifths');
  });

  test('two halves of a stack make the picture of the whole', () => {
    const halves = joined(tally(CLASS.slice(0, 3)), tally(CLASS.slice(3), 3));
    expect(classPicture(halves, (script) => CLASS[script]!.facts)).toEqual(pictureOf(CLASS));
  });

  test('a tally stays small whatever the number of scripts, and survives JSON', () => {
    const scripts = Array.from({ length: 40 }, (_, i) => CLASS[i % CLASS.length]!);
    const many = tally(scripts);
    expect(JSON.stringify(many).length).toBeLessThan(1.5 * JSON.stringify(tally(CLASS)).length);
    const bars = (script: number) => scripts[script]!.facts;
    expect(classPicture(JSON.parse(JSON.stringify(many)), bars)).toEqual(classPicture(many, bars));
  });

  test('no scripts', () => {
    expect(pictureOf([])).toMatchObject({
      scripts: 0,
      rules: [],
      board: [],
      summary: 'There are no scripts on this stack yet that can be read.',
    });
  });
});

/** Parallel fifths in the first bar, parallel octaves in the second: two slips with no note in common. */
const APART = `key: C major
metre: 4/4
S: C5 B4 C5*2 | C5 B4 C5*2 | D5 B4 C5*2! |
A: G4 G4 E4*2 | G4 G4 A4*2 | A4 G4 E4*2! |
T: E4 D4 E4*2 | E4 D4 C4*2 | A3 D4 C4*2! |
B: C3 G3 A3*2 | C3 G3 A3*2 | F3 G3 C3*2! |`;

describe('a pupil’s sheet', () => {
  test('two strengths, and three things at most, faults first', () => {
    const script = scriptFrom(APART);
    const { strengths, toWorkOn } = feedbackFor({ strengths: ['One.', 'Two.', 'Three.'] }, script.findings);
    expect(strengths).toEqual(['One.', 'Two.']);
    expect(
      toWorkOn
        .map(({ rule }) => rule)
        .slice(0, 2)
        .sort(),
    ).toEqual(['parallel-fifths', 'parallel-octaves']);
    expect(toWorkOn[0]!.sentence).toMatch(/^Parallel (fifths, in bar 1|octaves, in bar 2)\.$/);
    expect(toWorkOn.length).toBeLessThanOrEqual(3);
  });

  test('what follows from a slip is no lesson of its own, until the slip is overruled', () => {
    const { facts } = exercise('fault-consecutives');
    const [slip, beneath] = facts.findings;
    expect(beneath?.because).toBe(slip?.number);
    const sheet = (...made: Parameters<typeof decided>) =>
      feedbackFor(facts, applyDecisions('x', facts.findings, decided(...made)).findings).toWorkOn;
    expect(sheet().map(({ rule, times }) => [rule, times])).toEqual([[slip!.rule, 1]]);
    expect(sheet({ kind: 'overrule', script: 'x', finding: slip!.id }).map(({ rule }) => rule)).toEqual([
      beneath!.rule,
    ]);
  });

  test('many places of one kind come before one of another; bars are listed once', () => {
    const finding = (id: string, rule: string, family: 'melody' | 'chords', bar: string) => ({
      ...exercise('fault-consecutives').findings[0]!,
      id,
      rule,
      name: rule,
      family,
      bar,
    });
    const findings = [
      finding('1', 'wide-leap', 'melody', '1'),
      ...['2', '3', '3', '5', '6', '7', '8', '9', '10'].map((bar, i) =>
        finding(`m${i}`, 'missing-third', 'chords', bar),
      ),
    ];
    const { toWorkOn } = feedbackFor({ strengths: [] }, findings);
    expect(toWorkOn.map(({ rule, times }) => [rule, times])).toEqual([
      ['missing-third', 9],
      ['wide-leap', 1],
    ]);
    expect(toWorkOn[0]!.sentence).toBe('Missing-third, 9 times in bars 2, 3, 5, 6, 7, 8 and 2 others.');
  });

  test('the teacher’s word goes: overruled is silent, made lighter comes later', () => {
    const { facts } = scriptFrom(APART);
    const fifths = facts.findings.find(({ rule }) => rule === 'parallel-fifths')!;
    const octaves = facts.findings.find(({ rule }) => rule === 'parallel-octaves')!;
    const following = (...made: Parameters<typeof decided>) =>
      feedbackFor(facts, applyDecisions('x', facts.findings, decided(...made)).findings).toWorkOn.map(
        ({ rule }) => rule,
      );
    for (const { id, rule } of [fifths, octaves])
      expect(following({ kind: 'agree', script: 'x', finding: id })[0]).toBe(rule);
    expect(following({ kind: 'overrule', script: 'x', finding: fifths.id })).not.toContain('parallel-fifths');
    expect(following({ kind: 'severity', script: 'x', finding: octaves.id, severity: 'query' })[0]).toBe(
      'parallel-fifths',
    );
    expect(following({ kind: 'severity', script: 'x', finding: fifths.id, severity: 'query' })[0]).toBe(
      'parallel-octaves',
    );
    expect(
      following({ kind: 'severity', script: 'x', finding: fifths.id, severity: 'remark' }),
    ).not.toContain('parallel-fifths');
  });

  test('nothing found, nothing to work on', () => {
    expect(feedbackFor({ strengths: [] }, [])).toEqual({ strengths: [], toWorkOn: [] });
  });
});

describe('the bank of remarks', () => {
  const day = (n: number) => new Date(Date.UTC(2026, 0, n)).toISOString();

  test('grows as one writes, each remark once', () => {
    let bank = rememberRemark([], 'Sing  the tenor alone.', day(1), 'wide-leap');
    bank = rememberRemark(bank, 'sing the tenor alone', day(2));
    bank = rememberRemark(bank, '   ', day(2));
    expect(bank).toEqual([
      { text: 'sing the tenor alone', uses: 2, lastUsed: day(2), rules: { 'wide-leap': 1 } },
    ]);
  });

  test('offers first what was used beside the same rule, then what is used most and lately', () => {
    let bank = rememberRemark([], 'Good line.', day(1));
    bank = rememberRemark(bank, 'Good line.', day(2));
    bank = rememberRemark(bank, 'Mind the bass.', day(2), 'parallel-fifths');
    const texts = (looking: Omit<Parameters<typeof rankRemarks>[1], 'at'>) =>
      rankRemarks(bank, { at: day(3), ...looking }).map(({ text }) => text);
    expect(texts({})).toEqual(['Mind the bass.', 'Good line.'].sort((a) => (a === 'Good line.' ? -1 : 1)));
    expect(texts({ rule: 'parallel-fifths' })[0]).toBe('Mind the bass.');
    expect(texts({ typed: 'BA mi' })).toEqual(['Mind the bass.']);
    expect(texts({ typed: 'xyz' })).toEqual([]);
    expect(texts({ rule: 'constructor' })[0]).toBe('Good line.');
    const stale = rankRemarks(rememberRemark(bank, 'New one.', day(300)), { at: day(300) });
    expect(stale[0]!.text).toBe('New one.');
  });

  test('is bounded: the least useful makes room', () => {
    let bank = rememberRemark([], 'keep me', day(1));
    for (let i = 0; i < 5; i++) bank = rememberRemark(bank, 'keep me', day(1));
    for (let i = 0; i < 520; i++) bank = rememberRemark(bank, `remark ${i}`, day(2));
    expect(bank).toHaveLength(500);
    expect(bank.some(({ text }) => text === 'keep me')).toBe(true);
  });
});

describe('places on a sheet', () => {
  const finding = (bar: string, i: number) =>
    ({
      ...scriptFrom(
        'key: C major\nmetre: 4/4\nS: C5 B4 C5*2 | D5 B4 C5*2! |\nA: G4 G4 A4*2 | A4 G4 E4*2 |\nT: E4 D4 E4*2 | D4 D4 C4*2 |\nB: C3 G3 A3*2 | F3 G3 C3*2! |',
      ).findings[0]!,
      severity: 'fault',
      id: `f${i}`,
      bar,
    }) as const;
  const told = (...bars: string[]) =>
    feedbackFor({ strengths: [] }, bars.map(finding)).toWorkOn[0]!.sentence.replace(/^.*?, /, '');

  test('an upbeat is no “bar 0”', () => {
    expect(told('0')).toBe('in the upbeat.');
    expect(told('0', '3')).toBe('in the upbeat and bar 3.');
    expect(told('0', '3', '5')).toBe('in the upbeat and bars 3 and 5.');
    expect(told('3', '3')).toBe('2 times in bar 3.');
    expect(told('3', '3', '4')).toBe('3 times in bars 3 and 4.');
  });
});
