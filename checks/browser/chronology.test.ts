import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from './chromium.ts';
import { barriers, builtPage, CAN_RUN, expectNoSideways, openPage, sharedBy } from './page.ts';
import { type Served, serveStage } from './stage/serve.ts';

const SCREENS = ['', 'printings', 'products', 'sources', 'slips', 'leads', 'faults', 'begin'];

describe.skipIf(!CAN_RUN)('the page (needs a Chromium: set CHROME_PATH)', () => {
  let browser: Browser;
  let served: Served;

  beforeAll(async () => {
    served = await serveStage(await builtPage(), 14);
    browser = await launch();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  it('shows its first view within a second', { retry: 2 }, async () => {
    const { page, wrongs } = await openPage(browser, served.url);
    const shown = await page.evaluate(async () => {
      while (!document.querySelector('.lane .ink')) await new Promise(requestAnimationFrame);
      return performance.now();
    });
    const shared = sharedBy();
    process.stderr.write(
      `first view: ${Math.round(shown)} ms, a core shared by ${shared.toFixed(1)}\n`,
    );
    expect(shown).toBeLessThan(1000 * shared);
    expect(await page.locator('.lane').count()).toBe(14);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('is walked by keyboard alone: lanes, the sheet and back, zoom, keys, palette', async () => {
    const { page, wrongs } = await openPage(browser, served.url);
    await page.waitForSelector('.lane .ink');
    await page.locator('#lanes').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    const name = await page.locator('.lane.active .title').first().textContent();
    expect(await page.locator('#why-heading').textContent()).toBe(name);
    const outline = await page.locator('.lane.active').evaluate((lane) => {
      return getComputedStyle(lane).outlineStyle;
    });
    expect(outline).toBe('solid');
    const years = () => page.locator('.head-drawn svg').first().textContent();
    const before = await years();
    await page.keyboard.press('+');
    await expect.poll(years).not.toBe(before);
    await page.keyboard.press('0');
    await expect.poll(years).toBe(before);
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('why-heading');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('lanes');
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Keys' }).waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+k');
    await page.locator('.palette input').waitFor();
    await page.keyboard.type('sources');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Sources', level: 1 }).waitFor();
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it.each(['light', 'dark'] as const)(
    'has no barrier that axe finds, %s',
    async (colorScheme) => {
      const { page } = await openPage(browser, served.url, { colorScheme });
      for (const screen of SCREENS) {
        await page.goto(`${served.url}#/${screen}`);
        await page.waitForSelector(screen === '' ? '.lane .ink' : 'h1');
        await page.waitForTimeout(100);
        expect({ screen, barriers: await barriers(page) }).toEqual({ screen, barriers: [] });
      }
      const heading = () => page.locator('h1').textContent();
      for (const address of ['printings/printing-2', 'sources/checklist']) {
        const before = await heading();
        await page.goto(`${served.url}#/${address}`);
        await expect.poll(heading).not.toBe(before);
        await page.locator('.claims summary').first().click();
        expect({ address, barriers: await barriers(page) }).toEqual({ address, barriers: [] });
      }
      await page.goto(`${served.url}#/`);
      await page.locator('.add-claim').click();
      await page.waitForSelector('.claim-form input');
      expect(await barriers(page)).toEqual([]);
      await page.context().close();
    },
    120_000,
  );

  it.each([
    ['at 390 px', { viewport: { width: 390, height: 844 } }],
    ['at 200 % zoom of 1280 px', { viewport: { width: 640, height: 450 }, deviceScaleFactor: 2 }],
    ['at 200 % zoom of 1440 px', { viewport: { width: 720, height: 450 }, deviceScaleFactor: 2 }],
  ])('needs no scrolling sideways %s, and the sheet comes up from below', async (_, options) => {
    const still = { ...options, reducedMotion: 'reduce' as const };
    const { page, wrongs } = await openPage(browser, served.url, still);
    await page.waitForSelector('.lane .ink');
    await expectNoSideways(page);
    expect(await page.locator('.why-sheet').count()).toBe(0);
    await page.locator('.lane').nth(1).click();
    const box = await page.locator('.why-sheet').boundingBox();
    expect(Math.round((box?.y ?? 0) + (box?.height ?? 0))).toBe(options.viewport.height);
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    for (const screen of SCREENS.slice(1)) {
      await page.goto(`${served.url}#/${screen}`);
      await page.waitForSelector('h1');
      await expectNoSideways(page);
    }
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('moves nothing for those who want no motion', async () => {
    const options = { reducedMotion: 'reduce', viewport: { width: 390, height: 844 } } as const;
    const { page } = await openPage(browser, served.url, options);
    await page.locator('.lane').nth(1).click();
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect(moving).toBe(0);
    await page.context().close();
  });

  it('prints all lanes on paper, dark look or not, and breaks none', async () => {
    const { page } = await openPage(browser, served.url, { colorScheme: 'dark' });
    await page.waitForSelector('.lane .ink');
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.byteLength).toBeGreaterThan(10_000);
    await page.emulateMedia({ media: 'print' });
    const seen = await page.evaluate(() => ({
      frame: getComputedStyle(document.querySelector('.frame')!).display,
      ground: getComputedStyle(document.querySelector('.sheet')!).backgroundColor,
      breaks: getComputedStyle(document.querySelector('.lane')!).breakInside,
      lanes: document.querySelectorAll('.lane').length,
    }));
    expect(seen).toEqual({
      frame: 'none',
      ground: 'rgb(255, 255, 255)',
      breaks: 'avoid',
      lanes: 14,
    });
    await page.context().close();
  });

  it('explains a number when it is touched', async () => {
    const { page } = await openPage(browser, served.url);
    await page.locator('.worth .num').first().hover();
    await expect.poll(() => page.locator('#tip').textContent()).toMatch(/Of 100 days believed/);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('#tip').isVisible()).toBe(false);
    await page.context().close();
  });

  it('shows only what passes the filters, and keeps them in its address', async () => {
    const { page } = await openPage(browser, served.url);
    await page.getByRole('button', { name: 'All languages' }).click();
    await page.getByRole('menuitemcheckbox', { name: 'Korean' }).click();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.lane').count()).toBe(3);
    await page.reload();
    await page.waitForSelector('.lane');
    expect(await page.locator('.lane').count()).toBe(3);
    await page.context().close();
  });
});
