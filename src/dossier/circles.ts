import { groupBy } from './group-by.ts';

/** That one id comes before, or leads to, another. */
export interface Edge {
  readonly row: number;
  readonly from: string;
  readonly to: string;
}

/** Ids that lead back to the first one, which stands at the end again. */
export interface Circle {
  /** The edge by which it was found, the uppermost that no other circle named. */
  readonly edge: Edge;
  readonly ids: readonly string[];
}

/** Circles that are named; of a greater knot all edges are taken as lying in one. */
const NAMED = 1000;

/**
 * All edges that lie in a circle, and circles that name every one of them, 1,000 at most. Time grows
 * with the number of edges where there is no circle.
 */
export function circlesOf(edges: readonly Edge[]): {
  readonly circles: readonly Circle[];
  readonly within: ReadonlySet<Edge>;
} {
  const left = peeled(edges);
  const out = groupBy(left, (edge) => edge.from);
  const within = new Set<Edge>();
  const circles: Circle[] = [];
  for (const edge of left) {
    if (within.has(edge)) continue;
    if (circles.length >= NAMED) {
      within.add(edge);
      continue;
    }
    const way = wayBetween(edge.to, edge.from, out);
    if (way === undefined) continue;
    for (const step of [edge, ...way]) within.add(step);
    circles.push({ edge, ids: [edge.from, edge.to, ...way.map((step) => step.to)] });
  }
  return { circles, within };
}

/** What remains when edges that begin or end nowhere are taken away again and again. */
function peeled(edges: readonly Edge[]): readonly Edge[] {
  let left = edges;
  for (const [near, far] of [
    ['from', 'to'],
    ['to', 'from'],
  ] as const) {
    const degree = new Map<string, number>();
    for (const edge of left) degree.set(edge[far], (degree.get(edge[far]) ?? 0) + 1);
    const next = groupBy(left, (edge) => edge[near]);
    const free = [...next.keys()].filter((id) => !degree.has(id));
    for (let id = free.pop(); id !== undefined; id = free.pop()) {
      for (const edge of next.get(id) ?? []) {
        const count = degree.get(edge[far])! - 1;
        degree.set(edge[far], count);
        if (count === 0) free.push(edge[far]);
      }
    }
    left = left.filter((edge) => (degree.get(edge[near]) ?? 0) > 0);
  }
  return left;
}

/** The shortest way from one id to another; no steps where they are one. */
function wayBetween(
  from: string,
  to: string,
  out: ReadonlyMap<string, readonly Edge[]>,
): Edge[] | undefined {
  const reachedBy = new Map<string, Edge | undefined>([[from, undefined]]);
  const queue = [from];
  for (let i = 0; i < queue.length && !reachedBy.has(to); i++) {
    for (const edge of out.get(queue[i]!) ?? []) {
      if (reachedBy.has(edge.to)) continue;
      reachedBy.set(edge.to, edge);
      queue.push(edge.to);
    }
  }
  if (!reachedBy.has(to)) return undefined;
  const way: Edge[] = [];
  for (let edge = reachedBy.get(to); edge !== undefined; edge = reachedBy.get(edge.from)) {
    way.push(edge);
  }
  return way.reverse();
}
