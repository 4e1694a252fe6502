import type { CardMap } from '../geometry/card-map.ts';
import type { PointMm } from '../geometry/points.ts';
import type { Plane } from '../picture.ts';
import { viewPointOf } from '../rectify/view.ts';
import { boxMeanOf } from '../surface/box-mean.ts';
import { chainOf, type LineChain, lineChainsOf } from '../surface/line-chains.ts';
import { type LineFeatures, lineFeaturesOf } from '../surface/line-features.ts';
import { joinedCellsOf } from '../surface/line-joins.ts';
import { lineResponseOf } from '../surface/line-response.ts';
import { levelsOf } from '../surface/scratch-marks.ts';
import { PX_PER_MM, type RelitCard } from './relit-card.ts';

/** A line that looks like a fold under a low lamp, and what tells it from print and scratches. */
export interface CreaseLikeness {
  readonly points: readonly PointMm[];
  readonly features: LineFeatures;
  readonly lengthMm: number;
  /** Width at half the height of a Gaussian ridge with such flanks, mm. */
  readonly widthMm: number;
  /** Angle on the card, radians, across the line from its dark flank to its light one. */
  readonly angle: number;
}

const PIECE_PX = 17;
const LEAST_PX = 25;
/** What is narrower is a scratch, mm. */
const LEAST_MM = 0.35;
/** Lines this near to the cut edge are left to the wear of edges, mm. */
const RIM_MM = 1.2;

/**
 * Lines with a light flank beside a dark one, at least five millimetres long, and the median strength
 * of the card.
 *
 * @param even what is left of the low lamp's light, of one noise everywhere
 */
export function creaseLikenessesOf(
  card: RelitCard,
  even: Plane,
  { sizeMm: [w, h] }: CardMap,
): { readonly lines: readonly CreaseLikeness[]; readonly median: number } {
  const response = lineResponseOf(boxMeanOf(even, 1), PIECE_PX);
  const { median, high } = levelsOf(response);
  const pieces = lineChainsOf(response, { low: 0.5 * high, high, least: LEAST_PX / 2 });
  const lines = joinedCellsOf(pieces).flatMap((cells) => {
    const chain = chainOf(response, cells);
    const points = chain.pixels.map((pixel) => viewPointOf(card.view, pixel));
    const features = lineFeaturesOf(chain, card.expected, response, median);
    const depths = points.map(([x, y]) => Math.min(x, y, w - x, h - y));
    const deep = depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
    if (features.lengthPx < LEAST_PX || deep < RIM_MM) return [];
    const flanks = flanksOf(card, chain);
    if (flanks.widthMm < LEAST_MM) return [];
    return [{ points, features, lengthMm: features.lengthPx / PX_PER_MM, ...flanks }];
  });
  return { lines: apart(lines), median };
}

/** Lines by falling strength, none along another, as the flanks of one fold make lines too. */
function apart(lines: readonly CreaseLikeness[]): readonly CreaseLikeness[] {
  const kept: CreaseLikeness[] = [];
  for (const line of [...lines].sort((a, b) => b.features.strength - a.features.strength)) {
    const beside = (point: PointMm) =>
      kept.some(({ points }) => distanceTo(points, point) < BESIDE_MM);
    if (line.points.filter(beside).length < line.points.length / 2) kept.push(line);
  }
  return kept;
}

const BESIDE_MM = 3;

/** Distance of a point to a line through points, mm. */
export function distanceTo(line: readonly PointMm[], [x, y]: PointMm): number {
  let least = Number.POSITIVE_INFINITY;
  line.forEach(([ax, ay], i) => {
    const [bx, by] = line[i + 1] ?? [ax, ay];
    const [dx, dy] = [bx - ax, by - ay];
    const t = Math.max(
      0,
      Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy + 1e-9)),
    );
    least = Math.min(least, Math.hypot(x - ax - t * dx, y - ay - t * dy));
  });
  return least;
}

/** Farthest from a line that its flanks are looked for, pixels, and how finely. */
const FAR_PX = 8;
const FINE = 0.5;
/** Width of a Gaussian at half its height over the distance of its steepest places: √(2 ln 2). */
const WIDTH_BY_FLANKS = Math.sqrt(2 * Math.LN2);

/** The mean section across a line: where its flanks lie, how far apart in light, and which way. */
function flanksOf(
  { left }: RelitCard,
  { pixels }: LineChain,
): Pick<CreaseLikeness, 'widthMm' | 'angle'> {
  const steps = Math.round((2 * FAR_PX) / FINE) + 1;
  const sums = new Float64Array(steps);
  const [first, last] = [pixels[0], pixels.at(-1)] as [
    readonly [number, number],
    readonly [number, number],
  ];
  for (let k = 0; k + 1 < pixels.length; k++) {
    const [a, b] = [pixels[k], pixels[k + 1]] as [
      readonly [number, number],
      readonly [number, number],
    ];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length < 1e-6) continue;
    const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
    for (let t = 0; t < length; t++) {
      for (let i = 0; i < steps; i++) {
        const u = i * FINE - FAR_PX;
        const x = a[0] + ((b[0] - a[0]) * t) / length + u * nx;
        const y = a[1] + ((b[1] - a[1]) * t) / length + u * ny;
        sums[i] =
          (sums[i] as number) +
          Math.max(-1, Math.min(1, between(left.values, left.width, left.height, x, y)));
      }
    }
  }
  let [lightest, darkest] = [0, 0];
  for (let i = 0; i < steps; i++) {
    if ((sums[i] as number) > (sums[lightest] as number)) lightest = i;
    if ((sums[i] as number) < (sums[darkest] as number)) darkest = i;
  }
  const apart = (lightest - darkest) * FINE;
  const [dx, dy] = [last[0] - first[0], last[1] - first[1]];
  const across = Math.atan2(dx, -dy);
  return {
    widthMm: (WIDTH_BY_FLANKS * Math.abs(apart)) / PX_PER_MM,
    angle: apart > 0 ? across : across + Math.PI,
  };
}

function between(
  values: Float32Array,
  width: number,
  height: number,
  x: number,
  y: number,
): number {
  const px = Math.min(Math.max(x, 0), width - 1.001);
  const py = Math.min(Math.max(y, 0), height - 1.001);
  const i = Math.floor(py) * width + Math.floor(px);
  const [u, v] = [px - Math.floor(px), py - Math.floor(py)];
  return (
    (1 - v) * ((1 - u) * (values[i] as number) + u * (values[i + 1] as number)) +
    v * ((1 - u) * (values[i + width] as number) + u * (values[i + width + 1] as number))
  );
}
