import type { Plane } from '../picture.ts';

/** Means over squares of `2 · radius + 1` pixels, the rim's values repeated beyond it. */
export function boxMeans({ width, height, values }: Plane, radius: number): Float32Array {
  const across = new Float32Array(values.length);
  const both = new Float32Array(values.length);
  slide(values, across, { lines: height, along: width, step: 1, jump: width }, radius);
  slide(across, both, { lines: width, along: height, step: width, jump: 1 }, radius);
  return both;
}

interface Lines {
  readonly lines: number;
  readonly along: number;
  readonly step: number;
  readonly jump: number;
}

function slide(
  from: Float32Array,
  to: Float32Array,
  { lines, along, step, jump }: Lines,
  radius: number,
): void {
  const span = 2 * radius + 1;
  for (let line = 0; line < lines; line++) {
    const start = line * jump;
    const at = (i: number) => from[start + Math.min(Math.max(i, 0), along - 1) * step] as number;
    let sum = 0;
    for (let i = -radius; i <= radius; i++) sum += at(i);
    for (let i = 0; i < along; i++) {
      to[start + i * step] = sum / span;
      sum += at(i + radius + 1) - at(i - radius);
    }
  }
}

/** What a plane shows between two scales: the difference of its means over two squares. */
export function bandOf(plane: Plane, fine: number, coarse: number): Plane {
  const small = fine > 0 ? boxMeans(plane, fine) : plane.values;
  const large = boxMeans(plane, coarse);
  return { ...plane, values: small.map((value, i) => value - (large[i] as number)) };
}
