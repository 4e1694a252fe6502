import { solveSymmetric } from '../../maths/index.ts';

/**
 * The three rows by which lights under `count` lamps give the vector g of albedo times normal, by
 * least squares (`woodham:1980`). `design` holds three numbers a lamp: its direction, or any three
 * numbers that g is to be weighed with. Of no use where the lamps stand in one plane with the point.
 */
export function solutionOf(design: Float64Array, count: number): Float64Array {
  const normal = new Float64Array(9);
  for (let k = 0; k < count; k++)
    for (let a = 0; a < 3; a++)
      for (let b = 0; b < 3; b++)
        normal[a * 3 + b] =
          (normal[a * 3 + b] as number) +
          (design[k * 3 + a] as number) * (design[k * 3 + b] as number);
  const rows = new Float64Array(3 * count);
  const column = new Float64Array(3);
  for (let k = 0; k < count; k++) {
    column.set(design.subarray(k * 3, k * 3 + 3));
    solveSymmetric(normal, column, 3);
    for (let a = 0; a < 3; a++) rows[a * count + k] = column[a] as number;
  }
  return rows;
}
