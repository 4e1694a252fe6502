import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from './chromium.ts';
import { builtPage, CAN_RUN, openPage } from './page.ts';
import { type Served, serveStage } from './stage/serve.ts';

describe.skipIf(!CAN_RUN)('a thousand lanes (needs a Chromium)', () => {
  let browser: Browser;
  let served: Served;

  beforeAll(async () => {
    served = await serveStage(await builtPage(), 1000);
    browser = await launch();
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  it('scroll without dropped frames, and only those in view are in the document', {
    retry: 2,
  }, async () => {
    const { page, wrongs } = await openPage(browser, served.url);
    await page.waitForSelector('.lane .ink');
    await page.waitForTimeout(500);
    const gaps = await page.evaluate(async () => {
      const scroller = document.querySelector('.scroller')!;
      const found: number[] = [];
      let before = performance.now();
      for (let frame = 0; frame < 180; frame++) {
        scroller.scrollTop += 90;
        const now = await new Promise<number>((drawn) => requestAnimationFrame(drawn));
        found.push(now - before);
        before = now;
      }
      return found.slice(5).sort((a, b) => a - b);
    });
    const at = (share: number) => gaps[Math.floor(gaps.length * share)] ?? 0;
    process.stderr.write(
      `frames: median ${at(0.5).toFixed(1)} ms, 90 % ${at(0.9).toFixed(1)} ms\n`,
    );
    // A frame is 16.7 ms at 60 a second: the middle frame must be on time (25 is half a frame late).
    // One in ten may take 100 ms, since this browser draws without a graphics card beside other work:
    // measured 16.7 ms and, on two cores under a load of 14, 67 to 100 ms.
    expect(at(0.5)).toBeLessThan(25);
    expect(at(0.9)).toBeLessThan(100);
    expect(await page.locator('.lane').count()).toBeLessThan(80);
    await page.locator('#lanes').focus();
    await page.keyboard.press('End');
    await expect
      .poll(() => page.locator('.lane.active').getAttribute('aria-rowindex'))
      .toBe('1001');
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('are all there on paper', async () => {
    const { page } = await openPage(browser, served.url);
    await page.waitForSelector('.lane .ink');
    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => page.locator('.lane').count()).toBe(1000);
    await page.context().close();
  });
});
