import type { Layout } from './layout.ts';
import type { State } from './state.ts';

/** Weighted sums of the sales of each cell, the market's course taken off. */
export interface Sums {
  readonly weight: Float64Array;
  readonly years: Float64Array;
  readonly years2: Float64Array;
  readonly log: Float64Array;
  readonly yearsLog: Float64Array;
}

/** Empty sums for the cells of a layout. */
export function sumsFor({ cells }: Layout): Sums {
  const empty = () => new Float64Array(cells.count);
  return { weight: empty(), years: empty(), years2: empty(), log: empty(), yearsLog: empty() };
}

/** Sums the sales anew. */
export function addUp({ sales }: Layout, state: State, sums: Sums): void {
  for (const sum of Object.values(sums) as Float64Array[]) sum.fill(0);
  for (let i = 0; i < sales.count; i++) {
    const cell = sales.cell[i] as number;
    const w = state.weight[i] as number;
    const t = sales.years[i] as number;
    const y = (sales.log[i] as number) - (state.course[sales.step[i] as number] as number);
    (sums.weight[cell] as number) += w;
    (sums.years[cell] as number) += w * t;
    (sums.years2[cell] as number) += w * t * t;
    (sums.log[cell] as number) += w * y;
    (sums.yearsLog[cell] as number) += w * t * y;
  }
}
