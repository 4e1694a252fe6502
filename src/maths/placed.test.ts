import fc from 'fast-check';
import { expect, it } from 'vitest';
import { placed } from './index.ts';

it('puts the value there that sorting would, with none larger before and none smaller after', () => {
  const numbers = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(numbers, fc.nat(), (list, seed) => {
      const rank = seed % list.length;
      const values = Float64Array.from(list);
      const found = placed(values, rank);
      expect(found).toBe(Float64Array.from(list).sort()[rank]);
      expect(values[rank]).toBe(found);
      expect(values.slice(0, rank).every((value) => value <= found)).toBe(true);
      expect(values.slice(rank).every((value) => value >= found)).toBe(true);
      expect([...values].sort((a, b) => a - b)).toEqual([...list].sort((a, b) => a - b));
    }),
  );
});
