import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyChanges } from './apply.ts';
import { Sheet } from './sheet.ts';
import { cellArbitrary, tableArbitrary } from './table-arbitrary.ts';
import type { Change } from './types.ts';

const FILE = 'claims.csv';
const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
const apply = (text: string, ...changes: Omit<Change, 'file'>[]) =>
  applyChanges(
    FILE,
    bytesOf(text),
    changes.map((change) => ({ file: FILE, ...change })),
  );

const TABLE = 'printing,source,note\r\nsol-fi,"kirja",\r\nsol-br,lista,"two\nlines"\r\n';

describe('applyChanges', () => {
  it('adds a row behind the last, with the line ends of the table', () => {
    const { bytes, inverse } = apply(TABLE, {
      op: 'add',
      after: { printing: 'sol-kr', note: 'a,b' },
    });
    expect(textOf(bytes)).toBe(`${TABLE}sol-kr,,"a,b"\r\n`);
    expect(textOf(applyChanges(FILE, bytes, inverse).bytes)).toBe(TABLE);
  });

  it('changes a cell and keeps the quotes of the others', () => {
    const { bytes } = apply(TABLE, {
      op: 'replace',
      row: 2,
      before: { printing: 'sol-fi' },
      after: { note: 'seen' },
    });
    expect(textOf(bytes)).toBe(TABLE.replace('"kirja",', '"kirja",seen'));
  });

  it('finds a row that was moved since', () => {
    const before = { printing: 'sol-br', source: 'lista', note: 'two\nlines' };
    const { bytes, conflicts } = apply(TABLE, { op: 'remove', row: 2, before });
    expect(conflicts).toEqual([]);
    expect(textOf(bytes)).toBe('printing,source,note\r\nsol-fi,"kirja",\r\n');
  });

  it('leaves a table alone where the row is gone, or not alone', () => {
    const change = { op: 'remove', row: 2, before: { printing: 'sol-kr' } } as const;
    expect(apply(TABLE, change)).toEqual({
      bytes: bytesOf(TABLE),
      inverse: [],
      conflicts: [
        {
          change: { file: FILE, ...change },
          reason: 'gone',
          now: { printing: 'sol-fi', source: 'kirja', note: '' },
        },
      ],
    });
    const two = `${TABLE}sol-br,muu,\r\n`;
    const several = apply(two, { op: 'remove', before: { printing: 'sol-br' } });
    expect(several.conflicts).toMatchObject([{ reason: 'several' }]);
    expect(textOf(several.bytes)).toBe(two);
  });

  it('knows a replacement that was made already', () => {
    const before = { note: 'old' };
    const { conflicts, inverse } = apply(TABLE, {
      op: 'replace',
      row: 2,
      before,
      after: { note: '' },
    });
    expect([conflicts, inverse]).toEqual([[], []]);
  });

  it('adds a column only when a cell needs it', () => {
    const before = { printing: 'sol-fi' };
    const empty = apply(TABLE, { op: 'replace', before, after: { quote: '', note: 'x' } });
    expect(textOf(empty.bytes)).toMatch(/^printing,source,note\r\n/);
    const { bytes, inverse } = apply(TABLE, { op: 'replace', before, after: { quote: 'q' } });
    expect(textOf(bytes)).toBe(
      'printing,source,note,quote\r\nsol-fi,"kirja",,q\r\nsol-br,lista,"two\nlines",\r\n',
    );
    expect(textOf(applyChanges(FILE, bytes, inverse).bytes)).toBe(
      'printing,source,note,quote\r\nsol-fi,"kirja",,\r\nsol-br,lista,"two\nlines",\r\n',
    );
  });

  it('begins a table that is not there with the columns of the format', () => {
    const changes: Change[] = [
      { file: 'orders.csv', op: 'add', after: { earlier: 'a', later: 'b' } },
    ];
    expect(textOf(applyChanges('orders.csv', undefined, changes).bytes)).toBe(
      'earlier,later,reason\na,b,\n',
    );
  });

  it('keeps bytes that are no UTF-8', () => {
    const latin = Uint8Array.from('printing,note\nsol-fi,caf\u00e9\n', (c) => c.charCodeAt(0));
    const change: Change = { file: FILE, op: 'add', after: { printing: 'sol-kr', note: '꽃' } };
    const { bytes, inverse } = applyChanges(FILE, latin, [change]);
    expect(bytes.subarray(0, latin.length)).toEqual(latin);
    expect(applyChanges(FILE, bytes, inverse).bytes).toEqual(latin);
  });

  it('keeps a column called __proto__', () => {
    const after = JSON.parse('{"__proto__": "y", "constructor": "z"}') as Record<string, string>;
    const { bytes } = apply('__proto__,constructor\nx,y\n', { op: 'add', after });
    expect(textOf(bytes)).toBe('__proto__,constructor\nx,y\ny,z\n');
  });

  it('refuses wrong calls', () => {
    const add: Change = { file: '../claims.csv', op: 'add', after: {} };
    expect(() => applyChanges('../claims.csv', undefined, [add])).toThrow(RangeError);
    expect(() => applyChanges(FILE, undefined, [{ ...add, file: 'orders.csv' }])).toThrow(
      TypeError,
    );
    expect(() => apply(TABLE, { op: 'add' })).toThrow(TypeError);
    expect(() => apply(TABLE, { op: 'remove', row: 2 })).toThrow(TypeError);
  });
});

const columns = ['printing', 'source', 'note'];
const cells = fc.record({ printing: cellArbitrary, source: cellArbitrary, note: cellArbitrary });

/** Changes of rows that are there, and additions. */
function changesFor(sheet: Sheet): fc.Arbitrary<Change[]> {
  const row = fc.integer({ min: 2, max: Math.max(2, sheet.lastRow) });
  const add = fc.record({ after: cells, row }).map((more) => ({ file: FILE, op: 'add', ...more }));
  const other = fc
    .tuple(row, cells, fc.constantFrom('replace', 'remove'))
    .map(([at, after, op]) => {
      const before = at <= sheet.lastRow ? sheet.record(at) : { printing: '?' };
      return op === 'remove'
        ? { file: FILE, op, before, row: at }
        : { file: FILE, op, before, row: at, after };
    });
  return fc.array(fc.oneof(add, other), { maxLength: 6 }) as fc.Arbitrary<Change[]>;
}

describe('laws of applyChanges', () => {
  const cases = tableArbitrary(columns).chain((bytes) =>
    fc.tuple(fc.constant(bytes), changesFor(Sheet.of(FILE, bytes, []))),
  );

  it('undoes to the byte', () => {
    fc.assert(
      fc.property(cases, ([bytes, changes]) => {
        const done = applyChanges(FILE, bytes, changes);
        const wire = JSON.parse(JSON.stringify(done.inverse)) as Change[];
        expect(textOf(applyChanges(FILE, done.bytes, wire).bytes)).toBe(textOf(bytes));
      }),
      { numRuns: 150 },
    );
  });

  it('touches no row that no change speaks of', () => {
    fc.assert(
      fc.property(cases, ([bytes, changes]) => {
        const before = Sheet.of(FILE, bytes, []);
        const after = Sheet.of(FILE, applyChanges(FILE, bytes, changes).bytes, []);
        const spoken = new Set(changes.map((change) => JSON.stringify(change.before)));
        const counts = new Map<string, number>();
        for (let row = 2; row <= after.lastRow; row++) {
          counts.set(after.raw(row), (counts.get(after.raw(row)) ?? 0) + 1);
        }
        for (let row = 2; row <= before.lastRow; row++) {
          if (spoken.has(JSON.stringify(before.record(row)))) continue;
          const left = (counts.get(before.raw(row)) ?? 0) - 1;
          expect(left).toBeGreaterThanOrEqual(0);
          counts.set(before.raw(row), left);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('leaves a table alone when nothing changes', () => {
    fc.assert(
      fc.property(tableArbitrary(columns), (bytes) => {
        expect(Sheet.of(FILE, bytes, []).bytes()).toEqual(bytes);
        const sheet = Sheet.of(FILE, bytes, []);
        const same = Array.from({ length: sheet.lastRow - 1 }, (_, i): Change => {
          const record = sheet.record(i + 2);
          return { file: FILE, op: 'replace', row: i + 2, before: record, after: record };
        });
        expect(applyChanges(FILE, bytes, same).bytes).toEqual(bytes);
      }),
    );
  });

  it('reads back what it wrote', () => {
    fc.assert(
      fc.property(fc.array(cells, { minLength: 1 }), (rows) => {
        const changes = rows.map((after): Change => ({ file: FILE, op: 'add', after }));
        const sheet = Sheet.of(FILE, applyChanges(FILE, undefined, changes).bytes, []);
        rows.forEach((row, i) => {
          expect(sheet.record(i + 2)).toMatchObject(row);
        });
      }),
    );
  });
});
