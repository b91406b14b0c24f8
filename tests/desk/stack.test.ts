/** The invented stack does what the other tests and the benchmark take for granted. */
import { describe, expect, test } from 'vitest';
import { readBrief } from '../../src/brief/brief.ts';
import { candidateOf } from '../../src/desk/candidate.ts';
import { compareWithGiven } from '../../src/desk/given.ts';
import { openScore } from '../../src/open/open.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { BRIEF_TEXT, copies, plantedFiles, plantedStack } from '../support/planted-stack.ts';

const { brief, problems } = readBrief(BRIEF_TEXT);
const STACK = plantedStack({ candidates: 30, drafts: 2 });

/** What the review calls a planted fault. */
const RULES: Readonly<Record<string, string>> = {
  'parallel octaves': 'parallel-octaves',
  'parallel fifths': 'parallel-fifths',
  'missing third': 'missing-third',
  'doubled leading note': 'doubled-leading-note',
  'voices crossed': 'voice-crossing',
};

describe('an invented stack', () => {
  test('its brief is sound', () => {
    expect(problems).toEqual([]);
    expect(brief.profile).toBe('chorale');
  });

  test('is the same for the same seed, another for another', () => {
    const bytes = (seed: number) =>
      plantedStack({ candidates: 4, seed }).map((file) => Buffer.from(file.bytes).toString('base64'));
    expect(bytes(1)).toEqual(bytes(1));
    expect(bytes(1)).not.toEqual(bytes(2));
  });

  test('names and candidates are each once, and every candidate can be told', () => {
    expect(new Set(STACK.map(({ name }) => name)).size).toBe(STACK.length);
    for (const file of STACK) {
      const opened = openScore(file.bytes);
      const read = candidateOf(file.name, opened.ok ? opened.score.title : '');
      expect(read, file.name).toMatchObject({ ok: true, candidate: file.candidate, draft: file.draft });
    }
  });

  test('all three formats and some broken files are there; only the broken can’t be read', () => {
    expect(new Set(STACK.map(({ format }) => format))).toEqual(new Set(['text', 'musicxml', 'mxl']));
    expect(STACK.filter(({ broken }) => broken).length).toBeGreaterThanOrEqual(2);
    for (const file of STACK) expect(openScore(file.bytes).ok, file.name).toBe(file.broken === undefined);
  });

  test('planted faults are found where they were planted', () => {
    let planted = 0;
    let found = 0;
    for (const file of STACK) {
      const opened = openScore(file.bytes);
      if (!opened.ok || file.trait === 'bar put in' || file.trait === 'unfinished') continue;
      const { findings, score } = reviewScore(opened.score, CHORALE);
      for (const { kind, bar } of file.faults) {
        const rule = RULES[kind];
        if (rule === undefined) continue;
        planted++;
        const here = findings.filter((finding) => finding.rule.id === rule);
        if (
          here.some(({ from, until }) =>
            score.bars.some((b) => b.number === bar && b.at < until && b.at + b.duration > from),
          )
        )
          found++;
      }
    }
    expect(planted).toBeGreaterThan(40);
    // Chords are read anew around a fault: a chord without a third may be taken for another.
    expect(found / planted).toBeGreaterThan(0.8);
  });

  test('the given tune is kept but where it was changed on purpose', () => {
    for (const file of STACK) {
      const opened = openScore(file.bytes);
      if (!opened.ok || file.trait === 'bar put in') continue;
      const { departures, transposition } = compareWithGiven(brief.score, opened.score);
      const changed = file.faults.filter(({ kind }) => kind === 'given melody changed').map(({ bar }) => bar);
      expect(
        departures.map(({ bar }) => bar),
        file.name,
      ).toEqual(changed);
      expect(transposition !== undefined, file.name).toBe(file.trait === 'transposed');
    }
  });

  test('a bar put in is recognised', () => {
    const file = STACK.find(({ trait, draft }) => trait === 'bar put in' && draft === 2)!;
    const opened = openScore(file.bytes);
    expect(
      opened.ok && compareWithGiven(brief.score, opened.score).departures.map(({ kind }) => kind),
    ).toContain('added bar');
  });

  test('later drafts have fewer of the planted faults', () => {
    const faults = (draft: number) =>
      STACK.filter((file) => file.draft === draft).reduce((sum, file) => sum + file.faults.length, 0);
    expect(faults(2)).toBeLessThan(faults(1));
  });

  test('ten thousand have ten thousand numbers, and come one by one', () => {
    const numbers = new Set<string>();
    for (const [first] of copies(10_000)) numbers.add(first);
    expect(numbers.size).toBeGreaterThan(600);
    const stream = plantedFiles({ candidates: 10_000 });
    expect(stream.next().value?.candidate).toMatch(/^\d{5}$/);
    expect(plantedFiles({ candidates: 30 }).next().value?.candidate).toMatch(/^\d{4}$/);
  });
});
