/** One event before another (`strict`: never the same day), by index. */
export interface Order {
  readonly earlier: number;
  readonly later: number;
  readonly strict: boolean;
  /** Where not strict: how many times as likely one day for both is as by chance; 1 if left out. */
  readonly sameDay?: number;
}

/** Events whose removal leaves the facts without a circle: greedily those with most facts. */
export function cutset(n: number, orders: readonly Order[]): number[] {
  const cut: number[] = [];
  for (;;) {
    const core = cyclicCore(n, orders, cut);
    if (core.size === 0) return cut;
    let worst = -1;
    for (const [e, degree] of core) if (worst < 0 || degree > core.get(worst)!) worst = e;
    cut.push(worst);
  }
}

/** Events on undirected circles with their number of facts there, after leaves are stripped. */
function cyclicCore(
  n: number,
  orders: readonly Order[],
  cut: readonly number[],
): Map<number, number> {
  let edges = orders.filter(({ earlier, later }) => !cut.includes(earlier) && !cut.includes(later));
  for (;;) {
    const degree = new Int32Array(n);
    for (const { earlier, later } of edges) {
      degree[earlier]!++;
      degree[later]!++;
    }
    const kept = edges.filter(({ earlier, later }) => degree[earlier]! > 1 && degree[later]! > 1);
    if (kept.length === edges.length) {
      const core = new Map<number, number>();
      degree.forEach((d, e) => {
        if (d > 0) core.set(e, d);
      });
      return core;
    }
    edges = kept;
  }
}

/** Whether the facts form no circle, directions aside. */
export function isForest(n: number, orders: readonly Order[]): boolean {
  return cyclicCore(n, orders, []).size === 0;
}
