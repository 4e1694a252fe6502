import { confine, type Prior, priorsOf } from './dent-priors.ts';
import { bowlOf, SHAPE, SHAPE_SIZE, slopesAndChanges } from './dent-shape.ts';
import { LAMP_STRIDE, type Lighting } from './lighting.ts';
import type { Window } from './window.ts';

/** A problem of least squares laid out at one place: its sum of squares, normal matrix and slope. */
export interface Laid {
  readonly cost: number;
  readonly normal: Float64Array;
  readonly slope: Float64Array;
}

/** The dent, the lamps' strengths and the gloss as unknowns to be fitted. */
export interface DentProblem {
  readonly start: Float64Array;
  /** Lays the problem out; what `residuals` and `reweigh` say is of the last call. */
  lay(theta: Float64Array): Laid;
  last(): Laid | null;
  residuals(): Float64Array;
  /** Gives pixels that do not fit less weight, and those in shadow none. */
  reweigh(): void;
  /** Brings unknowns back within what can be. */
  confine(theta: Float64Array): void;
}

/** Residual, in standard errors a colour, at which a pixel's weight has fallen to a half. */
const CAUCHY = 3;
/** Cosine to the lamp below which a pixel may lie in shadow. */
const SHADOW = 0.12;

/** The problem of fitting a dent to a window, beginning at a shape. */
export function dentProblem(window: Window, lighting: Lighting, shape: Float64Array): DentProblem {
  const { lamps } = window;
  const size = SHAPE_SIZE + lamps + 2;
  const start = new Float64Array(size);
  start.set(shape);
  start.set([lighting.gloss.strength, Math.log(lighting.gloss.exponent)], SHAPE_SIZE + lamps);
  const priors = priorsOf(lighting, lamps);
  // Ambient light is held: a lobe of another form would pull it, and with it the depth.
  const bench = benchOf(window, size, lighting.ambient.value);
  let last: Laid | null = null;
  return {
    start,
    lay: (theta) => {
      last = lay(window, bench, theta, priors);
      return last;
    },
    last: () => last,
    residuals: () => bench.residuals,
    reweigh: () => reweigh(window, bench),
    confine: (theta) => confine(theta, start, lamps),
  };
}

/** Arrays that are filled anew at every laying out, so that none is made for a pixel. */
interface Bench {
  readonly size: number;
  readonly ambient: number;
  readonly residuals: Float64Array;
  readonly weights: Float64Array;
  /** Whether a block lies so steeply to a lamp that it may be in shadow: 0 or 1. */
  readonly dark: Uint8Array;
  readonly changes: Float64Array;
  /** For each lamp: matt light D, gloss S, both by slope x and y, then S by strength and log exponent. */
  readonly shades: Float64Array;
  /** Changes of the model by slopes x and y, gloss and exponent, over lamps. */
  readonly vectors: Float64Array;
  /** Change of the model by each lamp's strength, which changes that lamp's light alone. */
  readonly own: Float64Array;
  /** Share of each change, in the order of `gram`, that another colour of the block would do as well. */
  readonly shares: Float64Array;
  /** By lamp: inverse standard error of a light, and matt light in standard errors. */
  readonly roots: Float64Array;
  readonly along: Float64Array;
  readonly gram: Float64Array;
  readonly pull: Float64Array;
}

const SHADES = 8;
const FIRST = 4;

function benchOf({ x, lamps }: Window, size: number, ambient: number): Bench {
  const count = FIRST + lamps;
  return {
    size,
    ambient,
    residuals: new Float64Array(x.length * lamps * 3),
    weights: new Float64Array(x.length * lamps).fill(1),
    dark: new Uint8Array(x.length * lamps),
    changes: new Float64Array(2 + 2 * SHAPE_SIZE),
    shades: new Float64Array(lamps * SHADES),
    vectors: new Float64Array(FIRST * lamps),
    own: new Float64Array(lamps),
    shares: new Float64Array(count),
    roots: new Float64Array(lamps),
    along: new Float64Array(lamps),
    gram: new Float64Array(count * count),
    pull: new Float64Array(count),
  };
}

/** Changes of the slopes outside a dent's foot: with the tilt alone. */
const PLAIN = new Float64Array(2 * SHAPE_SIZE);
PLAIN.set([1, 0, 0, 1], 2 * SHAPE.tiltX);

function lay(window: Window, bench: Bench, theta: Float64Array, priors: readonly Prior[]): Laid {
  const { size, changes, gram, pull } = bench;
  const normal = new Float64Array(size * size);
  const slope = new Float64Array(size);
  let cost = 0;
  const bowl = bowlOf(theta);
  for (let i = 0; i < window.x.length; i++) {
    const x = window.x[i] as number;
    if (!slopesAndChanges(bowl, x, window.y[i] as number, changes)) changes.set(PLAIN, 2);
    shade(window, bench, theta, i);
    gram.fill(0);
    pull.fill(0);
    for (let colour = 0; colour < 3; colour++) cost += colourOf(window, bench, i, colour);
    spread(bench, window.lamps, normal, slope);
  }
  for (const { at, mean, sd } of priors) {
    const off = (mean - (theta[at] as number)) / sd;
    cost += off * off;
    normal[at * size + at] = (normal[at * size + at] as number) + 1 / (sd * sd);
    slope[at] = (slope[at] as number) + off / sd;
  }
  for (let a = 0; a < size; a++)
    for (let b = 0; b < a; b++) normal[a * size + b] = normal[b * size + a] as number;
  return { cost, normal, slope };
}

/** Matt light and gloss of a block for each lamp, and how both change. */
function shade(
  { lamps, directions }: Window,
  { ambient, changes, shades, dark }: Bench,
  theta: Float64Array,
  i: number,
): void {
  const zx = changes[0] as number;
  const zy = changes[1] as number;
  const nz = 1 / Math.sqrt(1 + zx * zx + zy * zy);
  const gloss = theta[SHAPE_SIZE + lamps] as number;
  const exponent = Math.exp(theta[SHAPE_SIZE + lamps + 1] as number);
  for (let k = 0; k < lamps; k++) {
    const d = (i * lamps + k) * LAMP_STRIDE;
    const lx = directions[d] as number;
    const ly = directions[d + 1] as number;
    const lz = directions[d + 2] as number;
    const hx = directions[d + 3] as number;
    const hy = directions[d + 4] as number;
    const hz = directions[d + 5] as number;
    const f = (directions[d + 6] as number) * Math.exp(theta[SHAPE_SIZE + k] as number);
    const nl = (lz - zx * lx - zy * ly) * nz;
    const nh = Math.max((hz - zx * hx - zy * hy) * nz, 1e-6);
    const lit = nl > 0 ? 1 : 0;
    dark[i * lamps + k] = nl < SHADOW ? 1 : 0;
    const sky = 0.5 * lz * ambient;
    const lobe = f * nh ** exponent;
    const s = gloss * lobe;
    const at = k * SHADES;
    shades[at] = f * (nl * lit + sky * (1 + nz)) + 1e-9;
    shades[at + 1] = s;
    shades[at + 2] = f * (-lit * (lx + nl * zx * nz) - sky * zx * nz * nz) * nz;
    shades[at + 3] = f * (-lit * (ly + nl * zy * nz) - sky * zy * nz * nz) * nz;
    shades[at + 4] = (s * exponent * -(hx + nh * zx * nz) * nz) / nh;
    shades[at + 5] = (s * exponent * -(hy + nh * zy * nz) * nz) / nh;
    shades[at + 6] = lobe;
    shades[at + 7] = s * exponent * Math.log(nh);
  }
}

/** Adds one colour of a block to the small matrix of its changes; its own colour is projected out. */
function colourOf(window: Window, bench: Bench, i: number, colour: number): number {
  const { lamps, light, sd } = window;
  const { shades, weights, roots, along } = bench;
  let dd = 0;
  let dy = 0;
  for (let k = 0; k < lamps; k++) {
    const at = (i * lamps + k) * 3 + colour;
    const root = Math.sqrt(weights[i * lamps + k] as number) / (sd[at] as number);
    const d = (shades[k * SHADES] as number) * root;
    roots[k] = root;
    along[k] = d;
    dd += d * d;
    dy += d * root * ((light[at] as number) - (shades[k * SHADES + 1] as number));
  }
  const albedo = dd > 0 ? Math.max(dy / dd, 0) : 0;
  const cost = lineUp(window, bench, i, colour, albedo);
  pullTogether(window, bench, dd, i, colour);
  gather(bench, lamps, dd);
  return cost;
}

/** Residuals of one colour of a block and, in `vectors` and `own`, how the model there changes. */
function lineUp(
  { lamps, light }: Window,
  { shades, vectors, own, residuals, roots }: Bench,
  i: number,
  colour: number,
  albedo: number,
): number {
  let cost = 0;
  for (let k = 0; k < lamps; k++) {
    const at = (i * lamps + k) * 3 + colour;
    const s = k * SHADES;
    const root = roots[k] as number;
    const matt = albedo * (shades[s] as number);
    const gloss = shades[s + 1] as number;
    const off = ((light[at] as number) - matt - gloss) * root;
    residuals[at] = off;
    cost += off * off;
    vectors[k] = ((shades[s + 4] as number) + albedo * (shades[s + 2] as number)) * root;
    vectors[lamps + k] = ((shades[s + 5] as number) + albedo * (shades[s + 3] as number)) * root;
    vectors[2 * lamps + k] = (shades[s + 6] as number) * root;
    vectors[3 * lamps + k] = (shades[s + 7] as number) * root;
    own[k] = (matt + gloss) * root;
  }
  return cost;
}

/** Adds how the residuals of one colour pull at each change, less what another colour would do. */
function pullTogether(
  { lamps }: Window,
  { vectors, own, shares, along, residuals, pull }: Bench,
  dd: number,
  i: number,
  colour: number,
): void {
  const residual = (k: number) => residuals[(i * lamps + k) * 3 + colour] as number;
  let alike = 0;
  for (let k = 0; k < lamps; k++) alike += (along[k] as number) * residual(k);
  for (let v = 0; v < FIRST; v++) {
    let share = 0;
    let sum = 0;
    for (let k = 0; k < lamps; k++) {
      const change = vectors[v * lamps + k] as number;
      share += change * (along[k] as number);
      sum += change * residual(k);
    }
    shares[v] = dd > 0 ? share / dd : 0;
    pull[v] = (pull[v] as number) + sum - (shares[v] as number) * alike;
  }
  for (let k = 0, v = FIRST; k < lamps; k++, v++) {
    const change = own[k] as number;
    shares[v] = dd > 0 ? (change * (along[k] as number)) / dd : 0;
    pull[v] = (pull[v] as number) + change * residual(k) - (shares[v] as number) * alike;
  }
}

/** Adds the products of each two changes of one colour, less what another colour would do. */
function gather({ vectors, own, shares, gram }: Bench, lamps: number, dd: number): void {
  const count = FIRST + lamps;
  for (let v = 0; v < count; v++) {
    const share = (shares[v] as number) * dd;
    for (let u = v; u < count; u++)
      gram[v * count + u] = (gram[v * count + u] as number) - share * (shares[u] as number);
  }
  for (let v = 0; v < FIRST; v++) {
    for (let u = v; u < FIRST; u++) {
      let product = 0;
      for (let k = 0; k < lamps; k++)
        product += (vectors[v * lamps + k] as number) * (vectors[u * lamps + k] as number);
      gram[v * count + u] = (gram[v * count + u] as number) + product;
    }
    for (let k = 0, at = v * count + FIRST; k < lamps; k++, at++)
      gram[at] = (gram[at] as number) + (vectors[v * lamps + k] as number) * (own[k] as number);
  }
  for (let k = 0, at = FIRST * (count + 1); k < lamps; k++, at += count + 1)
    gram[at] = (gram[at] as number) + (own[k] as number) ** 2;
}

/** Carries a block's small matrix over to the unknowns: slopes change with all of the shape. */
function spread(
  { size, changes, gram, pull }: Bench,
  lamps: number,
  normal: Float64Array,
  slope: Float64Array,
): void {
  const count = FIRST + lamps;
  const xx = gram[0] as number;
  const xy = gram[1] as number;
  const yy = gram[count + 1] as number;
  const px = pull[0] as number;
  const py = pull[1] as number;
  // Unknown after the shape that each further vector stands for: lamps first, then gloss and exponent.
  const other = (v: number) => (v < FIRST ? SHAPE_SIZE + lamps + v - 2 : SHAPE_SIZE + v - FIRST);
  for (let a = 0; a < SHAPE_SIZE; a++) {
    const ax = changes[2 + 2 * a] as number;
    const ay = changes[3 + 2 * a] as number;
    if (ax === 0 && ay === 0) continue;
    const tx = ax * xx + ay * xy;
    const ty = ax * xy + ay * yy;
    slope[a] = (slope[a] as number) + ax * px + ay * py;
    for (let b = a; b < SHAPE_SIZE; b++)
      normal[a * size + b] =
        (normal[a * size + b] as number) +
        tx * (changes[2 + 2 * b] as number) +
        ty * (changes[3 + 2 * b] as number);
    for (let v = 2; v < count; v++) {
      const at = a * size + other(v);
      normal[at] =
        (normal[at] as number) + ax * (gram[v] as number) + ay * (gram[count + v] as number);
    }
  }
  for (let v = 2; v < count; v++) {
    slope[other(v)] = (slope[other(v)] as number) + (pull[v] as number);
    for (let u = v; u < count; u++) {
      const low = Math.min(other(v), other(u));
      const high = Math.max(other(v), other(u));
      normal[low * size + high] =
        (normal[low * size + high] as number) + (gram[v * count + u] as number);
    }
  }
}

function reweigh({ lamps, x }: Window, { residuals, weights, dark }: Bench): void {
  for (let i = 0; i < x.length * lamps; i++) {
    const was = weights[i] as number;
    if (was === 0) continue;
    let square = 0;
    for (let c = 0; c < 3; c++) square += (residuals[i * 3 + c] as number) ** 2;
    weights[i] = dark[i] ? 0 : 1 / (1 + square / was / (3 * CAUCHY * CAUCHY));
  }
}
