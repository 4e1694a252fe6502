/**
 * Puts the value of a rank, from 0, in its place among numbers, none larger before it and none
 * smaller after it, and answers it (`hoare:1961`). Changes the order; NaN must not be among them.
 */
export function placed(values: Float64Array, rank: number): number {
  let [from, to] = [0, values.length - 1];
  while (from < to) {
    const pivot = values[rank] as number;
    let [low, high] = [from, to];
    while (low <= high) {
      while ((values[low] as number) < pivot) low++;
      while ((values[high] as number) > pivot) high--;
      if (low > high) break;
      const kept = values[low] as number;
      values[low++] = values[high] as number;
      values[high--] = kept;
    }
    if (high < rank) from = low;
    if (rank < low) to = high;
  }
  return values[rank] as number;
}
