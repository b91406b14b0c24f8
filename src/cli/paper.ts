/** A review as a person reads it in a terminal: what costs most first, then chords and cadences. 80 columns. */
import Table from 'cli-table3';
import pc from 'picocolors';
import { capitalised, counted } from '../english/words.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { chordLabel, type LabelStyle, printKey } from '../harmony/words/labels.ts';
import type { Refusal } from '../refusal/refusal.ts';
import { cadencesByBar, chordsByBar, secondsByBar } from '../report/chords.ts';
import { placesInWords } from '../report/mark-words.ts';
import { withSigns } from '../report/sentences.ts';
import { leftOut, summarise, toWriteListed } from '../report/summary.ts';
import { WIDTH, wrap } from '../report/wrap.ts';
import { hintsFor } from '../review/hints.ts';
import { firstToMend, type Mark, marksOf } from '../review/marks.ts';
import type { Review } from '../review/review.ts';
import { RULES } from '../rules/list.ts';
import type { Severity } from '../rules/rule.ts';
import { barAt } from '../score/place.ts';
import { plain } from './plain.ts';

// Colours only where a person looks, whatever the environment asks of others.
const colour = pc.createColors(process.stdout.isTTY === true && pc.isColorSupported);
const PAINT: Readonly<Record<Severity, (text: string) => string>> = {
  fault: (text) => colour.bold(colour.red(text)),
  query: (text) => colour.yellow(text),
  remark: (text) => colour.dim(text),
};

export function printFailure(file: string, error: Refusal): string {
  const lines = [`${file}: could not be read.`];
  const problems = error.problems ?? [error];
  for (const { message, line, column } of problems) {
    const place =
      line === undefined ? '' : `line ${line}${column === undefined ? '' : `, column ${column}`}: `;
    const told = message.toLowerCase().startsWith('line ') ? message : `${place}${message}`;
    lines.push(...wrap(told, WIDTH, '  '));
  }
  return plain(`${lines.join('\n')}\n`);
}

export function printReview(file: string, review: Review, labels: LabelStyle): string {
  const { score } = review;
  const title = plain(score.title === '' ? file : `${score.title} (${file})`);
  const about = `${printKey(homeKey(review.analysis))}, ${counted(score.bars.length, 'bar')}`;
  const lines = [
    ...wrap(colour.bold(title), WIDTH),
    about,
    '',
    ...voicesRead(review),
    ...summary(review),
    '',
    ...markList(review),
    ...readerRemarks(review),
    ...chordTable(review, labels),
    '',
  ];
  // One sign for each, so that no line grows and no column shifts.
  return withSigns(lines.join('\n'));
}

/** The marks in their order: what costs most first, remarks last, then what is still to be written. */
function markList(review: Review): string[] {
  const marks = marksOf(review.findings);
  const remarks = marks.filter(({ severity }) => severity === 'remark');
  const others = marks.filter(({ severity }) => severity !== 'remark');
  const unwritten = toWriteListed(review);
  const first = firstToMend(marks);
  return [
    ...(first.length === 0 ? [] : [colour.underline('First to mend')]),
    ...first.flatMap((mark) => [...printMark(review, mark), '']),
    ...(first.length === 0 ? [] : [colour.underline('After that')]),
    ...others.slice(first.length).flatMap((mark) => [...printMark(review, mark), '']),
    ...(remarks.length === 0
      ? []
      : ['Remarks', ...remarks.flatMap((mark) => printRemarks(review, mark)), '']),
    ...(unwritten.length === 0
      ? []
      : ['Still to be written', ...unwritten.flatMap((message) => wrap(message, WIDTH, '  ')), '']),
  ];
}

/** `1  Fault: parallel octaves`, each place beneath it, and what follows from it. */
function printMark(review: Review, mark: Mark): string[] {
  const { number, severity, slips } = mark;
  const { rule } = slips[0].finding;
  return [
    heading(number, PAINT[severity](`${capitalised(severity)}: ${rule.name.toLowerCase()}`), slips.length),
    ...printPlaces(review, mark),
    ...wrap(`Why: ${rule.why}`, WIDTH, '    '),
    ...wrap(`Hint: ${hintsFor(review.analysis, slips[0].finding)[1]}`, WIDTH, '    '),
  ];
}

function heading(number: number, name: string, times: number): string {
  return `${String(number).padStart(2)}  ${name}${times === 1 ? '' : `, ${times} times`}`;
}

function printPlaces({ score }: Review, mark: Mark): string[] {
  return placesInWords(score, mark).flatMap(({ sentence, follows }) => [
    ...wrap(capitalised(sentence), WIDTH, '    '),
    ...wrap(follows, WIDTH, '      '),
  ]);
}

/** Which voices were read, where that was a guess or something was left out: everything else hangs on it. */
function voicesRead({ score }: Review): string[] {
  const lines = score.remarks
    .filter(({ about }) => about === 'voices')
    .flatMap(({ message }) => wrap(message, WIDTH, '  '));
  if (lines.length === 0) return [];
  return [
    colour.bold('Voices'),
    ...lines,
    ...wrap('If that is wrong, say which line is which with --voices S=1,A=2,T=3,B=4.', WIDTH, '  '),
    '',
  ];
}

function printRemarks(review: Review, mark: Mark): string[] {
  const { number, slips } = mark;
  return [
    heading(number, PAINT.remark(slips[0].finding.rule.name), slips.length),
    ...printPlaces(review, mark),
  ];
}

function readerRemarks(review: Review): string[] {
  const remarks = review.score.remarks.filter(({ about }) => about === undefined);
  if (remarks.length === 0) return [];
  return [
    'Noticed while reading',
    ...remarks.flatMap(({ message, bar }) =>
      wrap(plain(bar === undefined ? message : `Bar ${bar}: ${message}`), WIDTH, '  '),
    ),
    '',
  ];
}

function chordTable(review: Review, labels: LabelStyle): string[] {
  if (review.analysis.chords.length === 0) return ['No chords: fewer than two voices sound together.'];
  const table = new Table({
    head: ['Bar', 'Key', 'Chords, each at its beat'],
    colWidths: [8, 14, 54],
    wordWrap: true,
    // No lines between the rows: a chorale has twenty of them.
    chars: { mid: '', 'left-mid': '', 'mid-mid': '', 'right-mid': '' },
    style: { head: [], border: [], 'padding-left': 1, 'padding-right': 1 },
  });
  for (const row of chordsByBar(
    review,
    (chord) => chordLabel(chord, labels, barAt(review.score, chord.at).key.fifths) || '5',
  )) {
    table.push([row.bar, row.keys, row.chords]);
  }
  const cadences = cadencesByBar(review);
  const seconds = secondsByBar(review, labels);
  return [
    table.toString(),
    ...(cadences.length === 0 ? [] : ['', 'Cadences']),
    ...cadences.flatMap((cadence) => wrap(cadence, WIDTH, '  ')),
    ...(seconds.length === 0 ? [] : ['', 'A second reading lies close']),
    ...seconds.flatMap((second) => wrap(second, WIDTH, '  ')),
  ];
}

function summary(review: Review): string[] {
  const { sentence, profile } = summarise(review);
  const off =
    review.switchedOff.length === 0
      ? []
      : wrap(`The profile “${profile}” does not look at: ${leftOut(review, RULES)}.`, WIDTH);
  return [...wrap(sentence, WIDTH), ...off];
}
