import { leastSquares } from '../../maths/index.ts';

/** Slopes of a card on a grid in its own axes; the weight of both is 0 where nothing is known. */
export interface CardSlopes {
  readonly right: Float64Array;
  readonly down: Float64Array;
  readonly weight: Float64Array;
}

/** Highest power of a bend that is taken off: bowed, twisted and waved cards, no dent. */
const DEGREE = 4;
const TERMS: readonly (readonly [number, number])[] = Array.from({ length: DEGREE + 1 }, (_, a) =>
  Array.from({ length: DEGREE + 1 - a }, (_, b) => [a, b] as const),
)
  .flat()
  .filter(([a, b]) => a + b > 0);

const EVERY = 5;
const ROUNDS = 3;

/** The slopes less those of the smooth bend that fits them best; what stands out does not pull it. */
export function flattened(slopes: CardSlopes, width: number): CardSlopes {
  const height = slopes.right.length / width;
  const rows: (readonly number[])[] = [];
  const seen: number[] = [];
  const weights: number[] = [];
  for (let y = 2; y < height; y += EVERY)
    for (let x = 2; x < width; x += EVERY) {
      const i = y * width + x;
      if (!((slopes.weight[i] as number) > 0)) continue;
      const [right, down] = rowsAt(x / width - 0.5, y / height - 0.5, width, height);
      rows.push(right, down);
      seen.push(slopes.right[i] as number, slopes.down[i] as number);
      weights.push(slopes.weight[i] as number, slopes.weight[i] as number);
    }
  if (rows.length < 4 * TERMS.length) return slopes;
  const bend = robust(rows, seen, weights);
  const right = slopes.right.slice();
  const down = slopes.down.slice();
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      const [byX, byY] = rowsAt(x / width - 0.5, y / height - 0.5, width, height);
      right[i] = (right[i] as number) - along(byX, bend);
      down[i] = (down[i] as number) - along(byY, bend);
    }
  return { right, down, weight: slopes.weight };
}

/** Slopes of each term, a step right and a step down. */
function rowsAt(u: number, v: number, width: number, height: number) {
  const right = TERMS.map(([a, b]) => (a === 0 ? 0 : (a * u ** (a - 1) * v ** b) / width));
  const down = TERMS.map(([a, b]) => (b === 0 ? 0 : (b * u ** a * v ** (b - 1)) / height));
  return [right, down] as const;
}

/** Least squares with Cauchy's weights, as the residuals of the round before ask for. */
function robust(
  rows: readonly (readonly number[])[],
  seen: readonly number[],
  weights: readonly number[],
): readonly number[] {
  let now = weights;
  let bend: readonly number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    bend = leastSquares(rows, seen, now);
    const off = rows.map((row, i) => Math.abs((seen[i] as number) - along(row, bend)));
    const sizes = off
      .map((size, i) => size * Math.sqrt(weights[i] as number))
      .sort((a, b) => a - b);
    const usual = Math.max((sizes[sizes.length >> 1] ?? 0) / 0.6745, 1e-9);
    now = weights.map(
      (weight, i) => weight / (1 + ((off[i] as number) ** 2 * weight) / (2 * usual) ** 2),
    );
  }
  return bend;
}

function along(row: readonly number[], bend: readonly number[]): number {
  return row.reduce((sum, value, k) => sum + value * (bend[k] as number), 0);
}
