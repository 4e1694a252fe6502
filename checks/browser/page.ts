import { existsSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { build } from 'vite';
import { expect } from 'vitest';
import { chromiumPath } from './chromium.ts';

/** Whether there is a browser; where there is none the checks are named as not run, in CI they fail. */
export const CAN_RUN = chromiumPath() !== undefined || process.env.CI === 'true';

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
  const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
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

/**
 * How much slower this machine runs now than the one the figures were written for, at least 1: the
 * time of a fixed loop of square roots, 80 ms there at best. Other work on the same
 * cores makes it grow, and the figures with it.
 */
export async function slownessOf(page: Page): Promise<number> {
  const took = await page.evaluate(() => {
    const began = performance.now();
    let sum = 0;
    for (let n = 0; n < 20_000_000; n++) sum += Math.sqrt(n);
    return sum > 0 ? performance.now() - began : 0;
  });
  return Math.max(1, took / 80);
}
