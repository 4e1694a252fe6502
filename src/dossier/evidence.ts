import type { Content, Printing, Product } from '../catalogue/index.ts';
import type { Evidence, OrderFact, Source, SourceKind } from '../evidence/index.ts';
import { circlesOf } from './circles.ts';
import { claimsOf } from './claims.ts';
import { FATE } from './faults.ts';
import type { Ground } from './ground.ts';
import type { ReadTable } from './read-table.ts';
import { specOf } from './schema.ts';
import { weekdaysOf } from './weekdays.ts';

/**
 * The evidence of a dossier, all references followed. Sources and products whose tables are not
 * there are known by their ids alone; a claim that names no source has the source `''`.
 */
export function evidenceOf(ground: Ground): Evidence {
  const { tables } = ground;
  const claims = claimsOf(ground);
  const contents = contentsOf(ground);
  const sources = recordsOf(tables.get('sources.csv')).map(sourceOf);
  const products = recordsOf(tables.get('products.csv')) as unknown as Product[];
  const namedSources = new Set<string>();
  const namedProducts = new Set(contents.map((content) => content.product));
  for (const { source, product } of claims) {
    namedSources.add(source);
    if (product !== undefined) namedProducts.add(product);
  }
  return {
    printings: printingsOf(ground),
    products: [...products, ...unlisted(products, namedProducts).map((id) => ({ id }))],
    contents,
    sources: [...sources, ...unlisted(sources, namedSources).map(bareSource)],
    claims,
    orders: ordersOf(ground),
    weekdays: weekdaysOf(ground),
  };
}

/** Usable rows with the columns that the format names, empty cells left out. */
function recordsOf(table: ReadTable | undefined): Record<string, string>[] {
  if (table === undefined) return [];
  const columns = [...(specOf(table.file)?.columns.keys() ?? [])]
    .map((column) => [column, table.indexOf(column)] as const)
    .filter(([, index]) => index >= 0);
  return [...table.rows()].map((row) => {
    const cells = columns.map(([column, index]) => [column, table.valueAt(row, index)] as const);
    return Object.fromEntries(cells.filter(([, cell]) => cell !== ''));
  });
}

/** Printings of their own: no id that was given up, and none that only stands for its parts. */
function printingsOf({ tables, printings: { forwards, parts } }: Ground): Printing[] {
  const rows = recordsOf(tables.get('printings.csv')) as unknown as Printing[];
  return rows
    .filter(({ id }) => !forwards.has(id) && !parts.has(id))
    .map(({ replaced_by: _, part_of: whole, ...printing }) => {
      if (whole === undefined || whole === 'none') return printing;
      return { ...printing, part_of: forwards.get(whole) ?? whole };
    });
}

function sourceOf(row: Record<string, string>): Source {
  const cites = row.cites === undefined || row.cites === 'none' ? [] : row.cites.split('|');
  const kind = (row.kind === 'none' ? undefined : row.kind) ?? 'other';
  const source = { ...row, kind: kind as SourceKind, cites: cites.map((id) => id.trim()) };
  return source as unknown as Source;
}

function bareSource(id: string): Source {
  const named = id === '' ? { id, title: 'no source named' } : { id };
  return { ...named, kind: 'other', cites: [] };
}

function unlisted(listed: readonly { id: string }[], named: ReadonlySet<string>): string[] {
  const known = new Set(listed.map(({ id }) => id));
  return [...named].filter((id) => !known.has(id));
}

/** What lies in what. A row that names one of several printings, not known which, is not used. */
function contentsOf({ tables, printings }: Ground): Content[] {
  const table = tables.get('contents.csv');
  if (table === undefined) return [];
  return [...table.rows()].flatMap((row) => {
    const [printing, another] = printings.resolve(table.value(row, 'printing'));
    if (printing === undefined || another !== undefined) return [];
    const [over, under = '1'] = table.value(row, 'odds').split('/');
    const odds = over === '' || over === 'none' ? {} : { odds: Number(over) / Number(under) };
    return { product: table.value(row, 'product'), printing, ...odds };
  });
}

/** Sequences, those in a circle left out and all of them named. */
function ordersOf(ground: Ground): OrderFact[] {
  const { tables, faults } = ground;
  const table = tables.get('orders.csv');
  if (table === undefined) return [];
  const edges = [...table.rows()].flatMap((row) => {
    const from = oneEnd(ground, table, row, 'earlier');
    const to = oneEnd(ground, table, row, 'later');
    return from === undefined || to === undefined ? [] : { row, from, to };
  });
  const { circles, within } = circlesOf(edges);
  for (const { edge, ids } of circles) {
    const found = ids.join(' → ');
    const expected = 'sequences without a circle';
    const fate = 'No row of the circle is used.';
    faults.add({ file: table.file, row: edge.row, column: 'later', found, expected, fate });
  }
  for (const { row } of within) table.leaveOut(row);
  return edges.flatMap((edge) => {
    if (within.has(edge)) return [];
    const reason = table.value(edge.row, 'reason');
    const order = { row: edge.row, earlier: edge.from, later: edge.to };
    return reason === '' ? order : { ...order, reason };
  });
}

function oneEnd(ground: Ground, table: ReadTable, row: number, column: string) {
  const cell = table.value(row, column);
  const [id, another] = ground.printings.resolve(cell);
  if (another === undefined) return id;
  const expected = 'one printing: a sequence of one of several cannot be used';
  const finding = { file: table.file, row, column, found: cell, expected, fate: FATE.row };
  ground.faults.add(finding);
  table.leaveOut(row);
  return undefined;
}
