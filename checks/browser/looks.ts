/**
 * Takes a picture of every screen, wide and narrow, light and dark, for a person to look at:
 * `npx tsx checks/browser/looks.ts [ADDRESS]` writes them to test-output/looks. Without an address
 * the made-up dossier is shown.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { launch } from './chromium.ts';
import { serveStage } from './stage/serve.ts';

const OUT = 'test-output/looks';
const SCREENS: readonly (readonly [string, string])[] = [
  ['chronology', ''],
  ['printings', '#/printings'],
  ['products', '#/products'],
  ['sources', '#/sources'],
  ['slips', '#/slips'],
  ['leads', '#/leads'],
  ['faults', '#/faults'],
  ['begin', '#/begin'],
];

async function shoot(page: Page, name: string): Promise<void> {
  await page.waitForTimeout(150);
  await page.screenshot({ path: join(OUT, `${name}.png`) });
}

async function firstLink(page: Page, screen: string): Promise<void> {
  await page.locator(`a[href*="#/${screen}/"]`).nth(4).click();
}

async function walk(page: Page, url: string, look: string): Promise<void> {
  for (const [name, hash] of SCREENS) {
    await page.goto(`${url}${hash}`);
    await page.waitForSelector('h1');
    if (name === 'chronology') await page.waitForSelector('.lane .ink', { timeout: 60_000 });
    await page.waitForTimeout(250);
    await shoot(page, `${look}-${name}`);
    if (name === 'printings' || name === 'sources' || name === 'products') {
      await firstLink(page, name);
      await shoot(page, `${look}-${name}-page`);
    }
  }
  await page.goto(url);
  await page.waitForSelector('.lane');
  await page.locator('.lane').nth(4).click();
  await page.locator('.claim details summary').first().click();
  await page.locator('.add-claim').click();
  await page.waitForSelector('.claim-form input');
  await shoot(page, `${look}-why`);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+k');
  await page.waitForSelector('.palette input');
  await page.keyboard.type('ko');
  await shoot(page, `${look}-palette`);
  await page.keyboard.press('Escape');
  await page.goto(`${url}#/printings`);
  await page.getByRole('button', { name: 'Add a printing' }).click();
  await page.waitForSelector('.add-row input');
  await shoot(page, `${look}-add`);
  await page.keyboard.press('Escape');
  await page.goto(`${url}#/begin`);
  await page
    .locator('textarea')
    .fill(
      'no. 14 foil, wave 1 – pub. page 24.9.93; checklist oct 93\nask about the tin\nkorean 15, seen 3/4/96',
    );
  await page.getByRole('button', { name: 'Read them' }).click();
  await page.waitForSelector('.note-lines, .paste .trouble');
  await shoot(page, `${look}-recognised`);
}

mkdirSync(OUT, { recursive: true });
const given = process.argv[2];
const served = given ? undefined : await serveStage('dist/web', 14);
const browser = await launch();
for (const [size, width, height] of [
  ['wide', 1440, 900],
  ['narrow', 390, 844],
] as const) {
  for (const colorScheme of ['light', 'dark'] as const) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme });
    page.on('console', (message) => {
      if (message.type() !== 'info') process.stderr.write(`${message.text()}\n`);
    });
    page.on('pageerror', (error) => process.stderr.write(`${error.message}\n`));
    await walk(page, given ?? served?.url ?? '', `${size}-${colorScheme}`);
    await page.close();
  }
}
await browser.close();
await served?.close();
