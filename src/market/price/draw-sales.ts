import { type Chance, dirichlet, pick, pickLog, redraw } from '../../maths/index.ts';
import type { Layout } from './layout.ts';
import { KINDS_BEFORE, type State, WIDER } from './state.ts';

/** What a sale of a cell on a day is expected to fetch, as a logarithm. */
function expectedAt({ cells, sales }: Layout, state: State, sale: number, cell: number): number {
  const printing = cells.printing[cell] as number;
  return (
    (state.level[printing] as number) +
    (state.drift[printing] as number) * (sales.years[sale] as number) +
    (1 + (state.slope[printing] as number)) *
      (state.curve[cells.column[cell] as number] as number) +
    (state.own[cell] as number) +
    (state.course[sales.step[sale] as number] as number)
  );
}

/**
 * Draws which kind each sale is and how wide each kind scatters; raw sales and graded ones have a
 * width of their own, since the condition of a raw copy is anybody's guess.
 */
export function drawSales(layout: Layout, state: State, random: Chance): void {
  const { sales } = layout;
  const { spreads, shares, kind, weight } = state;
  const counts = Float64Array.from(KINDS_BEFORE);
  const squares: [number, number] = [0, 0];
  const numbers: [number, number] = [0, 0];
  const chances = new Float64Array(WIDER.length);
  const variances = spreads.sale.map(({ sd }) => sd * sd) as [number, number];
  for (let i = 0; i < sales.count; i++) {
    const group = sales.column[i] === 0 ? 0 : 1;
    const off = (sales.log[i] as number) - expectedAt(layout, state, i, sales.cell[i] as number);
    const z2 = (off * off) / variances[group];
    let total = 0;
    for (let k = 0; k < WIDER.length; k++) {
      const wider = WIDER[k] as number;
      const chance = ((shares[k] as number) / wider) * Math.exp(-z2 / (2 * wider * wider));
      chances[k] = chance;
      total += chance;
    }
    const k = total > 0 ? pick(random, chances, total) : WIDER.length - 1;
    const wider = WIDER[k] as number;
    kind[i] = k;
    (counts[k] as number)++;
    squares[group] += (off * off) / (wider * wider);
    numbers[group]++;
  }
  for (const group of [0, 1] as const)
    redraw(spreads.sale[group], random, squares[group], numbers[group]);
  dirichlet(random, counts, shares);
  const precisions = spreads.sale.map(({ sd }) =>
    WIDER.map((wider) => 1 / (sd * sd * wider * wider)),
  );
  for (let i = 0; i < sales.count; i++)
    weight[i] = precisions[sales.column[i] === 0 ? 0 : 1]?.[kind[i] as number] as number;
}

/** Draws which printing each sale is of, where it may be of several. */
export function drawOpen(layout: Layout, state: State, random: Chance): void {
  const { sales, open } = layout;
  for (const { sale, cells } of open) {
    const logs = Float64Array.from(cells, (cell) => {
      const off = (sales.log[sale] as number) - expectedAt(layout, state, sale, cell);
      return (-(state.weight[sale] as number) * off * off) / 2;
    });
    sales.cell[sale] = cells[pickLog(random, logs)] as number;
  }
}
