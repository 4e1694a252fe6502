import type { Chance } from '../../src/maths/index.ts';
import type { Print } from './print.ts';

/** The coverage above which a plate's point prints, by whole points of the plate. */
export function thresholdOf(
  print: Print,
  ink: number,
  chance: Chance,
): (u: number, v: number) => number {
  if (print.process === 'stochastic') return clusteredNoise(chance);
  const { lpi, angleDeg } = print.screens[ink] ?? { lpi: 100, angleDeg: 0 };
  const angle = (angleDeg * Math.PI) / 180;
  const step = (2 * Math.PI * lpi) / (print.dpi * 2);
  const [cos, sin] = [Math.cos(angle) * step, Math.sin(angle) * step];
  const spot = SPOTS[print.spot];
  const rank = rankOf(spot);
  return (u, v) => rank(spot(cos * u - sin * v, sin * u + cos * v));
}

const SPOTS = {
  euclidean: (a: number, b: number) => (Math.cos(a) + Math.cos(b)) / 2,
  round: (a: number, b: number) => {
    const [p, q] = [wrapped(a), wrapped(b)];
    return 1 - 2 * Math.min(1, (p * p + q * q) / (2 * Math.PI ** 2));
  },
  elliptical: (a: number, b: number) => (1.25 * Math.cos(a) + 0.75 * Math.cos(b)) / 2,
  diamond: (a: number, b: number) => 1 - (Math.abs(wrapped(a)) + Math.abs(wrapped(b))) / Math.PI,
};

function wrapped(a: number): number {
  return a - 2 * Math.PI * Math.round(a / (2 * Math.PI));
}

/** Share of the cell whose spot function lies above a value: what is printed first. */
function rankOf(spot: (a: number, b: number) => number): (value: number) => number {
  const n = 128;
  const counts = new Float64Array(1025);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const value = spot(((i + 0.5) / n) * 2 * Math.PI, ((j + 0.5) / n) * 2 * Math.PI);
      const bin = Math.min(1023, Math.max(0, Math.floor(((1 - value) / 2) * 1024)));
      counts[bin + 1] = (counts[bin + 1] as number) + 1;
    }
  for (let i = 1; i < counts.length; i++)
    counts[i] = (counts[i] as number) + (counts[i - 1] as number);
  return (value) => {
    const bin = Math.min(1023, Math.max(0, Math.floor(((1 - value) / 2) * 1024)));
    return (counts[bin] as number) / (n * n);
  };
}

/** Thresholds of clustered dots without a direction: noise between two blurs, ranked. */
function clusteredNoise(chance: Chance): (u: number, v: number) => number {
  const side = 512;
  const wide = 4.5;
  const noise = Float32Array.from({ length: side * side }, () => chance.normal());
  const field = difference(wrapBlur(noise, side, wide / 2.2), wrapBlur(noise, side, wide));
  const order = Array.from(field.keys()).sort(
    (a, b) => (field[a] as number) - (field[b] as number),
  );
  const rank = new Float32Array(side * side);
  order.forEach((at, i) => {
    rank[at] = (i + 0.5) / order.length;
  });
  return (u, v) =>
    rank[(((v % side) + side) % side) * side + (((u % side) + side) % side)] as number;
}

function difference(a: Float32Array, b: Float32Array): Float32Array {
  return a.map((value, i) => value - (b[i] as number));
}

function wrapBlur(plane: Float32Array, side: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const kernel = Float64Array.from(
    { length: 2 * reach + 1 },
    (_, i) => Math.exp(-0.5 * ((i - reach) / sigma) ** 2) / (sigma * Math.sqrt(2 * Math.PI)),
  );
  const pass = (from: Float32Array) => {
    const out = new Float32Array(from.length);
    for (let y = 0; y < side; y++)
      for (let x = 0; x < side; x++) {
        let sum = 0;
        for (let k = -reach; k <= reach; k++)
          sum +=
            (kernel[k + reach] as number) * (from[y * side + ((x + k + side) % side)] as number);
        out[x * side + y] = sum;
      }
    return out;
  };
  return pass(pass(plane));
}
