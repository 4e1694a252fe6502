import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChanges } from './apply.ts';
import { changesBetween, mergeTables } from './merge.ts';
import { rowText } from './row-scan.ts';
import { Sheet } from './sheet.ts';
import { cellArbitrary, tableArbitrary } from './table-arbitrary.ts';

const FILE = 'claims.csv';
const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
const merge = (base: string, ours: string, theirs: string) => {
  const { bytes, conflicts } = mergeTables(FILE, bytesOf(base), bytesOf(ours), bytesOf(theirs));
  return { text: textOf(bytes), conflicts };
};

const BASE = 'id,market,note\na,FI,\nb,BR,seen\nc,KR,\n';

describe('mergeTables', () => {
  it('takes cells of one row from both sides', () => {
    const ours = BASE.replace('b,BR,seen', 'b,PT,seen');
    const theirs = BASE.replace('b,BR,seen', 'b,BR,held');
    const merged = BASE.replace('b,BR,seen', 'b,PT,held');
    expect(merge(BASE, ours, theirs)).toEqual({ text: merged, conflicts: [] });
  });

  it('asks where both changed a cell, and keeps what stood there', () => {
    const ours = BASE.replace('c,KR,', 'c,KP,');
    const theirs = BASE.replace('c,KR,', 'c,JP,x');
    expect(merge(BASE, ours, theirs)).toEqual({
      text: BASE.replace('c,KR,', 'c,KR,x'),
      conflicts: [
        {
          file: FILE,
          base: { id: 'c', market: 'KR', note: '' },
          ours: { id: 'c', market: 'KP', note: '' },
          theirs: { id: 'c', market: 'JP', note: 'x' },
          columns: ['market'],
        },
      ],
    });
  });

  it('keeps a changed row that the other side removed, and asks', () => {
    const { text, conflicts } = merge(BASE, BASE.replace('c,KR,\n', ''), `${BASE.slice(0, -1)}x\n`);
    expect(text).toBe(BASE.replace('c,KR,', 'c,KR,x'));
    expect(conflicts).toMatchObject([{ theirs: { note: 'x' }, columns: [] }]);
    expect(conflicts[0]).not.toHaveProperty('ours');
  });

  it('puts added rows where they were put, and one that both added once', () => {
    const ours = BASE.replace('b,BR', 'x,FI,\nd,SE,\nb,BR');
    const theirs = BASE.replace('b,BR', 'd,SE,\ny,NO,\nb,BR');
    const merged = BASE.replace('b,BR', 'd,SE,\nx,FI,\ny,NO,\nb,BR');
    expect(merge(BASE, ours, theirs)).toEqual({ text: merged, conflicts: [] });
  });

  it('follows the side that sorted the table', () => {
    const sorted = 'id,market,note\nc,KR,\nb,BR,seen\na,FI,\n';
    const changed = BASE.replace('a,FI,', 'a,FI,new');
    expect(merge(BASE, sorted, changed).text).toBe(sorted.replace('a,FI,', 'a,FI,new'));
  });

  it('puts columns of both sides together', () => {
    const ours = 'id,market,note,x\na,FI,,1\nb,BR,seen,\nc,KR,,\n';
    const theirs = 'id,market,note,w\na,FI,,2\nb,BR,seen,\nc,KR,,\n';
    expect(merge(BASE, ours, theirs).text).toBe(
      'id,market,note,w,x\na,FI,,2,1\nb,BR,seen,,\nc,KR,,,\n',
    );
  });
});

const bare = ['printing', 'value', 'note'];
const withIds = ['id', 'value', 'note'];
const someTable = fc.constantFrom(bare, withIds).chain((columns) => {
  const table = tableArbitrary(columns, 5);
  return fc.tuple(table, table, table);
});

/** Another state of a table: some rows changed, removed, moved and added. */
const edited = someTable.map(([base, other, third]) => {
  const half = (bytes: Uint8Array) => {
    const [sheet, more] = [Sheet.of(FILE, base, []), Sheet.of(FILE, bytes, [])];
    for (let row = 2; row <= Math.min(3, more.lastRow); row++) sheet.insert(2, more.raw(row));
    if (sheet.lastRow > 3 && more.lastRow % 2 === 0) sheet.remove(3);
    return sheet.bytes();
  };
  return [base, half(other), half(third)] as const;
});
const three = fc.oneof(someTable, edited);

const identified = fc
  .shuffledSubarray(['a', 'b', 'c', 'd', 'e', 'f'])
  .chain((ids) =>
    fc.tuple(...ids.map((id) => fc.tuple(fc.constant(id), cellArbitrary, cellArbitrary))),
  )
  .map((rows) => bytesOf(`${[withIds, ...rows].map(rowText).join('\n')}\n`));
const threeWithIds = fc.tuple(identified, identified, identified);

const rowsOf = (bytes: Uint8Array) => {
  const sheet = Sheet.of(FILE, bytes, []);
  const rows = Array.from({ length: sheet.lastRow - 1 }, (_, i) =>
    sheet.cells(i + 2).join('\u0000'),
  );
  return rows.filter((row) => row !== '').sort();
};

describe('laws of mergeTables', () => {
  it('does not care which side is ours', () => {
    fc.assert(
      fc.property(three, ([base, a, b]) => {
        const [ab, ba] = [mergeTables(FILE, base, a, b), mergeTables(FILE, base, b, a)];
        expect(textOf(ab.bytes)).toBe(textOf(ba.bytes));
        const swapped = ba.conflicts.map(({ ours, theirs, ...rest }) => ({
          ...rest,
          ...(theirs === undefined ? {} : { ours: theirs }),
          ...(ours === undefined ? {} : { theirs: ours }),
        }));
        expect(ab.conflicts).toEqual(swapped);
      }),
      { numRuns: 150 },
    );
  });

  it('gives a side to the byte where the other changed nothing or the same', () => {
    fc.assert(
      fc.property(three, ([base, a]) => {
        expect(textOf(mergeTables(FILE, base, a, a).bytes)).toBe(textOf(a));
        expect(textOf(mergeTables(FILE, base, base, a).bytes)).toBe(textOf(a));
        expect(mergeTables(FILE, base, base, a).conflicts).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('adds nothing when a side is merged again, where rows have ids', () => {
    // Rows that are alike and have no id cannot be told apart: one removed here and one added there
    // may be the same.
    fc.assert(
      fc.property(threeWithIds, ([base, a, b]) => {
        const { bytes, conflicts } = mergeTables(FILE, base, a, b);
        fc.pre(conflicts.length === 0);
        expect(rowsOf(mergeTables(FILE, base, bytes, b).bytes)).toEqual(rowsOf(bytes));
      }),
      { numRuns: 150 },
    );
  });
});

describe('changesBetween', () => {
  it('names what was done in a spreadsheet', () => {
    const after = 'id,note,market\r\nc,,KR\r\na,,SE\r\nd,new,NO\r\n';
    expect(changesBetween(FILE, bytesOf(BASE), bytesOf(after))).toEqual([
      {
        file: FILE,
        op: 'replace',
        row: 2,
        before: { id: 'a', market: 'FI', note: '' },
        after: { id: 'a', market: 'SE', note: '' },
      },
      { file: FILE, op: 'remove', row: 3, before: { id: 'b', market: 'BR', note: 'seen' } },
      { file: FILE, op: 'add', row: 4, after: { id: 'd', market: 'NO', note: 'new' } },
    ]);
  });

  it('leads from the one to the other', () => {
    fc.assert(
      fc.property(three, ([from, , to]) => {
        const { bytes, conflicts } = applyChanges(FILE, from, changesBetween(FILE, from, to));
        expect(conflicts).toEqual([]);
        expect(rowsOf(bytes)).toEqual(rowsOf(to));
      }),
      { numRuns: 150 },
    );
  });
});
