import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { barriers, CAN_RUN, openPage } from './page.ts';
import { onRealPage } from './stage/real.ts';

describe.skipIf(!CAN_RUN)('the page over real files (needs a Chromium)', () => {
  const on = onRealPage();

  it('marks the lanes of copies held, sure or not, and no others', async () => {
    const { page, wrongs } = await openPage(on.browser, on.stage.url);
    await page.waitForSelector('.lane .ink', { timeout: 60_000 });
    const marked = await page
      .locator('.lane:has(.held)')
      .evaluateAll((lanes) =>
        lanes.map((lane) => [
          lane.getAttribute('data-printing'),
          lane.querySelector('.held')?.getAttribute('aria-label'),
        ]),
      );
    // desk/copies.csv of the demo: one of either wave, two that are sure, one only on offer.
    expect(Object.fromEntries(marked)).toEqual({
      'gb-first': 'you may hold a copy',
      'gb-second': 'you may hold a copy',
      'kr-monthly': 'you hold a copy',
      'gb-annual': 'you hold a copy',
    });
    expect(await page.locator('.lane').count()).toBeGreaterThan(10);
    await page.goto(`${on.stage.url}#/printings/kr-monthly`);
    await expect
      .poll(() => page.locator('.held-words').textContent())
      .toContain('You hold a copy.');
    await page.goto(`${on.stage.url}#/printings/br-foil`);
    await page.getByRole('heading', { level: 1, name: /Portuguese/ }).waitFor();
    expect(await page.locator('.held-words').count()).toBe(0);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('adds a printing by keyboard from the palette, and undo gives the file back', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/printings`);
    await page.getByRole('heading', { name: 'Printings', level: 1 }).waitFor();
    const before = await on.stage.textOf('printings.csv');
    await page.keyboard.press('Control+k');
    await page.locator('.palette input').waitFor();
    await page.keyboard.type('add a printing');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'Add a printing' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.type('ko');
    await page.keyboard.press('Tab');
    await page.keyboard.type('Road Tin');
    await page.keyboard.press('Tab');
    await page.keyboard.type('KR');
    await page.keyboard.press('Tab');
    await page.keyboard.type('RT-2');
    await page.keyboard.press('Tab');
    await page.keyboard.type('foil');
    await expect.poll(() => page.getByLabel('Id').inputValue()).toBe('ko-road-tin-rt-2-foil');
    await page.keyboard.press('Enter');
    const heading = page.getByRole('heading', { name: 'Korean, Road Tin', level: 1 });
    await heading.waitFor();
    const added = 'ko-road-tin-rt-2-foil,tidebell-hare,ko,KR,Road Tin,RT-2,foil,,,,,,,,,,,\n';
    await expect.poll(() => on.stage.textOf('printings.csv')).toBe(before + added);
    await expect
      .poll(() => said(page))
      .toBe('Add the printing Korean, Road Tin, RT-2, foil: done.');
    await page.keyboard.press('Control+z');
    await expect.poll(() => on.stage.textOf('printings.csv'), { timeout: 10_000 }).toBe(before);
    await page.getByRole('heading', { name: 'No such printing' }).waitFor();
    // What the page had just asked of the printing that went is answered by 404.
    expect(wrongs.filter((wrong) => !wrong.includes('404'))).toEqual([]);
    await page.context().close();
  });

  it('takes no id that is in use or was given up, and a product of the dossier by its title', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/printings`);
    const before = await on.stage.textOf('printings.csv');
    await page.getByRole('button', { name: 'Add a printing' }).click();
    const dialog = page.getByRole('dialog', { name: 'Add a printing' });
    await dialog.getByRole('combobox', { name: 'Product' }).fill('Ninefen Road Box');
    await dialog.getByLabel('Language').fill('fi');
    await expect.poll(() => dialog.getByLabel('Id').inputValue()).toBe('fi-road-box');
    for (const id of ['kr-monthly', 'kr-january', 'kr-road']) {
      await dialog.getByLabel('Id').fill(id);
      await dialog.getByRole('button', { name: 'Add it' }).click();
      expect(await dialog.locator('.form-trouble').textContent()).toBe(`The id ${id} is taken.`);
    }
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog.count()).toBe(0);
    expect(await on.stage.textOf('printings.csv')).toBe(before);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it('adds a product from its screen', async () => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/products`);
    const before = await on.stage.textOf('products.csv');
    await page.getByRole('button', { name: 'Add a product' }).click();
    const dialog = page.getByRole('dialog', { name: 'Add a product' });
    await dialog.getByLabel('Title').waitFor();
    await page.keyboard.type('Pudełko zimowe');
    await dialog.getByLabel('List price').fill('12,50');
    await page.keyboard.press('Enter');
    expect(await dialog.locator('.form-trouble').textContent()).toMatch(/^A price is a number/);
    await dialog.getByLabel('List price').fill('12.50');
    await dialog.getByLabel('Currency').fill('PLN');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Pudełko zimowe', level: 1 }).waitFor();
    const id = (await page.evaluate(() => location.hash)).replace('#/products/', '');
    const added = `${id},Pudełko zimowe,,,,,12.50,PLN\n`;
    await expect.poll(() => on.stage.textOf('products.csv')).toBe(before + added);
    await expect.poll(() => said(page)).toBe('Add the product Pudełko zimowe: done.');
    await page.keyboard.press('Control+z');
    await expect.poll(() => on.stage.textOf('products.csv'), { timeout: 10_000 }).toBe(before);
    expect(wrongs).toEqual([]);
    await page.context().close();
  });

  it.each([
    ['What the file has', '1999-02-05'],
    ['What I wrote', '1999-02-06'],
  ])('asks where a row was edited on disk meanwhile: %s', async (choice, stands) => {
    const { page, wrongs } = await openPage(on.browser, `${on.stage.url}#/printings/fi-supplement`);
    const original = await on.stage.textOf('claims.csv');
    const row = original.split('\n').find((line) => line.startsWith('fi-supplement,,qm-archive'));
    expect(row).toContain(',1994-03,');
    const claim = page.locator('li.claim').filter({ hasText: 'Quenby Marl product archive' });
    await claim.locator('summary').first().click();
    await claim.getByRole('button', { name: 'Change' }).first().click();
    await page.getByLabel('As', { exact: true }).fill('1999-02-06');
    const outside = original.replace(row!, row!.replace(',1994-03,', ',1999-02-05,'));
    await on.stage.write('claims.csv', outside);
    // The page has read the edit before the form is sent: it is asked about all the same.
    await expect.poll(() => said(page), { timeout: 20_000 }).toMatch(/edited by another program/);
    await page.getByRole('button', { name: 'Change it' }).click();
    const dialog = page.getByRole('dialog', { name: 'The file was edited meanwhile' });
    await dialog.waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(await dialog.locator('tbody tr').allTextContents()).toEqual([
      'value1999-02-051999-02-06',
    ]);
    expect(await on.stage.textOf('claims.csv')).toBe(outside);
    await dialog.getByRole('button', { name: choice }).click();
    const wanted = original.replace(row!, row!.replace(',1994-03,', `,${stands},`));
    await expect.poll(() => on.stage.textOf('claims.csv')).toBe(wanted);
    await expect.poll(() => dialog.count()).toBe(0);
    expect(wrongs).toEqual([]);
    await page.context().close();
    await on.stage.write('claims.csv', original);
  });
});

async function said(page: Page): Promise<string | null> {
  return await page.locator('output.said').textContent();
}
