import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestBatches } from './batches.ts';
import { bestPurchases, fits, type Offer, type Want } from './purchases.ts';
import type { Option, Tier } from './types.ts';

const euros = (amount: number) => ({ minor: 100 * amount, currency: 'EUR' });
const tier = (name: string, minCopies: number, fee: number, postage: number): Tier => ({
  service: 'a',
  tier: name,
  fee: euros(fee),
  maxValue: null,
  upcharge: null,
  ungradedFee: null,
  minCopies,
  postage: euros(postage),
  days: 60,
});

describe('batches', () => {
  const tiers = [tier('plain', 2, 20, 10), tier('quick', 1, 30, 25)];
  const option = (name: string, expectedGain: number) =>
    ({ service: 'a', tier: name, expectedGain }) as Option;

  it('are those of full enumeration, within the budget', async () => {
    const gains = fc.array(
      fc.tuple(fc.integer({ min: -30, max: 60 }), fc.integer({ min: -30, max: 60 })),
      { minLength: 1, maxLength: 6 },
    );
    await fc.assert(
      fc.asyncProperty(gains, fc.option(fc.integer({ min: 0, max: 160 })), async (all, budget) => {
        const decisions = all.map(([plain, quick], i) => ({
          copy: `c${i}`,
          options: [option('plain', plain), option('quick', quick)],
        }));
        let best = 0;
        for (let code = 0; code < 3 ** all.length; code++) {
          const at = all.map((_, i) => Math.floor(code / 3 ** i) % 3);
          const count = (t: number) => at.filter((one) => one === t).length;
          if (count(1) === 1) continue;
          const postage = (count(1) ? 10 : 0) + (count(2) ? 25 : 0);
          if (budget !== null && 20 * count(1) + 30 * count(2) + postage > budget) continue;
          best = Math.max(
            best,
            all.reduce((sum, pair, i) => sum + (at[i] ? pair[at[i] - 1]! : 0), -postage),
          );
        }
        const found = await bestBatches(decisions, tiers, budget);
        expect(found.gain).toBeCloseTo(best, 5);
        for (const { tier: name, copies } of found.batches)
          expect(copies.length).toBeGreaterThanOrEqual(name === 'plain' ? 2 : 1);
        const sent = found.batches.flatMap(({ copies }) => copies);
        expect(new Set(sent).size).toBe(sent.length);
        if (budget !== null) expect(found.cost).toBeLessThanOrEqual(budget + 1e-6);
      }),
      { numRuns: 40 },
    );
  });
});

describe('purchases', () => {
  it('are those of full enumeration, within limits and budget', async () => {
    const printings = ['p', 'q'];
    const wanted = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 1 }), fc.integer({ min: 0, max: 50 })),
      { minLength: 1, maxLength: 3 },
    );
    const offered = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 1 }), fc.integer({ min: 1, max: 50 })),
      { maxLength: 4 },
    );
    await fc.assert(
      fc.asyncProperty(wanted, offered, fc.integer({ min: 0, max: 80 }), async (w, o, budget) => {
        const wants = w.map(
          ([p, most]): Want => ({ printing: printings[p]!, service: null, grade: null, most }),
        );
        const offers = o.map(
          ([p, cost], i): Offer => ({
            copy: `o${i}`,
            printings: [{ id: printings[p]!, p: 1 }],
            service: null,
            grade: null,
            cost,
          }),
        );
        let best = 0;
        const search = (at: number, used: number, spent: number, saved: number) => {
          if (spent > budget) return;
          best = Math.max(best, saved);
          if (at === wants.length) return;
          search(at + 1, used, spent, saved);
          offers.forEach((offer, i) => {
            const want = wants[at]!;
            if (!(used & (1 << i)) && fits(want, offer) && offer.cost <= (want.most as number))
              search(
                at + 1,
                used | (1 << i),
                spent + offer.cost,
                saved + (want.most as number) - offer.cost,
              );
          });
        };
        search(0, 0, 0, 0);
        const found = await bestPurchases(wants, offers, budget);
        // A want that is met counts a thousandth beside what is saved.
        expect(Math.abs(found.saved - best)).toBeLessThan(0.01);
        expect(found.cost).toBeLessThanOrEqual(budget + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it('fit only the very grade, and most probably the printing', () => {
    const want: Want = { printing: 'p', service: 'a', grade: '9', most: 10 };
    const offer: Offer = {
      copy: 'o',
      printings: [{ id: 'p', p: 0.6 }],
      service: 'a',
      grade: '9',
      cost: 5,
    };
    expect(fits(want, offer)).toBe(true);
    expect(fits({ ...want, grade: null }, offer)).toBe(true);
    expect(fits({ ...want, grade: '10' }, offer)).toBe(false);
    expect(fits({ ...want, service: null, grade: null }, offer)).toBe(false);
    expect(fits(want, { ...offer, printings: [{ id: 'p', p: 0.5 }] })).toBe(false);
  });
});
