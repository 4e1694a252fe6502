import type { ClaimRow, DossierAnswer, SourceRow, WireConflict } from '../contract/index.ts';
import type { Dossier, Table } from '../dossier/index.ts';
import { type EdtfDate, isoOf } from '../evidence/index.ts';
import type { Conflict } from '../store/index.ts';

type Rows = Pick<
  DossierAnswer,
  'printings' | 'otherIds' | 'products' | 'contents' | 'sources' | 'claims' | 'orders' | 'weekdays'
>;

/** The rows of a dossier as the page gets them: what they mean, and the cells they came from. */
export function rowsOnWire({ tables, evidence }: Dossier): Rows {
  const all = <T>(file: string, make: (row: number, cells: Record<string, string>) => T): T[] => {
    const table = tables.get(file);
    return table ? [...table.rows()].map((row) => make(row, table.record(row))) : [];
  };
  const withId = (row: number, cells: Record<string, string>) => ({
    id: cells.id ?? '',
    row,
    cells,
  });
  const known = new Map(evidence.sources.map((source) => [source.id, source]));
  const printings = new Set(evidence.printings.map(({ id }) => id));
  const rows = all('printings.csv', withId);
  return {
    printings: rows.filter(({ id }) => printings.has(id)),
    otherIds: rows.filter(({ id }) => !printings.has(id)).map(({ id }) => id),
    products: all('products.csv', withId),
    contents: all('contents.csv', (row, cells) => ({
      product: cells.product ?? '',
      printing: cells.printing ?? '',
      row,
      cells,
    })),
    sources: all('sources.csv', (row, cells): SourceRow => {
      const source = known.get(cells.id ?? '');
      const { id = '' } = cells;
      return { id, kind: source?.kind ?? 'other', cites: [...(source?.cites ?? [])], row, cells };
    }),
    claims: claimsOnWire(evidence.claims, tables.get('claims.csv')),
    orders: all('orders.csv', (row, cells) => ({
      earlier: cells.earlier ?? '',
      later: cells.later ?? '',
      row,
      cells,
    })),
    weekdays: all('weekdays.csv', (row, cells) => ({ row, cells })),
  };
}

function claimsOnWire(claims: Dossier['evidence']['claims'], table: Table | undefined): ClaimRow[] {
  return claims.map(({ printings, product, source, property, value, date, row }) => ({
    printings: [...printings],
    ...(product === undefined ? {} : { product }),
    source,
    property,
    value,
    ...(date ? { span: spanOf(date) } : {}),
    row,
    cells: table?.record(row) ?? {},
  }));
}

/** First and last day of all that a date can mean; null where it is open. */
function spanOf(date: EdtfDate): [string | null, string | null] {
  const day = (n: number | undefined) => (n !== undefined && Number.isFinite(n) ? isoOf(n) : null);
  return [day(date.ranges[0]?.first), day(date.ranges.at(-1)?.last)];
}

/** Conflicts as the page gets them, each with a sentence. */
export function conflictsOnWire(conflicts: readonly Conflict[]): WireConflict[] {
  return conflicts.map((conflict) => ({
    ...structuredClone(conflict),
    message: sentenceOf(conflict),
  }));
}

function sentenceOf({ change, reason }: Conflict): string {
  const place = `${change.file}${change.row === undefined ? '' : `, row ${change.row}`}`;
  if (reason === 'several') return `${place}: more than one row looks like the one meant.`;
  return `${place}: the row was changed or taken out meanwhile.`;
}
