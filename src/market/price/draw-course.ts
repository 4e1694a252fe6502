import { type Chance, redraw } from '../../maths/index.ts';
import type { Layout } from './layout.ts';
import type { State } from './state.ts';

/**
 * Draws the market's course as a random walk back from the day asked for, forwards filtered and
 * backwards sampled (`carter:1994`).
 */
export function drawCourse(layout: Layout, state: State, random: Chance): void {
  const { sales, cells, steps } = layout;
  const precision = new Float64Array(steps);
  const pull = new Float64Array(steps);
  for (let i = 0; i < sales.count; i++) {
    const cell = sales.cell[i] as number;
    const p = cells.printing[cell] as number;
    const step = sales.step[i] as number;
    const w = state.weight[i] as number;
    const rest =
      (sales.log[i] as number) -
      (state.level[p] as number) -
      (state.drift[p] as number) * (sales.years[i] as number) -
      (1 + (state.slope[p] as number)) * (state.curve[cells.column[cell] as number] as number) -
      (state.own[cell] as number);
    (precision[step] as number) += w;
    (pull[step] as number) += w * rest;
  }
  const walk = state.spreads.course.sd ** 2;
  const mean = new Float64Array(steps);
  const variance = new Float64Array(steps);
  for (let s = 1; s < steps; s++) {
    const ahead = (variance[s - 1] as number) + walk;
    variance[s] = 1 / (1 / ahead + (precision[s] as number));
    mean[s] = (variance[s] as number) * ((mean[s - 1] as number) / ahead + (pull[s] as number));
  }
  let squares = 0;
  for (let s = steps - 1; s > 0; s--) {
    const next = s === steps - 1 ? undefined : (state.course[s + 1] as number);
    const v = variance[s] as number;
    const gain = next === undefined ? 0 : v / (v + walk);
    const centre = (mean[s] as number) + gain * ((next ?? 0) - (mean[s] as number));
    const left = next === undefined ? v : v * (1 - gain);
    state.course[s] = centre + Math.sqrt(left) * random.normal();
    if (next !== undefined) squares += (next - (state.course[s] as number)) ** 2;
  }
  if (steps > 1) squares += (state.course[1] as number) ** 2;
  redraw(state.spreads.course, random, squares, steps - 1);
}
