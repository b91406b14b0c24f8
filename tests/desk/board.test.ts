import { describe, expect, test } from 'vitest';
import { excerptOf, excerptText } from '../../src/desk/excerpt.ts';
import { factsOf } from '../../src/desk/facts.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { buildScore } from '../../src/score/build.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { everythingWrong } from '../support/worst-cases.ts';
import { exercise, scoreFrom, scriptFrom } from './scripts.ts';

describe('a few bars for all to see', () => {
  const score = scoreFrom(
    'title: Orchard lane, by somebody\nkey: D minor\nmetre: 3/4\ntempo: 70\nupbeat: 1\nS: A4 | D5 E5 F5 | = E5 D5 | C#5*3! |\nB: D3 | D3 C3 Bb2 | A2*3 | A2*3 |',
  );

  test('keep number, key, metre and notes, and tell nobody’s name', () => {
    const excerpt = excerptOf(score, 2, 3);
    expect(excerpt.title).toBe('');
    expect(excerpt.tempo).toBeUndefined();
    expect(excerpt.bars.map(({ number, key, metre }) => [number, key.fifths, metre.beats])).toEqual([
      ['2', -1, 3],
      ['3', -1, 3],
    ]);
    const sung = excerpt.voices.S.flatMap((event) =>
      event.kind === 'note' ? [printPitch(event.pitch)] : [],
    );
    expect(sung).toEqual(['F5', 'E5', 'D5', 'C#5']);
    expect(readNotation(excerptText(score, 2, 3)).problems).toEqual([]);
  });

  test('an upbeat stays one', () => {
    expect(excerptOf(score, 0, 1).bars.map(({ number, offset }) => [number, offset > 0])).toEqual([
      ['0', true],
      ['1', false],
    ]);
  });

  test('words under the notes are left out', () => {
    const sung = buildScore({
      title: 'x',
      bars: [
        {
          metre: { beats: 1, unit: 4 },
          key: { fifths: 0 },
          voices: {
            S: {
              events: [
                {
                  kind: 'note',
                  duration: 10_080,
                  pitch: { step: 'C', alteration: 0, octave: 5 },
                  lyrics: ['Tom'],
                },
              ],
              closed: true,
            },
          },
        },
      ],
    });
    expect(JSON.stringify(sung)).toContain('Tom');
    expect(JSON.stringify(excerptOf(sung, 0, 0))).not.toContain('Tom');
  });
});

describe('bars for the board', () => {
  const ONE =
    'key: C major\nmetre: 4/4\nS: C5 B4 C5*2 | D5 B4 C5*2! |\nA: G4 G4 E4*2 | A4 G4 E4*2 |\nT: E4 D4 E4*2 | D4 D4 C4*2 |\nB: C3 G3 A3*2 | F3 G3 C3*2! |';
  const board = (text: string, rule: string) =>
    scriptFrom(text).facts.boardBars.find((bar) => bar.rule === rule);

  test('a fault alone in its bar is the clearest; beside another it is less clear', () => {
    const alone = board(ONE, 'parallel-fifths')!;
    const crowded = board(ONE.replace('A: G4 G4 E4*2', 'A: G4 G4 A4*2'), 'parallel-fifths')!;
    expect(alone).toMatchObject({ firstBar: '1', lastBar: '1' });
    expect(alone.clearness).toBeGreaterThan(crowded.clearness);
  });

  test('of two bars the clearer is taken', () => {
    const twice = ONE.replace('S: C5 B4 C5*2', 'S: C5 B4 C5*2 | C5 B4 C5*2')
      .replace('A: G4 G4 E4*2', 'A: G4 G4 A4*2 | G4 G4 E4*2')
      .replace('T: E4 D4 E4*2', 'T: E4 D4 E4*2 | E4 D4 E4*2')
      .replace('B: C3 G3 A3*2', 'B: C3 G3 A3*2 | C3 G3 A3*2');
    expect(board(twice, 'parallel-fifths')!.firstBar).toBe('2');
  });

  test('a bar that is mostly unwritten is no picture', () => {
    const { facts } = exercise('tune-alone');
    for (const bar of facts.boardBars) expect(bar.clearness).toBeGreaterThan(0);
    expect(facts.boardBars.filter(({ rule }) => rule === 'unfinished')).toEqual([]);
    expect(facts.goodBars).toEqual([]);
  });

  test('a suspension that is right is a good bar, and said to be one', () => {
    const { facts } = scriptFrom(
      'key: C major\nmetre: 4/4\nS: E5 D5 E5 C5 | D5*2 C5*2! |\nA: G4 G4 G4 E4 | G4*2 E4*2! |\nT: C4 B3 C4 C4 | = B3 C4*2! |\nB: C3 G3 C3 A3 | G3*2 C3*2! |',
    );
    const good = facts.goodBars.find(({ kind }) => kind === 'suspension');
    expect(good?.message).toBe(
      'Bar 2, beat 1: a 4–3 suspension in the tenor, C4, prepared and resolved by step to B3.',
    );
  });
});

test('a script with more findings of a kind than are kept one by one is a script like others', () => {
  const { score } = readNotation(everythingWrong(400));
  const facts = factsOf(reviewScore(score, CHORALE));
  const perRule = new Map<string, number>();
  for (const { rule } of facts.findings) perRule.set(rule, (perRule.get(rule) ?? 0) + 1);
  expect(Math.max(...perRule.values())).toBe(100);
  for (const bar of facts.boardBars) {
    expect(facts.findings.find(({ id }) => id === bar.finding)).toMatchObject({
      rule: bar.rule,
      message: bar.message,
    });
  }
});
