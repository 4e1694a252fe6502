import { type Chance, redraw } from '../../maths/index.ts';
import type { Layout } from './layout.ts';
import type { State } from './state.ts';
import type { Sums } from './sums.ts';

/**
 * Draws level, drift and slope of each printing together, what its cells add of their own
 * integrated out: a cell of n sales counts by its mean, never by more than the spread of cells
 * allows. A printing without a sale is drawn from what is expected of it.
 */
export function drawPrintings(layout: Layout, state: State, sums: Sums, random: Chance): void {
  const { cells, printings } = layout;
  const { spreads, curve } = state;
  const ownPrecision = 1 / spreads.own.sd ** 2;
  const before = [spreads.level, spreads.drift, spreads.slope].map(({ sd }) => 1 / (sd * sd));
  const squares = [0, 0, 0];
  const A = new Float64Array(6);
  const b = new Float64Array(3);
  const x = new Float64Array(3);
  for (let p = 0; p < printings; p++) {
    A[0] = before[0] as number;
    A[2] = before[1] as number;
    A[5] = before[2] as number;
    A[1] = A[3] = A[4] = b[1] = b[2] = 0;
    b[0] = (before[0] as number) * (state.expected[p] as number);
    for (let cell = cells.from[p] as number; cell < (cells.from[p + 1] as number); cell++) {
      const w = sums.weight[cell] as number;
      const wt = sums.years[cell] as number;
      const wtt = sums.years2[cell] as number;
      const g = curve[cells.column[cell] as number] as number;
      const shrink = 1 / (w + ownPrecision);
      const wy = (sums.log[cell] as number) - w * g;
      const wty = (sums.yearsLog[cell] as number) - wt * g;
      const w0 = w - w * w * shrink;
      const w1 = wt - w * wt * shrink;
      const y0 = wy - w * wy * shrink;
      A[0] += w0;
      (A[1] as number) += w1;
      (A[2] as number) += wtt - wt * wt * shrink;
      (A[3] as number) += g * w0;
      (A[4] as number) += g * w1;
      (A[5] as number) += g * g * w0;
      b[0] += y0;
      (b[1] as number) += wty - wt * wy * shrink;
      (b[2] as number) += g * y0;
    }
    drawThree(A, b, x, random);
    state.level[p] = x[0] as number;
    state.drift[p] = x[1] as number;
    state.slope[p] = x[2] as number;
    (squares[0] as number) += ((x[0] as number) - (state.expected[p] as number)) ** 2;
    (squares[1] as number) += (x[1] as number) ** 2;
    (squares[2] as number) += (x[2] as number) ** 2;
  }
  redraw(spreads.level, random, squares[0] as number, printings);
  redraw(spreads.drift, random, squares[1] as number, printings);
  redraw(spreads.slope, random, squares[2] as number, printings);
}

/**
 * A draw from the normal distribution with precision `A` (lower triangle by rows) and mean the
 * solution of `A x = b`, by the factor of Cholesky.
 */
function drawThree(A: Float64Array, b: Float64Array, x: Float64Array, random: Chance): void {
  const [a00, a10, a11, a20, a21, a22] = A as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const l00 = Math.sqrt(a00);
  const l10 = a10 / l00;
  const l20 = a20 / l00;
  const l11 = Math.sqrt(Math.max(1e-12, a11 - l10 * l10));
  const l21 = (a21 - l20 * l10) / l11;
  const l22 = Math.sqrt(Math.max(1e-12, a22 - l20 * l20 - l21 * l21));
  const u0 = (b[0] as number) / l00;
  const u1 = ((b[1] as number) - l10 * u0) / l11;
  const u2 = ((b[2] as number) - l20 * u0 - l21 * u1) / l22;
  const x2 = (u2 + random.normal()) / l22;
  const x1 = (u1 + random.normal() - l21 * x2) / l11;
  x[2] = x2;
  x[1] = x1;
  x[0] = (u0 + random.normal() - l10 * x1 - l20 * x2) / l00;
}
