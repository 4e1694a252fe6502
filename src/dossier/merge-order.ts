import type { Alignment } from './align.ts';
import { groupBy } from './group-by.ts';
import type { Sheet } from './sheet.ts';

/** A row of the merged table: where it stands in the sheets that have it. */
export interface Place {
  readonly base?: number;
  readonly a?: number;
  readonly b?: number;
}

/**
 * The order of a merged table, the same whichever side is called `a`: rows of the base as the side
 * has them that moved some, each followed by what the sides added behind it.
 */
export function orderOf(
  base: Sheet,
  a: Sheet,
  b: Sheet,
  toA: Alignment,
  toB: Alignment,
  twins: ReadonlyMap<number, number>,
): Place[] {
  const order = baseOrder(base, a, b, toA, toB);
  const rank = new Map([1, ...order].map((row, i) => [row, i] as const));
  const behindA = anchorsOf(a, toA);
  const behindB = anchorsOf(b, toB);
  const twinOfB = new Map([...twins].map(([x, y]) => [y, x]));
  // A row that both added stands where the earlier of the two has it.
  const isInA = (x: number, y: number) => rank.get(behindA.get(x)!)! <= rank.get(behindB.get(y)!)!;
  const isInB = (x: number, y: number) => rank.get(behindB.get(y)!)! <= rank.get(behindA.get(x)!)!;
  const keepA = toA.added.filter((x) => !twins.has(x) || isInA(x, twins.get(x)!));
  const keepB = toB.added.filter((y) => !twinOfB.has(y) || isInB(twinOfB.get(y)!, y));
  const [runsA, runsB] = [
    groupBy(keepA, (x) => behindA.get(x)!),
    groupBy(keepB, (y) => behindB.get(y)!),
  ];
  return [1, ...order].flatMap((row) => {
    const placed = row === 1 ? [] : [placeOf(row, toA, toB)];
    return [
      ...placed,
      ...joinedRuns(a, b, runsA.get(row) ?? [], runsB.get(row) ?? [], twins, twinOfB),
    ];
  });
}

function placeOf(base: number, toA: Alignment, toB: Alignment): Place {
  const [a, b] = [toA.matches.get(base), toB.matches.get(base)];
  return { base, ...(a === undefined ? {} : { a }), ...(b === undefined ? {} : { b }) };
}

/** All rows of the base, in the order of the side that moved some. */
function baseOrder(base: Sheet, a: Sheet, b: Sheet, toA: Alignment, toB: Alignment): number[] {
  const rows = Array.from({ length: base.lastRow - 1 }, (_, i) => i + 2);
  const [movedA, movedB] = [isMoved(toA), isMoved(toB)];
  if (!movedA && !movedB) return rows;
  const aLeads = movedA && (!movedB || textOf(a) <= textOf(b));
  const { matches } = aLeads ? toA : toB;
  const moved = [...matches].sort(([, x], [, y]) => x - y).map(([row]) => row);
  // A row that the leading side removed follows the one that it stood behind.
  let before = 1;
  const behind = groupBy(rows, (row) => {
    if (!matches.has(row)) return before;
    before = row;
    return 0;
  });
  return [1, ...moved].flatMap((row) => [row, ...(behind.get(row) ?? [])]).slice(1);
}

function isMoved({ matches }: Alignment): boolean {
  let last = 0;
  for (const other of matches.values()) {
    if (other < last) return true;
    last = other;
  }
  return false;
}

function textOf(sheet: Sheet): string {
  return Array.from({ length: sheet.lastRow }, (_, i) => sheet.raw(i + 1)).join('\n');
}

/** The row of the base that each added row stands behind; 1 is the header. */
function anchorsOf(side: Sheet, { matches }: Alignment): Map<number, number> {
  const baseOf = new Map([...matches].map(([row, other]) => [other, row]));
  const anchors = new Map<number, number>();
  let anchor = 1;
  for (let row = 2; row <= side.lastRow; row++) {
    const base = baseOf.get(row);
    if (base === undefined) anchors.set(row, anchor);
    else anchor = base;
  }
  return anchors;
}

/** Two runs added at one place: the one that holds the other, or twins first and then the rest. */
function joinedRuns(
  a: Sheet,
  b: Sheet,
  runA: readonly number[],
  runB: readonly number[],
  twins: ReadonlyMap<number, number>,
  twinOfB: ReadonlyMap<number, number>,
): Place[] {
  const placeA = (x: number): Place => (twins.has(x) ? { a: x, b: twins.get(x)! } : { a: x });
  const placeB = (y: number): Place => (twinOfB.has(y) ? { a: twinOfB.get(y)!, b: y } : { b: y });
  const placesA = new Map(runA.map((x, i) => [x, i]));
  const placesB = new Map(runB.map((y, j) => [y, j]));
  const onlyA = runA.filter((x) => !placesB.has(twins.get(x) ?? -1));
  const onlyB = runB.filter((y) => !placesA.has(twinOfB.get(y) ?? -1));
  if (onlyB.length === 0 && onlyA.length > 0) return runA.map(placeA);
  if (onlyA.length === 0 && onlyB.length > 0) return runB.map(placeB);
  const both = runA
    .map((x, i) => ({ x, y: twins.get(x) ?? -1, i }))
    .filter(({ y }) => placesB.has(y))
    .map(({ x, y, i }) => ({
      x,
      first: Math.min(i, placesB.get(y)!),
      text: [a.raw(x), b.raw(y)].sort().join('\n'),
    }))
    .sort((p, q) => p.first - q.first || (p.text < q.text ? -1 : 1));
  const rest = [onlyA.map(placeA), onlyB.map(placeB)];
  const texts = [onlyA.map((x) => a.raw(x)).join('\n'), onlyB.map((y) => b.raw(y)).join('\n')];
  if (texts[0]! > texts[1]!) rest.reverse();
  return [...both.map(({ x }) => placeA(x)), ...rest.flat()];
}
