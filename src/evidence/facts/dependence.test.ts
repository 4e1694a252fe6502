import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dependence } from './dependence.ts';

const assumed = { errorRate: 0.2, copyRate: 0.8, prior: 0.2 };
const same = (right: number) => ({ same: true, right, falseValues: 20 });

describe('dependence of two sources', () => {
  it('is the prior where nothing is compared', () => {
    expect(dependence([], assumed)).toBeCloseTo(0.2, 12);
  });

  it('rises much by a shared wrong value, a little by a shared right one, falls by a difference', () => {
    const wrong = dependence([same(0)], assumed);
    const right = dependence([same(1)], assumed);
    expect(wrong).toBeGreaterThan(0.8);
    expect(right).toBeGreaterThan(0.2);
    expect(right).toBeLessThan(0.25);
    expect(dependence([{ ...same(1), same: false }], assumed)).toBeCloseTo(0.05 / 1.05, 2);
  });

  it('falls as a shared value becomes more probably right', () => {
    const p = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(p, p, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        const gap = dependence([same(less)], assumed) - dependence([same(more)], assumed);
        expect(gap).toBeGreaterThanOrEqual(-1e-12);
      }),
    );
  });
});
