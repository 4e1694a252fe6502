import { describe, expect, it } from 'vitest';
import { SOURCE_KINDS } from '../evidence/index.ts';
import { N_READINGS, priorLogOdds, priorOtherMoment, READINGS, RIGHT } from './readings.ts';

describe('prior shares of the readings', () => {
  it.each(SOURCE_KINDS)(
    'of %s put "right" before any one mistake, and nothing at nothing',
    (kind) => {
      const odds = priorLogOdds(kind);
      expect(odds).toHaveLength(N_READINGS);
      expect(odds[RIGHT]).toBe(0);
      odds.forEach((odd, r) => {
        expect(Number.isFinite(odd)).toBe(true);
        if (r !== RIGHT) expect(odd).toBeLessThan(Math.log(0.25));
      });
    },
  );

  it.each(SOURCE_KINDS)('of %s leave "another moment" possible, and rare', (kind) => {
    expect(priorOtherMoment(kind)).toBeGreaterThanOrEqual(0.06);
    expect(priorOtherMoment(kind)).toBeLessThanOrEqual(0.2);
  });

  it('differ by kind where the method says so', () => {
    const noise = READINGS.indexOf('noise');
    const of = (kind: (typeof SOURCE_KINDS)[number]) => priorLogOdds(kind)[noise]!;
    expect(of('forum')).toBeGreaterThan(of('checklist'));
    expect(of('own-observation')).toBeLessThan(of('checklist'));
  });

  it('are given anew each time, so that nobody changes them for others', () => {
    priorLogOdds('book').fill(9);
    expect(priorLogOdds('book')[RIGHT]).toBe(0);
  });
});
