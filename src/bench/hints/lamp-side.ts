import { quantileOf, solveSymmetric } from '../../maths/index.ts';
import { type CardMap, pixelOf } from '../geometry/card-map.ts';
import type { PointMm } from '../geometry/points.ts';
import { PX_PER_MM, type RelitCard } from './relit-card.ts';

/** On which side of the card the lamp stood, and how well that is known. */
export interface LampSide {
  /** Angle from the card's x axis towards its y axis, radians; null where nothing tells it. */
  readonly angle: number | null;
  readonly from: 'told' | 'fall-off' | 'nothing';
}

/** Side of the squares whose median light counts, pixels. */
const SQUARE = 20;
/**
 * Fall-off, as a share of the light for each millimetre, from which it tells where a near lamp
 * stood: a lamp a metre away and 20° high makes 0.003. Judgement, no source.
 */
const TELLS = 0.002;

/** Where the lamp stood, as told, else as its light falls off over the card beside the soft light. */
export function lampSideOf(card: RelitCard, map: CardMap, azimuthDeg: number | null): LampSide {
  if (azimuthDeg !== null) return { angle: onCard(map, azimuthDeg), from: 'told' };
  const [x, y] = fallOffOf(card);
  if (Math.hypot(x, y) < TELLS) return { angle: null, from: 'nothing' };
  return { angle: Math.atan2(y, x), from: 'fall-off' };
}

/** A direction of the picture, counter-clockwise from its x axis, as an angle on the card. */
function onCard(map: CardMap, azimuthDeg: number): number {
  const [w, h] = map.sizeMm;
  const middle: PointMm = [w / 2, h / 2];
  const [px, py] = pixelOf(map, middle);
  const [ax, ay] = pixelOf(map, [middle[0] + 1, middle[1]]);
  const [bx, by] = pixelOf(map, [middle[0], middle[1] + 1]);
  const a = (azimuthDeg * Math.PI) / 180;
  const [u, v] = [Math.cos(a), -Math.sin(a)];
  const determinant = (ax - px) * (by - py) - (bx - px) * (ay - py);
  const x = (u * (by - py) - v * (bx - px)) / determinant;
  const y = (v * (ax - px) - u * (ay - py)) / determinant;
  return Math.atan2(y, x);
}

/** Growth of the low lamp's light over the soft one's, as a share a millimetre, across and down. */
export function fallOffOf({ expected, soft }: RelitCard): readonly [x: number, y: number] {
  const { width, height } = expected;
  const rows: [number, number, number][] = [];
  for (let y = SQUARE; y + SQUARE < height; y += SQUARE)
    for (let x = SQUARE; x + SQUARE < width; x += SQUARE) {
      const ratios: number[] = [];
      for (let j = 0; j < SQUARE; j += 3)
        for (let i = 0; i < SQUARE; i += 3) {
          const at = (y + j) * width + x + i;
          ratios.push((expected.values[at] as number) / ((soft.values[at] as number) + 1e-3));
        }
      rows.push([x / PX_PER_MM, y / PX_PER_MM, Math.log(Math.max(quantileOf(ratios, 0.5), 1e-4))]);
    }
  return planeOf(rows);
}

/** Scatter of the light about a plane from which a square weighs less, as a share. */
const SCATTER = 0.1;

/** Slopes of the plane through points, by least squares with Cauchy's weights. */
function planeOf(rows: readonly (readonly [number, number, number])[]): readonly [number, number] {
  const level = quantileOf(
    rows.map(([, , z]) => z),
    0.5,
  );
  let [p, q, c] = [0, 0, level];
  for (let round = 0; round < 5; round++) {
    const normal = new Float64Array(9);
    const right = new Float64Array(3);
    for (const [x, y, z] of rows) {
      const row = [x, y, 1] as const;
      const off = z - p * x - q * y - c;
      const weight = 1 / (1 + (off / SCATTER) ** 2);
      row.forEach((a, j) => {
        right[j] = (right[j] as number) + weight * a * off;
        row.forEach((b, k) => {
          normal[3 * j + k] = (normal[3 * j + k] as number) + weight * a * b;
        });
      });
    }
    solveSymmetric(normal, right, 3);
    [p, q, c] = [p + (right[0] as number), q + (right[1] as number), c + (right[2] as number)];
  }
  return [p, q];
}
