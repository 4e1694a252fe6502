/**
 * Takes a picture of every screen, wide and narrow, light and dark, and of bench and desk on
 * paper, for a person to look at: `npx tsx checks/browser/looks.ts [ADDRESS] [bench]` writes them to
 * test-output/looks. Without an address the made-up dossier is shown, at bench and desk the
 * demo's copies; with `bench` nothing but the bench.
 */
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { startServer } from '../../src/server/index.ts';
import { launch } from './chromium.ts';
import { serveStage } from './stage/serve.ts';

const OUT = 'test-output/looks';
const COPY = 'hare-1';
/** Screens of counting and deciding, which the demo's desk fills. */
const DESK: readonly (readonly [name: string, hash: string, drawn: string])[] = [
  ['population', '#/population', 'svg.course'],
  ['labels', '#/population/labels', '.label-item'],
  ['prices', '#/prices', '.price-list tbody tr'],
  ['prices-page', '#/prices/gb-first', '.price-figure svg'],
  ['decide', '#/decide', '.advised-copy'],
  ['decide-copy', `#/decide/${COPY}`, '.ways tbody tr'],
  ['identify', `#/identify/${COPY}`, '.look-at'],
  ['key', '#/key', '.couplets li'],
  ['wants', '#/wants', '.wants tbody tr'],
  ['listing', '#/listing', '.listing-form'],
];
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

async function walkBench(page: Page, url: string, look: string): Promise<void> {
  await page.goto(`${url}#/bench`);
  await page.waitForSelector('.list tbody tr');
  await shoot(page, `${look}-bench`);
  await page.getByRole('link', { name: COPY }).click();
  await page.waitForSelector('.dimensions .measure', { timeout: 120_000 });
  await page.waitForSelector('.photograph image', { timeout: 60_000 });
  await shoot(page, `${look}-bench-copy`);
  await page.getByRole('button', { name: 'As taken' }).click();
  await page.getByRole('button', { name: 'Move the corners' }).click();
  await page.waitForSelector('.photograph image');
  await shoot(page, `${look}-bench-corners`);
}

async function walkDesk(page: Page, url: string, look: string): Promise<void> {
  for (const [name, hash, drawn] of DESK) {
    await page.goto(`${url}${hash}`);
    await page.waitForSelector(drawn, { timeout: 60_000 });
    await shoot(page, `${look}-${name}`);
    if (look === 'wide-light')
      await page.pdf({ path: join(OUT, `${name}.pdf`), format: 'A4', printBackground: true });
  }
  await page.getByLabel('The seller’s own words').fill('Lebre do Sino da Maré prateada, nº 31');
  await page.getByLabel('Price asked').fill('540');
  await page.getByLabel('Currency').fill('BRL');
  await page.getByLabel('From').fill('BR');
  await page.getByRole('button', { name: 'Weigh it' }).click();
  await page.waitForSelector('.candidates li', { timeout: 60_000 });
  await shoot(page, `${look}-listing-weighed`);
}

/** The bench on paper, as a PDF. */
async function printBench(page: Page, url: string): Promise<void> {
  await page.goto(`${url}#/bench/${COPY}`);
  await page.waitForSelector('.photograph image', { timeout: 60_000 });
  await page.pdf({ path: join(OUT, 'bench.pdf'), format: 'A4', printBackground: true });
}

/** A workbench over a copy of the demo dossier. */
async function serveDemo() {
  const root = mkdtempSync(join(tmpdir(), 'printlore-looks-'));
  const folder = join(root, 'dossier');
  cpSync('demo/dossier', folder, { recursive: true });
  const options = { folder, dataFolder: join(root, 'data'), port: 0, page: 'dist/web' };
  const running = await startServer(options);
  const close = async () => {
    await running.close();
    rmSync(root, { recursive: true });
  };
  return { url: running.url, close };
}

mkdirSync(OUT, { recursive: true });
const onlyBench = process.argv.includes('bench');
const given = process.argv.slice(2).find((word) => word !== 'bench');
const stage = given || onlyBench ? undefined : await serveStage('dist/web', 14);
const demo = given ? undefined : await serveDemo();
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
    const look = `${size}-${colorScheme}`;
    if (!onlyBench) await walk(page, given ?? stage?.url ?? '', look);
    if (!onlyBench) await walkDesk(page, given ?? demo?.url ?? '', look);
    await walkBench(page, given ?? demo?.url ?? '', look);
    if (look === 'wide-light') await printBench(page, given ?? demo?.url ?? '');
    await page.close();
  }
}
await browser.close();
await stage?.close();
await demo?.close();
