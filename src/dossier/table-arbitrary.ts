import fc from 'fast-check';
import { cellText } from './row-scan.ts';

/** Cells that stand in few rows each, so that rows are alike now and then. */
export const cellArbitrary = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom('', 'a', 'b', 'none', '1996-03') },
  { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom('x', '"', ',', '\n', '꽃', ' ') }) },
);

/** How a table is written: what it begins with, how its lines end, whether the last one does. */
const style = fc.record({
  mark: fc.constantFrom('', '\ufeff'),
  lineEnd: fc.constantFrom('\n', '\r\n'),
  ended: fc.boolean(),
});

/** Bytes of a table with some of these columns, some cells in needless quotes. */
export function tableArbitrary(columns: readonly string[], atMost = 8): fc.Arbitrary<Uint8Array> {
  const cell = fc
    .tuple(cellArbitrary, fc.boolean())
    .map(([text, quoted]) => (quoted ? `"${text.replaceAll('"', '""')}"` : cellText(text)));
  const row = fc.array(cell, { minLength: columns.length, maxLength: columns.length });
  return fc.tuple(fc.array(row, { maxLength: atMost }), style).map(([rows, { mark, ...how }]) => {
    const lines = [columns, ...rows].map((cells) => cells.join(','));
    return new TextEncoder().encode(
      mark + lines.join(how.lineEnd) + (how.ended ? how.lineEnd : ''),
    );
  });
}
