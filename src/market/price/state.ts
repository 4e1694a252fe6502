import { type Spread, spreadOf } from '../../maths/index.ts';
import type { Layout } from './layout.ts';

/** How much wider than usual the three kinds of sale scatter: usual, loose, odd. Judgement, no source. */
export const WIDER = [1, 3, 12] as const;
/** Before sales are seen, how many of each kind: 93, 5 and 2 of a hundred. Judgement, no source. */
export const KINDS_BEFORE = [18.6, 1, 0.4] as const;

/** One draw of everything that prices depend on; logarithms throughout. */
export interface State {
  /** Level of each printing raw, on the day asked for. */
  readonly level: Float64Array;
  /** Its drift in a year beside the market's. */
  readonly drift: Float64Array;
  /** How much more, as a share, grades matter to it than to others. */
  readonly slope: Float64Array;
  /** What the level is expected to be from what the printing shares with others. */
  readonly expected: Float64Array;
  mean: number;
  plenty: number;
  /** Effect of each level of each factor. */
  readonly effects: readonly Float64Array[];
  /** What a column adds to raw: 0 for raw, never falling within a service. */
  readonly curve: Float64Array;
  /** For each service what its lowest grade adds, then each grade to the one before. */
  readonly rises: readonly Float64Array[];
  /** Rate of the rises, by how far below the top grade: 0, 1, and more. */
  readonly riseRate: Float64Array;
  /** What one cell adds beside all that. */
  readonly own: Float64Array;
  /** The market's course: what a step stands above the day asked for. */
  readonly course: Float64Array;
  /** Which kind each sale is, an index of `WIDER`. */
  readonly kind: Uint8Array;
  /** One over the variance of each sale. */
  readonly weight: Float64Array;
  readonly shares: Float64Array;
  readonly spreads: {
    readonly level: Spread;
    readonly drift: Spread;
    readonly slope: Spread;
    readonly own: Spread;
    readonly course: Spread;
    readonly plenty: Spread;
    /** Of a usual sale: raw, graded. */
    readonly sale: readonly [Spread, Spread];
    readonly effects: readonly Spread[];
  };
}

/** Where a chain begins: all printings alike, grades rising gently. */
export function beginning(layout: Layout): State {
  const { printings, columns, cells, sales, factors, steps } = layout;
  const middle = [...sales.log].sort((a, b) => a - b)[sales.count >> 1] ?? layout.before;
  const curve = new Float64Array(columns.count);
  const rises = columns.services.map(({ count }) => new Float64Array(count).fill(0.2));
  return {
    level: new Float64Array(printings).fill(middle),
    drift: new Float64Array(printings),
    slope: new Float64Array(printings),
    expected: new Float64Array(printings).fill(middle),
    mean: middle,
    plenty: 0,
    effects: factors.map(({ levels }) => new Float64Array(levels)),
    curve: raised(curve, rises, layout),
    rises,
    riseRate: Float64Array.of(2, 3, 4),
    own: new Float64Array(cells.count),
    course: new Float64Array(steps),
    kind: new Uint8Array(sales.count),
    weight: new Float64Array(sales.count).fill(4),
    shares: Float64Array.from(KINDS_BEFORE, (count) => count / 20),
    // Scales of the priors in natural logarithms of price. Judgement, no source; wide.
    spreads: {
      level: spreadOf(0.8),
      drift: spreadOf(0.1),
      slope: spreadOf(0.2),
      own: spreadOf(0.15),
      course: spreadOf(0.05),
      plenty: spreadOf(0.3),
      sale: [spreadOf(0.25), spreadOf(0.25)],
      effects: factors.map(() => spreadOf(0.4)),
    },
  };
}

/** Writes the curve that rises make: each service climbs from its lowest grade. */
export function raised(
  curve: Float64Array,
  rises: readonly Float64Array[],
  { columns }: Layout,
): Float64Array {
  for (const [s, { first, count }] of columns.services.entries()) {
    let height = 0;
    for (let k = 0; k < count; k++) {
      height += rises[s]?.[k] as number;
      curve[first + k] = height;
    }
  }
  return curve;
}
