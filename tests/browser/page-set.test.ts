/** An exercise that comes in a link: opened, its given notes locked, its helps as allowed, and handed in. */
import type { Download, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../src/brief/brief.ts';
import { HELPS, type Help } from '../../src/brief/helps.ts';
import { linkTo } from '../../src/set/link.ts';
import { NO_CHROMIUM } from '../support/chromium.ts';
import { ready, servedSite } from './open-page.ts';

// Its first chord is given in all voices; what follows has parallel octaves waiting to be written.
const BRIEF = `task: complete the alto, tenor and bass
profile: chorale
title: Weir
tempo: 66
key: C major
metre: 4/4
S: E5 D5 C5 D5 | E5 D5 C5*2! ||
A: G4 ?*3 | ?*4 ||
T: C4 ?*3 | ?*4 ||
B: C3 ?*3 | ?*4 ||
`;

function hashOf(without: readonly Help[], titles: readonly string[] = ['Weir']): string {
  const made = linkTo(
    titles.map((title) => ({ ...readBrief(BRIEF.replace('Weir', title)).brief, without: [...without] })),
  );
  if (!made.ok) throw new Error(made.message);
  return made.hash;
}

async function contentOf(download: Promise<Download>): Promise<string> {
  return Buffer.concat((await (await (await download).createReadStream()).toArray()) as Buffer[]).toString();
}

describe.skipIf(NO_CHROMIUM)('an exercise in a link', () => {
  const site = servedSite();
  let page: Page;

  const title = (): Promise<string | null> => page.locator('.sheet-head h1').textContent();
  const text = async (): Promise<string> => {
    await page.locator('#tab-text').click();
    return page.locator('#notation').inputValue();
  };
  async function follow(hash: string): Promise<void> {
    page = await site.visit({ hash });
    await ready(page);
  }

  it('opens with what was given locked, note by note, and never reaches the server', async () => {
    const asked: string[] = [];
    page = await site.visit();
    page.on('request', (request) => asked.push(request.url()));
    const hash = hashOf([]);
    await page.evaluate((to) => location.assign(`#${to}`), hash);
    await expect.poll(title).toBe('Weir');
    await ready(page);
    expect(asked.filter((url) => url.includes(hash.slice(4, 40)))).toEqual([]);
    expect(new URL(page.url()).hash).toBe('#write');
    // Writing begins at the first empty beat; the given chord before it and the tune stay.
    await page.waitForFunction(() => document.activeElement?.id === 'stave');
    await page.keyboard.press('g');
    await expect.poll(text).toMatch(/B: C3 G/);
    await page.locator('#stave').focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('Delete');
    await page.locator('.notice.refused').waitFor();
    await expect.poll(() => page.locator('.notice').textContent()).toContain('was given, so it is locked');
    await expect.poll(() => text()).toMatch(/B: C3 G/);
  });

  it('goes on where it was left when the link is followed again', async () => {
    await follow(hashOf([]));
    await page.waitForFunction(() => document.activeElement?.id === 'stave');
    await page.keyboard.press('g');
    await expect.poll(text).toMatch(/B: C3 G/);
    await page.waitForFunction(() => document.querySelector('.kept')?.textContent === 'kept in this browser');
    await page.evaluate((to) => location.assign(`#${to}`), hashOf([]));
    await expect.poll(() => page.url()).toMatch(/#write$/);
    await expect.poll(() => text()).toMatch(/B: C3 G/);
    await page.locator('nav a[href="#shelf"]').click();
    await expect.poll(() => page.locator('main .view').getByText('Weir', { exact: true }).count()).toBe(1);
  });

  it('may hold several exercises, the first on the stave and all on the shelf', async () => {
    await follow(hashOf([], ['Weir one', 'Weir two', 'Weir three']));
    await expect.poll(title).toBe('Weir one');
    await page.locator('nav a[href="#shelf"]').click();
    for (const name of ['Weir one', 'Weir two', 'Weir three'])
      await page.locator('main .view').getByText(name, { exact: true }).first().waitFor();
  });

  it('in a controlled sitting gives no help, and says so on the page and on what is handed in', async () => {
    await follow(hashOf(HELPS));
    await expect.poll(title).toBe('Weir');
    await page.locator('.sheet-head .sitting', { hasText: 'Controlled sitting' }).waitFor();
    // Octaves with the tune, which the page would mark.
    await page.locator('#tab-text').click();
    await page
      .locator('#notation')
      .fill(BRIEF.split('\n').slice(2).join('\n').replace('B: C3 ?*3 |', 'B: C3 D3 C3 D3 |'));
    for (const tab of ['marks', 'style', 'chord', 'summary']) {
      await page.locator(`#tab-${tab}`).click();
      await page.locator('#side', { hasText: 'sets this exercise without this help' }).waitFor();
    }
    await expect.poll(() => page.locator('#tab-marks').textContent()).not.toMatch(/\d/);
    await expect.poll(() => page.locator('.stave svg .pw-finding, .stave svg .pw-tag').count()).toBe(0);
    await expect.poll(() => page.locator('.transport button').count()).toBe(0);
    await expect.poll(() => page.locator('#caret-words').textContent()).not.toMatch(/C major|tonic/);
    await page.locator('#stave').focus();
    await page.keyboard.press('Space');
    await page.locator('.notice', { hasText: 'without playback' }).waitFor();

    await page.locator('nav a[href="#check"]').click();
    await page.locator('.report .sitting', { hasText: 'Controlled sitting' }).waitFor();
    const points = await page.locator('.check-item h2').allTextContents();
    expect(points.join()).toMatch(/What was given is unchanged/);
    expect(points.join()).not.toMatch(/Faults|Queries|cadence/);
    await expect.poll(() => page.getByText('Take the brief away').count()).toBe(0);
    const report = page.waitForEvent('download');
    await page.getByText('Save it as text').click();
    await expect.poll(() => contentOf(report)).toMatch(/^Last check: Weir\nControlled sitting/);
  });

  it('says what is wrong with a link that was cut short, and opens the page all the same', async () => {
    page = await site.visit();
    await page.evaluate((to) => location.assign(`#${to}`), hashOf([]).slice(0, -20));
    await page.locator('.notice.failed', { hasText: 'damaged or was cut short' }).waitFor();
    await ready(page);
  });
});
