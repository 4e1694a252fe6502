import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { startServer } from '../src/server/index.ts';
import { findChromium } from '../tools/checks/chromium.js';

/** Takes the pictures of the README from the page itself: `npm run build && npx tsx demo/pictures.ts`. */
const PICTURES = join(import.meta.dirname, '..', 'docs', 'pictures');
const FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'];
const ADDRESS = '#/?printing=kr-monthly';

async function take(browser: Browser, url: string, colorScheme: 'light' | 'dark', file: string) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme });
  await page.goto(`${url}${ADDRESS}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.getByText('probability').first().waitFor({ timeout: 120_000 });
  for (const unfinished of ['not dated yet', 'First answer', 'Dating …']) {
    const words = page.getByText(unfinished).first();
    await words.waitFor({ state: 'hidden', timeout: 120_000 });
  }
  await page.waitForTimeout(1000);
  await page.screenshot({ path: join(PICTURES, file) });
  await page.close();
}

const dataFolder = mkdtempSync(join(tmpdir(), 'printlore-pictures-'));
const executablePath = findChromium(process.env);
if (executablePath === undefined) throw new Error('a Chromium is needed to take the pictures');
const workbench = await startServer({ dataFolder, port: 0 });
const browser = await chromium.launch({ executablePath, args: FLAGS });
try {
  await take(browser, workbench.url, 'light', 'chronology.png');
  await take(browser, workbench.url, 'dark', 'chronology-dark.png');
} finally {
  await browser.close();
  await workbench.close();
  rmSync(dataFolder, { recursive: true });
}
