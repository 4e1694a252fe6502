import type {
  Cells,
  ClaimRow,
  DossierAnswer,
  SourceRow,
  WireChange,
} from '../../contract/index.ts';

function splitCell(cell: string | undefined): string[] {
  return (cell ?? '').split('|').filter(Boolean);
}

function claimRow(row: number, cells: Cells): ClaimRow {
  return {
    printings: splitCell(cells.printing),
    ...(cells.product ? { product: cells.product } : {}),
    source: cells.source ?? '',
    property: cells.property ?? '',
    value: cells.value ?? '',
    row,
    cells,
  };
}

function sourceRow(row: number, cells: Cells): SourceRow {
  const cites = splitCell(cells.cites);
  return { id: cells.id ?? '', kind: cells.kind || 'other', cites, row, cells };
}

function plainRow(row: number, cells: Cells) {
  return { id: cells.id ?? '', row, cells };
}

/** One change made to rows that are already in order of row. */
function changeRows<T extends { readonly row: number }>(
  rows: readonly T[],
  change: WireChange,
  make: (row: number, cells: Cells) => T,
): T[] {
  const next = 1 + rows.reduce((most, { row }) => Math.max(most, row), 1);
  if (change.op === 'add') return [...rows, make(next, change.after ?? {})];
  if (change.op === 'replace') {
    return rows.map((row) => (row.row === change.row ? make(row.row, change.after ?? {}) : row));
  }
  const gone = change.row ?? 0;
  return rows
    .filter((row) => row.row !== gone)
    .map((row) => (row.row > gone ? { ...row, row: row.row - 1 } : row));
}

/**
 * The dossier as it will look once the changes are made, for the page to show at once. What
 * can be changed on the page is followed; the server's own answer takes its place a moment later.
 */
export function patched(dossier: DossierAnswer, changes: readonly WireChange[]): DossierAnswer {
  let { claims, sources, printings, products } = dossier;
  for (const change of changes) {
    if (change.file === 'claims.csv') claims = changeRows(claims, change, claimRow);
    if (change.file === 'sources.csv') sources = changeRows(sources, change, sourceRow);
    if (change.file === 'printings.csv') printings = changeRows(printings, change, plainRow);
    if (change.file === 'products.csv') products = changeRows(products, change, plainRow);
  }
  return { ...dossier, claims, sources, printings, products };
}
