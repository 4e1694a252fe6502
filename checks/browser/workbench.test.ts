import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Running, startServer } from '../../src/server/index.ts';
import { launch } from './chromium.ts';
import { barriers, builtPage, CAN_RUN, openPage } from './page.ts';

describe.skipIf(!CAN_RUN)('the workbench with the demo (needs a Chromium)', () => {
  let browser: Browser;
  let running: Running;
  let dataFolder: string;

  beforeAll(async () => {
    dataFolder = await mkdtemp(join(tmpdir(), 'printlore-page-'));
    running = await startServer({ dataFolder, port: 0, page: await builtPage() });
    browser = await launch();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await running?.close();
    await rm(dataFolder, { recursive: true, force: true });
  });

  it('dates the demo, answers a new claim and takes it back', async () => {
    const { page, wrongs } = await openPage(browser, running.url);
    await page.waitForSelector('.lane .ink', { timeout: 60_000 });
    expect(await page.locator('.lane').count()).toBeGreaterThanOrEqual(14);
    const count = () => page.locator('.claims li.claim').count();
    await page.waitForSelector('.claims li.claim');
    const before = await count();
    await page.locator('.add-claim').click();
    await page.waitForSelector('.claim-form input');
    await page.keyboard.type('A reader’s letter');
    await page.getByLabel('As', { exact: true }).fill('1994-03');
    await page.getByRole('button', { name: 'Add it' }).click();
    await expect.poll(count).toBe(before + 1);
    // The dating of the changed dossier arrives by itself and weighs the claim.
    await expect
      .poll(() => page.locator('.claims').textContent(), { timeout: 60_000 })
      .not.toContain('being weighed');
    await page.locator('#lanes').focus();
    await page.keyboard.press('Control+z');
    await expect.poll(count, { timeout: 10_000 }).toBe(before);
    expect(await barriers(page)).toEqual([]);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 150_000);

  it('makes a dossier of pasted notes and opens it', async () => {
    const { page, wrongs } = await openPage(browser, `${running.url}#/begin`);
    await page
      .getByLabel('Your notes')
      .fill(
        '# Korean\nno. 14 foil: pub. page 24.9.93\nno. 15 plain, checklist oct 93, seen 3/4/96',
      );
    await page.getByRole('button', { name: 'Read them' }).click();
    await page.waitForSelector('.note-lines');
    await page.getByRole('radio', { name: '3 April 1996' }).check();
    await page.getByLabel('Name of the card').fill('Quiet Otter');
    await page.getByRole('button', { name: 'Make the dossier' }).click();
    await page.getByRole('heading', { name: 'Quiet Otter', level: 1 }).waitFor();
    await page.waitForSelector('.lane .ink', { timeout: 60_000 });
    expect(await page.locator('.lane').count()).toBe(2);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 150_000);
});
