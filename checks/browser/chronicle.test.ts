import { describe, expect, it } from 'vitest';
import { barriers, CAN_RUN, expectNoSideways, LOOKS, openPage } from './page.ts';
import { onRealPage } from './stage/real.ts';

describe.skipIf(!CAN_RUN)('the chronicle in the page (needs a Chromium)', () => {
  const on = onRealPage();

  it('shows a page before it leaves, publishes it by keyboard, and leaves it whole when stopped', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/chronicle`);
    await page.locator('.preview iframe').waitFor({ timeout: 120_000 });
    await page.getByLabel('Page', { exact: true }).selectOption('printings/gb-second.html');
    await page.locator('.preview').getByLabel('Language').selectOption('pt');
    const frame = page.frameLocator('.preview iframe');
    await frame.locator('html[lang="pt"] h1').waitFor({ timeout: 120_000 });
    expect(await frame.locator('script').count()).toBe(0);
    await page.getByRole('button', { name: 'Document', exact: true }).click();
    await page.getByLabel('Document', { exact: true }).selectOption('key');
    await page.getByAltText('Key on a page, page 1 of 1').waitFor({ timeout: 120_000 });
    // Without the frame, in which no script of axe can run; its pages are looked at as a site.
    for (const { viewport, colorScheme } of LOOKS) {
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme });
      expect(await barriers(page)).toEqual([]);
      await expectNoSideways(page);
    }
    await page.getByRole('button', { name: 'Site', exact: true }).click();

    const publish = page.getByRole('button', { name: 'Publish' });
    const status = page.locator('.writing [role="status"]');
    await publish.focus();
    await page.keyboard.press('Enter');
    await page.locator('.writing progress').waitFor();
    await expect
      .poll(() => status.textContent(), { timeout: 60_000 })
      .toMatch(/^Revision 1 .*\d+ files/);
    await page.locator('.revisions summary').waitFor();
    const written = () => on.stage.textOf('../dossier-site/index.html');
    const before = await written();

    await page.getByLabel('Show what copies may fetch').check();
    await publish.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Stop' }).click();
    await expect.poll(() => status.textContent(), { timeout: 20_000 }).toContain('Stopped');
    expect(await written()).toBe(before);
    expect(wrongs).toEqual([]);
    await page.context().close();
  }, 240_000);
});
