import { type Chance, positiveNormal } from '../../maths/index.ts';
import type { Layout } from './layout.ts';
import { raised, type State } from './state.ts';
import type { Sums } from './sums.ts';

/** Spread of what a service's lowest grade adds to raw, before a sale is seen. Judgement, no source. */
const LOWEST_SD = 1;

/**
 * Draws what grades add: each rise from one grade to the next is above 0, exponential before sales
 * are seen, at a rate that the services share by how far the grade is below the top.
 */
export function drawCurve(layout: Layout, state: State, sums: Sums, random: Chance): void {
  const { columns, cells } = layout;
  const precision = new Float64Array(columns.count);
  const pull = new Float64Array(columns.count);
  const ownVariance = state.spreads.own.sd ** 2;
  for (let cell = 0; cell < cells.count; cell++) {
    const w = sums.weight[cell] as number;
    if (w === 0) continue;
    const p = cells.printing[cell] as number;
    const column = cells.column[cell] as number;
    const times = 1 + (state.slope[p] as number);
    const mean =
      ((sums.log[cell] as number) - (state.drift[p] as number) * (sums.years[cell] as number)) / w -
      (state.level[p] as number);
    const one = 1 / (ownVariance + 1 / w);
    (precision[column] as number) += one * times * times;
    (pull[column] as number) += one * times * mean;
  }
  const rateCounts = [0, 0, 0];
  const rateSums = [0, 0, 0];
  for (const [s, { first, count, belowTop }] of columns.services.entries()) {
    const rises = state.rises[s] as Float64Array;
    for (let k = 0; k < count; k++) {
      let a = 0;
      let b = 0;
      let others = 0;
      for (let j = 0; j < count; j++) {
        if (j !== k) others += rises[j] as number;
        if (j < k) continue;
        const q = precision[first + j] as number;
        a += q;
        b += (pull[first + j] as number) - q * others;
      }
      if (k === 0) {
        const all = a + 1 / LOWEST_SD ** 2;
        rises[0] = b / all + random.normal() / Math.sqrt(all);
        continue;
      }
      const far = Math.min(2, belowTop[k] as number);
      const rate = state.riseRate[far] as number;
      const drawn =
        a < 1e-9
          ? -Math.log(random.uniform()) / rate
          : positiveNormal(random, (b - rate) / a, 1 / Math.sqrt(a));
      rises[k] = drawn;
      (rateCounts[far] as number)++;
      (rateSums[far] as number) += drawn;
    }
  }
  // Before sales are seen a rise is about 0.3 of a logarithm. Judgement, no source; one rise's weight.
  for (let far = 0; far < 3; far++)
    state.riseRate[far] =
      random.gamma(1 + (rateCounts[far] as number)) / (0.3 + (rateSums[far] as number));
  raised(state.curve, state.rises, layout);
}

/** Draws what each cell adds of its own. */
export function drawOwn(layout: Layout, state: State, sums: Sums, random: Chance): number {
  const { cells } = layout;
  const before = 1 / state.spreads.own.sd ** 2;
  let squares = 0;
  for (let cell = 0; cell < cells.count; cell++) {
    const p = cells.printing[cell] as number;
    const w = sums.weight[cell] as number;
    const g = state.curve[cells.column[cell] as number] as number;
    const rest =
      (sums.log[cell] as number) -
      w * ((state.level[p] as number) + (1 + (state.slope[p] as number)) * g) -
      (state.drift[p] as number) * (sums.years[cell] as number);
    const all = w + before;
    const own = rest / all + random.normal() / Math.sqrt(all);
    state.own[cell] = own;
    squares += own * own;
  }
  return squares;
}
