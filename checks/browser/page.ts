import { existsSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { build } from 'vite';
import { expect } from 'vitest';
import { chromiumPath } from './chromium.ts';

/** Whether there is a browser; where there is none the checks are named as not run, in CI they fail. */
export const CAN_RUN = chromiumPath() !== undefined || process.env.CI === 'true';

/**
 * What every screen must be free of barriers in: wide in light, narrow in the dark. Colours do not
 * hang on widths, so that two looks tell what four would.
 */
export const LOOKS = [
  { viewport: { width: 1440, height: 900 }, colorScheme: 'light' },
  { viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
] as const;

/** The built page; built first where it has not been. */
export async function builtPage(): Promise<string> {
  if (!existsSync('dist/web/index.html')) await build({ root: 'src/web', logLevel: 'error' });
  return 'dist/web';
}

/** A page that notes everything that must not be: requests elsewhere, errors, broken policy. */
export interface Watched {
  readonly page: Page;
  readonly wrongs: readonly string[];
}

/** Opens an address and waits until lanes are drawn. */
export async function openPage(
  browser: Browser,
  url: string,
  options: BrowserContextOptions = {},
): Promise<Watched> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
  const page = await context.newPage();
  const wrongs: string[] = [];
  const { origin } = new URL(url);
  page.on('request', (request) => {
    const to = new URL(request.url());
    if (to.protocol !== 'data:' && to.origin !== origin) wrongs.push(`asked ${to.href}`);
  });
  page.on('pageerror', (error) => wrongs.push(`threw ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') wrongs.push(message.text());
  });
  await page.goto(url);
  return { page, wrongs };
}

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** What WCAG 2.2 AA forbids and axe finds on the page, in short; empty where it finds nothing. */
export async function barriers(page: Page): Promise<readonly string[]> {
  // A site opened from disk may not ask for its own style sheets, which axe would do.
  const axe = new AxeBuilder({ page }).options({ preload: false }).withTags(RULES);
  const { violations } = await axe.analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''} ${nodes[0]?.failureSummary ?? ''}`,
  );
}

/** The page can be read without scrolling sideways. */
export async function expectNoSideways(page: Page): Promise<void> {
  const [inner, outer] = await page.evaluate(() => {
    const scroller = document.querySelector('.scroller') ?? document.documentElement;
    return [
      scroller.scrollWidth - scroller.clientWidth,
      document.documentElement.scrollWidth - window.innerWidth,
    ];
  });
  expect(inner).toBeLessThanOrEqual(1);
  expect(outer).toBeLessThanOrEqual(0);
}

/** Each screen, once what it waits for is drawn, is free of barriers and of sideways scrolling. */
export async function expectNoBarriers(
  browser: Browser,
  url: string,
  screens: readonly (readonly [hash: string, drawn: string])[],
  look: BrowserContextOptions,
): Promise<void> {
  const { page, wrongs } = await openPage(browser, url, look);
  for (const [hash, drawn] of screens) {
    await page.goto(`${url}${hash}`);
    await page.locator(drawn).first().waitFor({ timeout: 60_000 });
    expect([hash, await barriers(page)]).toEqual([hash, []]);
    await expectNoSideways(page);
  }
  expect(wrongs).toEqual([]);
  await page.context().close();
}

/**
 * How many processes share a core of this machine now, at least 1: a time that a person waits grows
 * with it, and says nothing of the page. Always 1 where the system does not tell.
 */
export function sharedBy(): number {
  return Math.max(1, (loadavg()[0] ?? 0) / availableParallelism());
}

/** Processor time in milliseconds that the page's main thread has used for all its work. */
export async function mainThread(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
  };
}
