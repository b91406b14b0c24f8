import { describe, expect, it } from 'vitest';
import { identify, pattern } from '../../src/desk/candidate.ts';
import { csv } from '../../src/desk/csv.ts';
import { compareDrafts } from '../../src/desk/drafts.ts';
import { evidenceOf } from '../../src/desk/evidence.ts';
import { likeness, likePairs, rarity, skeletonOf } from '../../src/desk/likeness.ts';
import { PLAIN_SCHEME, schemeSchema, suggestLevel, totalMarks } from '../../src/desk/scheme.ts';
import { strengths, toWorkOn } from '../../src/desk/sheet.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { jsonReview } from '../../src/report/json.ts';
import { reviewScore } from '../../src/review/review.ts';
import { exerciseText } from '../support/exercises.ts';

describe('whose script a file is', () => {
  it.each([
    ['4012.musicxml', '', { candidate: '4012', draft: 1 }],
    ['stack/4012_draft2.mxl', '', { candidate: '4012', draft: 2 }],
    ['4012-v3.txt', '', { candidate: '4012', draft: 3 }],
    ['draft 2 candidate A1007.xml', '', { candidate: 'A1007', draft: 2 }],
    ['chorale.xml', 'Chorale, candidate 8123', { candidate: '8123', draft: 1 }],
    ['chorale.xml', 'Chorale', { draft: 1 }],
    ['<img src=x onerror=alert(1)>.xml', '', { draft: 1 }],
  ])('%s', (name, title, expected) => {
    expect(identify(name, title)).toEqual(expected);
  });

  it('follows a pattern of the teacher’s own', () => {
    const by = pattern('set*_{candidate}_{draft}');
    expect(identify('set A_77b_2.xml', '', by)).toEqual({ candidate: '77b', draft: 2 });
    expect(identify('other 77b.xml', '', by)).toEqual({ draft: 1 });
    expect(() => pattern('draft{draft}')).toThrow(/should hold \{candidate\} once/);
  });
});

describe('tables for spreadsheets', () => {
  it('quotes, and takes the sting out of formulas', () => {
    expect(
      csv([
        ['a', 1, undefined],
        ['=1+1', '-2', ' @x'],
        ['say "no", please', -3, '＝1'],
      ]),
    ).toBe('\uFEFFa,1,\r\n\'=1+1,\'-2,\' @x\r\n"say ""no"", please",-3,\'＝1\r\n');
  });
});

function draft(text: string) {
  const { score, problems } = readNotation(text);
  expect(problems).toEqual([]);
  const review = jsonReview('draft', reviewScore(score, CHORALE));
  return { score, review, findings: review.findings.filter(({ severity }) => severity !== 'remark') };
}

describe('from draft to draft', () => {
  const first = exerciseText('fault-consecutives');

  it('tells mended, still there and new', () => {
    // The fifths are mended, the octaves stay.
    const later = first.replace('T: E4 D4 E4*2', 'T: E4 D4 C4*2');
    const { mended, still } = compareDrafts(draft(first), draft(later));
    expect(mended.map(({ rule }) => rule)).toContain('parallel-fifths');
    expect(still.map(({ rule }) => rule)).toContain('parallel-octaves');
    expect(compareDrafts(draft(later), draft(first)).fresh.map(({ rule }) => rule)).toContain(
      'parallel-fifths',
    );
  });

  it('finds a fault again when a bar was added before it', () => {
    const moved = first
      .replace('S: C5', 'S: G4 A4 B4*2 | C5')
      .replace('A: G4', 'A: E4 F4 G4*2 | G4')
      .replace('T: E4', 'T: C4 C4 D4*2 | E4')
      .replace('B: C3', 'B: C3 F2 G2*2 | C3');
    const { still, mended } = compareDrafts(draft(first), draft(moved));
    expect(still.filter(({ rule }) => rule === 'parallel-fifths').map(({ bar }) => bar)).toEqual(['2']);
    expect(mended.map(({ rule }) => rule)).not.toContain('parallel-fifths');
  });
});

describe('a mark scheme', () => {
  it('suggests a level with its evidence, and leaves unmeasured criteria alone', () => {
    const { review } = draft(exerciseText('morning-walk'));
    const evidence = evidenceOf(review, review.findings);
    const [partWriting] = PLAIN_SCHEME.criteria;
    expect(suggestLevel(partWriting!, evidence)).toEqual({
      level: 3,
      because: 'No faults in 2 phrases: 0 a phrase. This level takes at most 0.25.',
    });
    const { measure: _measure, ...unmeasured } = partWriting!;
    expect(suggestLevel(unmeasured, evidence).level).toBeUndefined();
  });

  it('adds up what was chosen, and says when something is missing', () => {
    expect(totalMarks(PLAIN_SCHEME, { 'part-writing': 3, harmony: 0 })).toEqual({
      total: 10,
      complete: false,
    });
    expect(totalMarks(PLAIN_SCHEME, { constructor: 1 })).toEqual({ total: 0, complete: false });
  });

  it('is checked when it is read', () => {
    expect(schemeSchema.safeParse(PLAIN_SCHEME).success).toBe(true);
    const twice = { ...PLAIN_SCHEME, criteria: [PLAIN_SCHEME.criteria[0], PLAIN_SCHEME.criteria[0]] };
    expect(schemeSchema.safeParse(twice).success).toBe(false);
  });
});

describe('what goes on the sheet', () => {
  it('names two strengths and at most three things to work on, faults first', () => {
    const { review } = draft(exerciseText('fault-chords'));
    const evidence = evidenceOf(review, review.findings);
    expect(strengths(review, evidence, review.findings)).toHaveLength(2);
    const work = toWorkOn(review.findings);
    expect(work.length).toBeGreaterThan(0);
    expect(work.length).toBeLessThanOrEqual(3);
    expect(work[0]).toMatchObject({ rule: 'missing-third', where: 'bars 2 and 4' });
  });
});

describe('likeness of scripts', () => {
  const own = skeletonOf(readNotation(exerciseText('kite-hill')).score);
  const tune = readNotation(exerciseText('kite-hill')).score;

  it('a copy agrees throughout, also when it is transposed', () => {
    const transposed = exerciseText('kite-hill')
      .replace('key: Bb major', 'key: B major')
      .replaceAll(/\b([A-G])(b?)(?=\d)/g, (_all, step: string, flat: string) => (flat ? step : `${step}#`));
    const copy = skeletonOf(readNotation(transposed).score);
    const found = likeness(own, copy);
    expect(found).toMatchObject({ share: 1, compared: 16, longest: 16, bars: ['1', '2', '3', '4'] });
    expect(rarity(found).unusual).toBe(true);
  });

  it('another harmonisation of the tune is not unusual; what is not written is not compared', () => {
    const half = skeletonOf(readNotation(exerciseText('half-built')).score);
    expect(likeness(own, half).compared).toBe(7);
    const other = skeletonOf({ ...tune, voices: { ...tune.voices, A: tune.voices.T, T: tune.voices.A } });
    expect(rarity(likeness(own, other)).unusual).toBe(false);
  });

  it('brings the pair together out of a stack', () => {
    const scripts = [
      { id: 'x', skeleton: own },
      { id: 'y', skeleton: skeletonOf(readNotation(exerciseText('morning-walk')).score) },
      { id: 'z', skeleton: own },
    ];
    expect(likePairs(scripts).map(({ first, second }) => [first, second])).toEqual([['x', 'z']]);
  });
});
