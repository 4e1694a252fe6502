import { type Circle, circlesOf, type Edge } from './circles.ts';
import { FATE, type FaultList } from './faults.ts';
import { groupBy } from './group-by.ts';
import type { ReadTable } from './read-table.ts';

/** What the id of a printing stands for. */
export interface PrintingIds {
  /** Ids that were given up, with the id that stands for each now. */
  readonly forwards: ReadonlyMap<string, string>;
  /** Ids that others are parts of, with their parts that have none themselves. */
  readonly parts: ReadonlyMap<string, readonly string[]>;
  /**
   * The printings that a cell names: `a|b` and wholes as the alternatives that they mean. Empty
   * where one of them is not known.
   */
  resolve(cell: string): readonly string[];
}

const NONE: readonly string[] = [];

/** Follows `replaced_by` and `part_of`; circles among them are listed and their cells not read. */
export function printingIds(
  table: ReadTable | undefined,
  known: ReadonlyMap<string, number>,
  faults: FaultList,
): PrintingIds {
  const forwards = forwardsOf(table, faults);
  const stands = (id: string) => forwards.get(id) ?? id;
  const parts = partsOf(table, stands, faults);
  const resolved = new Map<string, readonly string[]>();
  const alternatives = (ids: readonly string[]): readonly string[] => {
    const [id = ''] = ids;
    if (ids.length === 1) return parts.get(stands(id)) ?? [stands(id)];
    return [...new Set(ids.flatMap((one) => parts.get(stands(one)) ?? stands(one)))];
  };
  const resolve = (cell: string): readonly string[] => {
    const before = resolved.get(cell);
    if (before !== undefined) return before;
    const ids = cell.includes('|') ? cell.split('|').map((id) => id.trim()) : [cell];
    const all = ids.every((id) => known.has(id)) ? alternatives(ids) : NONE;
    resolved.set(cell, all);
    return all;
  };
  return { forwards, parts, resolve };
}

function edgesOf(table: ReadTable | undefined, column: string): Edge[] {
  if (table === undefined || table.indexOf(column) < 0) return [];
  return [...table.rows()].flatMap((row) => {
    const to = table.value(row, column);
    return to === '' || to === 'none' ? [] : { row, from: table.value(row, 'id'), to };
  });
}

function withoutCircles(
  table: ReadTable | undefined,
  column: string,
  edges: readonly Edge[],
  faults: FaultList,
): Edge[] {
  const { circles, within } = circlesOf(edges);
  for (const circle of circles) listCircle(table!.file, column, circle, faults);
  for (const edge of within) table!.spoil(edge.row, table!.indexOf(column));
  return edges.filter((edge) => !within.has(edge));
}

function listCircle(file: string, column: string, circle: Circle, faults: FaultList): void {
  faults.add({
    file,
    row: circle.edge.row,
    column,
    found: circle.ids.join(' → '),
    expected: 'no circle',
    fate: FATE.cell,
  });
}

function forwardsOf(table: ReadTable | undefined, faults: FaultList): Map<string, string> {
  const edges = withoutCircles(table, 'replaced_by', edgesOf(table, 'replaced_by'), faults);
  const next = new Map(edges.map((edge) => [edge.from, edge.to]));
  const forwards = new Map<string, string>();
  for (const id of next.keys()) {
    let last = id;
    for (let to = next.get(last); to !== undefined; to = next.get(last)) last = to;
    forwards.set(id, last);
  }
  return forwards;
}

function partsOf(
  table: ReadTable | undefined,
  stands: (id: string) => string,
  faults: FaultList,
): Map<string, readonly string[]> {
  const edges = edgesOf(table, 'part_of')
    .filter((edge) => stands(edge.from) === edge.from)
    .map((edge) => ({ ...edge, to: stands(edge.to) }));
  const direct = groupBy(withoutCircles(table, 'part_of', edges, faults), (edge) => edge.to);
  const parts = new Map<string, readonly string[]>();
  for (const whole of direct.keys()) {
    const leaves = new Set<string>();
    const open = [whole];
    for (let id = open.pop(); id !== undefined; id = open.pop()) {
      const below = direct.get(id);
      if (below === undefined) leaves.add(id);
      else open.push(...below.map((edge) => edge.from).reverse());
    }
    parts.set(whole, [...leaves]);
  }
  return parts;
}
