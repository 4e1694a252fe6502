import { medianOf } from '../../maths/index.ts';
import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { CUT, derivativeOf } from './derivative.ts';
import { pixelsPerMm } from './places.ts';
import type { CardSide, SideLine } from './sides.ts';
import { type Part, type Strip, stripOf } from './strip.ts';

/** How far outside a line a fainter one is looked for, in millimetres: a frame's own lines and bands. */
const REACH = 1.2;
/** Nearer to the cut edge than this, in millimetres, changes are the cut edge's own. */
const NEAREST = 0.5;
/** Smoothing before the derivative, in depths of half a pixel. */
const SIGMA = 1.6;
/** Half the width over which a change is summed up, in depths. */
const HALF = 3;
/** No line is told from the noise below so many standard errors of it. */
const NOISE = 6;
/** Least change that an eye sees as a line, in hundredths of the cube root of light. Judgement, no source. */
const LEAST = 1.5;
/** Fainter than this share of the strongest edge, it may be ringing of the coding. Judgement, no source. */
const RINGING = 0.1;
/** A change there and back within so many pixels, and weaker than this share, is a halo of sharpening. */
const HALO_PX = 4;
const HALO = 0.35;
/** So near, a change weaker than this share is ringing, whichever way it goes: chroma is coded coarsely. */
const RINGING_NEAR = 0.2;
/** Share of the columns that must show an edge, by half its size. */
const SHARE = 0.75;

type Change = readonly [number, number, number];

/** A change of colour that most columns share, at a depth of the strip. */
interface Edge {
  readonly at: number;
  readonly change: Change;
  readonly size: number;
}

/**
 * The outermost edge beside a line, so near that the quick look may take both for one; the line
 * itself where there is none. Looks at what most columns share, which noise hardly touches.
 */
export function outermostBeside(
  picture: Picture,
  map: CardMap,
  side: CardSide,
  line: SideLine,
  part: Part,
): SideLine {
  const perMm = pixelsPerMm(map, side, line);
  const margin = (CUT * SIGMA + 1) / 2 / perMm;
  const from = -Math.min(REACH, Math.max(0.2, line.depth - NEAREST)) - margin;
  const shape = {
    ...part,
    column: 1,
    from,
    to: 0.2 + margin,
    step: 0.5 / perMm,
    most: [6, 1] as const,
  };
  const strip = stripOf(picture, map, side, line, shape);
  const even = { ...strip, colours: strip.colours.map((light) => 100 * Math.cbrt(light)) };
  const slopes = derivativeOf(even, SIGMA);
  const edges = edgesOf(even, slopes);
  const strongest = Math.max(...edges.map(({ size }) => size));
  const outer = edges.find(
    (edge) =>
      edge.size >= Math.max(LEAST, RINGING * strongest) &&
      !isHalo(edge, edges) &&
      shareOf(even, slopes, edge) >= SHARE,
  );
  if (!outer) return line;
  return { depth: line.depth + strip.from + outer.at * strip.step, slope: line.slope };
}

/** Where the change that most columns share is largest, from the cut edge inwards. */
function edgesOf({ columns, depths }: Strip, slopes: Float32Array): readonly Edge[] {
  const shared = Array.from({ length: depths }, (_, d) => sharedAt(columns, slopes, d));
  const length = (d: number) => Math.hypot(...(shared[d]?.change ?? [0, 0, 0]));
  const edges: Edge[] = [];
  for (let d = HALF; d < depths - HALF; d++) {
    const here = length(d);
    if (here <= NOISE * (shared[d]?.error ?? 0)) continue;
    if (here < length(d - 1) || here <= length(d + 1)) continue;
    const change = [0, 1, 2].map((k) =>
      shared.slice(d - HALF, d + HALF + 1).reduce((sum, at) => sum + (at.change[k] as number), 0),
    ) as unknown as Change;
    edges.push({ at: d, change, size: Math.hypot(...change) });
  }
  return edges;
}

/** The median change at a depth, and the standard error of its length. */
function sharedAt(columns: number, slopes: Float32Array, d: number) {
  let variance = 0;
  const change = [0, 1, 2].map((k) => {
    const values = new Float64Array(columns);
    for (let c = 0; c < columns; c++) values[c] = slopes[(d * columns + c) * 3 + k] as number;
    const median = medianOf(values);
    const spread = 1.4826 * medianOf(values.map((value) => Math.abs(value - median)));
    // The median of normal values is 1.2533 times as uncertain as their mean.
    variance += (1.2533 * spread) ** 2 / columns;
    return median;
  }) as unknown as Change;
  return { change, error: Math.sqrt(variance) };
}

/**
 * Whether a stronger edge close inside explains a change: sharpening draws a rim there that turns
 * back, and coding rings.
 */
function isHalo(edge: Edge, edges: readonly Edge[]): boolean {
  return edges.some((other) => {
    const near = other.at > edge.at && other.at - edge.at <= 2 * HALO_PX;
    const back = dot(edge.change, other.change) < -0.5 * edge.size * other.size;
    return near && edge.size < (back ? HALO : RINGING_NEAR) * other.size;
  });
}

/** Share of the columns that change at an edge as most do. */
function shareOf({ columns }: Strip, slopes: Float32Array, { at, change, size }: Edge): number {
  let count = 0;
  for (let c = 0; c < columns; c++) {
    let sum = 0;
    for (let d = at - HALF; d <= at + HALF; d++)
      for (let k = 0; k < 3; k++)
        sum += (slopes[(d * columns + c) * 3 + k] as number) * (change[k] as number);
    if (sum > 0.5 * size * size) count++;
  }
  return count / columns;
}

function dot(a: Change, b: Change): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
