import { quantileOf } from '../../maths/index.ts';
import { DIRECTIONS, type LineResponse } from './line-response.ts';

/** A line traced through a picture: pixels in order along it, with what was seen there. */
export interface LineChain {
  readonly pixels: readonly (readonly [x: number, y: number])[];
  /** Mean strength along it, its sign left out. */
  readonly strength: number;
  /** Indices of its pixels. */
  readonly cells: readonly number[];
}

/**
 * Traces lines: crests of the response above `low`, joined to neighbours of like direction, kept
 * where they somewhere pass `high` and are `least` pixels long.
 */
export function lineChainsOf(
  response: LineResponse,
  { low, high, least }: { low: number; high: number; least: number },
): readonly LineChain[] {
  const crest = crestOf(response, low);
  const chains: LineChain[] = [];
  for (let i = 0; i < crest.length; i++) {
    if (crest[i] === 0) continue;
    const cells = followed(response, crest, i);
    if (cells.length < least / 2) continue;
    if (!cells.some((cell) => Math.abs(response.strength[cell] as number) > high)) continue;
    const chain = chainOf(response, cells);
    if (lengthOf(chain.pixels) >= least) chains.push(chain);
  }
  return chains;
}

/** Pixels that are stronger than all within three pixels across their direction. */
function crestOf({ width, height, strength, direction }: LineResponse, low: number): Uint8Array {
  const around = Array.from({ length: DIRECTIONS }, (_, k) => {
    const angle = (k * Math.PI) / DIRECTIONS;
    return [-3, -2, -1, 1, 2, 3].map(
      (u) => Math.round(-Math.sin(angle) * u) + width * Math.round(Math.cos(angle) * u),
    );
  });
  const crest = new Uint8Array(strength.length);
  for (let i = 4 * width; i < width * (height - 4); i++) {
    const here = Math.abs(strength[i] as number);
    if (here < low) continue;
    const steps = around[direction[i] as number] as readonly number[];
    if (steps.every((step) => here >= Math.abs(strength[i + step] as number))) crest[i] = 1;
  }
  return crest;
}

/** Crest pixels connected with one, at most two pixels apart and two directions off; taken out. */
function followed(
  { width, strength, direction }: LineResponse,
  crest: Uint8Array,
  first: number,
): number[] {
  const cells: number[] = [];
  const stack = [first];
  crest[first] = 0;
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    cells.push(at);
    for (let dy = -2; dy <= 2; dy++)
      for (let dx = -2; dx <= 2; dx++) {
        const next = at + dy * width + dx;
        if (!crest[next]) continue;
        const off = Math.abs((direction[next] as number) - (direction[at] as number));
        if (Math.min(off, DIRECTIONS - off) > 2) continue;
        // A direction that passes from the last to the first turns the sign.
        const turned = off > DIRECTIONS / 2 ? -1 : 1;
        if ((strength[at] as number) * (strength[next] as number) * turned < 0) continue;
        crest[next] = 0;
        stack.push(next);
      }
  }
  return cells;
}

const KNOT_PX = 8;

/** The line through cells: their pixels along the main axis, the middle of every few. */
export function chainOf({ width, strength }: LineResponse, traced: readonly number[]): LineChain {
  const plateau = quantileOf(
    traced.map((cell) => Math.abs(strength[cell] as number)),
    0.75,
  );
  // A piece that is half beyond the end of a line has half its strength.
  const cells = traced.filter((cell) => Math.abs(strength[cell] as number) >= plateau / 2);
  const points = cells.map((cell) => [cell % width, Math.floor(cell / width)] as const);
  const n = points.length;
  const [mx, my] = [0, 1].map(
    (k) => points.reduce((sum, point) => sum + (point[k] as number), 0) / n,
  ) as [number, number];
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of points) {
    xx += (x - mx) ** 2;
    xy += (x - mx) * (y - my);
    yy += (y - my) ** 2;
  }
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  const [ax, ay] = [Math.cos(angle), Math.sin(angle)];
  const along = points
    .map(([x, y]) => ({ t: (x - mx) * ax + (y - my) * ay, u: (y - my) * ax - (x - mx) * ay }))
    .sort((p, q) => p.t - q.t);
  const [from, to] = [along[0]?.t ?? 0, along.at(-1)?.t ?? 0];
  const knots = Math.max(1, Math.round((to - from) / KNOT_PX));
  const pixels = Array.from({ length: knots + 1 }, (_, k) => {
    const t = from + ((to - from) * k) / knots;
    const near = along.filter((point) => Math.abs(point.t - t) <= KNOT_PX / 2);
    const u =
      near.length > 0 ? near.reduce((sum, point) => sum + point.u, 0) / near.length : Number.NaN;
    return [t, u] as const;
  })
    .filter(([, u]) => !Number.isNaN(u))
    .map(([t, u]) => [mx + t * ax - u * ay, my + t * ay + u * ax] as const);
  const strengths = cells.reduce((sum, cell) => sum + Math.abs(strength[cell] as number), 0);
  return { pixels, strength: strengths / n, cells };
}

/** Length of a line through points. */
export function lengthOf(points: readonly (readonly [number, number])[]): number {
  return points.slice(1).reduce((sum, [x, y], i) => {
    const [px, py] = points[i] as readonly [number, number];
    return sum + Math.hypot(x - px, y - py);
  }, 0);
}
