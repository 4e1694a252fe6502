import { type Chance, chance, redraw } from '../../maths/index.ts';
import { drawCourse } from './draw-course.ts';
import { drawCurve, drawOwn } from './draw-curve.ts';
import { drawExpected } from './draw-expected.ts';
import { drawPrintings } from './draw-printings.ts';
import { drawOpen, drawSales } from './draw-sales.ts';
import type { Layout } from './layout.ts';
import { beginning, type State } from './state.ts';
import { addUp, type Sums, sumsFor } from './sums.ts';

/** One sweep: everything that prices depend on is drawn once from what the rest leaves open. */
function sweep(layout: Layout, state: State, sums: Sums, random: Chance): void {
  addUp(layout, state, sums);
  drawPrintings(layout, state, sums, random);
  drawCurve(layout, state, sums, random);
  const squares = drawOwn(layout, state, sums, random);
  redraw(state.spreads.own, random, squares, layout.cells.count);
  drawExpected(layout, state, random);
  drawCourse(layout, state, random);
  drawOpen(layout, state, random);
  drawSales(layout, state, random);
}

/** How long a chain runs: short where many sales leave little open, long where few do. */
export function lengthFor({ sales, printings }: Layout): { settle: number; keep: number } {
  const work = sales.count + 40 * printings;
  const keep = Math.round(Math.min(2000, Math.max(60, 6_000_000 / work)));
  return { settle: Math.round(keep / 2), keep };
}

/**
 * Runs a Gibbs sampler over all that prices depend on and shows every kept draw. The draws' spread
 * is what the sales leave open, rates and spreads included, since none is plugged in.
 */
export function sample(
  layout: Layout,
  seed: number,
  see: (state: State, sums: Sums, random: Chance) => void,
): void {
  const random = chance(seed);
  const state = beginning(layout);
  const sums = sumsFor(layout);
  const { settle, keep } = lengthFor(layout);
  drawSales(layout, state, random);
  for (let i = 0; i < settle + keep; i++) {
    sweep(layout, state, sums, random);
    if (i >= settle) see(state, sums, random);
  }
}
