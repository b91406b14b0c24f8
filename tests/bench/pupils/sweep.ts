/** Asks every situation in every key, and in crotchets, minims and quavers. */
import type { Analysis } from '../../../src/harmony/analysis.ts';
import { chordAt } from '../../../src/harmony/questions/moments.ts';
import { numeral } from '../../../src/harmony/words/labels.ts';
import { readNotation } from '../../../src/notation/index.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { reviewScore } from '../../../src/review/review.ts';
import type { Score } from '../../../src/score/score.ts';
import { beatLength } from '../../../src/score/time.ts';
import { answers } from './cases.ts';
import { percent, type Section } from './section.ts';
import { SITUATIONS, type Situation } from './situations.ts';
import { transposed } from './transpose.ts';
import { WEAK_SITUATIONS } from './weak-situations.ts';

const UNITS = [4, 2, 8] as const;
/** From six flats to six sharps. */
const SIGNATURES = [-6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6];

export interface Swept {
  readonly name: string;
  readonly asked: number;
  readonly right: number;
  /** What went wrong, each kind once, with how often. */
  readonly wrong: ReadonlyMap<string, number>;
}

function sweep(situations: readonly Situation[] = [...SITUATIONS, ...WEAK_SITUATIONS]): Swept[] {
  return situations.map((situation) => {
    const wrong = new Map<string, number>();
    let [asked, right] = [0, 0];
    for (const [index, text] of situation.texts.entries())
      for (const unit of UNITS) {
        const score = written(text, unit);
        const own = score.bars[0]!.key.fifths;
        for (const signature of SIGNATURES) {
          asked++;
          const complaints = ask(situation, transposed(score, signature - own));
          if (complaints.length === 0) right++;
          for (const complaint of new Set(complaints)) {
            const key = `voicing ${index + 1}: ${complaint}`;
            wrong.set(key, (wrong.get(key) ?? 0) + 1);
          }
        }
      }
    return { name: situation.name, asked, right, wrong };
  });
}

function written(text: string, unit: number): Score {
  const { score } = readNotation(text.replace(/^(metre: \d+)\/4$/m, `$1/${unit}`));
  if (score === undefined) throw new Error(`This situation cannot be read:\n${text}`);
  return score;
}

function ask(situation: Situation, score: Score): string[] {
  const { findings, analysis } = reviewScore(score, CHORALE);
  const missed = situation.expect
    .filter((wanted) => !findings.some((finding) => answers(score, finding, wanted)))
    .map((wanted) => `not found: ${JSON.stringify(wanted)}`);
  // In some keys a voice leaves its range: that is the sweep's doing.
  const judged = findings.filter(({ rule }) => rule.id !== 'voice-range');
  const said = situation.forbid.flatMap((wanted) => {
    const wrong = judged.find((finding) => answers(score, finding, wanted));
    return wrong === undefined ? [] : [`wrongly said: ${wrong.rule.id} (${wrong.severity})`];
  });
  const misread = (situation.reads ?? []).flatMap(({ bar, beat, numeral: wanted }) => {
    const read = numeralAt(analysis, bar, beat);
    return read === wanted ? [] : [`${bar}.${beat} read as ${read}, not ${wanted}`];
  });
  return [...missed, ...said, ...misread];
}

function numeralAt(analysis: Analysis, number: string, beat: number): string | undefined {
  const bar = analysis.texture.score.bars.find((b) => b.number === number)!;
  const chord = chordAt(analysis, bar.at + (beat - 1) * beatLength(bar.metre) - bar.offset);
  return chord && numeral(chord.roman, chord.key);
}

export const SWEEP: Section = {
  title: 'Situations judged at sight, in thirteen keys, in crotchets, minims and quavers',
  rows: () => {
    const all = sweep();
    const total = (part: (swept: Swept) => number) => all.reduce((n, swept) => n + part(swept), 0);
    return [
      ...all.flatMap(({ name, asked, right, wrong }) => [
        { material: name, figure: `${right} of ${asked}`, target: '' },
        ...[...wrong].map(([what, times]) => ({ material: `    ${what}`, figure: `${times}`, target: '' })),
      ]),
      {
        material: `all ${all.length} situations`,
        figure: percent(
          total(({ right }) => right),
          total(({ asked }) => asked),
        ),
        target: '99 %',
      },
    ];
  },
};
