import { describe, expect, it } from 'vitest';
import { type Claim, type Evidence, parseEdtf } from '../evidence/index.ts';
import { releasesOf } from './events.ts';
import { statementsOf } from './statements.ts';

type Row = readonly [printing: string, source: string, value: string, property?: string];

function evidenceOf(rows: readonly Row[]): Evidence {
  const claims = rows.map(([about, source, value, property = 'on-sale'], j): Claim => {
    const reading = parseEdtf(value);
    const base = { row: j + 2, printings: about.split('|'), source, property, value };
    return reading.ok ? { ...base, date: reading.date } : base;
  });
  // 'a' and 'b' share a release, 'c' has its own.
  return {
    printings: [
      { id: 'a', product: 'box', market: 'FI', finish: 'matt' },
      { id: 'b', product: 'box', market: 'FI', finish: 'foil' },
      { id: 'c', product: 'box', market: 'KR' },
    ],
    products: [],
    contents: [],
    sources: ['s', 't'].map((id) => ({ id, kind: 'checklist', cites: [] })),
    claims,
    orders: [],
  };
}

const statements = (...rows: Row[]) => {
  const evidence = evidenceOf(rows);
  return statementsOf(evidence, releasesOf(evidence));
};
const texts = (rows: readonly Row[], spans: readonly { readonly lo: number }[]) =>
  rows.find(([, , value]) => {
    const reading = parseEdtf(value);
    return reading.ok && reading.date.ranges[0]!.first === spans[0]!.lo;
  })?.[2];

describe('statements', () => {
  it('are one for a source, a property and a release, whatever the rows', () => {
    const found = statements(
      ['a', 's', '1999-03-05'],
      ['b', 's', '1999-03-05'],
      ['c', 's', '1999-03-05'],
      ['a', 't', '1999-03-05'],
      ['a', 's', '1999-03-05', 'announced'],
    );
    expect(found.map((s) => s.claims)).toEqual([[0, 1], [2], [3], [4]]);
    expect(found.every((s) => s.values.length === 1 && s.values[0]!.weight === 1)).toBe(true);
  });

  it('leave out what bounds nothing and what is no date', () => {
    expect(statements(['a', 's', '../..'], ['a', 's', 'soon'])).toEqual([]);
  });

  it('may concern several releases, each once', () => {
    expect(statements(['a|b|c', 's', '1999-03-05'])[0]!.events).toEqual([0, 1]);
  });

  it('take the odd row for a slip of the pen', () => {
    const rows: Row[] = [
      ['a', 's', '1999-03-05'],
      ['b', 's', '1999-03-06'],
      ['a', 's', '1999-03-05'],
    ];
    const [{ values }] = statements(...rows) as [ReturnType<typeof statements>[number]];
    // docs/methods/dating.md: a row slips with 0.03 and then hits a given other value with 1/200.
    const slip = 0.03 / 200;
    const right = 0.97 * 0.97 * slip;
    const wrong = slip * slip * 0.97;
    expect(values.map((v) => texts(rows, v.spans))).toEqual(['1999-03-05', '1999-03-06']);
    expect(values[0]!.weight).toBeCloseTo(right / (right + wrong), 12);
    expect(values[0]!.weight + values[1]!.weight).toBeCloseTo(1, 12);
  });

  it('of two rows that differ hold both alike', () => {
    const [{ values }] = statements(['a', 's', '1999-03-05'], ['b', 's', '1999-08-05']) as [
      ReturnType<typeof statements>[number],
    ];
    expect(values.map((v) => v.weight)).toEqual([0.5, 0.5]);
  });

  it('take a coarser row for the day that another gives', () => {
    const rows: Row[] = [
      ['a', 's', '1999-03'],
      ['b', 's', '1999-03-05'],
    ];
    const [{ values }] = statements(...rows) as [ReturnType<typeof statements>[number]];
    expect(texts(rows, values[0]!.spans)).toBe('1999-03-05');
    expect(values[0]!.weight).toBeGreaterThan(0.99);
  });
});
