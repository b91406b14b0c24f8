/** A review as a person reads it in a terminal: findings by bar, chords and cadences, a summary. 80 columns. */
import Table from 'cli-table3';
import pc from 'picocolors';
import { counted, listed } from '../english/words.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { chordLabel, type LabelStyle, printKey } from '../harmony/words/labels.ts';
import type { Refusal } from '../refusal/refusal.ts';
import { cadencesByBar, chordsByBar } from '../report/chords.ts';
import { printVoices } from '../report/sentences.ts';
import { summarise } from '../report/summary.ts';
import { wrap } from '../report/wrap.ts';
import type { Finding, Review } from '../review/review.ts';
import type { Severity } from '../rules/rule.ts';
import { barAt, placeIn, printBeat } from '../score/place.ts';
import { plain } from './plain.ts';

const WIDTH = 80;

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
  return [
    ...wrap(colour.bold(title), WIDTH),
    about,
    '',
    ...voicesRead(review),
    ...findingsByBar(review),
    ...readerRemarks(review),
    ...chordTable(review, labels),
    '',
    ...summary(review),
    '',
  ].join('\n');
}

function findingsByBar(review: Review): string[] {
  const lines: string[] = [];
  const explained = new Set<string>();
  let barIndex = -1;
  for (const [index, finding] of review.findings.entries()) {
    const bar = barAt(review.score, finding.from);
    if (bar.index !== barIndex) {
      lines.push(colour.underline(`Bar ${bar.number}`));
      barIndex = bar.index;
    }
    lines.push(...printFinding(review, finding, index + 1, explained.has(finding.rule.id)));
    explained.add(finding.rule.id);
  }
  if (lines.length > 0) lines.push('');
  return lines;
}

/**
 * Numbered as in a marked file. The reason a rule gives is printed the first time it speaks, not at each of ten places.
 */
function printFinding(review: Review, finding: Finding, number: number, explained: boolean): string[] {
  const { rule, severity, voices } = finding;
  const beat = printBeat(placeIn(barAt(review.score, finding.from), finding.from));
  const who = voices.length === 0 ? '' : ` – ${printVoices(voices)}`;
  return [
    `  ${number}  beat ${beat}: ${PAINT[severity](severity)}, ${rule.name.toLowerCase()}${who} [${rule.id}]`,
    ...wrap(finding.message, WIDTH, '    '),
    ...(explained || severity === 'remark' ? [] : wrap(`Why: ${rule.why}`, WIDTH, '    ')),
    ...(severity === 'remark' ? [] : wrap(`Hint: ${finding.hint ?? rule.hints[0]}`, WIDTH, '    ')),
  ];
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
    colWidths: [6, 14, 56],
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
  return [
    table.toString(),
    ...(cadences.length === 0 ? [] : ['', 'Cadences']),
    ...cadences.flatMap((cadence) => wrap(cadence, WIDTH, '  ')),
  ];
}

function summary(review: Review): string[] {
  const { sentence, switchedOff, profile } = summarise(review);
  const off =
    switchedOff.length === 0
      ? []
      : wrap(`The profile “${profile}” does not look at: ${listed(switchedOff)}.`, WIDTH);
  return [...wrap(sentence, WIDTH), ...off];
}
