import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../src/chronicle/index.ts';
import { answerTo } from '../cli/answer.ts';
import { launch } from './chromium.ts';
import { barriers, CAN_RUN, expectNoSideways, LOOKS, openPage } from './page.ts';

const PAGES = [
  'index.html',
  'tell.html',
  'sources.html',
  'revisions.html',
  'corrections.html',
  'data.html',
  'printings/kr-monthly.html',
  'printings/gb-first.html',
];
const WORDY = ['index.html', 'tell.html', 'printings/kr-monthly.html'];

/** What became of the fonts that the letters of a page asked for: each state once. */
async function fontStates(page: Page): Promise<string[]> {
  return await page.evaluate(async () => {
    await document.fonts.ready;
    const states = [...document.fonts].map(({ status }) => status);
    return [...new Set(states.filter((status) => status !== 'unloaded'))];
  });
}

describe.skipIf(!CAN_RUN)('the published site (needs a Chromium)', () => {
  let browser: Browser;
  let folder: string;
  const address = (page: string) => pathToFileURL(join(folder, 'site', page)).href;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'printlore-site-'));
    const words = ['publish', 'demo/dossier', '--out', join(folder, 'site'), '--prices', '--proof'];
    expect((await answerTo(words)).err).toBe('');
    browser = await launch();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it.each(LANGUAGES)(
    'opens from disk in %s, wide in light and narrow in the dark',
    async (language) => {
      for (const look of LOOKS) {
        const { page, wrongs } = await openPage(browser, address(`${language}/index.html`), look);
        // One code makes the pages of all languages: their words may still run over or lack a name.
        for (const name of language === 'en' ? PAGES : WORDY) {
          await page.goto(address(`${language}/${name}`));
          expect(await fontStates(page)).toEqual(['loaded']);
          expect(await barriers(page), `${language}/${name}`).toEqual([]);
          await expectNoSideways(page);
        }
        expect(wrongs).toEqual([]);
        await page.context().close();
      }
    },
  );

  it('is read without script, and a link of the story leads to its figure', async () => {
    const options = { javaScriptEnabled: false };
    const { page } = await openPage(browser, address('en/printings/kr-monthly.html'), options);
    await page.locator('.story .value').click();
    expect(page.url()).toContain('#release.kr-monthly');
    await page.getByRole('link', { name: '한국어' }).click();
    expect(page.url()).toContain('/ko/printings/kr-monthly.html');
    await page.context().close();
  });
});
