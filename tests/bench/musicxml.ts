/**
 * `npm run bench:musicxml`: what becomes of each file of the public suite and of the shared dialects, the largest files
 * that the limits admit, and milliseconds for reading and for reviewing the open chorales, apart. `-- FOLDER` takes other files.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import Table from 'cli-table3';
import { markMusicXml, readMusicXml, writeMusicXml } from '../../src/musicxml/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { annotationsOf } from '../../src/report/annotations.ts';
import { reviewScore } from '../../src/review/review.ts';
import { VOICES } from '../../src/score/score.ts';
import { readDialect } from '../support/dialects.ts';
import { LARGEST } from '../support/largest.ts';
import { CHORALES, SHARED, SUITE } from '../support/musicxml.ts';

const folders = process.argv.slice(2);
for (const folder of folders.length > 0 ? folders : [SUITE])
  suite(folder.endsWith('/') ? folder : `${folder}/`);
if (folders.length === 0) {
  dialects();
  largest();
  chorales();
}

/** The share of the shared dialects that is read as written; each that is not is named. */
function dialects(): void {
  const folder = `${SHARED}dialects/`;
  if (!existsSync(folder)) {
    console.log(`${folder} is absent, so no dialects are read.`);
    return;
  }
  const files = readdirSync(folder).filter((file) => !file.endsWith('.json'));
  const wrong = files
    .map((file) => ({ file, became: readDialect(file, readFileSync(folder + file)) }))
    .filter(({ became }) => became !== 'as written');
  for (const { file, became } of wrong) console.log(`${file}: ${became}`);
  console.log(`${files.length - wrong.length} of ${files.length} dialects read as written.`);
}

/** The largest files that the limits admit, each read, reviewed and marked alone. */
function largest(): void {
  const head = ['largest files', 'MB', 'notes judged', 'reading', 'reviewing', 'marking', 'together, s'];
  const table = new Table({ head, style: { head: [], border: [], compact: true } });
  let worst = 0;
  for (const { name, xml } of LARGEST) {
    const bytes = new TextEncoder().encode(xml());
    const from = process.cpuUsage();
    const reading = readMusicXml(bytes);
    const read = seconds(from);
    if (!reading.ok) {
      table.push([
        name,
        (bytes.length / 2 ** 20).toFixed(1),
        reading.message.slice(0, 60),
        read.toFixed(2),
        '',
        '',
        '',
      ]);
      continue;
    }
    const before = process.cpuUsage();
    const review = reviewScore(reading.score, CHORALE);
    const reviewed = seconds(before);
    const then = process.cpuUsage();
    markMusicXml(bytes, annotationsOf(review));
    worst = Math.max(worst, read + reviewed);
    table.push([
      name,
      (bytes.length / 2 ** 20).toFixed(1),
      VOICES.reduce((sum, voice) => sum + reading.score.voices[voice].length, 0),
      read.toFixed(2),
      reviewed.toFixed(2),
      seconds(then).toFixed(2),
      (read + reviewed).toFixed(2),
    ]);
  }
  console.log(table.toString());
  console.log(`The worst takes ${worst.toFixed(2)} s of processor time to read and review.`);
}

function seconds(from: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1e6;
}

function scores(folder: string): string[] {
  if (!existsSync(folder)) {
    console.log(`${folder} is absent, so nothing of it is read.`);
    return [];
  }
  return readdirSync(folder)
    .filter((file) => /\.(xml|musicxml|mxl)$/i.test(file))
    .sort();
}

function suite(folder: string): void {
  const table = new Table({
    head: ['file', 'ms', 'what became of it'],
    colWidths: [38, 7, 55],
    wordWrap: true,
    style: { head: [], border: [], compact: true },
  });
  const files = scores(folder);
  if (files.length === 0) return;
  let read = 0;
  for (const file of files) {
    const bytes = readFileSync(folder + file);
    const from = performance.now();
    const reading = readMusicXml(bytes);
    const took = (performance.now() - from).toFixed(1);
    if (reading.ok) read++;
    table.push([
      file.slice(0, 36),
      took,
      reading.ok ? `read: ${notesOf(reading.score)}` : firstSentence(reading.message),
    ]);
  }
  console.log(table.toString());
  console.log(
    `${files.length} files: ${read} read, ${files.length - read} refused in a sentence, none crashed.`,
  );
}

function notesOf(score: Parameters<typeof writeMusicXml>[0]): string {
  return VOICES.map(
    (voice) => `${voice} ${score.voices[voice].filter((event) => event.kind === 'note').length}`,
  ).join(', ');
}

function firstSentence(message: string): string {
  return message.replace(/ Needed are .*/, '').slice(0, 160);
}

function chorales(): void {
  const files = scores(CHORALES).map((file) => ({ file, bytes: readFileSync(CHORALES + file) }));
  if (files.length === 0) return;
  const first = pass(files);
  const second = pass(files);
  console.log(`\n${files.length} open chorales, milliseconds a file (processor time where it says so)`);
  const head = ['', 'first pass', 'its CPU', 'second pass', 'its CPU', 'median', 'slowest'];
  const table = new Table({ head, style: { head: [], border: [], compact: true } });
  for (const what of ['reading', 'reviewing', 'handing back'] as const) {
    const [a, b] = [first[what], second[what]];
    table.push([
      what,
      mean(a.wall),
      mean(a.cpu),
      mean(b.wall),
      mean(b.cpu),
      median(b.wall),
      Math.max(...b.wall).toFixed(1),
    ]);
  }
  console.log(table.toString());
  const both = Number(mean(first.reading.wall)) + Number(mean(first.reviewing.wall));
  console.log(
    `Reading and reviewing together: ${both.toFixed(2)} ms a file in the first pass. A general music library in Python takes\nabout 100 ms a file just to read them (the figure the task gives, not measured here); a tenth of that is 10 ms.`,
  );
}

interface Times {
  readonly wall: number[];
  readonly cpu: number[];
}

function pass(
  files: readonly { file: string; bytes: Uint8Array }[],
): Record<'reading' | 'reviewing' | 'handing back', Times> {
  const none = (): Times => ({ wall: [], cpu: [] });
  const times = { reading: none(), reviewing: none(), 'handing back': none() };
  const timed = <T>(what: keyof typeof times, run: () => T): T => {
    const from = performance.now();
    const cpu = process.cpuUsage();
    const result = run();
    const used = process.cpuUsage(cpu);
    times[what].wall.push(performance.now() - from);
    times[what].cpu.push((used.user + used.system) / 1000);
    return result;
  };
  for (const { file, bytes } of files) {
    const reading = timed('reading', () => readMusicXml(bytes));
    if (!reading.ok) throw new Error(`${file}: ${reading.message}`);
    const { score } = timed('reviewing', () => reviewScore(reading.score, CHORALE));
    timed('handing back', () => writeMusicXml(score));
  }
  return times;
}

function mean(values: readonly number[]): string {
  return (values.reduce((sum, value) => sum + value, 0) / values.length).toFixed(2);
}

function median(values: readonly number[]): string {
  return [...values].sort((a, b) => a - b)[values.length >> 1]!.toFixed(2);
}
