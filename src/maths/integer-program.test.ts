import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BinaryProgram, chooseBest } from './integer-program.ts';

/** The best of all choices, one after the other. */
function enumerated({ variables, gain, limits }: BinaryProgram): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let bits = 0; bits < 2 ** variables; bits++) {
    const sum = (terms: BinaryProgram['gain']) =>
      terms.reduce((total, [i, factor]) => total + (bits & (1 << i) ? factor : 0), 0);
    if (limits.every((limit) => sum(limit.sum) <= limit.most + 1e-9))
      best = Math.max(best, sum(gain));
  }
  return best;
}

describe('the best choice', () => {
  it('is that of full enumeration', async () => {
    const factor = fc.integer({ min: -20, max: 40 }).map((n) => n / 4);
    const programs = fc.integer({ min: 1, max: 9 }).chain((variables) => {
      const terms = fc.array(factor, { minLength: variables, maxLength: variables });
      const limit = fc.record({ sum: terms, most: fc.integer({ min: 0, max: 20 }) });
      return fc.record({ gain: terms, limits: fc.array(limit, { minLength: 1, maxLength: 4 }) });
    });
    await fc.assert(
      fc.asyncProperty(programs, async ({ gain, limits }) => {
        const numbered = (all: number[]) => all.map((one, i) => [i, one] as const);
        const program = {
          variables: gain.length,
          gain: numbered(gain),
          limits: limits.map(({ sum, most }) => ({ sum: numbered(sum), most })),
        };
        const solved = await chooseBest(program);
        // HiGHS keeps limits to 1e-6; factors are quarters.
        expect(solved.gain).toBeCloseTo(enumerated(program), 5);
        expect(solved.bound).toBeGreaterThanOrEqual(solved.gain);
        expect(solved.bound - solved.gain).toBeLessThan(1e-5);
      }),
      { numRuns: 60 },
    );
  });

  it('is refused where nothing keeps within the limits, or a factor is no number', async () => {
    const gain = [[0, 1]] as const;
    await expect(
      chooseBest({ variables: 1, gain, limits: [{ sum: [[0, 1]], most: -1 }] }),
    ).rejects.toThrow(RangeError);
    await expect(chooseBest({ variables: 1, gain: [[0, Number.NaN]], limits: [] })).rejects.toThrow(
      RangeError,
    );
  });
});
