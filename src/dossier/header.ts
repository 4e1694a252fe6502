import { FATE, type FaultList } from './faults.ts';
import { MOST_COLUMNS } from './limits.ts';
import { isDamaged } from './lossless.ts';
import type { TableSpec } from './schema.ts';

/** Why a header makes its whole table useless; undefined where it does not. */
export function faultOfHeader(
  spec: TableSpec,
  columns: readonly string[],
  faults: FaultList,
): { readonly found: string; readonly expected: string } | undefined {
  const found = columns.join(',');
  if (columns.length > MOST_COLUMNS) {
    return { found: `${columns.length} columns`, expected: `at most ${MOST_COLUMNS}` };
  }
  if (isDamaged(found)) return { found, expected: 'a header in UTF-8' };
  if (columns.some((column) => column.includes('\r'))) {
    return { found: 'line ends of CR alone', expected: 'LF or CRLF' };
  }
  const mark = columns.length === 1 && /[;\t]/.exec(found)?.[0];
  if (mark) {
    const name = mark === ';' ? 'semicolons' : 'tabs';
    return { found: `${name} between the columns`, expected: 'commas' };
  }
  return missing(spec, columns) ?? twice(spec, columns, faults);
}

function missing(spec: TableSpec, columns: readonly string[]) {
  const absent = spec.header.filter((name) => !columns.includes(name));
  if (spec.file === 'claims.csv' && !columns.includes('printing') && !columns.includes('product')) {
    absent.unshift('printing or product');
  }
  if (absent.length === 0) return undefined;
  const expected = `${absent.length === 1 ? 'the column' : 'the columns'} ${absent.join(', ')}`;
  return { found: columns.join(','), expected };
}

/** Two columns of one name: the first is read. */
function twice(spec: TableSpec, columns: readonly string[], faults: FaultList): undefined {
  const seen = new Set<string>();
  for (const column of columns) {
    if (seen.has(column) && column !== '') {
      const found = `two columns ${column}`;
      const expected = 'one, of which the first is read';
      faults.add({ file: spec.file, row: 1, found, expected, fate: FATE.kept });
    }
    seen.add(column);
  }
}
