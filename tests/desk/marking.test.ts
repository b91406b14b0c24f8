import { describe, expect, expectTypeOf, test } from 'vitest';
import { applyDecisions } from '../../src/desk/decisions.ts';
import { EXAMPLE_SCHEME } from '../../src/desk/example-scheme.ts';
import { giveMark, levelOf, type Mark, markSchema, moderationOrder, total } from '../../src/desk/marks.ts';
import { MEASURE_NAMES, measure } from '../../src/desk/measures.ts';
import { fullMarks, outOf, readScheme, schemeSchema } from '../../src/desk/scheme.ts';
import { type Suggestion, suggestLevel } from '../../src/desk/suggest.ts';
import { decided, exercise, type TestScript } from './scripts.ts';

const ground = ({ facts, findings }: TestScript) => ({ counts: facts.counts, findings });
const clean = exercise('morning-walk');
const faulty = exercise('fault-consecutives');

describe('figures', () => {
  test('each is told so that a teacher can check it', () => {
    expect(measure('faults a phrase', ground(faulty), ['consecutives'])).toEqual({
      value: 2,
      sentence:
        '2 faults (consecutives) in 1 phrase, 2 a phrase: 1 × Parallel fifths in bar 1, 1 × Parallel octaves in bar 1.',
    });
    expect(measure('phrases closed', ground(clean)).sentence).toBe('2 of 2 phrases end in a cadence.');
    expect(measure('phrases with a fault', ground(faulty), ['consecutives']).sentence).toBe(
      'A fault stands in 1 of 1 phrase (bars 1–2).',
    );
    expect(measure('beats written', ground(exercise('half-built'))).value).toBeLessThan(1);
    expect(measure('keys visited', ground(exercise('two-bridges'))).value).toBeGreaterThanOrEqual(1);
  });

  test('what the teacher overruled is not counted', () => {
    const [first] = faulty.findings;
    const { findings } = applyDecisions(
      'x',
      faulty.facts.findings,
      decided({ kind: 'overrule', script: 'x', finding: first!.id }),
    );
    expect(
      measure('faults a phrase', { counts: faulty.facts.counts, findings }, ['consecutives']).value,
    ).toBe(1);
  });

  test.each(MEASURE_NAMES)('%s: a script with nothing in it has a figure too', (name) => {
    const empty = {
      counts: {
        phrases: [],
        ornaments: {},
        chords: { all: 0, kinds: {}, inverted: 0, sevenths: 0, chromatic: 0 },
        keys: [],
        unwritten: 1,
      },
      findings: [],
    };
    const { value, sentence } = measure(name, empty);
    expect(Number.isFinite(value)).toBe(true);
    expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(sentence).not.toMatch(/NaN|undefined/);
  });
});

describe('a suggested level', () => {
  const partWriting = EXAMPLE_SCHEME.criteria.find(({ id }) => id === 'part-writing')!;

  test('comes with its grounds and what keeps it from the next', () => {
    const good = suggestLevel(partWriting, ground(clean));
    expect(good).toMatchObject({
      kind: 'suggestion',
      criterion: 'part-writing',
      levelName: 'Excellent',
      missing: [],
    });
    expect(
      good.evidence.some((sentence) =>
        /^No faults \(consecutives, melody, spacing and range\) in 2 phrases\.$/.test(sentence),
      ),
    ).toBe(true);
    const poor = suggestLevel(partWriting, ground(faulty));
    expect(poor.levelName).toBe('Secure');
    expect(poor.missing).toEqual(['Good wants at most 0.75 for “faults a phrase”; here it is 2.']);
  });

  test('tells shares in hundredths, as its grounds do, and less than all never as all', () => {
    const levels = [
      { ...partWriting.levels[0]! },
      { ...partWriting.levels[1]!, needs: [{ measure: 'beats written' as const, atLeast: 1 }] },
    ];
    const { counts, findings } = ground(clean);
    const suggestion = suggestLevel(
      { ...partWriting, levels },
      { counts: { ...counts, unwritten: 0.004 }, findings },
    );
    expect(suggestion.missing).toEqual([
      `${levels[1]!.name} wants at least 100 % for “beats written”; here it is 99 %.`,
    ]);
    expect(suggestion.evidence.join(' ')).toContain('99 % of the beats are written');
  });

  test('is none where the scheme does not say when a level is reached', () => {
    const judged = { ...partWriting, levels: partWriting.levels.map(({ needs: _needs, ...level }) => level) };
    expect(suggestLevel(judged, ground(clean))).toEqual({
      kind: 'suggestion',
      criterion: 'part-writing',
      evidence: [measure('phrases with a fault', ground(clean), ['consecutives']).sentence],
      missing: [],
    });
  });

  test('passes over a level that only a person can tell', () => {
    const [, secure, good, best] = partWriting.levels;
    const { needs: _needs, ...byHand } = good!;
    const levels = [partWriting.levels[0]!, secure!, byHand, best!];
    expect(suggestLevel({ ...partWriting, levels }, ground(clean)).levelName).toBe('Excellent');
  });

  test('is no mark: the compiler refuses it, and so does the reader of marks', () => {
    expectTypeOf<Suggestion>().not.toExtend<Mark>();
    expectTypeOf<{ criterion: string; marks: number; at: string }>().not.toExtend<Mark>();
    expect(markSchema.safeParse(suggestLevel(partWriting, ground(clean))).success).toBe(false);
  });
});

const at = '2026-11-01T10:00:00Z';
function mark(criterion: string, marks: number): Mark {
  const given = giveMark(EXAMPLE_SCHEME, criterion, marks, { at });
  if (!given.ok) throw new Error(given.message);
  return given.mark;
}

describe('marks', () => {
  test('are whole or half, and within the criterion', () => {
    expect(mark('chords', 7.5)).toEqual({ criterion: 'chords', marks: 7.5, at });
    for (const wrong of [-1, 12.5, 3.3, Number.NaN, Number.POSITIVE_INFINITY])
      expect(giveMark(EXAMPLE_SCHEME, 'chords', wrong, { at })).toMatchObject({ ok: false });
    const unknown = giveMark(EXAMPLE_SCHEME, 'constructor', 1, { at });
    expect(!unknown.ok && unknown.message).toBe('The mark scheme has no criterion "constructor".');
  });

  test('fall in a level; a half mark between two in the lower', () => {
    const [chords] = EXAMPLE_SCHEME.criteria;
    expect([0, 3, 3.5, 4, 12].map((marks) => levelOf(chords!, marks))).toEqual([0, 0, 0, 1, 3]);
  });

  test('add up; the latest counts, and what is missing is named', () => {
    expect(total(EXAMPLE_SCHEME, [mark('chords', 7), mark('part-writing', 9), mark('chords', 8)])).toEqual({
      marks: 17,
      outOf: 40,
      missing: ['Handling of chords and dissonance', 'Non-harmony notes and rhythm'],
      beyond: [],
      sentence:
        '17 out of 40 so far; not marked yet: Handling of chords and dissonance and Non-harmony notes and rhythm.',
    });
    const all = EXAMPLE_SCHEME.criteria.map((criterion) => mark(criterion.id, outOf(criterion)));
    expect(total(EXAMPLE_SCHEME, all).sentence).toBe('40 out of 40.');
  });

  test('a mark above what the scheme now gives is flagged and not added', () => {
    const [first, ...rest] = EXAMPLE_SCHEME.criteria;
    const changed = {
      ...EXAMPLE_SCHEME,
      criteria: [{ ...first!, levels: first!.levels.slice(0, 2) }, ...rest],
    };
    const all = EXAMPLE_SCHEME.criteria.map((criterion) => mark(criterion.id, outOf(criterion)));
    expect(total(changed, all)).toMatchObject({ marks: 28, beyond: ['Choice of chords and cadences'] });
    expect(total(changed, all).sentence).toBe(
      '28 out of 35. Not added, since it is more than the scheme now gives: Choice of chords and cadences.',
    );
  });

  test('side by side in rank order; equal marks share a rank', () => {
    const scripts = [
      { name: 'a', marks: [mark('chords', 5)] },
      { name: 'b', marks: [mark('chords', 9)] },
      { name: 'c', marks: [] },
      { name: 'd', marks: [mark('chords', 9), mark('part-writing', 1)] },
      { name: 'e', marks: [mark('chords', 2)] },
    ];
    const { ranked, unmarked } = moderationOrder(EXAMPLE_SCHEME, scripts, 'chords');
    expect(ranked.map(({ rank, script }) => `${rank}${script.name}`)).toEqual(['1b', '1d', '3a', '4e']);
    expect(unmarked.map(({ name }) => name)).toEqual(['c']);
    expect(moderationOrder(EXAMPLE_SCHEME, scripts).ranked).toEqual([]);
  });
});

describe('a mark scheme’s file', () => {
  const text = (change: (scheme: ReturnType<typeof plain>) => unknown) => JSON.stringify(change(plain()));
  const plain = () => structuredClone(EXAMPLE_SCHEME);

  test('ours is sound and comes back as it was', () => {
    expect(readScheme(JSON.stringify(EXAMPLE_SCHEME))).toEqual({ ok: true, scheme: EXAMPLE_SCHEME });
    expect(fullMarks(EXAMPLE_SCHEME)).toBe(40);
    expect(EXAMPLE_SCHEME.name).toContain('40');
    for (const criterion of EXAMPLE_SCHEME.criteria) expect(criterion.levels[0]!.needs).toEqual([]);
  });

  test.each([
    ['{', /not JSON/],
    ['[]', /expected object/],
    [JSON.stringify({ name: 'x', criteria: [] }), /^Criteria: /],
    [
      text((scheme) => {
        scheme.criteria[1]!.id = scheme.criteria[0]!.id;
        return scheme;
      }),
      /id of its own/,
    ],
    [
      text((scheme) => {
        scheme.criteria[1]!.levels[2]!.marks = [9, 8];
        return scheme;
      }),
      /^Criterion 2, level 3, marks: The least marks/,
    ],
    [
      text((scheme) => {
        scheme.criteria[0]!.levels.reverse();
        return scheme;
      }),
      /^Criterion 1: Levels stand from the lowest/,
    ],
    [
      text((scheme) => ({
        ...scheme,
        criteria: [
          {
            ...scheme.criteria[0],
            levels: [{ name: 'a', marks: [0, 1], descriptor: 'b', needs: [{ measure: 'suspensions' }] }],
          },
        ],
      })),
      /^Criterion 1, level 1, need 1: Say "atMost" or "atLeast"/,
    ],
    [' '.repeat(200_001), /Is it the right file/],
  ])('a mistake is told with its place (%#)', (file, message) => {
    const read = readScheme(file);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.message).toMatch(message);
  });

  test('a field that we do not know is refused, not passed over', () => {
    expect(schemeSchema.safeParse({ ...plain(), weighting: 2 }).success).toBe(false);
  });
});
