import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Running, startServer } from '../../src/server/index.ts';
import { launch } from './chromium.ts';
import { barriers, builtPage, CAN_RUN, expectNoSideways, openPage } from './page.ts';

const PICTURE = 'checks/fixtures/bench/pictures/scan-bronze-300/front.jpg';
const BACK = 'demo/dossier/desk/photos/hare-1/back.jpg';
const LAMPS = 'demo/dossier/desk/photos/hare-2';

describe.skipIf(!CAN_RUN)('the bench in the page (needs a Chromium)', () => {
  let browser: Browser;
  let running: Running;
  let root: string;

  beforeAll(async () => {
    root = await mkdtemp(join(tmpdir(), 'printlore-bench-page-'));
    const folder = join(root, 'dossier');
    await cp('demo/dossier', folder, { recursive: true });
    await rm(join(folder, 'desk', 'photos'), { recursive: true });
    await mkdir(join(folder, 'desk', 'photos', 'hare-1'), { recursive: true });
    await cp(PICTURE, join(folder, 'desk', 'photos', 'hare-1', 'front.jpg'));
    await cp(BACK, join(folder, 'desk', 'photos', 'hare-1', 'back.jpg'));
    await layLamps(join(folder, 'desk', 'photos', 'hare-1'));
    const dataFolder = join(root, 'data');
    running = await startServer({ folder, dataFolder, port: 0, page: await builtPage() });
    browser = await launch();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await running?.close();
    await rm(root, { recursive: true, force: true });
  });

  it('measures a copy, and takes a mark by keyboard that undo takes away', async () => {
    const { page, wrongs } = await openPage(browser, `${running.url}#/bench`);
    await page.getByRole('link', { name: 'hare-1' }).click();
    await page.waitForSelector('.dimensions .measure', { timeout: 60_000 });
    await page.waitForSelector('.photograph image');
    const marks = () => page.locator('.marks-list li').count();
    const before = await marks();
    await page.getByRole('button', { name: 'Add a mark' }).click();
    await page.locator('.glass').focus();
    for (const key of ['Enter', 'ArrowRight', 'ArrowRight', 'Enter'])
      await page.keyboard.press(key);
    await page.getByRole('button', { name: 'Add it' }).click();
    await expect.poll(marks, { timeout: 30_000 }).toBe(before + 1);
    expect(await barriers(page)).toEqual([]);
    await page.locator('.glass').focus();
    await page.keyboard.press('Control+z');
    await expect.poll(marks, { timeout: 30_000 }).toBe(before);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 120_000);

  it('holds a loupe, leads a lamp over the relief, and swaps two pictures by keyboard', async () => {
    const { page, wrongs } = await openPage(browser, `${running.url}#/bench/hare-1`);
    await page.waitForSelector('.dimensions .measure', { timeout: 60_000 });
    const glass = page.locator('.glass').first();
    await glass.focus();
    await page.keyboard.press('l');
    await page.getByText(/^Loupe at /).waitFor();
    const held = await page.getByText(/^Loupe at /).textContent();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.getByText(/^Loupe at /).textContent()).not.toBe(held);
    await page.waitForSelector('.loupe .photograph image', { timeout: 30_000 });
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.loupe').count()).toBe(0);
    await page.getByRole('button', { name: 'Moved lamp' }).click();
    await page.waitForSelector('.lamp-sliders', { timeout: 60_000 });
    const relief = page.locator('.drawing .photograph image').first();
    await relief.waitFor({ timeout: 30_000 });
    const before = await relief.getAttribute('href');
    await glass.focus();
    await page.keyboard.press('.');
    await page.getByText('Lamp round the card: 120°').waitFor();
    await expect.poll(() => relief.getAttribute('href'), { timeout: 30_000 }).not.toBe(before);
    await page.getByRole('button', { name: 'Side by side' }).click();
    await page.waitForSelector('.panes figure + figure .photograph image', { timeout: 30_000 });
    await glass.focus();
    await page.keyboard.press('+');
    // One look for both: the other easel is as close.
    await expect.poll(() => page.locator('.panes .closer').count()).toBe(2);
    await page.keyboard.press('b');
    await expect.poll(() => page.locator('.panes figure').count()).toBe(1);
    await page.getByRole('button', { name: 'Two easels' }).click();
    await expect.poll(() => page.locator('.panes figure').count()).toBe(2);
    expect(await barriers(page)).toEqual([]);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 120_000);

  it('begins a copy with two dropped pictures and the seller’s words', async () => {
    const { page, wrongs } = await openPage(browser, `${running.url}#/bench`);
    const zone = page.locator('.drop');
    await zone.waitFor();
    const bytes = (await readFile(BACK)).toString('base64');
    const dropped = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      const part = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      data.items.add(new File([part], 'card-back.jpg', { type: 'image/jpeg' }));
      return data;
    }, bytes);
    await zone.dispatchEvent('drop', { dataTransfer: dropped });
    await page.locator('.drop input').setInputFiles(PICTURE);
    await page.getByLabel('The seller’s own words').fill('Perfect centering, no creases');
    await page.getByLabel('Its id').fill('new-one');
    await page.getByLabel('Days to send it back').fill('14');
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Examine it' }).click();
    await page.waitForSelector('.dimensions .measure', { timeout: 90_000 });
    await page.getByText('Perfect centering, no creases').waitFor();
    // Deadlines stand at their earliest reading: the first day counts.
    await page.getByText('13 days left').first().waitFor();
    const kept = await readFile(join(root, 'dossier', 'desk', 'photos', 'new-one', 'back.jpg'));
    expect(Buffer.compare(kept, await readFile(BACK))).toBe(0);
    expect(await barriers(page)).toEqual([]);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 180_000);

  it('is one page on paper, with both faces', async () => {
    const { page, wrongs } = await openPage(browser, `${running.url}#/bench/hare-1`);
    await expect
      .poll(() => page.locator('.on-paper .photograph image').count(), { timeout: 60_000 })
      .toBe(2);
    const margin = { top: '10mm', bottom: '10mm', left: '10mm', right: '10mm' };
    const pdf = await page.pdf({ format: 'A4', printBackground: true, margin });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 120_000);

  it('moves a corner and a side by keyboard, borders follow, and a narrow page can be read', async () => {
    const { page, wrongs } = await openPage(browser, `${running.url}#/bench/hare-1`, {
      viewport: { width: 390, height: 844 },
    });
    await page.waitForSelector('.drawing', { timeout: 60_000 });
    await page.getByRole('button', { name: 'As taken' }).click();
    const borders = page.locator('.found-sheet .on-screen .facts dd', { hasText: 'left' });
    const measured = await borders.textContent();
    await page.getByRole('button', { name: 'Move the outline' }).click();
    const corner = page.getByRole('button', { name: /^Corner upper left/ });
    const across = async () =>
      Number(/at ([\d.]+) across/.exec((await corner.getAttribute('aria-label')) ?? '')?.[1]);
    const before = await across();
    await corner.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    // Labels are told to a tenth of a pixel.
    expect((await across()) - before).toBeCloseTo(1.1, 5);
    await page.getByRole('button', { name: /^Left side/ }).focus();
    await page.keyboard.press('ArrowRight');
    // The left border alone is less wide.
    await expect.poll(() => borders.textContent(), { timeout: 30_000 }).not.toBe(measured);
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(await borders.textContent()).toBe(measured);
    await page.getByRole('button', { name: 'Move the frame' }).click();
    const side = await page.getByRole('button', { name: /^Frame’s left side/ }).boundingBox();
    if (!side) throw new Error('no handle');
    await page.mouse.move(side.x + 13, side.y + 13);
    await page.mouse.down();
    await page.mouse.move(side.x + 33, side.y + 13);
    await page.mouse.up();
    await expect.poll(() => borders.textContent(), { timeout: 30_000 }).not.toBe(measured);
    await expectNoSideways(page);
    expect(await barriers(page)).toEqual([]);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 120_000);
});

/** Lays small pictures under four lamps and the seller's picture beside a front: fewer pixels are measured sooner. */
async function layLamps(folder: string): Promise<void> {
  // The ball's place is told in pixels of the full pictures.
  const setup = { ...JSON.parse(await readFile(join(LAMPS, 'setup.json'), 'utf8')), ball: null };
  await writeFile(join(folder, 'setup.json'), JSON.stringify(setup));
  for (const name of [1, 2, 3, 4].map((n) => `front.light-${n}.jpg`).concat('listing.jpg'))
    await sharp(join(LAMPS, name)).resize(400).toFile(join(folder, name));
}
