/** Which line sings which voice: said first on the page and at the desk, and given out by hand, in a real browser. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8 } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../server/app.ts';
import { type MarkingDesk, openMarkingDesk } from '../../server/desk/marking-desk.ts';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import { builtPage } from '../support/page.ts';
import { notes, partwise } from '../support/partwise.ts';
import { dropFiles, openPage, pasteText, ready } from './open-page.ts';

const HIGH = ['q:C5 q:D5 q:E5 q:C5', 'q:D5 q:B4 h:C5'].map((bar) => notes(bar));
const SECOND = ['q:G4 q:G4 q:G4 q:G4', 'q:A4 q:G4 h:G4'].map((bar) => notes(bar));
const THIRD = ['q:E4 q:D4 q:C4 q:E4', 'q:D4 q:D4 h:E4'].map((bar) => notes(bar));
const LOW = ['q:C3 q:B2 q:C3 q:C3', 'q:F3 q:G3 h:C3'].map((bar) => notes(bar));
const FLUTE = ['q:A5 q:B5 q:A5 q:B5', 'q:A5 q:G5 h:A5'].map((bar) => notes(bar));
/** Five instruments: nothing says which of them are the voices. */
const WINDS = partwise({ Oboe: HIGH, Flute: FLUTE, Clarinet: SECOND, Horn: THIRD, Tuba: LOW });
/** Four staves that are called nothing in particular. */
const STAVES = partwise({ 'Staff 1': HIGH, 'Staff 2': SECOND, 'Staff 3': THIRD, 'Staff 4': LOW });

describe.skipIf(NO_CHROMIUM)('voices by hand', () => {
  let folder: string;
  let desk: MarkingDesk;
  let server: Server;
  let address: string;
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-voices-'));
    desk = await openMarkingDesk(join(folder, 'desk.sqlite'), { threads: 1 });
    server = createServer(createApp({ page: await builtPage(), desk }));
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    browser = await launchChromium();
  }, 180_000);
  afterEach(async () => {
    await page?.context().close();
  });
  afterAll(async () => {
    await browser?.close();
    server?.closeAllConnections();
    server?.close();
    await desk?.close();
    if (folder) rmSync(folder, { recursive: true, force: true });
  });

  /** Where something stands in the column beside the stave, from its top. */
  const topOf = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((element) => element.getBoundingClientRect().top);

  it('opens on the page a file whose voices can’t be told, says so first, and is put right', async () => {
    page = await openPage(browser, address);
    await dropFiles(page, [{ name: 'winds.musicxml', bytes: strToU8(WINDS) }]);
    await page.locator('.voices-read').waitFor();
    await ready(page);
    const form = page.locator('.voices-read .voices-form');
    await expect.poll(() => page.locator('.voices-read').textContent()).toContain('Oboe');
    await expect.poll(() => form.evaluate((details) => (details as HTMLDetailsElement).open)).toBe(true);
    expect(await topOf('.voices-read')).toBeLessThan(await topOf('.verdict'));
    const chosen = () =>
      form.locator('select').evaluateAll((all) =>
        all.map((one) => {
          const select = one as HTMLSelectElement;
          return select.selectedOptions[0]?.textContent?.trim().replace(/ \(.*/, '');
        }),
      );
    await expect.poll(() => chosen()).toEqual(['Oboe', 'Flute', 'Clarinet', 'Horn']);
    await form.locator('select[name=B]').selectOption({ label: 'Tuba (7 notes, B2 to G3)' });
    await form.locator('select[name=A]').selectOption({ label: 'Clarinet (7 notes, G4 to A4)' });
    await form.locator('select[name=T]').selectOption({ label: 'Horn (7 notes, C4 to E4)' });
    await expect.poll(chosen).toEqual(['Oboe', 'Clarinet', 'Horn', 'Tuba']);
    await expect.poll(() => page.locator('.voices-read').textContent()).toContain('chosen by hand');
    await page.locator('#tab-text').click();
    const text = await page.locator('#notation').inputValue();
    expect(text.split('\n').filter((line) => /^[SATB]:/.test(line))).toEqual([
      'S: C5 D E C | D B4 C5*2 ||',
      'A: G4 G G G | A G G*2 ||',
      'T: E4 D C E | D D E*2 ||',
      'B: C3 B2 C3 C | F G C*2 ||',
    ]);
  });

  it('says on the page, before what was found, that the voices were a guess', async () => {
    page = await openPage(browser, address);
    await dropFiles(page, [{ name: 'staves.musicxml', bytes: strToU8(STAVES) }]);
    await page.locator('.voices-read').waitFor();
    await expect.poll(() => page.locator('.voices-read').textContent()).toContain('taken from the top');
    expect(await topOf('.voices-read')).toBeLessThan(await topOf('.verdict'));
    await expect.poll(() => page.locator('.reader-remarks').count()).toBe(0);
  });

  it('opens a tune in ABC, dropped or pasted, with what reads it loaded only then', async () => {
    page = await openPage(browser, address);
    const loaded = () =>
      page.evaluate(
        () => performance.getEntriesByType('resource').filter(({ name }) => /\.js$/.test(name)).length,
      );
    const before = await loaded();
    const abc = 'X:1\nT:Orchard\nM:4/4\nL:1/4\nK:G\nG A B c | d2 HB2 |]\n';
    await dropFiles(page, [{ name: 'orchard.abc', bytes: strToU8(abc) }]);
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Orchard');
    await expect.poll(() => loaded()).toBeGreaterThan(before);
    await pasteText(page, abc.replace('Orchard', 'Meadow'));
    await expect.poll(() => page.locator('.sheet-head h1').textContent()).toBe('Meadow');
    await page.locator('#tab-text').click();
    await expect.poll(() => page.locator('#notation').inputValue()).toContain('S: G4 A B C5 | D*2 B4*2! ||');
  });

  it('gives them out at the desk, for one script and for the whole stack', async () => {
    page = await openPage(browser, `${address}desk/`, { bare: true, width: 1360 });
    await page.fill('input[name=name]', 'Winds');
    await page.click('text=Make the stack');
    await page.locator('.drop').waitFor();
    const files = ['4101', '4102'].map((number) => ({
      name: `${number}.musicxml`,
      mimeType: 'text/xml',
      buffer: Buffer.from(number === '4101' ? WINDS : WINDS.replace('<octave>5', '<octave>4')),
    }));
    await page.locator('.drop input[type=file]').first().setInputFiles(files);
    await page.locator('.notice', { hasText: 'files taken in' }).waitFor({ timeout: 60_000 });
    await page.locator('table.queue a').first().click();
    const form = page.locator('.voices-read form');
    // A file that was refused asks at once; where the voices were told the form is shut.
    await form.waitFor();
    const give = async (button: string) => {
      for (const [voice, part] of Object.entries({ S: 'Oboe', A: 'Clarinet', T: 'Horn', B: 'Tuba' })) {
        const select = form.locator(`select[name=${voice}]`);
        const option = select.locator('option', { hasText: part });
        await select.selectOption((await option.getAttribute('value'))!);
      }
      await form.locator('button', { hasText: button }).click();
    };
    await give('Read this script so');
    await page.locator('.notice', { hasText: 'Read again' }).waitFor({ timeout: 60_000 });
    await page.locator('.score svg').first().waitFor();
    await page.keyboard.press('n');
    await expect.poll(() => page.locator('.script-head .aside').textContent()).toContain('4102');
    await expect.poll(() => page.locator('.score svg').count()).toBe(0);
    await give('Read the whole stack so');
    await page.locator('.notice', { hasText: 'the rest of the stack follows' }).waitFor({ timeout: 60_000 });
    await page.locator('.score svg').first().waitFor();
    await expect.poll(() => page.locator('.voices-read').textContent()).toContain('"Flute" was set aside');
    expect(await topOf('.voices-read')).toBeLessThan(await topOf('.score svg'));
  }, 180_000);
});
