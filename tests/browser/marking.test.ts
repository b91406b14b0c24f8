/**
 * An evening at the marking desk, in real Chromium: thirty invented scripts from dropped files to printed sheets, with
 * the service killed on the way. With PICTURES=1 it renews the pictures in fixtures/pictures.
 */
import type { ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium, NO_CHROMIUM } from '../support/chromium.ts';
import { openWindow, startService } from '../support/desk-window.ts';
import { builtPage } from '../support/page.ts';
import { BRIEF_TEXT, plantedStack } from '../support/planted-stack.ts';
import { boxOf } from './open-page.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const PICTURES = fileURLToPath(new URL('../../fixtures/pictures', import.meta.url));
const SCRIPTS = 30;

describe.skipIf(NO_CHROMIUM)('the marking desk', () => {
  const files = plantedStack({ candidates: SCRIPTS, seed: 7 });
  let folder: string;
  let built: string;
  let browser: Browser;
  let page: Page;
  let service: ChildProcess;
  let address: string;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'partwise-marking-'));
    built = await builtPage();
    ({ child: service, address } = await startService(built, join(folder, 'desk.sqlite')));
    browser = await launchChromium();
    page = await openPage();
  }, 180_000);
  afterAll(async () => {
    await browser?.close();
    service?.kill('SIGKILL');
    if (folder) rmSync(folder, { recursive: true, force: true });
  });

  const openPage = (): Promise<Page> => openWindow(browser, address);

  async function picture(name: string): Promise<void> {
    if (process.env.PICTURES !== '1') return;
    mkdirSync(PICTURES, { recursive: true });
    await page.screenshot({ path: join(PICTURES, `${name}.png`) });
  }

  async function go(hash: string): Promise<void> {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
  }

  const findings = () => page.locator('.finding');
  /** Opens a finding; the desk may have chosen it by itself, and a click would close it again. */
  async function choose(finding: Locator): Promise<void> {
    const head = finding.locator('.finding-head');
    // One that comes from the same slip as others is folded with them.
    if (!(await head.isVisible()))
      await page.locator('.finding-group', { has: finding }).locator('.group-fold').click();
    if ((await head.getAttribute('aria-expanded')) !== 'true') await head.click();
  }
  const notice = () => page.locator('.notice');

  it('takes thirty files dropped on it, broken and hostile ones among them', async () => {
    await page.fill('input[name=name]', 'Year 12, Orchard lane');
    await page.setInputFiles('input[name=brief]', {
      name: 'brief.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from(BRIEF_TEXT),
    });
    await page.click('text=Make the stack');
    await page.locator('.drop').waitFor();
    await page.evaluate(
      (dropped) => {
        const data = new DataTransfer();
        for (const { name, base64 } of dropped) {
          const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
          data.items.add(new File([bytes], name));
        }
        document
          .querySelector('.drop')!
          .dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
      },
      files.map(({ name, bytes }) => ({ name, base64: Buffer.from(bytes).toString('base64') })),
    );
    await notice().filter({ hasText: 'files taken in' }).waitFor({ timeout: 90_000 });
    const rows = page.locator('table.queue tbody tr');
    await expect.poll(() => rows.count()).toBe(SCRIPTS);
    await expect
      .poll(() => page.locator('tr.unreadable').count())
      .toBe(files.filter((file) => file.broken).length);
    // Names full of markup are words here, nothing else.
    await expect.poll(() => page.locator('table.queue td b, table.queue td img').count()).toBe(0);
    await page.locator('.notice button').click();
    await picture('desk-queue');
  }, 120_000);

  it('is worked through from the keyboard', async () => {
    const first = page.locator('table.queue a').first();
    await first.focus();
    await page.keyboard.press('Enter');
    await page.locator('.score svg').first().waitFor();
    await expect.poll(() => findings().count()).toBeGreaterThan(2);
    await picture('desk-script');
    // Agree, overrule with a reason, count as a query, remark: all without a mouse, none waiting for the other.
    // It begins at the first finding that nobody has decided.
    await expect.poll(() => findings().first().getAttribute('class')).toContain('chosen');
    await page.locator('.finding.chosen .reason').fill('As sung in class.');
    await page.locator('.finding.chosen .decide button').nth(1).click();
    await page.locator('.finding.overruled').first().waitFor({ state: 'attached' });
    await page.keyboard.press('a');
    await page.locator('.finding.agreed').first().waitFor({ state: 'attached' });
    await page.keyboard.press('2');
    await page.keyboard.press('r');
    await page.keyboard.type('Sing this bar slowly, no hurry on the open vowels.');
    await page.keyboard.press('Enter');
    await page.locator('.own-remarks li', { hasText: 'open vowels' }).waitFor();
    await page.keyboard.press('m');
    await page.keyboard.type('7.5');
    await page.keyboard.press('Enter');
    await page.locator('.criterion', { hasText: '7.5 of' }).waitFor();
    await page.keyboard.press('m');
    await picture('desk-decided');
  }, 60_000);

  it('overrules for the whole class, in every script', async () => {
    await choose(page.locator('.finding:not(.overruled)').first());
    const name = (await page.locator('.finding.chosen .finding-name').textContent())!
      .trim()
      .split('\n')[0]!
      .trim();
    await page.keyboard.press('Shift+O');
    await page.locator('.finding.chosen .for-all button', { hasText: 'wherever this rule' }).click();
    await notice().filter({ hasText: 'whole class' }).waitFor();
    await expect
      .poll(() => page.locator('.finding', { hasText: 'overruled for all' }).count())
      .toBeGreaterThan(0);
    const whose = () => page.locator('.script-head h1').textContent();
    const first = await whose();
    await page.keyboard.press('n');
    await expect.poll(whose).not.toBe(first);
    const others = page.locator('.finding').filter({ hasText: name });
    for (let i = 0; i < (await others.count()); i++) {
      await expect.poll(() => others.nth(i).locator('.standing').textContent()).toBe('overruled for all');
    }
    await page.keyboard.press('p');
    await page.locator('.own-remarks li').first().waitFor();
  }, 60_000);

  it('keeps every decision that was shown when the service is killed, and says so while it is away', async () => {
    const shown = await page.locator('.finding').evaluateAll((items) => items.map((item) => item.className));
    service.kill('SIGKILL');
    await choose(findings().last());
    await page.keyboard.press('a');
    await page.locator('.notice.wrong', { hasText: 'does not answer' }).waitFor();
    const port = Number(new URL(address).port);
    ({ child: service, address } = await startService(built, join(folder, 'desk.sqlite'), port));
    await page.reload();
    await page.locator('.score svg').first().waitFor();
    const now = await page.locator('.finding').evaluateAll((items) => items.map((item) => item.className));
    const plain = (names: string[]) => names.map((name) => name.replace(' chosen', '').trim());
    expect(plain(now)).toEqual(plain(shown));
    await expect.poll(() => page.locator('.own-remarks li', { hasText: 'open vowels' }).count()).toBe(1);
    await expect.poll(() => page.locator('.criterion', { hasText: '7.5 of' }).count()).toBe(1);
  }, 90_000);

  it('two tabs on one script do not overwrite each other', async () => {
    const other = await openPage();
    await other.goto(page.url());
    await other.locator('.score svg').first().waitFor();
    await choose(page.locator('.finding.agreed').first());
    await page.locator('.finding.chosen .severities button', { hasText: 'remark' }).click();
    await page.locator('.finding.chosen .severities [aria-pressed=true]', { hasText: 'remark' }).waitFor();
    await choose(other.locator('.finding').first());
    await other.keyboard.press('o');
    await other.locator('.notice.wrong', { hasText: 'another window' }).waitFor();
    // It has fetched what stands now, so that the next decision is made on that.
    await other.keyboard.press('o');
    await other.locator('.finding.overruled').first().waitFor();
    await other.context().close();
    await page.reload();
    await page.locator('.score svg').first().waitFor();
  }, 60_000);

  it('lays scripts side by side, shows the class, and asks about likeness without accusing', async () => {
    await go('#/stack/1/moderation/0/chords');
    await page.locator('.side-by-side article svg').first().waitFor();
    await go('#/stack/1/class');
    await page.locator('.board svg').first().waitFor();
    // The notes that a bar is shown for are marked in it.
    await expect.poll(() => page.locator('.board figure').first().locator('.pw-finding').count()).toBe(1);
    await expect
      .poll(() => page.locator('h2').allTextContents())
      .toContain('What went wrong, the commonest first');
    await picture('desk-class');
    await go('#/stack/1/likeness');
    await page.locator('.pair').first().waitFor();
    await expect.poll(() => page.locator('.caution').textContent()).toContain('a question, not an answer');
    // The bars in notation, side by side: of either script, with whose they are and what is the same.
    await page.locator('.pair').first().getByRole('button', { name: 'Lay the bars side by side' }).click();
    const like = page.locator('.pair').first().locator('.like-bars figure');
    await like.nth(1).locator('svg').first().waitFor();
    const [one, other] = await like.locator('figcaption').allTextContents();
    expect(one).toMatch(/bars? .*: the same in /);
    expect(other!.split(': ').at(-1)).toBe(one!.split(': ').at(-1));
    const [a, b] = [await boxOf(like.nth(0)), await boxOf(like.nth(1))];
    expect(Math.abs(a.y - b.y)).toBeLessThan(2);
    expect(b.x).toBeGreaterThan(a.x);
  }, 60_000);

  it('prints a sheet for each pupil', async () => {
    await go('#/stack/1/sheets');
    const readable = files.filter((file) => !file.broken).length;
    await page.locator(`.sheets[data-count="${readable}"]`).waitFor({ timeout: 60_000 });
    await page.locator('.sheet svg').nth(readable).waitFor();
    await expect.poll(() => page.locator('.sheet').first().textContent()).toContain('open vowels');
    await expect.poll(() => page.locator('.sheet').first().textContent()).not.toContain('As sung in class');
    await expect
      .poll(() => page.locator('.unseen-count').textContent())
      .toMatch(/Nobody has looked at \d+ of these/);
    await expect.poll(() => page.locator('.full-list').count()).toBe(0);
    await picture('desk-sheets');
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    // One A4 page a pupil; with every mark listed, one or more behind each.
    expect(pages).toBe(readable);
    await page.getByLabel('every mark, on a second page').check();
    await page.locator('.full-list .unseen').first().waitFor({ timeout: 60_000 });
    await expect
      .poll(() => page.locator('.full-list .unseen').first().textContent())
      .toContain('your teacher has not decided');
    await page.getByLabel('every mark, on a second page').uncheck();
  }, 120_000);

  it('carries what was decided over to the next draft, and asks where it is not sure', async () => {
    await go('#/stack/1');
    const link = page.locator('table.queue tbody tr:not(.unreadable) a').first();
    await link.waitFor();
    const candidate = (await link.textContent())!.trim();
    const { bytes } = files.find((file) => file.candidate === candidate)!;
    await page.setInputFiles('.drop input[type=file]', {
      name: `${candidate}-draft2.xml`,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(bytes),
    });
    await notice().filter({ hasText: '1 file taken in' }).waitFor();
    const rows = page.locator('table.queue tbody tr', { has: page.getByText(candidate, { exact: true }) });
    await rows.nth(1).locator('a').click();
    await page.locator('h1', { hasText: `${candidate}, draft 2` }).waitFor();
    await page.locator('.carried li.carried').first().waitFor();
    await expect.poll(() => page.locator('.finding.overruled').count()).toBeGreaterThan(0);
    const asked = page.locator('.carried li.asked', { hasText: 'open vowels' });
    await asked.locator('button', { hasText: 'Carry over' }).click();
    const remark = page.locator('.own-remarks li', { hasText: 'open vowels' });
    await remark.waitFor();
    await picture('desk-next-draft');
    await page.keyboard.press('u');
    await remark.waitFor({ state: 'detached' });
    const carried = page.locator('.carried li.carried');
    const before = await carried.count();
    await carried.first().locator('button', { hasText: 'Drop' }).click();
    await expect.poll(() => carried.count()).toBe(before - 1);
    await page.keyboard.press('u');
    await expect.poll(() => carried.count()).toBe(before);
  }, 60_000);

  it('lets the settings of a stack be changed, and no two people overwrite each other', async () => {
    await go('#/stack/1/settings');
    const brief = page.locator('textarea[name=brief]');
    await expect.poll(() => brief.inputValue()).toBe(BRIEF_TEXT);
    await page.fill('input[name=name]', 'Year 12, second draft');
    // Somebody else gives a pattern meanwhile.
    await page.evaluate(async () => {
      const { stack } = await (await fetch('/api/desk/stacks/1')).json();
      await fetch('/api/desk/stacks/1', {
        method: 'PUT',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({
          revision: stack.revision,
          name: stack.name,
          pattern: '{candidate}-draft{draft}',
        }),
      });
    });
    const keep = page.locator('.settings button', { hasText: 'Keep' });
    await keep.click();
    await page.locator('.notice.wrong', { hasText: 'keep again, and both hold' }).waitFor();
    await keep.click();
    await notice().filter({ hasText: 'The settings are kept' }).waitFor();
    await expect.poll(() => page.locator('.stack-name').textContent()).toBe('Year 12, second draft');
    await expect.poll(() => page.inputValue('input[name=pattern]')).toBe('{candidate}-draft{draft}');
    await page.fill('textarea[name=scheme]', '{"name": ');
    await keep.click();
    await page.locator('.notice.wrong', { hasText: 'The mark scheme' }).waitFor();
    await expect.poll(() => page.inputValue('textarea[name=scheme]')).toBe('{"name": ');
  }, 60_000);

  it('is for everyone: axe finds nothing wrong', async () => {
    await page.evaluate(AXE);
    for (const [view, hash] of [
      ['stacks', '#/'],
      ['queue', '#/stack/1'],
      ['script', '#/script/1'],
      ['class', '#/stack/1/class'],
      ['likeness', '#/stack/1/likeness'],
      ['settings', '#/stack/1/settings'],
      ['moderation', '#/stack/1/moderation/0/chords'],
      ['differences', '#/stack/1/differences'],
      ['sheets', '#/stack/1/sheets/0/marks/1'],
    ] as const) {
      await go(hash);
      await page.locator(`main.view-${view} :is(h1, h2)`).first().waitFor();
      await page.waitForTimeout(150);
      const wrong = await page.evaluate(
        'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }).then((r) => r.violations.map((v) => v.id + ": " + v.nodes.map((n) => n.html.slice(0, 140)).join(" | ")))',
      );
      expect(wrong, hash).toEqual([]);
    }
  }, 120_000);
});
