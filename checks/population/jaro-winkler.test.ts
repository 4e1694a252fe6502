import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jaro, jaroWinkler } from '../../src/maths/index.ts';
import { tableOf } from './fixture.ts';

const rows = tableOf('jaro_winkler.csv');
const published = rows.filter((row) => row.agrees_published_3dp === 'true');

// Winkler 1994, table 2.1, as far as the two transcriptions agree: three decimals are printed, cut
// or rounded (0.79047 is printed as 0.79), so a thousandth is allowed.
test('the likeness of names is what Winkler prints', () => {
  expect(published.length).toBe(23);
  for (const row of published) {
    const [a = '', b = ''] = [row.s1, row.s2];
    expect(Math.abs(jaro(a, b) - Number(row.jaro_published)), a).toBeLessThanOrEqual(1e-3);
    expect(Math.abs(jaroWinkler(a, b) - Number(row.winkler_published)), a).toBeLessThan(1.01e-3);
  }
});

// Eight decimals are given: half of the last one is allowed.
test('and what two packages compute, pairs included that the paper prints otherwise', () => {
  for (const row of rows) {
    const [a = '', b = ''] = [row.s1, row.s2];
    expect(Math.abs(jaro(a, b) - Number(row.jaro_stringdist)), a).toBeLessThan(0.51e-8);
    const ours = Math.abs(jaroWinkler(a, b) - Number(row.jaro_winkler_jellyfish));
    expect(ours, `${a} ${b}`).toBeLessThan(0.51e-8);
  }
});

test('likeness is the same both ways, 1 only for one text, and never past 0 and 1', () => {
  const word = fc.string({ maxLength: 9, unit: fc.constantFrom('a', 'b', 'c', '7', '토') });
  fc.assert(
    fc.property(word, word, (a, b) => {
      const likeness = jaroWinkler(a, b);
      expect(likeness).toBeCloseTo(jaroWinkler(b, a), 12);
      expect(likeness >= 0 && likeness <= 1).toBe(true);
      if (likeness === 1) expect(a).toBe(b);
      expect(jaroWinkler(a, a)).toBe(1);
    }),
    { seed: 5 },
  );
});
