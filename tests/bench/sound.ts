/**
 * `npm run bench:sound`: eight bars on the page's own instrument, each voice alone and all together: how loud, by ear
 * (A-weighted, IEC 61672-1) and as power, how quickly a note stands, whether it clicks, and how near to full scale all come.
 * `-- FOLDER` writes what was heard there as WAV files, to be listened to. Needs Chromium.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Table from 'cli-table3';
import { readNotation } from '../../src/notation/read.ts';
import { endOf, VOICE_WORDS, VOICES } from '../../src/score/score.ts';
import { soundingsOf, timelineOf } from '../../web/sound/timeline.ts';
import { chromiumPath, launchChromium } from '../support/chromium.ts';
import { exerciseText } from '../support/exercises.ts';
import { attack, level, sharpest, weighted, windows } from '../support/sound/loudness.ts';
import { RATE, renderScore, wavOf } from '../support/sound/render.ts';

const PIECES = ['kite-hill', 'lantern'];
const TEMPO = 72;

if (chromiumPath() === undefined) {
  console.log('No Chromium is installed: nothing was measured.');
  process.exit(0);
}
const folder = process.argv[2];
const browser = await launchChromium();
for (const piece of PIECES) {
  const { score } = readNotation(exerciseText(piece));
  const timeline = timelineOf(score, TEMPO);
  const notes = soundingsOf(score, timeline, 0, endOf(score));
  const heard = await renderScore(browser, score, TEMPO, [...VOICES.map((voice) => [voice]), []]);
  const table = new Table({
    style: { head: [], border: [] },
    head: ['', 'dB(A)', 'from the mean', 'power, dB', 'attack, ms', 'sharpest bend at note ends'],
  });
  const levels = heard.map((samples) => level(weighted(samples, RATE), RATE));
  const mean = levels.slice(0, 4).reduce((sum, one) => sum + one, 0) / 4;
  for (const [i, voice] of VOICES.entries()) {
    const samples = heard[i]!;
    const ends = notes.filter((note) => note.voice === voice).flatMap(({ from, until }) => [from, until]);
    table.push([
      VOICE_WORDS[voice],
      levels[i]!.toFixed(1),
      (levels[i]! - mean).toFixed(1),
      level(samples, RATE).toFixed(1),
      (attack(samples, RATE) * 1000).toFixed(0),
      sharpest(samples, RATE, ends).toFixed(2),
    ]);
  }
  const all = heard[4]!;
  const peak = all.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  table.push(['all', levels[4]!.toFixed(1), '', level(all, RATE).toFixed(1), '', `peak ${peak.toFixed(2)}`]);
  console.log(`${piece}, crotchet = ${TEMPO}`);
  console.log(table.toString());
  console.log('The first 1.5 seconds in windows of 50 ms, dB(A):');
  for (const [i, name] of [...VOICES, 'all'].entries())
    console.log(
      name.padEnd(4),
      windows(weighted(heard[i]!, RATE), RATE)
        .slice(0, 30)
        .map((one) => one.toFixed(0))
        .join(' '),
    );
  if (folder !== undefined) {
    mkdirSync(folder, { recursive: true });
    for (const [i, name] of [...VOICES, 'all'].entries())
      writeFileSync(join(folder, `${piece}-${name}.wav`), wavOf(heard[i]!));
  }
}
await browser.close();
