import { describe, expect, it } from 'vitest';
import { type Claim, type Evidence, parseEdtf } from '../evidence/index.ts';
import { date } from './date.ts';

const DAYS = { 'first-box': '1998-03-06', 'second-box': '1998-09-11' } as const;

/** One printing that lies in two boxes, of which alone sources speak. */
function evidence(boxes: readonly (keyof typeof DAYS)[]): Evidence {
  const claims = boxes.flatMap((product) =>
    ['leaflet', 'letters', 'ledger'].map((source): Omit<Claim, 'row'> => {
      const value = DAYS[product];
      const read = parseEdtf(value);
      if (!read.ok) throw new RangeError(value);
      return { printings: [], product, source, property: 'on-sale', value, date: read.date };
    }),
  );
  return {
    printings: [{ id: 'hare', market: 'FI' }],
    products: Object.keys(DAYS).map((id) => ({ id, market: 'FI' })),
    contents: Object.keys(DAYS).map((product) => ({ product, printing: 'hare' })),
    sources: ['leaflet', 'letters', 'ledger'].map((id) => ({ id, kind: 'checklist', cites: [] })),
    claims: claims.map((claim, i) => ({ ...claim, row: i + 2 })),
    orders: [],
  };
}

// The format has it: "a printing in several products was released with the earliest".
describe('a printing in several products', () => {
  it('came with the earliest of them', () => {
    const [hare] = date(evidence(['second-box', 'first-box'])).printings;
    expect(hare!.best).toBe(DAYS['first-box']);
    expect(hare!.p_best).toBeGreaterThan(0.5);
  });

  it('came no later than the one that is dated', () => {
    const [hare] = date(evidence(['second-box'])).printings;
    expect(hare!.interval95![1] <= DAYS['second-box']).toBe(true);
  });
});
