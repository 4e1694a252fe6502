import { inverseOfSymmetric, solveSymmetric } from '../../maths/index.ts';
import {
  type Doubtful,
  LAMP_STRIDE,
  type Lamp,
  type Lighting,
  lampsAt,
  type Noise,
  type PlaceMm,
  STRENGTH_TERMS,
} from './lighting.ts';
import { noiseOf, sdOf } from './noise.ts';
import type { Samples } from './samples.ts';

const ROUNDS = 4;
// Priors: Judgement, no source. Printed card stock is matt to glossy; a lamp's beam is smooth.
const PRIOR = {
  gloss: { mean: 0.08, sd: 0.1 },
  logExponent: { mean: Math.log(12), sd: 0.5 },
  bend: 0.1,
} as const;

/**
 * Learns lamps' strengths over the card, gloss and noise from points of a card that is flat almost
 * everywhere: what all lamps show alike is the print, what varies smoothly is the light, and what
 * is added to dark and bright print alike is gloss. Misleads where the card itself is bent.
 */
export function flatLight(
  places: readonly PlaceMm[],
  samples: Samples,
  ambient: Doubtful,
  block: number,
): Lighting {
  const theta = beginning(places, samples);
  let noise: Noise = { floor: 0.002, relative: 0.015, edge: 0.05, block };
  let covariance: Float64Array = new Float64Array();
  for (let pass = 0; pass < 2; pass++) {
    let laid = lay(places, samples, theta, ambient.value, noise);
    for (let round = 0; round < ROUNDS; round++) {
      const step = laid.slope.slice();
      solveSymmetric(laid.normal, step, theta.length);
      let most = 0;
      for (let i = 0; i < theta.length; i++) {
        theta[i] = (theta[i] as number) + (step[i] as number);
        most = Math.max(most, Math.abs(step[i] as number));
      }
      confine(theta);
      laid = lay(places, samples, theta, ambient.value, noise);
      if (most < 1e-4) break;
    }
    covariance = inverseOfSymmetric(laid.normal, theta.length);
    noise = noiseOf(samples, laid.residuals, noise);
  }
  const n = theta.length;
  const strength = theta[n - 2] as number;
  const glossSd = Math.sqrt(covariance[(n - 2) * n + n - 2] as number);
  return {
    lamps: lampsOf(places, theta),
    gloss: {
      strength,
      sd: Math.max(0.02, 0.25 * strength, glossSd),
      exponent: Math.exp(theta[n - 1] as number),
    },
    ambient,
    noise,
  };
}

function confine(theta: Float64Array): void {
  const n = theta.length;
  theta[n - 2] = Math.min(Math.max(theta[n - 2] as number, 0), 0.8);
  theta[n - 1] = Math.min(Math.max(theta[n - 1] as number, Math.log(2)), Math.log(100));
}

function lampsOf(places: readonly PlaceMm[], theta: Float64Array): readonly Lamp[] {
  return places.map((place, k) => ({
    place,
    strength: theta.slice(k * STRENGTH_TERMS, (k + 1) * STRENGTH_TERMS),
  }));
}

/** Strengths at which the brightest twentieth of the card is white that throws back 80 %. */
function beginning(places: readonly PlaceMm[], { light }: Samples): Float64Array {
  const lamps = places.length;
  const theta = new Float64Array(lamps * STRENGTH_TERMS + 2);
  places.forEach((place, k) => {
    const seen = light.filter((_, i) => i % lamps === k).sort();
    const bright = Math.max(seen[Math.floor(0.95 * seen.length)] ?? 0.5, 1e-3);
    theta[k * STRENGTH_TERMS] = Math.log((bright / 0.8) * (Math.hypot(...place) / place[2]));
  });
  theta.set([PRIOR.gloss.mean, PRIOR.logExponent.mean], lamps * STRENGTH_TERMS);
  return theta;
}

interface Laid {
  readonly normal: Float64Array;
  readonly slope: Float64Array;
  readonly residuals: Float64Array;
}

function lay(
  places: readonly PlaceMm[],
  samples: Samples,
  theta: Float64Array,
  ambient: number,
  noise: Noise,
): Laid {
  const lamps = places.length;
  const size = theta.length;
  const point = pointOf(lamps);
  const normal = new Float64Array(size * size);
  const slope = new Float64Array(size);
  const residuals = new Float64Array(samples.light.length);
  const now = lampsOf(places, theta);
  const gloss = theta[size - 2] as number;
  const exponent = Math.exp(theta[size - 1] as number);
  for (let i = 0; i < samples.x.length; i++) {
    lampsAt(now, samples.x[i] as number, samples.y[i] as number, point.numbers);
    project(point, samples, i, lamps, gloss, exponent, ambient, noise, residuals);
    add(point, samples.x[i] as number, samples.y[i] as number, lamps, normal, slope);
  }
  addPriors(theta, lamps, normal, slope);
  for (let a = 0; a < size; a++)
    for (let b = 0; b < a; b++) normal[a * size + b] = normal[b * size + a] as number;
  return { normal, slope, residuals };
}

interface Point {
  readonly numbers: Float64Array;
  readonly vectors: Float64Array;
  readonly d: Float64Array;
  readonly off: Float64Array;
  readonly basis: Float64Array;
}

function pointOf(lamps: number): Point {
  return {
    numbers: new Float64Array(lamps * LAMP_STRIDE),
    vectors: new Float64Array((lamps + 2) * lamps),
    d: new Float64Array(lamps),
    off: new Float64Array(lamps),
    basis: new Float64Array(STRENGTH_TERMS),
  };
}

/** Changes of the model at a point by each lamp's strength, the gloss and its exponent; its own colour projected out. */
function project(
  { numbers, vectors, d, off }: Point,
  { light, edge }: Samples,
  i: number,
  lamps: number,
  gloss: number,
  exponent: number,
  ambient: number,
  noise: Noise,
  residuals: Float64Array,
): void {
  let dd = 0;
  let dy = 0;
  vectors.fill(0);
  for (let k = 0; k < lamps; k++) {
    const at = k * LAMP_STRIDE;
    const f = numbers[at + 6] as number;
    const hz = numbers[at + 5] as number;
    const seen = light[i * lamps + k] as number;
    const sd = sdOf(noise, seen, edge[i] as number);
    const matt = (f * (numbers[at + 2] as number) * (1 + ambient)) / sd;
    const lobe = (f * hz ** exponent) / sd;
    d[k] = matt;
    off[k] = seen / sd - gloss * lobe;
    vectors[lamps * lamps + k] = lobe;
    vectors[(lamps + 1) * lamps + k] = gloss * lobe * exponent * Math.log(hz);
    dd += matt * matt;
    dy += matt * (off[k] as number);
  }
  const albedo = Math.max(dy / dd, 0);
  for (let k = 0; k < lamps; k++) {
    const whole = albedo * (d[k] as number) + gloss * (vectors[lamps * lamps + k] as number);
    off[k] = (off[k] as number) - albedo * (d[k] as number);
    const square = (off[k] as number) ** 2;
    residuals[i * lamps + k] = off[k] as number;
    // Cauchy's weight, so that marks and dents on the card do not pull the light.
    const w = 1 / (1 + square / 9);
    off[k] = (off[k] as number) * w;
    vectors[k * lamps + k] = whole;
  }
  for (let v = 0; v < lamps + 2; v++) {
    let along = 0;
    for (let k = 0; k < lamps; k++) along += (vectors[v * lamps + k] as number) * (d[k] as number);
    for (let k = 0; k < lamps; k++)
      vectors[v * lamps + k] = (vectors[v * lamps + k] as number) - ((d[k] as number) * along) / dd;
  }
}

function add(
  { vectors, off, basis }: Point,
  x: number,
  y: number,
  lamps: number,
  normal: Float64Array,
  slope: Float64Array,
): void {
  const u = x / 50;
  const v = y / 50;
  basis.set([1, u, v, u * u, u * v, v * v]);
  const size = lamps * STRENGTH_TERMS + 2;
  const count = lamps + 2;
  for (let a = 0; a < count; a++) {
    let pull = 0;
    for (let k = 0; k < lamps; k++) pull += (vectors[a * lamps + k] as number) * (off[k] as number);
    const termsA = a < lamps ? STRENGTH_TERMS : 1;
    const firstA = a < lamps ? a * STRENGTH_TERMS : size - 2 + a - lamps;
    for (let i = 0; i < termsA; i++)
      slope[firstA + i] = (slope[firstA + i] as number) + pull * (basis[i] as number);
    for (let b = a; b < count; b++) {
      let sum = 0;
      for (let k = 0; k < lamps; k++)
        sum += (vectors[a * lamps + k] as number) * (vectors[b * lamps + k] as number);
      const termsB = b < lamps ? STRENGTH_TERMS : 1;
      const firstB = b < lamps ? b * STRENGTH_TERMS : size - 2 + b - lamps;
      for (let i = 0; i < termsA; i++) {
        const row = (firstA + i) * size + firstB;
        const scaled = sum * (basis[i] as number);
        for (let j = 0; j < termsB; j++)
          normal[row + j] = (normal[row + j] as number) + scaled * (basis[j] as number);
      }
    }
  }
}

function addPriors(
  theta: Float64Array,
  lamps: number,
  normal: Float64Array,
  slope: Float64Array,
): void {
  const size = theta.length;
  const pull = (at: number, mean: number, sd: number) => {
    normal[at * size + at] = (normal[at * size + at] as number) + 1 / sd ** 2;
    slope[at] = (slope[at] as number) + (mean - (theta[at] as number)) / sd ** 2;
  };
  // Only strengths against each other are seen: the first lamp's constant stays, the terms stay small.
  pull(0, theta[0] as number, 1e-4);
  for (let k = 0; k < lamps; k++)
    for (let i = 1; i < STRENGTH_TERMS; i++)
      pull(k * STRENGTH_TERMS + i, 0, i < 3 ? 3 * PRIOR.bend : PRIOR.bend);
  pull(size - 2, PRIOR.gloss.mean, PRIOR.gloss.sd);
  pull(size - 1, PRIOR.logExponent.mean, PRIOR.logExponent.sd);
}
