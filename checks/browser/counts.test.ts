import { describe, expect, it } from 'vitest';
import { CAN_RUN, expectNoBarriers, LOOKS, openPage } from './page.ts';
import { onRealPage } from './stage/real.ts';

const SCREENS = [
  ['#/population', 'svg.course'],
  ['#/population/labels', '.label-item'],
  ['#/prices', '.price-list tbody tr'],
  ['#/prices/gb-first', '.price-figure svg'],
] as const;

describe.skipIf(!CAN_RUN)('counting in the page (needs a Chromium)', () => {
  const on = onRealPage();

  it.each(LOOKS)(
    'has no barrier, $viewport.width wide, $colorScheme',
    (look) => expectNoBarriers(on.browser, on.stage.url, SCREENS, look),
    300_000,
  );

  it('leads from sale to sale by arrow keys, each in words', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/prices/gb-first`);
    const marks = page.locator('.price-figure .sale');
    await marks.first().waitFor({ timeout: 60_000 });
    await page.getByLabel('Drawn through').focus();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    const said = page.locator('#tip');
    // The newest of the demo's rows of this printing, then the one before: see its sales.csv.
    await expect.poll(() => said.textContent()).toContain('on 13 May 2026');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => said.textContent()).toContain('on 25 April 2026');
    await page.keyboard.press('Home');
    await expect.poll(() => said.textContent()).toContain('on 5 January 2024');
    expect(await marks.first().evaluate((mark) => mark === document.activeElement)).toBe(true);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('takes a word on a label by keyboard, and undo takes it back', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/population/labels`);
    const before = await on.stage.textOf('population.csv');
    await page.locator('.candidate').first().waitFor({ timeout: 60_000 });
    await page.locator('.candidate').first().focus();
    await page.keyboard.press('Enter');
    const text = () => on.stage.textOf('population.csv');
    await expect.poll(text, { timeout: 20_000 }).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(text, { timeout: 20_000 }).toBe(before);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 120_000);
});
