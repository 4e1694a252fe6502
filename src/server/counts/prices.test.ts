import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PricesSchema, PrintingPricesSchema } from '../../contract/index.ts';
import { startTrial, type Trial } from '../fixtures/running.ts';

describe('the prices over the wire', () => {
  let trial: Trial;
  beforeAll(async () => {
    trial = await startTrial();
  });
  afterAll(() => trial.end());

  const of = async (id: string) =>
    PrintingPricesSchema.parse((await trial.ask(`/api/prices/of/${id}`)).body);

  it('say that a dossier without a day has none', async () => {
    expect(PricesSchema.parse((await trial.ask('/api/prices')).body).on).toBeNull();
    expect((await trial.ask('/api/prices/of/pt-first')).status).toBe(404);
  });

  it('show every row of sales.csv of a printing, and why no price is learned from some', async () => {
    const folder = join(trial.root, 'demo');
    await cp('demo/dossier', folder, { recursive: true });
    await trial.ask('/api/open', { folder });
    const { on, currency, printings, backTest, leftOut } = PricesSchema.parse(
      (await trial.ask('/api/prices')).body,
    );
    expect([on, currency]).toEqual(['2026-06-30', 'EUR']);
    expect(backTest?.inside).toBeLessThanOrEqual(backTest?.sales ?? 0);
    let shown = 0;
    for (const { id, prices } of printings) {
      const { sales, prices: all } = await of(id);
      shown += sales.filter(({ perhaps }) => !perhaps).length;
      for (const { kind, odd, leftOut: why } of sales) {
        expect(odd === null).toBe(why !== null);
        if (kind !== 'sold') expect(why).not.toBeNull();
      }
      for (const { price, interval80 } of all) {
        expect(interval80[0]).toBeLessThan(price);
        expect(interval80[1]).toBeGreaterThan(price);
      }
      expect(prices[0]).toMatchObject({ service: null });
    }
    // The demo's table has 300 rows; what is not of one printing counts for none.
    expect(shown).toBeGreaterThan(250);
    expect(leftOut.some(({ why }) => why === 'an asking price is no sale')).toBe(true);
  });
});
