/** The value below which a share of the numbers lies, NaN left out; NaN for none. */
export function quantileOf(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values)
    .filter((value) => !Number.isNaN(value))
    .sort();
  if (sorted.length === 0) return Number.NaN;
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const [a, b] = [sorted[low] as number, sorted[Math.min(low + 1, sorted.length - 1)] as number];
  return a + (at - low) * (b - a);
}
