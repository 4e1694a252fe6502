import { describe, expect, it } from 'vitest';
import { amongRivals } from './belief.ts';

describe('outlines of which only one can be right', () => {
  it('leaves an outline without rivals as probable as it is', () => {
    expect(amongRivals(0.8, [])).toBeCloseTo(0.8, 12);
  });

  // By hand: odds 4 and 4 beside 1 that neither is right.
  it('shares between two outlines of like evidence', () => {
    expect(amongRivals(0.8, [0.8])).toBeCloseTo(4 / 9, 12);
  });

  it('never states more than one in all, however sure each is by itself', () => {
    const own = [0.999, 0.98, 1];
    const sum = own
      .map((p, i) => amongRivals(p, own.toSpliced(i, 1)))
      .reduce((all, p) => all + p, 0);
    expect(sum).toBeLessThanOrEqual(1);
    expect(sum).toBeGreaterThan(0.99);
  });
});
