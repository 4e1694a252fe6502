import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from './chromium.ts';
import { builtPage, CAN_RUN, openPage } from './page.ts';
import { type Served, serveStage } from './stage/serve.ts';

describe.skipIf(!CAN_RUN)('claims and notes in the page (needs a Chromium)', () => {
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

  it('adds a claim by keyboard, says so aloud, takes it back and makes it again', async () => {
    const { page, wrongs } = await openPage(browser, served.url);
    await page.waitForSelector('.claims li.claim');
    const count = () => page.locator('.claims li.claim').count();
    const before = await count();
    await page.locator('.add-claim').focus();
    await page.keyboard.press('Enter');
    await page.waitForSelector('.claim-form input');
    await page.keyboard.type('A letter from the printer');
    for (let at = 0; at < 3; at++) await page.keyboard.press('Tab');
    await page.keyboard.type('1993-09~');
    await expect
      .poll(() => page.locator('.claim-form .hint').first().textContent())
      .toBe('It means about September 1993.');
    await page.keyboard.press('Enter');
    await expect.poll(count).toBe(before + 1);
    await expect
      .poll(() => page.locator('output.said').textContent())
      .toBe('Add a claim of A letter from the printer: done.');
    await page.locator('#lanes').focus();
    await page.keyboard.press('Control+z');
    await expect.poll(count).toBe(before);
    await expect
      .poll(() => page.locator('output.said').textContent())
      .toBe('Undone: Add a claim of A letter from the printer.');
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(count).toBe(before + 1);
    await page.keyboard.press('Control+z');
    await expect.poll(count).toBe(before);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('changes and withdraws a claim in place', async () => {
    const { page } = await openPage(browser, served.url);
    // Once the dating is there the claims stand in their order.
    await page.waitForSelector('.claims .chance');
    const first = page.locator('.claims li').first();
    await first.locator('summary').click();
    await first.getByRole('button', { name: 'Change' }).click();
    const value = page.getByLabel('As', { exact: true });
    await value.fill('1993-13');
    await page.getByRole('button', { name: 'Change it' }).click();
    expect(await page.locator('.form-trouble').textContent()).toMatch(/^The date is not one/);
    await value.fill('1993-12');
    await page.getByRole('button', { name: 'Change it' }).click();
    await expect.poll(() => page.locator('.claims').textContent()).toContain('December 1993');
    const count = () => page.locator('.claims li.claim').count();
    const before = await count();
    await page.locator('.claims li.claim summary').first().click();
    await page.getByRole('button', { name: 'Withdraw' }).first().click();
    await expect.poll(count).toBe(before - 1);
    await page.context().close();
  });

  it('shows notes line by line, with a day of two readings left open', async () => {
    const { page, wrongs } = await openPage(browser, `${served.url}#/begin`);
    await page.getByLabel('Your notes').fill('no. 14 foil …\nask about the tin\n15 seen 3/4/96');
    await page.getByRole('button', { name: 'Read them' }).click();
    await page.waitForSelector('.note-lines');
    expect(await page.locator('.note-line').count()).toBe(3);
    expect(await page.locator('.note-line.silent').textContent()).toContain('ask about the tin');
    const open = page.getByRole('radio', { name: 'leave it open' });
    expect(await open.isChecked()).toBe(true);
    await page.getByRole('radio', { name: '3 April 1996' }).check();
    await expect.poll(() => page.locator('.summary').textContent()).not.toContain('two ways');
    await page.getByLabel('Name of the card').fill('Tin Kingfisher');
    const sent = page.waitForRequest((request) => request.url().endsWith('/api/begin'));
    await page.getByRole('button', { name: 'Make the dossier' }).click();
    const body = (await sent).postDataJSON();
    expect(body.title).toBe('Tin Kingfisher');
    expect(JSON.stringify(body.changes)).toContain('"1996-04-03"');
    expect(wrongs).toEqual([]);
    await page.context().close();
  });
});
