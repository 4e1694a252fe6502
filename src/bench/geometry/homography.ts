/** A map of the plane up to scale, nine numbers by rows; the last one is 1. */
export type Homography = readonly [
  ...[number, number, number],
  ...[number, number, number],
  ...[number, number, number],
];

type Point = readonly [number, number];

/**
 * The homography that carries four points onto four others (`hartley:2003`, algorithm 4.2 for four
 * points, solved directly).
 * @throws RangeError where three of the points lie on a line, so that there is none.
 */
export function homographyOf(from: readonly Point[], to: readonly Point[]): Homography {
  if (from.length !== 4 || to.length !== 4)
    throw new RangeError(`Four pairs of points are wanted, found ${from.length} and ${to.length}.`);
  const rows = from.flatMap(([x, y], i) => {
    const [u, v] = to[i] as Point;
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, v],
    ];
  });
  const h = solved(rows);
  return [...h, 1] as unknown as Homography;
}

/** Where a homography carries a point. */
export function carried(h: Homography, [x, y]: Point): readonly [number, number] {
  const w = h[6] * x + h[7] * y + h[8];
  return [(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w];
}

/** The map that carries a point by `first` and then by `then`. */
export function composed(then: Homography, first: Homography): Homography {
  const entry = (i: number, j: number) =>
    (then[3 * i] as number) * (first[j] as number) +
    (then[3 * i + 1] as number) * (first[3 + j] as number) +
    (then[3 * i + 2] as number) * (first[6 + j] as number);
  const entries = Array.from({ length: 9 }, (_, k) => entry(Math.floor(k / 3), k % 3));
  const last = entries[8] as number;
  return entries.map((value) => value / last) as unknown as Homography;
}

/**
 * The homography that carries points back.
 * @throws RangeError where the map flattens the plane.
 */
export function inverseOf(h: Homography): Homography {
  const [a, b, c, d, e, f, g, i, j] = h;
  const adjugate = [
    ...[e * j - f * i, c * i - b * j, b * f - c * e],
    ...[f * g - d * j, a * j - c * g, c * d - a * f],
    ...[d * i - e * g, b * g - a * i, a * e - b * d],
  ];
  const last = adjugate[8] as number;
  if (
    Math.abs(
      a * (adjugate[0] as number) + b * (adjugate[3] as number) + c * (adjugate[6] as number),
    ) < 1e-12
  )
    throw new RangeError('A homography that flattens the plane has no inverse.');
  return adjugate.map((value) => value / last) as unknown as Homography;
}

/** Solves eight equations, each a row of eight factors and the right side, by pivoted elimination. */
function solved(rows: number[][]): readonly number[] {
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    const pivot = pivotRow(rows, k);
    [rows[k], rows[pivot]] = [rows[pivot] as number[], rows[k] as number[]];
    const row = rows[k] as number[];
    for (const other of rows) {
      if (other === row) continue;
      const factor = (other[k] as number) / (row[k] as number);
      for (let j = k; j <= n; j++) other[j] = (other[j] as number) - factor * (row[j] as number);
    }
  }
  return rows.map((row, k) => (row[n] as number) / (row[k] as number));
}

function pivotRow(rows: readonly (readonly number[])[], k: number): number {
  let best = k;
  for (let i = k + 1; i < rows.length; i++)
    if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[best]?.[k] ?? 0)) best = i;
  const scale = Math.max(...(rows[best] ?? []).map(Math.abs));
  if (Math.abs(rows[best]?.[k] ?? 0) <= 1e-12 * scale)
    throw new RangeError('Three of the four points lie on a line.');
  return best;
}
