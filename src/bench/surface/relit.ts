import type { Plane } from '../picture.ts';
import { boxMeanOf } from './box-mean.ts';

/**
 * What one light makes of each place that another does not explain: around each place the picture
 * under the low lamp is taken as a straight line of the picture under soft light, slope and level
 * both smooth (the guided filter, `he:2013`, with slope and level found at half the size,
 * `he:2015`), and what that leaves is given as a share of the light.
 *
 * @param raking light under the low lamp, and `soft` the same places under soft light
 * @param reach half the side of the square around each place, in pixels, even
 */
export function relitOf(
  raking: Plane,
  soft: Plane,
  reach: number,
): { left: Plane; expected: Plane } {
  const { slope, level } = lineOf(halfOf(raking), halfOf(soft), reach / 2);
  const { width, height } = raking;
  const expected = new Float32Array(width * height);
  const left = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const v = Math.min(Math.max((y - 0.5) / 2, 0), slope.height - 1.001);
    const top = Math.floor(v);
    const fv = v - top;
    for (let x = 0, i = y * width; x < width; x++, i++) {
      const u = Math.min(Math.max((x - 0.5) / 2, 0), slope.width - 1.001);
      const column = u | 0;
      const fu = u - column;
      const at = top * slope.width + column;
      const wide = at + slope.width;
      const d = fu * fv;
      const a = 1 - fu - fv + d;
      const [b, c] = [fu - d, fv - d];
      const k =
        a * (slope.values[at] as number) +
        b * (slope.values[at + 1] as number) +
        c * (slope.values[wide] as number) +
        d * (slope.values[wide + 1] as number);
      const l =
        a * (level.values[at] as number) +
        b * (level.values[at + 1] as number) +
        c * (level.values[wide] as number) +
        d * (level.values[wide + 1] as number);
      const light = Math.max(k * (soft.values[i] as number) + l, LEAST_LIGHT);
      expected[i] = light;
      left[i] = ((raking.values[i] as number) - light) / light;
    }
  }
  return { left: { width, height, values: left }, expected: { width, height, values: expected } };
}

const LEAST_LIGHT = 0.003;
/** Variance of light below which a square is taken as plain: a step of half an 8-bit value. */
const PLAIN = 1e-6;

function lineOf(raking: Plane, soft: Plane, reach: number): { slope: Plane; level: Plane } {
  const { width, height } = raking;
  const both = raking.values.map((value, i) => value * (soft.values[i] as number));
  const squares = soft.values.map((value) => value * value);
  const [r, s, rs, ss] = [raking.values, soft.values, both, squares].map(
    (values) => boxMeanOf({ width, height, values }, reach).values,
  ) as [Float32Array, Float32Array, Float32Array, Float32Array];
  const slopes = new Float32Array(r.length);
  const levels = new Float32Array(r.length);
  for (let i = 0; i < r.length; i++) {
    const [mr, ms] = [r[i] as number, s[i] as number];
    const slope =
      ((rs[i] as number) - mr * ms) / (Math.max(0, (ss[i] as number) - ms * ms) + PLAIN);
    slopes[i] = slope;
    levels[i] = mr - slope * ms;
  }
  return {
    slope: boxMeanOf({ width, height, values: slopes }, reach),
    level: boxMeanOf({ width, height, values: levels }, reach),
  };
}

/** Half as wide and high, each pixel the mean of four. */
function halfOf({ width, height, values }: Plane): Plane {
  const [w, h] = [width >> 1, height >> 1];
  const out = new Float32Array(w * h);
  for (let y = 0; y < h; y++)
    for (let x = 0, i = 2 * y * width; x < w; x++, i += 2)
      out[y * w + x] =
        ((values[i] as number) +
          (values[i + 1] as number) +
          (values[i + width] as number) +
          (values[i + width + 1] as number)) /
        4;
  return { width: w, height: h, values: out };
}
