import type { Plane } from '../picture.ts';

const CLASSES = 14;
const MOST_SDS = 4;
/** Leading bits of a float at which the topmost classes end: light 1, and steepness 1. */
const [LIGHTEST, STEEPEST] = [2 * 127, 127];

/**
 * What is left over its own standard deviation, which is learned from the picture: one for each
 * pair of a class of light and a class of how steeply the light changes, as noise goes with the
 * first and what a small shift leaves with the second. Cut off at four standard deviations.
 */
export function evenNoiseOf(left: Plane, expected: Plane): Plane {
  const { width, height, values } = left;
  const classes = classesOf(expected);
  const sds = new Float64Array(CLASSES * CLASSES).fill(0.05);
  for (let round = 0; round < 2; round++) {
    const sums = new Float64Array(CLASSES * CLASSES);
    const counts = new Float64Array(CLASSES * CLASSES);
    for (let i = 0; i < values.length; i++) {
      const k = classes[i] as number;
      sums[k] =
        (sums[k] as number) + Math.min(Math.abs(values[i] as number), 3 * (sds[k] as number));
      counts[k] = (counts[k] as number) + 1;
    }
    // The mean size of a normal number is 0.798 of its standard deviation.
    for (let k = 0; k < sds.length; k++)
      if ((counts[k] as number) > 0)
        sds[k] = Math.max(1e-4, (sums[k] as number) / (counts[k] as number) / 0.798);
  }
  const out = new Float32Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const z = (values[i] as number) / (sds[classes[i] as number] as number);
    out[i] = Math.max(-MOST_SDS, Math.min(MOST_SDS, z));
  }
  return { width, height, values: out };
}

/** Classes of light by half stops, and of its relative change from pixel to pixel by stops. */
function classesOf({ width, height, values }: Plane): Uint8Array {
  const classes = new Uint8Array(values.length);
  const steep = new Float32Array(1);
  const steepBits = new Int32Array(steep.buffer);
  const bits = new Int32Array(values.buffer, values.byteOffset, values.length);
  for (let y = 1; y + 1 < height; y++)
    for (let x = 1, i = y * width + 1; x + 1 < width; x++, i++) {
      const here = values[i] as number;
      const across = (values[i + 1] as number) - (values[i - 1] as number);
      const down = (values[i + width] as number) - (values[i - width] as number);
      steep[0] = (across * across + down * down) / (here * here) + 1e-6;
      // A float's leading bits are the whole part of its logarithm to the base 2, here with one bit more.
      const light = ((bits[i] as number) >> 22) - LIGHTEST + CLASSES;
      const change = ((steepBits[0] as number) >> 23) - STEEPEST + CLASSES;
      const row = light < 0 ? 0 : light >= CLASSES ? CLASSES - 1 : light;
      classes[i] = row * CLASSES + (change < 0 ? 0 : change >= CLASSES ? CLASSES - 1 : change);
    }
  return classes;
}
