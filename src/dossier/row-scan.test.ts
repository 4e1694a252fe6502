import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RowScan, rowText } from './row-scan.ts';

function rowsOf(text: string): string[][] {
  const scan = new RowScan().over(text);
  const rows: string[][] = [];
  for (let at = 0; at < text.length; at = scan.next) {
    if (scan.scan(at) !== 'row') throw new Error('not a row');
    rows.push(scan.cells());
  }
  return rows;
}

const cell = fc.string({
  unit: fc.constantFrom('a', '"', ',', '\n', '\r', ' ', 'ä', '꽃', '🂡'),
  maxLength: 6,
});
const table = fc
  .integer({ min: 2, max: 5 })
  .chain((width) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1 }),
  );

describe('RowScan', () => {
  it('reads what it wrote', () => {
    fc.assert(
      fc.property(table, fc.constantFrom('\n', '\r\n'), fc.boolean(), (rows, eol, ended) => {
        const text = rows.map(rowText).join(eol) + (ended ? eol : '');
        expect(rowsOf(text)).toEqual(rows);
      }),
    );
  });

  it('agrees with csv-parse on what csv-stringify writes', () => {
    fc.assert(
      fc.property(table, fc.boolean(), fc.constantFrom('\n', '\r\n'), (rows, quoted, eol) => {
        const text = stringify(rows, { quoted, quoted_match: /[\r\n]/, record_delimiter: eol });
        expect(rowsOf(text)).toEqual(parse(text, { record_delimiter: eol }));
      }),
    );
  });

  it.each([
    [
      'a,b\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['a,"b\nc"\n', [['a', 'b\nc']]],
    [
      'a,\n,',
      [
        ['a', ''],
        ['', ''],
      ],
    ],
    ['"a"\r\n', [['a']]],
    ['5" box,x\n', [['5" box', 'x']]],
    ['a\n\nb', [['a'], [''], ['b']]],
  ])('reads %j', (text, rows) => expect(rowsOf(text)).toEqual(rows));

  it.each([
    ['a,"b\n', 'open'],
    ['a,"b"c\n', 'broken'],
    ['"a""', 'open'],
  ])('tells that %j is %s', (text, end) => expect(new RowScan().over(text).scan(0)).toBe(end));
});
