/** Whole weak scripts: how much of what a teacher marks is found, and what is told that she would not tell. */
import { printKey } from '../../../src/harmony/words/labels.ts';
import { readNotation } from '../../../src/notation/index.ts';
import { CHORALE } from '../../../src/profiles/profile.ts';
import { type Review, reviewScore } from '../../../src/review/review.ts';
import { barAt, placeIn } from '../../../src/score/place.ts';
import { answers, type Wanted } from './cases.ts';
import { percent, type Row, type Section } from './section.ts';
import { WHOLE_SCRIPTS, type WholeScript } from './whole-scripts.ts';

export interface Marked {
  readonly name: string;
  readonly toFind: number;
  readonly missed: readonly string[];
  /** Faults and queries. */
  readonly told: number;
  /** Those of them that the teacher neither marks nor would let stand. */
  readonly beyond: readonly string[];
  readonly closes: number;
  readonly misread: readonly string[];
}

/** Lays the program's reading of a script beside the teacher's. */
function markWhole(script: WholeScript): Marked {
  const { score } = readNotation(script.text);
  if (score === undefined) throw new Error(`“${script.name}” cannot be read.`);
  const review = reviewScore(score, CHORALE);
  const told = review.findings.filter(({ severity }) => severity !== 'remark');
  const isTold = (mark: string) => told.some((finding) => answers(score, finding, wantedOf(mark)));
  const known = [...script.marks, ...script.fair].map(wantedOf);
  const beyond = told.filter((finding) => !known.some((wanted) => answers(score, finding, wanted)));
  const closes = closesOf(review);
  return {
    name: script.name,
    toFind: script.marks.length,
    missed: script.marks.filter((mark) => !isTold(mark)),
    told: told.length,
    beyond: beyond.map(({ rule, severity, message }) => `${rule.id} (${severity}) ${message}`),
    closes: script.closes.length,
    misread: [
      ...script.closes.filter((close) => !closes.includes(close)).map((close) => `not read: ${close}`),
      ...closes.filter((close) => !script.closes.includes(close)).map((close) => `read: ${close}`),
    ],
  };
}

/** `parallel-fifths 2.1 AB`; beats may have a half: `4.1.5`. */
function wantedOf(mark: string): Wanted {
  const [rule, place, voices] = mark.split(' ');
  const [bar, ...beat] = place?.split('.') ?? [];
  return {
    rules: [rule!],
    ...(bar === undefined ? {} : { bar, beat: Number(beat.join('.')) }),
    ...(voices === undefined ? {} : { voices: [...voices] }),
  };
}

function closesOf({ analysis, score }: Review): string[] {
  return analysis.cadences.map(({ at, kind, key }) => {
    const { bar, beat } = placeIn(barAt(score, at), at);
    return `${bar.number}.${beat} ${kind} ${printKey(key)}`;
  });
}

export const WHOLE: Section = {
  title: 'Whole weak scripts: beside what a teacher marks in them',
  rows: () => {
    const all = WHOLE_SCRIPTS.map(markWhole);
    const sum = (part: (marked: Marked) => number) => all.reduce((n, marked) => n + part(marked), 0);
    const toFind = sum((marked) => marked.toFind);
    const told = sum((marked) => marked.told);
    const closes = sum((marked) => marked.closes);
    const wrong = sum(({ misread }) => misread.filter((words) => words.startsWith('not read')).length);
    return [
      ...all.flatMap(rowsOf),
      {
        material: `found, of ${toFind} marks in ${all.length} scripts`,
        figure: percent(toFind - sum(({ missed }) => missed.length), toFind),
        target: '98 %',
      },
      {
        material: `beyond the teacher, of ${told} faults and queries`,
        figure: percent(
          sum(({ beyond }) => beyond.length),
          told,
        ),
        target: '2 % at most',
      },
      {
        material: `cadences named as she does, of ${closes}`,
        figure: percent(closes - wrong, closes),
        target: '98 %',
      },
    ];
  },
};

function rowsOf({ name, toFind, missed, told, beyond, misread }: Marked): Row[] {
  const figure = `${toFind - missed.length} of ${toFind} found; ${beyond.length} of ${told} beyond`;
  const complaints = [
    ...missed.map((mark) => `not found: ${mark}`),
    ...beyond.map((said) => `beyond: ${said}`),
    ...misread,
  ];
  return [
    { material: name, figure, target: '' },
    ...complaints.map((complaint) => ({ material: `    ${complaint}`, figure: '', target: '' })),
  ];
}
