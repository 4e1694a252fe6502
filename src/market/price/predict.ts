import type { Chance } from '../../maths/index.ts';
import { sample } from './fit.ts';
import { type Layout, layoutOf, STEP_DAYS } from './layout.ts';
import { halfWidth } from './next-sale.ts';
import { makeRising } from './rising.ts';
import { type State, WIDER } from './state.ts';
import type { Sums } from './sums.ts';
import type { Price, PriceGround, Scatter } from './types.ts';

/** Days ahead that an interval holds for. */
const AHEAD_DAYS = 75;

/** Prices of a dossier on a day. */
export interface Prices {
  /** By printing, raw first, then the grades of each service from the worst. */
  readonly of: ReadonlyMap<string, readonly Price[]>;
  readonly scatter: { readonly raw: Scatter; readonly graded: Scatter };
  /** Of each sale, in the order given, the probability that it is no usual one. */
  readonly odd: Float64Array;
  /** The market's course: what 30-day steps back from the day stood above it, as logarithms. */
  readonly course: readonly {
    readonly daysBack: number;
    readonly log: number;
    readonly sd: number;
  }[];
}

/**
 * Prices by printing, service and grade from sales of all of them. A logarithm of a price is a
 * level of the printing (drawn towards those that share its language, market and the like), its
 * drift, what the grade adds, which never falls from a grade to the next, what the very cell adds,
 * and the market's course; sales scatter about it as usual, loose or odd ones. All of it is sampled
 * together, so a printing without a sale has a wide interval. Misleads where asking prices were
 * entered as sales, and where a market turns after the last sale.
 *
 * @param seed any whole number: one seed, the same answer
 * @throws {RangeError} for a sale that cannot be placed
 */
export function pricesOf(ground: PriceGround, seed = 1): Prices {
  const layout = layoutOf(ground);
  const tally = new Tally(layout);
  sample(layout, seed, (state, sums, random) => tally.see(state, sums, random));
  return tally.answer(ground);
}

/** Sums over the draws, of each printing and column. */
class Tally {
  private readonly layout: Layout;
  private draws = 0;
  private readonly mean: Float64Array;
  private readonly squares: Float64Array;
  private readonly odd: Float64Array;
  private readonly course: Float64Array;
  private readonly course2: Float64Array;
  private readonly drift2: Float64Array;
  private readonly shares = new Float64Array(WIDER.length);
  private readonly saleSd = [0, 0];
  private walk = 0;
  private readonly values: Float64Array;
  private readonly weights: Float64Array;

  constructor(layout: Layout) {
    this.layout = layout;
    const { printings, columns, sales, steps } = layout;
    this.mean = new Float64Array(printings * columns.count);
    this.squares = new Float64Array(printings * columns.count);
    this.odd = new Float64Array(sales.count);
    this.course = new Float64Array(steps);
    this.course2 = new Float64Array(steps);
    this.drift2 = new Float64Array(printings);
    this.values = new Float64Array(columns.count);
    this.weights = new Float64Array(columns.count);
  }

  see(state: State, sums: Sums, random: Chance): void {
    const { layout, mean, squares } = this;
    this.draws++;
    for (let p = 0; p < layout.printings; p++) {
      this.seeLevels(p, state, sums, random);
      const at = p * layout.columns.count;
      for (let c = 0; c < layout.columns.count; c++) {
        const value = this.values[c] as number;
        const before = value - (mean[at + c] as number);
        (mean[at + c] as number) += before / this.draws;
        (squares[at + c] as number) += before * (value - (mean[at + c] as number));
      }
      (this.drift2[p] as number) += (state.drift[p] as number) ** 2;
    }
    for (let i = 0; i < layout.sales.count; i++) if (state.kind[i] !== 0) (this.odd[i] as number)++;
    for (let s = 0; s < layout.steps; s++) {
      (this.course[s] as number) += state.course[s] as number;
      (this.course2[s] as number) += (state.course[s] as number) ** 2;
    }
    for (let k = 0; k < WIDER.length; k++) (this.shares[k] as number) += state.shares[k] as number;
    for (const group of [0, 1] as const)
      (this.saleSd[group] as number) += state.spreads.sale[group].sd;
    this.walk += state.spreads.course.sd ** 2;
  }

  /** The levels of one printing in one draw; cells without a sale add what such cells add. */
  private seeLevels(p: number, state: State, sums: Sums, random: Chance): void {
    const { layout, values, weights } = this;
    const { columns, cells } = layout;
    const before = 1 / state.spreads.own.sd ** 2;
    for (let c = 0; c < columns.count; c++) {
      values[c] =
        (state.level[p] as number) +
        (1 + (state.slope[p] as number)) * (state.curve[c] as number) +
        state.spreads.own.sd * random.normal();
      weights[c] = before;
    }
    for (let cell = cells.from[p] as number; cell < (cells.from[p + 1] as number); cell++) {
      const c = cells.column[cell] as number;
      values[c] =
        (state.level[p] as number) +
        (1 + (state.slope[p] as number)) * (state.curve[c] as number) +
        (state.own[cell] as number);
      weights[c] = before + (sums.weight[cell] as number);
    }
    for (const { first, count } of columns.services)
      makeRising(values.subarray(first, first + count), weights.subarray(first), count);
  }

  answer({ printings }: PriceGround): Prices {
    const { layout, draws } = this;
    const counts = saleCounts(layout);
    const scatterOf = (group: 0 | 1) =>
      WIDER.map((wider, k) => ({
        share: (this.shares[k] as number) / draws,
        sd: (wider * (this.saleSd[group] as number)) / draws,
      }));
    const scatter = { raw: scatterOf(0), graded: scatterOf(1) };
    const ahead = AHEAD_DAYS / 2 / 365.25;
    const walk = (this.walk / draws) * (AHEAD_DAYS / 2 / STEP_DAYS);
    const of = new Map<string, readonly Price[]>();
    for (const [p, { id }] of printings.entries()) {
      const further = walk + ((this.drift2[p] as number) / draws) * ahead ** 2;
      const prices = layout.columns.names.map(({ service, grade }, c): Price => {
        const at = p * layout.columns.count + c;
        const log = this.mean[at] as number;
        const variance = (this.squares[at] as number) / draws;
        const half = halfWidth(variance + further, c === 0 ? scatter.raw : scatter.graded, 0.8);
        return {
          service,
          grade,
          price: Math.exp(log),
          interval80: [Math.exp(log - half), Math.exp(log + half)],
          level: { log, sd: Math.sqrt(variance) },
          ahead: Math.sqrt(further),
          sales: counts[at] as number,
        };
      });
      of.set(id, prices);
    }
    return { of, scatter, odd: this.odd.map((count) => count / draws), course: this.courseOf() };
  }

  private courseOf() {
    const { draws } = this;
    return [...this.course].map((sum, s) => {
      const log = sum / draws;
      const variance = (this.course2[s] as number) / draws - log * log;
      return { daysBack: s * STEP_DAYS, log, sd: Math.sqrt(Math.max(0, variance)) };
    });
  }
}

function saleCounts({ sales, cells, columns, printings }: Layout): Int32Array {
  const counts = new Int32Array(printings * columns.count);
  for (let i = 0; i < sales.count; i++) {
    const cell = sales.cell[i] as number;
    const at = (cells.printing[cell] as number) * columns.count + (cells.column[cell] as number);
    (counts[at] as number)++;
  }
  return counts;
}
