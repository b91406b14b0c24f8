/**
 * How fast the engraver draws, in Chromium, from a production build of its test page: `npm run bench:engrave`.
 * Times are of this machine, with whatever else it is doing.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build, preview } from 'vite';
import { SCORES } from '../browser/engrave-harness/scores.ts';
import { chromiumPath, launchChromium } from '../support/chromium.ts';

const LOADS = 7;
const ROUNDS = 40;

/** A score's bars over and over, until there are `bars` of them. */
function lengthen(text: string, bars: number): string {
  const lines = text.trim().split('\n');
  const voices = lines.filter((line) => /^[SATB]:/.test(line));
  const count = voices[0]!.split('|').length - 1;
  const times = Math.ceil(bars / count);
  const music = Array.from({ length: times }, () => voices.join('\n')).join('\n');
  return `${lines.filter((line) => !/^[SATB]:/.test(line)).join('\n')}\n${music}\n`;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

function line(what: string, values: readonly number[]): void {
  const round = (value: number) => value.toFixed(1);
  const spread = `${round(Math.min(...values))} to ${round(Math.max(...values))}`;
  console.log(`${what.padEnd(62)} median ${round(median(values)).padStart(7)} ms   (${spread})`);
}

async function loads(browser: Browser, url: string, text: string, width: number): Promise<void> {
  const first: number[] = [];
  const all: number[] = [];
  for (let i = 0; i < LOADS; i++) {
    const context = await browser.newContext({ viewport: { width, height: 900 } });
    const page = await context.newPage();
    await page.goto(`${url}#text=${encodeURIComponent(text)}`);
    await page.waitForFunction(() => window.harness !== undefined && window.harness.times.all > 0);
    const times = await page.evaluate(() => window.harness.times);
    first.push(times.first);
    all.push(times.all);
    await context.close();
  }
  line(`load to the first system, ${width} px`, first);
  line(`load to all systems, ${width} px`, all);
}

/** Changes one note to and fro; what the page waits for is the call itself, as what is in view is drawn in it. */
async function redraws(page: Page, text: string, changed: string): Promise<void> {
  const result = await page.evaluate(
    async ([one, other, rounds]) => {
      const { harness } = window;
      const times: Record<'notes' | 'marks' | 'choice' | 'cursor', number[]> = {
        notes: [],
        marks: [],
        choice: [],
        cursor: [],
      };
      await harness.showText(one!);
      const scores = [harness.read(one!), harness.read(other!)];
      const inputs = scores.map((score) => harness.input(score));
      for (let i = 0; i < Number(rounds); i++) {
        let began = performance.now();
        harness.engraving.update(inputs[(i + 1) % 2]!);
        times.notes.push(performance.now() - began);
        await harness.engraving.drawn;
        const input = inputs[(i + 1) % 2]!;
        const findings = i % 2 === 0 ? input.marks.findings.slice(1) : input.marks.findings;
        began = performance.now();
        harness.engraving.update({ ...input, marks: { ...input.marks, findings } });
        times.marks.push(performance.now() - began);
        await harness.engraving.drawn;
        began = performance.now();
        harness.engraving.select(input.marks.findings[i % input.marks.findings.length]?.id);
        times.choice.push(performance.now() - began);
        began = performance.now();
        harness.engraving.setCursor(i * 1000);
        times.cursor.push(performance.now() - began);
      }
      return times;
    },
    [text, changed, String(ROUNDS)] as const,
  );
  line('one note changed: plan, one system drawn with its marks', result.notes);
  line('findings changed: marks alone', result.marks);
  line('a finding chosen', result.choice);
  line('playing cursor moved', result.cursor);
}

if (chromiumPath() === undefined) {
  console.error('No Chromium is installed, so nothing can be measured.');
  process.exit(1);
}
const outDir = await mkdtemp(join(tmpdir(), 'partwise-engrave-bench-'));
const root = fileURLToPath(new URL('../browser/engrave-harness', import.meta.url));
await build({
  root,
  configFile: false,
  logLevel: 'error',
  build: { outDir, emptyOutDir: true, assetsInlineLimit: 0, target: 'es2022' },
});
const server = await preview({
  root,
  configFile: false,
  logLevel: 'error',
  build: { outDir },
  preview: { port: 5395 },
});
const browser = await launchChromium();
try {
  const url = server.resolvedUrls!.local[0]!;
  const text = lengthen(SCORES.dotted!, 20);
  await loads(browser, url, text, 1280);
  await loads(browser, url, text, 360);
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.goto(url);
  await page.waitForFunction(() => window.harness !== undefined);
  await redraws(page, text, text.replace('(B4 A4) (G4 A4) A4*2!', '(B4 A4) (F#4 A4) A4*2!'));
} finally {
  await browser.close();
  await server.close();
  await rm(outDir, { recursive: true, force: true });
}
