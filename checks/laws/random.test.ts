// Any small evidence that can be written down is answered: no throw, no number that is none.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { date } from '../../src/dating/index.ts';
import { DATE_PROPERTIES, SOURCE_KINDS } from '../../src/evidence/index.ts';
import { deepFreeze, dossier, type Said, type Sketch } from './dossier.ts';
import { unsound } from './sound.ts';

const two = (n: number) => String(n).padStart(2, '0');
const year = fc.integer({ min: 1990, max: 2004 });
const month = fc.tuple(year, fc.integer({ min: 1, max: 12 })).map(([y, m]) => `${y}-${two(m)}`);
const day = fc.tuple(month, fc.integer({ min: 1, max: 28 })).map(([m, d]) => `${m}-${two(d)}`);
const pair = fc.tuple(day, day).map((days) => [...days].sort());

const value = fc.oneof(
  { weight: 6, arbitrary: day },
  month,
  year.map(String),
  fc.constantFrom('199X', '1999-XX-05', '1998-21', '1999-10-XX', '../1997-04', '1996-02/..'),
  fc.tuple(day, fc.constantFrom('?', '~', '%')).map((parts) => parts.join('')),
  pair.map(([a, b]) => `${a}/${b}`),
  pair.map(([a, b]) => `[${a},${b}]`),
  pair.map(([a, b]) => `{${a},${b}}`),
);

const about = fc.constantFrom('a', 'b', 'c', 'd', 'a|b', 'b|c|d', 'box:', 'tin:');
const property = fc.oneof(
  { weight: 4, arbitrary: fc.constant('on-sale' as const) },
  fc.constantFrom(...DATE_PROPERTIES),
);
const said = fc.tuple(about, fc.constantFrom('s', 't', 'u'), value, property);

const sketch = fc
  .record({
    kinds: fc.tuple(...['s', 't', 'u'].map(() => fc.constantFrom(...SOURCE_KINDS))),
    cites: fc.constantFrom([], ['s'], ['s', 't']),
    said: fc.array(said, { maxLength: 14 }),
    orders: fc.subarray(['a<c', 'c<d', 'a<d', 'b<d']),
    markets: fc.array(fc.constantFrom('FI', 'KR'), { minLength: 4, maxLength: 4 }),
  })
  .map(
    ({ kinds, cites, said, orders, markets }): Sketch => ({
      printings: ['a', 'b', 'c', 'd'].map((id, i) => ({
        id,
        product: i < 2 ? 'box' : 'tin',
        market: markets[i]!,
      })),
      sources: ['s', 't', 'u'].map((id, i) => ({
        id,
        kind: kinds[i]!,
        cites: id === 'u' ? cites : [],
      })),
      said: said satisfies readonly Said[],
      orders,
    }),
  );

it('any small dossier gets a sound answer', () => {
  // Runs take a second or two where the machine is busy; the seed is fixed, so that they are the same
  // everywhere; raise the number for a longer search.
  const numRuns = 4;
  fc.assert(
    fc.property(sketch, fc.integer({ min: 0, max: 1e6 }), (made, seed) => {
      const evidence = deepFreeze(dossier(made));
      expect(unsound(date(evidence, { effort: 'first', seed }), evidence)).toEqual([]);
    }),
    { numRuns, seed: 20, endOnFailure: true },
  );
});
