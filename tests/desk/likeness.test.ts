import { describe, expect, test } from 'vitest';
import { likenessPrint } from '../../src/desk/fingerprint.ts';
import { INDEPENDENT } from '../../src/desk/independent.ts';
import {
  LIKENESS_NOTICE,
  likePairs,
  likeReference,
  rarityOf,
  type StackScript,
} from '../../src/desk/like-pairs.ts';
import { comparable, likenessOf } from '../../src/desk/likeness.ts';
import { openScore } from '../../src/open/open.ts';
import type { Score } from '../../src/score/score.ts';
import { chance } from '../support/chance.ts';
import { inventedSetting } from '../support/invented-harmony.ts';
import { plantedStack } from '../support/planted-stack.ts';
import { scoreFrom } from './scripts.ts';

const TUNE = 'key: G major\nmetre: 4/4\nS: G4 A4 B4 G4 | C5 B4 A4*2! | B4 C5 D5 B4 | A4 F#4 G4*2! |';
const OWN = `${TUNE}
A: D4 D4 D4 E4 | E4 D4 F#4*2 | G4 E4 F#4 G4 | E4 D4 D4*2 |
T: B3 A3 G3 B3 | G3 G3 D4*2 | D4 G3 A3 D4 | C4 A3 B3*2 |
B: G3 F#3 G3 E3 | C3 G3 D3*2 | G3 C3 D3 G2 | C3 D3 G2*2 |`;
const OTHER = `${TUNE}
A: B3 D4 D4 D4 | G4 G4 F#4*2 | D4 E4 D4 D4 | E4 C4 B3*2 |
T: G3 F#3 G3 B3 | E4 D4 D4*2 | G3 G3 G3 G3 | A3 A3 D3*2 |
B: E3 D3 G2 G3 | C4 G3 D3*2 | G2 C3 B2 G2 | C3 F#2 G2*2 |`;

const ready = (score: Score, given?: Score) => comparable(likenessPrint(score, given));
const like = (a: string, b: string) => likenessOf(ready(scoreFrom(a)), ready(scoreFrom(b)));

describe('how alike two scripts are', () => {
  test('a copy agrees throughout', () => {
    expect(like(OWN, OWN)).toMatchObject({
      compared: 4,
      share: 1,
      wholeBars: 4,
      longestRun: 4,
      byVoice: { A: 1, T: 1, B: 1 },
    });
  });

  test('another harmonisation agrees here and there; the bars are named, with the voices', () => {
    const found = like(OWN, OTHER);
    expect(found.share).toBeLessThan(0.6);
    expect(found.wholeBars).toBe(0);
    expect(like(OWN, OWN.replace('B: G3 F#3 G3 E3', 'B: G3 F#3 G3 C3')).bars[0]).toEqual({
      first: '1',
      second: '1',
      voices: ['A', 'T'],
    });
  });

  test('it is the same both ways round', () => {
    const [ab, ba] = [like(OWN, OTHER), like(OTHER, OWN)];
    expect([ba.share, ba.compared, ba.wholeBars]).toEqual([ab.share, ab.compared, ab.wholeBars]);
  });

  test('also when it is transposed, and when a bar was put in', () => {
    const inA = OWN.replace('G major', 'A major').replaceAll(
      /\b([A-G]#?)(\d)/g,
      (_, step: string, octave: string) => {
        const up: Record<string, string> = {
          C: 'D',
          D: 'E',
          E: 'F#',
          F: 'G',
          'F#': 'G#',
          G: 'A',
          A: 'B',
          B: 'C#',
        };
        return `${up[step]}${step === 'B' ? Number(octave) + 1 : octave}`;
      },
    );
    expect(like(OWN, inA)).toMatchObject({ share: 1, wholeBars: 4 });
    const longer = OWN.replace('S: G4 A4', 'S: D5*4 | G4 A4')
      .replace('A: D4', 'A: G4*4 | D4')
      .replace('T: B3', 'T: B3*4 | B3')
      .replace('B: G3', 'B: G2*4 | G3');
    const found = like(OWN, longer);
    expect(found).toMatchObject({ share: 1, compared: 4, wholeBars: 4 });
    expect(found.bars.map(({ first, second }) => [first, second])).toEqual([
      ['1', '2'],
      ['2', '3'],
      ['3', '4'],
      ['4', '5'],
    ]);
  });

  test('the same bass an octave lower is another bass; a note tied is the note it is tied to', () => {
    expect(like(OWN, OWN.replace('B: G3 F#3 G3 E3 | C3', 'B: G2 F#2 G2 E2 | C3')).byVoice.B).toBe(0.75);
    expect(like(OWN, OWN.replace('F#4*2', 'F#4_ F#4')).share).toBe(1);
  });

  test('what is not written is not compared, and another tune is not', () => {
    const half = OWN.replace(/ \| G4 E4 F#4 G4.*/, ' |')
      .replace(/ \| D4 G3 A3.*/, ' |')
      .replace(/ \| G3 C3 D3 G2.*/, ' |');
    expect(like(OWN, half)).toMatchObject({ compared: 2, share: 1 });
    const elsewhere =
      'key: C major\nmetre: 4/4\nS: E5 C5 A4 F4 |\nA: C5 G4 F4 C4 |\nT: G4 E4 C4 A3 |\nB: C4 C4 F3 F3 |';
    expect(like(OWN, elsewhere)).toMatchObject({ compared: 0, share: 0 });
  });

  test('what the brief gives is nobody’s own', () => {
    const given = scoreFrom(`${TUNE}\nB: G3 F#3 G3 E3 | C3 G3 D3*2 |`);
    const print = likenessPrint(scoreFrom(OWN), given);
    expect(print.bars.map((bar) => bar.B === undefined)).toEqual([true, true, false, false]);
    const found = likenessOf(ready(scoreFrom(OWN), given), ready(scoreFrom(OTHER), given));
    // Of bars 3 and 4, where the bass is the pupils' own, five of eight beats agree.
    expect(found.byVoice.B).toBe(0.625);
  });
});

describe('how common that is', () => {
  test('the table runs from the least to the greatest', () => {
    for (const values of [INDEPENDENT.shares, INDEPENDENT.wholeBars]) {
      expect(values).toHaveLength(101);
      expect([...values].sort((a, b) => a - b)).toEqual(values);
      expect(values.at(-1)).toBeLessThan(900);
    }
    expect(INDEPENDENT.pairs).toBeGreaterThan(100);
  });

  const bars = (share: number, wholeBars: number, compared = 8) => ({
    compared,
    share,
    wholeBars,
    byVoice: {},
    bars: [],
    longestRun: 0,
  });

  test('a copy is rarer than any independent pair; the middle pair is nothing unusual', () => {
    expect(rarityOf(bars(1, 8))).toMatchObject({ inAHundred: 0, unusual: true });
    const usual = rarityOf(bars(INDEPENDENT.shares[50]! / 1000, 0));
    expect(usual.unusual).toBe(false);
    expect(usual.inAHundred).toBeGreaterThan(40);
    expect(rarityOf(bars(1, 8)).sentence).toBe(
      `The added voices are the same for 100 % of the time, and all three throughout 8 of 8 bars. Of ${INDEPENDENT.pairs} pairs of independent settings of one tune none agrees as much.`,
    );
  });

  test('three bars say nothing, however alike', () => {
    expect(rarityOf(bars(1, 3, 3)).unusual).toBe(false);
  });

  test('a stack whose pairs are all near each other makes a near pair less unusual', () => {
    const stack = { pairs: 435, middle: 0.8, mean: 0.8, deviation: 0.05 };
    expect(rarityOf(bars(0.85, 2), stack).unusual).toBe(false);
    expect(rarityOf(bars(0.85, 2), { ...stack, middle: 0.4, mean: 0.4 }).unusual).toBe(true);
    expect(rarityOf(bars(0.85, 2), stack).sentence).toMatch(
      /Of its 435 pairs about 69 come as near by chance\.$/,
    );
  });

  test('the words ask and do not accuse', () => {
    const said = `${LIKENESS_NOTICE} ${rarityOf(bars(1, 8), { pairs: 435, middle: 0.4, mean: 0.4, deviation: 0.1 }).sentence}`;
    expect(said).not.toMatch(/cop(y|ied)|cheat|plagiar|suspicio|dishonest|stolen/i);
    expect(said).toMatch(/question/);
  });
});

function scripts(candidates: number, drafts = 1): StackScript<string>[] {
  return plantedStack({ candidates, drafts, broken: false }).map((file) => {
    const opened = openScore(file.bytes);
    if (!opened.ok) throw new Error(opened.message);
    return {
      id: `${file.candidate}/${file.draft}`,
      candidate: file.candidate,
      print: likenessPrint(opened.score),
    };
  });
}

describe('a stack', () => {
  const own = { id: 'own', print: likenessPrint(scoreFrom(OWN)) };
  const other = { id: 'other', print: likenessPrint(scoreFrom(OTHER)) };

  test('the pair that is alike is found among invented scripts of one tune', () => {
    const stack = scripts(16);
    const copied = { ...stack[3]!, id: 'again', candidate: 'again' };
    const { pairs, compared } = likePairs([...stack, copied]);
    expect(compared).toBe((17 * 16) / 2);
    expect([pairs[0]!.first, pairs[0]!.second]).toEqual([stack[3]!.id, 'again']);
    expect(pairs[0]!.likeness.share).toBe(1);
    expect(pairs.length).toBeLessThanOrEqual(3);
  });

  test('a candidate’s own drafts are not laid side by side', () => {
    const { pairs } = likePairs(scripts(5, 2));
    for (const { first, second } of pairs) expect(first.split('/')[0]).not.toBe(second.split('/')[0]);
  });

  test('the index brings the same pair together in a large stack', () => {
    const tune = scoreFrom(TUNE).voices.S.flatMap((event) =>
      event.kind === 'note'
        ? [
            {
              pitch: event.pitch,
              beats: event.duration / 10_080,
              ...(event.fermata ? { fermata: true } : {}),
            },
          ]
        : [],
    );
    const tonic = { step: 'G', alteration: 0 } as const;
    const prints = Array.from({ length: 160 }, (_, i): StackScript<number> => {
      const columns = inventedSetting(tune, tonic, chance(i === 150 ? 20 : i));
      const line = (voice: number) =>
        columns.flatMap((column, k) => {
          const onset = columns.slice(0, k).reduce((sum, c) => sum + c.beats, 0);
          const { step, octave, alteration } = column.lower[voice]!;
          const code =
            (octave * 7 + 'CDEFGAB'.indexOf(step)) * 256 +
            octave * 12 +
            [0, 2, 4, 5, 7, 9, 11]['CDEFGAB'.indexOf(step)]! +
            alteration;
          return [[Math.floor(onset / 4), [(onset % 4) * 10_080, column.beats * 10_080, code]] as const];
        });
      const own = likenessPrint(scoreFrom(TUNE));
      return {
        id: i,
        print: {
          bars: own.bars.map((bar, index) => {
            const [A, T, B] = [0, 1, 2].map((voice) =>
              line(voice)
                .filter(([at]) => at === index)
                .flatMap(([, numbers]) => numbers),
            );
            return { ...bar, A: A!, T: T!, B: B! };
          }),
        },
      };
    });
    const { pairs, compared } = likePairs(prints);
    expect(compared).toBeLessThan((160 * 159) / 2 / 4);
    expect(pairs.some(({ first, second }) => first === 20 && second === 150)).toBe(true);
  });

  test('too few scripts to compare with each other are still compared', () => {
    expect(likePairs([]).pairs).toEqual([]);
    expect(likePairs([own]).pairs).toEqual([]);
    const two = likePairs([own, { ...own, id: 'twin' }]);
    expect(two.pairs).toHaveLength(1);
    expect(two.stack).toBeUndefined();
    expect(two.notice).toBe(LIKENESS_NOTICE);
  });

  test('a reference that the teacher supplies', () => {
    const found = likeReference([own, other], likenessPrint(scoreFrom(OWN)));
    expect(found.map(({ first, second }) => [first, second])).toEqual([['own', 'reference']]);
  });
});
