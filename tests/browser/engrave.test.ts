import { existsSync, readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { VOICES } from '../../src/score/score.ts';
import { MUSIC_SIGNS } from '../../web/build/signs.ts';
import { planBars } from '../../web/engrave/plan.ts';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import type {} from './engrave-harness/main.ts';
import { SCORES } from './engrave-harness/scores.ts';
import { type HarnessServer, openHarness, serveHarness } from './engrave-harness/serve.ts';
import { boxOf } from './open-page.ts';

/** Everything that can be shown at once. */
const EVERYTHING = {
  layers: {
    numerals: true,
    figuredBass: true,
    keys: true,
    ornaments: true,
    cadences: true,
    lyrics: true,
    findings: 'all' as const,
  },
};
const CORPUS = new URL('../../../shared/corpus/chorales/', import.meta.url);
/** Chorales of several keys, metres and densities; 283 has the most signs to the bar. */
const CHORALES = ['001', '020', '061', '119', '148', '283'];

/** Four bars, with another note in the second, and with a sharp more in the third. */
const FOUR = [
  'S: G4 A4 B4 C5 | D5 C5 B4*2! | B4 B4 A4 G4 | A4*4!',
  'A: D4 D4 D4 E4 | D4 E4 D4*2 | D4 D4 E4 E4 | F#4*4',
  'T: B3 A3 G3 G3 | A3 G3 G3*2 | G3 G3 C4 B3 | D4*4',
  'B: G3 F#3 G3 C3 | F#3 C3 G3*2 | G3 G3 A3 E3 | D3*4',
].join('\n');
const SECOND = FOUR.replace('A: D4 D4 D4 E4 | D4 E4 ', 'A: D4 D4 D4 E4 | D4 F#4 ');
const THIRD = SECOND.replace('G3 G3 C4 B3', 'G#3 G3 C4 B3');
/** The same four bars over and over, to so many. */
const longText = (bars: number) =>
  `key: G major\nmetre: 4/4\n\n${Array.from({ length: bars / 4 }, () => FOUR).join('\n\n')}\n`;

describe.skipIf(NO_CHROMIUM)('the engraver', () => {
  let browser: Browser;
  let server: HarnessServer;
  const pages = new Map<number, Page>();
  const at = (width: number) => pages.get(width)!;

  beforeAll(async () => {
    [browser, server] = await Promise.all([launchChromium(), serveHarness()]);
    for (const width of [1280, 360]) pages.set(width, await openHarness(browser, server.url, width));
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
  });

  const draw = (page: Page, text: string, options: object = EVERYTHING) =>
    page.evaluate(
      async ([source, chosen]) => {
        await window.harness.showText(source, chosen);
        window.harness.engraving.complete();
        return {
          ...window.harness.collisions(),
          systems: document.querySelectorAll('.pw-system').length,
          // What follows from another finding is told with it, and what is unwritten shows by itself.
          findings: (window.harness.review()?.findings ?? [])
            .filter(({ because, mark }) => because === undefined && mark !== undefined)
            .map(({ id }) => id),
          tagged: [...document.querySelectorAll<SVGGElement>('.pw-finding')].map(
            (mark) => mark.dataset.finding,
          ),
          overflow: document.documentElement.scrollWidth > window.innerWidth,
          signs: [...document.querySelectorAll('.pw-notes text:not(.pw-word, .pw-tag-label), .pw-sign')]
            .map((text) => text.textContent)
            .join(''),
        };
      },
      [text, options] as const,
    );

  describe.each([1280, 360])('at %i px', (width) => {
    test.each(Object.keys(SCORES))('%s: no mark covers a note or another mark', async (name) => {
      const text = SCORES[name]!;
      const drawn = await draw(at(width), text);
      expect(drawn.collisions).toEqual([]);
      expect(drawn.overflow).toBe(false);
      expect(drawn.brackets).toBe(3 * drawn.systems);
      expect(drawn.tempos).toBe(text.slice(text.indexOf('\nS:')).split('\ntempo:').length - 1);
      // Every written note has its head, every finding its tag.
      const signs = planBars(readNotation(text).score).flatMap((bar) =>
        VOICES.flatMap((voice) => bar.signs[voice]),
      );
      expect(drawn.heads).toBe(signs.filter((sign) => sign.kind !== 'gap' && !sign.shared).length);
      expect(new Set(drawn.tagged)).toEqual(new Set(drawn.findings));
      // The build leaves every other sign out of the music font.
      const used = [...new Set(drawn.signs)].filter((sign) => sign >= '\ue000' && sign <= '\uf8ff');
      expect(used.length).toBeGreaterThan(2);
      expect(used.filter((sign) => !MUSIC_SIGNS.includes(sign))).toEqual([]);
    });
  });

  test.skipIf(!existsSync(CORPUS)).each(CHORALES)('chorale %s: no mark covers a note', async (number) => {
    const file = new URL(`${number}.mxl`, CORPUS);
    const bytes = readFileSync(file).toString('base64');
    for (const width of [1280, 360]) {
      const collisions = await at(width).evaluate(
        async ([data, options]) => {
          await window.harness.showFile(data, options);
          window.harness.engraving.complete();
          return window.harness.collisions().collisions;
        },
        [bytes, EVERYTHING] as const,
      );
      expect(collisions).toEqual([]);
    }
  });

  test('boxesOf and hitTest know where the drawn heads stand', async () => {
    const page = at(1280);
    await draw(page, SCORES.simple!);
    const found = await page.evaluate(() => {
      const { engraving } = window.harness;
      const [soprano] = engraving.boxesOf('S@20160');
      const drawn = [...document.querySelectorAll<SVGGElement>('.vf-sign')].find(
        (sign) => sign.dataset.tone === 'S@20160',
      )!;
      const x = Number(drawn.querySelector('.vf-notehead > text')!.getAttribute('x'));
      const left = drawn.ownerSVGElement!.getBoundingClientRect().left + x;
      const middle = { x: soprano!.left + soprano!.width / 2, y: soprano!.top + soprano!.height / 2 };
      return {
        offBy: Math.abs(left - soprano!.left),
        hit: engraving.hitTest(middle.x, middle.y),
        above: engraving.hitTest(middle.x, middle.y - 10),
        outside: engraving.hitTest(middle.x, 100_000),
      };
    });
    expect(found.offBy).toBeLessThan(1);
    // The third crotchet of the soprano is B4, the 34th staff place from C0.
    expect(found.hit).toMatchObject({ staff: 'treble', voice: 'S', at: 20160, place: 34, tone: 'S@20160' });
    expect(found.above).toMatchObject({ at: 20160, place: 36 });
    expect(found.outside).toBeUndefined();
  });

  test('a tag that is chosen washes its notes, tells the page, and is let go by a second touch', async () => {
    const page = at(1280);
    const { findings } = await draw(page, SCORES.faults!);
    await page.evaluate(() => window.harness.selected.splice(0));
    const box = await boxOf(page.locator('.pw-finding .pw-tag').first());
    const state = () =>
      page.evaluate(() => ({
        selected: [...window.harness.selected],
        chosen: [...document.querySelectorAll<SVGGElement>('.pw-finding.pw-chosen')].map(
          (mark) => mark.dataset.finding,
        ),
        washes: document.querySelectorAll('.pw-behind .pw-wash').length,
        concerned: document.querySelectorAll('.pw-concerned').length,
      }));
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    const first = await state();
    expect(first.selected).toEqual([findings[0]]);
    expect(first.chosen).toEqual([findings[0]]);
    expect(first.washes).toBe(4);
    expect(first.concerned).toBe(4);
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await expect
      .poll(() => state())
      .toEqual({
        selected: [findings[0], undefined],
        chosen: [],
        washes: 0,
        concerned: 0,
      });
  });

  test('only the system that changed is drawn again; choosing draws nothing', async () => {
    const page = at(360);
    const text = SCORES.flats!;
    await draw(page, text);
    const kept = await page.evaluate(async (changed) => {
      const pictures = () => [...document.querySelectorAll('.pw-system svg')];
      const before = pictures();
      window.harness.engraving.select(window.harness.review()?.findings[0]?.id);
      window.harness.engraving.highlight(['S@0']);
      const chosen = pictures().every((svg, i) => svg === before[i]);
      await window.harness.showText(changed, { layers: { ...window.harness.notes } });
      window.harness.engraving.complete();
      const bare = pictures();
      return { chosen, systems: bare.length };
    }, text);
    expect(kept.chosen).toBe(true);
    expect(kept.systems).toBeGreaterThan(2);
    const redrawn = await page.evaluate(
      async ([first, second]) => {
        const layers = { ...window.harness.notes };
        await window.harness.showText(first, { layers });
        window.harness.engraving.complete();
        const barsOf = (system: Element) => [...system.querySelectorAll('.vf-bar')];
        const before = new Set(barsOf(document.body));
        await window.harness.showText(second, { layers });
        window.harness.engraving.complete();
        return [...document.querySelectorAll('.pw-system')].map((system) =>
          barsOf(system).map((bar) => !before.has(bar)),
        );
      },
      // The last bar's alto moves to its third; the bar before has no say in it.
      [text, text.replace('Eb4 Eb4 D4 | Eb4*3!', 'Eb4 Eb4 D4 | Bb3*3!')] as const,
    );
    expect(redrawn.slice(0, -1).flat()).not.toContain(true);
    expect(redrawn.at(-1)).toContain(true);
  });

  test.each([1280, 360])(
    'what is kept of a drawing stands where a new one has it, at %i px',
    async (width) => {
      const page = at(width);
      for (const [before, after] of [
        // One note another: its bar alone; an accidental that sets all of its system differently; a bar more.
        [SCORES.simple!, SCORES.simple!.replace('| C5 B4 A4*2!', '| B4 B4 A4*2!')],
        [SCORES.simple!, SCORES.simple!.replace('D4 | E4 G4 F#4*2!', 'D#4 | E#4 G4 F#4*2!')],
        [SCORES.flats!, SCORES.flats!.replace('Eb4 Eb4 D4 | Eb4*3!', 'Eb4 (Eb4 F4) D4 | Bb3*3!')],
      ] as const) {
        expect(after).not.toBe(before);
        const [kept, fresh] = await page.evaluate(
          async ([first, second, other]) => {
            const show = async (text: string) => {
              await window.harness.showText(text, {});
              window.harness.engraving.complete();
            };
            const places = () =>
              [...document.querySelectorAll('.pw-notes text, .pw-notes path, .pw-notes rect, .pw-tag')].map(
                (ink) => {
                  const { x, y, width: wide, height } = ink.getBoundingClientRect();
                  return [x, y, wide, height].map((value) => Math.round(value * 4) / 4).join(' ');
                },
              );
            // Systems begin where they did while that will do; only where they begin alike they can be compared.
            const breaks = () =>
              [...document.querySelectorAll('.pw-system')].map(
                (system) => system.querySelectorAll('.vf-bar').length,
              );
            const { collisions } = window.harness;
            const drawn = () => ({ breaks: breaks(), places: places().sort(), ...collisions() });
            await show(first);
            await show(second);
            const keptDrawing = drawn();
            await show(other);
            await show(second);
            return [keptDrawing, drawn()] as const;
          },
          [before, after, SCORES.minor!] as const,
        );
        if (width === 1280) expect(kept.breaks).toEqual(fresh.breaks);
        if (`${kept.breaks}` === `${fresh.breaks}`) expect(kept).toEqual(fresh);
      }
    },
  );

  test.each([16, 128])(
    'a note written in %i bars has one bar drawn, and all set right at rest',
    async (bars) => {
      const found = await at(1280).evaluate(
        async ([line, second, third]) => {
          const { harness } = window;
          const systems = line.split('\n\n');
          const text = (changed: readonly string[]) =>
            [...systems.slice(0, 1), ...changed, ...systems.slice(1 + changed.length)].join('\n\n');
          const barsDrawn = () => [...document.querySelectorAll('.vf-bar')];
          await harness.showText(text([]), {});
          harness.engraving.complete();
          const marks = harness.input(harness.read(text([]))).marks;
          const counts: number[] = [];
          let collisions: unknown[] = [];
          for (const changed of [second, third]) {
            const before = new Set(barsDrawn());
            const { width, layers } = harness.input(harness.read(text([])));
            // As the page does: the marks are the last review's until there are new ones.
            harness.engraving.update({
              score: harness.read(text([changed])),
              marks,
              marksToCome: true,
              hold: true,
              width,
              layers,
            });
            counts.push(barsDrawn().filter((bar) => !before.has(bar)).length);
            await harness.showText(text([changed]), { hold: true });
            collisions = [...collisions, ...harness.collisions().collisions];
          }
          const places = () =>
            [...document.querySelectorAll('.pw-notes text, .pw-notes path, .pw-notes rect, .pw-tag')]
              .map((ink) => {
                const { x, y: top, width: wide, height } = ink.getBoundingClientRect();
                // Systems out of sight may stand where they are guessed to.
                const y = top - ink.closest('.pw-system')!.getBoundingClientRect().top;
                return [x, y, wide, height].map((value) => Math.round(value * 4) / 4).join(' ');
              })
              .sort();
          await harness.showText(text([third]), {});
          const settled = places();
          await harness.showText('S: C4 |\n');
          await harness.showText(text([third]), {});
          return { counts, collisions, settled, fresh: places() };
        },
        [longText(bars), SECOND, THIRD] as const,
      );
      expect(found.counts).toEqual([1, 1]);
      expect(found.collisions).toEqual([]);
      expect(found.settled).toEqual(found.fresh);
    },
  );

  test('caret, ghost note, playing cursor and chosen stretch are shown and taken away', async () => {
    const page = at(1280);
    await draw(page, SCORES.simple!);
    const counts = await page.evaluate(() => {
      const { engraving } = window.harness;
      const count = () =>
        ['.pw-caret', '.pw-ghost', '.pw-cursor', '.pw-stretch'].map(
          (name) => document.querySelectorAll(name).length,
        );
      engraving.setCaret({ voice: 'T', at: 10080 });
      engraving.setGhost({ voice: 'T', at: 10080, place: 26 });
      engraving.setCursor(5040);
      engraving.setStretch({ from: 0, until: 40320 });
      const shown = count();
      engraving.setCaret(undefined);
      engraving.setGhost(undefined);
      engraving.setCursor(undefined);
      engraving.setStretch(undefined);
      return { shown, gone: count() };
    });
    expect(counts).toEqual({ shown: [1, 1, 1, 1], gone: [0, 0, 0, 0] });
  });

  test('a hidden container, without width, keeps its drawing; an empty score has none', async () => {
    const page = at(1280);
    await draw(page, SCORES.simple!);
    const systems = await page.evaluate(
      async ([text]) => {
        const count = () => document.querySelectorAll('.pw-system svg').length;
        await window.harness.showText(text, { width: 0 });
        const hidden = count();
        await window.harness.showText('title: Nothing yet');
        return { hidden, empty: count() };
      },
      [SCORES.flats!] as const,
    );
    expect(systems).toEqual({ hidden: 1, empty: 0 });
  });

  test('the drawing is hidden from screen readers and asks nothing of other places', async () => {
    const page = at(1280);
    await draw(page, SCORES.minor!);
    const hidden = await page.evaluate(() =>
      document.querySelector('.pw-sheet')?.getAttribute('aria-hidden'),
    );
    expect(hidden).toBe('true');
    const outside = await page.evaluate(() =>
      performance.getEntriesByType('resource').filter(({ name }) => !name.startsWith(location.origin)),
    );
    expect(outside).toEqual([]);
  });
});
