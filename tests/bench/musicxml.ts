/**
 * `npm run bench:musicxml`: what becomes of each file of the public suite, and milliseconds for reading and for
 * reviewing the open chorales, apart. `-- FOLDER` takes other files.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import Table from 'cli-table3';
import { readMusicXml, writeMusicXml } from '../../src/musicxml/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { VOICES } from '../../src/score/score.ts';
import { CHORALES, SUITE } from '../support/musicxml.ts';

const folders = process.argv.slice(2);
for (const folder of folders.length > 0 ? folders : [SUITE])
  suite(folder.endsWith('/') ? folder : `${folder}/`);
if (folders.length === 0) chorales();

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
