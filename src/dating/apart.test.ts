import { describe, expect, it } from 'vitest';
import { type Claim, type Evidence, parseEdtf } from '../evidence/index.ts';
import { date } from './date.ts';

const SOURCES = ['leaflet', 'letters', 'ledger', 'list'];

/** Two printings of one release, each dated by the sources on days of its own. */
function evidence(plain: readonly string[], foil: readonly string[]): Evidence {
  const claim = (printing: string, value: string, source: string, row: number): Claim => {
    const read = parseEdtf(value);
    if (!read.ok) throw new RangeError(value);
    return { row, printings: [printing], source, property: 'on-sale', value, date: read.date };
  };
  return {
    printings: ['plain', 'foil'].map((id) => ({ id, product: 'box', market: 'FI', finish: id })),
    products: [],
    contents: [],
    sources: SOURCES.map((id) => ({ id, kind: 'checklist', cites: [] })),
    claims: [
      ...plain.map((value, s) => claim('plain', value, SOURCES[s]!, s + 2)),
      ...foil.map((value, s) => claim('foil', value, SOURCES[s]!, s + 20)),
    ],
    orders: [],
  };
}

const best = (one: Evidence) => date(one).printings.map((p) => p.best);

// No outside source: what is asked for follows from the claims themselves.
describe('printings of one release', () => {
  const early = ['1999-05-14', '1999-05-14', '1999-05-14'];
  const late = ['1999-11-05', '1999-11-05', '1999-11-05', '1999-11-05'];

  it('are set apart where every source names another day for each', () => {
    const dated = date(evidence(early, late));
    expect(dated.printings.map((p) => p.best)).toEqual([early[0], late[0]]);
    expect(dated.printings.map((p) => p.together)).toEqual([[], []]);
  });

  it('stay together where one source alone says otherwise', () => {
    const dated = date(evidence([...early, '1999-05-14'], ['1999-11-05']));
    expect(dated.printings.map((p) => p.together)).toEqual([['foil'], ['plain']]);
    expect(dated.printings.map((p) => p.best)).toEqual([early[0], early[0]]);
  });

  it('stay together where sources name one day for both', () => {
    expect(best(evidence(early, ['1999-05-14', '1999-11-05']))).toEqual([early[0], early[0]]);
  });
});
