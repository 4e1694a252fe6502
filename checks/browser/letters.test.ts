import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { CAN_RUN, openPage } from './page.ts';
import { onRealPage } from './stage/real.ts';

/** Slices of a shipped font that the page has fetched so far. */
async function slices(page: Page, script: 'jp' | 'kr'): Promise<number> {
  return page.evaluate(
    (name) =>
      performance
        .getEntriesByType('resource')
        .filter((one) => one.name.includes(`noto-sans-${name}`)).length,
    script,
  );
}

/** The families that draw a text on the page, by the browser's own account; the system's as such. */
async function fontsOf(page: Page, selector: string): Promise<readonly string[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('DOM.enable');
  await session.send('CSS.enable');
  const { root } = await session.send('DOM.getDocument');
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector });
  const { fonts } = await session.send('CSS.getPlatformFontsForNode', { nodeId });
  const families = fonts.map((font) => (font.isCustomFont ? font.familyName : 'of the system'));
  return families.map(
    (name) => /^(Noto Sans \w+|Newsreader|of the system)/.exec(name)?.[0] ?? name,
  );
}

describe.skipIf(!CAN_RUN)('letters of East Asia (need a Chromium)', () => {
  const on = onRealPage();

  it('of the demo are drawn by the shipped Korean font, of which few slices are fetched', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/products/ipmun-sangja`);
    await page.getByRole('heading', { level: 1, name: '나인펜 입문 상자' }).waitFor();
    // The blanks between the words are Newsreader's.
    await expect
      .poll(() => fontsOf(page, 'h1'), { timeout: 20_000 })
      .toEqual(['Newsreader', 'Noto Sans KR']);
    // 124 slices in all; a title of eight letters needs six at most, with its series a few more.
    expect(await slices(page, 'kr')).toBeLessThan(12);
    expect(await slices(page, 'jp')).toBe(0);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('are fetched when they are first typed, kana and Han letters in the Japanese forms', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/begin`);
    const notes = page.getByLabel('Your notes');
    await notes.waitFor();
    await page.waitForTimeout(500);
    expect((await slices(page, 'jp')) + (await slices(page, 'kr'))).toBe(0);
    await notes.fill('湿原の便り 1998年8月');
    await expect.poll(() => slices(page, 'jp'), { timeout: 20_000 }).toBeGreaterThan(0);
    expect(await slices(page, 'jp')).toBeLessThan(12);
    expect(await slices(page, 'kr')).toBe(0);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });
});
