/**
 * The nearest values that never fall, in weighted squares: neighbours that fall are pooled
 * (`ayer:1955`). Writes over `values`.
 *
 * @param values from the one that should be least
 * @param weights above 0
 */
export function makeRising(values: Float64Array, weights: Float64Array, length: number): void {
  const height = new Float64Array(length);
  const weight = new Float64Array(length);
  const size = new Int32Array(length);
  let blocks = 0;
  for (let i = 0; i < length; i++) {
    height[blocks] = values[i] as number;
    weight[blocks] = weights[i] as number;
    size[blocks] = 1;
    while (blocks > 0 && (height[blocks - 1] as number) > (height[blocks] as number)) {
      const [w0, w1] = [weight[blocks - 1] as number, weight[blocks] as number];
      height[blocks - 1] =
        ((height[blocks - 1] as number) * w0 + (height[blocks] as number) * w1) / (w0 + w1);
      weight[blocks - 1] = w0 + w1;
      (size[blocks - 1] as number) += size[blocks] as number;
      blocks--;
    }
    blocks++;
  }
  for (let block = 0, i = 0; block < blocks; block++)
    for (let k = 0; k < (size[block] as number); k++) values[i++] = height[block] as number;
}
