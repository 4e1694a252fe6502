import type { Densities } from './inks.ts';
import { type Spectrum, TILE } from './spectrum.ts';

/** Power of one weighed sum of the densities, by frequency, over its own background. */
export interface InkView {
  /** Entries as in `Spectrum.planes`. */
  readonly power: Float64Array;
  /** Power over the median of its ring of equal frequency. */
  readonly excess: Float64Array;
}

/** Two peaks at right angles and of one distance: what the lattice of a screen shows. */
export interface Peak {
  /** Cycles a pixel along x and y (down), the mean of both peaks, the second turned back. */
  readonly x: number;
  readonly y: number;
  /** The lesser and the greater of both peaks over their background. */
  readonly lesser: number;
  readonly greater: number;
  /** Where both were found: entries of the spectrum. */
  readonly bins: readonly [number, number];
}

/** Entry of the spectrum at whole frequencies u and v, of either sign. */
export function binAt(u: number, v: number): number {
  return (v & (TILE - 1)) * TILE + (u & (TILE - 1));
}

/** What a weighed sum of the densities shows: the spectrum of that ink alone. */
export function inkViewOf({ planes, reach }: Spectrum, weights: Densities): InkView {
  const most = Math.floor(reach * TILE);
  const power = new Float64Array(TILE * TILE);
  const excess = new Float64Array(TILE * TILE);
  const [rr, gg, bb, rg, rb, gb] = planes as [F, F, F, F, F, F];
  const [r, g, b] = weights;
  const rings: number[][] = Array.from({ length: most + 1 }, () => []);
  for (let v = -most; v <= most; v++)
    for (let u = -most; u <= most; u++) {
      const i = binAt(u, v);
      const value =
        r * r * (rr[i] as number) +
        g * g * (gg[i] as number) +
        b * b * (bb[i] as number) +
        2 * (r * g * (rg[i] as number) + r * b * (rb[i] as number) + g * b * (gb[i] as number));
      power[i] = value;
      const ring = Math.round(Math.hypot(u, v));
      if (v >= 0 && ring <= most) rings[ring]?.push(value);
    }
  const background = rings.map(medianOf);
  for (let v = -most; v <= most; v++)
    for (let u = -most; u <= most; u++) {
      const ring = Math.min(most, Math.round(Math.hypot(u, v)));
      const i = binAt(u, v);
      excess[i] = (power[i] as number) / (background[ring] as number);
    }
  return { power, excess };
}

type F = Float64Array;

function medianOf(values: number[]): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? 1;
}

/** Every pair of peaks at right angles whose frequency lies between two bounds, cycles a pixel. */
export function peaksIn(view: InkView, low: number, high: number, least: number): readonly Peak[] {
  const found: Peak[] = [];
  const [from, to] = [low * TILE, high * TILE];
  const { excess, power } = view;
  for (let v = 0; v <= to; v++)
    for (let u = 0; u <= to; u++) {
      const distance = Math.hypot(u, v);
      if (distance < from || distance > to) continue;
      const first = binAt(u, -v);
      if ((excess[first] as number) < least || !isSummit(excess, u, -v)) continue;
      const [u2, v2] = summitNear(excess, -v, -u);
      const second = excess[binAt(u2, v2)] as number;
      if (second < least) continue;
      const one = refined(power, u, -v);
      const two = refined(power, u2, v2);
      // A quarter turn counter-clockwise carries (x, y), y down, to (y, -x); turned back: (-y, x).
      const x = (one[0] - two[1]) / 2 / TILE;
      const y = (one[1] + two[0]) / 2 / TILE;
      found.push({
        x,
        y,
        lesser: Math.min(second, excess[first] as number),
        greater: Math.max(second, excess[first] as number),
        bins: [first, binAt(u2, v2)],
      });
    }
  return found;
}

function isSummit(excess: Float64Array, u: number, v: number): boolean {
  const own = excess[binAt(u, v)] as number;
  for (let dv = -1; dv <= 1; dv++)
    for (let du = -1; du <= 1; du++)
      if ((excess[binAt(u + du, v + dv)] as number) > own) return false;
  return true;
}

/** The greatest entry within one step. */
export function summitNear(excess: Float64Array, u: number, v: number): readonly [number, number] {
  let best: readonly [number, number] = [u, v];
  for (let dv = -1; dv <= 1; dv++)
    for (let du = -1; du <= 1; du++)
      if ((excess[binAt(u + du, v + dv)] as number) > (excess[binAt(...best)] as number))
        best = [u + du, v + dv];
  return best;
}

/**
 * Where a wave lies between the steps, along each axis: exact for one wave under a Hann window,
 * from the amplitudes at three steps (`grandke:1983`).
 */
function refined(power: Float64Array, u: number, v: number): readonly [number, number] {
  const at = (du: number, dv: number) => Math.sqrt(power[binAt(u + du, v + dv)] as number);
  const offset = (before: number, own: number, after: number) =>
    (2 * (after - before)) / (before + 2 * own + after);
  const own = at(0, 0);
  return [u + offset(at(-1, 0), own, at(1, 0)), v + offset(at(0, -1), own, at(0, 1))];
}

/** How far apart two square lattices lie, in steps of the spectrum: a quarter turn is no difference. */
export function stepsApart(a: Pick<Peak, 'x' | 'y'>, b: Pick<Peak, 'x' | 'y'>): number {
  const { x, y } = b;
  const same = [
    [x, y],
    [y, -x],
    [-y, x],
  ] as const;
  return TILE * Math.min(...same.map(([u, v]) => Math.hypot(a.x - u, a.y - v)));
}
