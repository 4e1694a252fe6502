import type { Point } from './canvas.ts';

/** Where the camera stands, and what it makes of straight lines. */
export interface Camera {
  readonly width: number;
  readonly height: number;
  /** Focal length in pixels; 0: a scanner, which looks straight down everywhere. */
  readonly focalPx: number;
  /** Pixels to the millimetre at the card's centre. */
  readonly pxPerMm: number;
  /** Between the card's normal and the line of sight, and towards where the card leans. */
  readonly tiltDeg: number;
  readonly tiltTowardsDeg: number;
  /** Turn of the card in the picture, clockwise as seen. */
  readonly rollDeg: number;
  /** Where the card's centre is seen, before the lens bows it. */
  readonly centrePx: Point;
  /** With half the diagonal as unit: ideal = seen · (1 + k1 · |seen|²). */
  readonly k1: number;
}

/** Nine numbers by rows that carry points of one plane to another, up to scale. */
export type Matrix = Float64Array;

/** What a camera sees of planes that lie parallel to the card. */
export interface Sight {
  /** Ideal pixels, counted from the picture's centre, to millimetres of the plane at that height. */
  fromPicture(heightMm: number): Matrix;
  /** The pixel at which a point is seen, bowed by the lens. */
  pixelOf(point: Point, heightMm?: number): Point;
  /** The camera in millimetres of the card, from its top-left corner; height positive. */
  readonly eye: readonly [number, number, number];
}

/** The sight of a camera on a card of that size. */
export function sightOf(camera: Camera, [w, h]: Point): Sight {
  const rotation = rotationOf(camera);
  const distance = camera.focalPx > 0 ? camera.focalPx / camera.pxPerMm : 0;
  const [cx, cy] = [(camera.width - 1) / 2, (camera.height - 1) / 2];
  const shift = [camera.centrePx[0] - cx, camera.centrePx[1] - cy] as const;
  const toPicture = (z: number): Matrix => {
    const [a, b, , d, e, , g, i] = rotation as unknown as number[] & Float64Array;
    const s = camera.pxPerMm;
    const f = camera.focalPx;
    // Card millimetres from its centre; a height points to the camera, against its z.
    const columns =
      f > 0
        ? [
            [f * a!, f * b!, f * (shift[0] / s - z * rotation[2]!)],
            [f * d!, f * e!, f * (shift[1] / s - z * rotation[5]!)],
            [g!, i!, distance - z * rotation[8]!],
          ]
        : [
            [s * a!, s * b!, shift[0]],
            [s * d!, s * e!, shift[1]],
            [0, 0, 1],
          ];
    const moved = columns.map(([p, q, r]) => [p!, q!, r! - (p! * w) / 2 - (q! * h) / 2]);
    return Float64Array.from(moved.flat());
  };
  const unit = Math.hypot(camera.width, camera.height) / 2;
  return {
    fromPicture: (z) => inverse(toPicture(z)),
    pixelOf(point, z = 0) {
      const [u, v] = carry(toPicture(z), point);
      const ideal = Math.hypot(u, v) / unit;
      const shrink = ideal === 0 ? 1 : seenRadius(ideal, camera.k1) / ideal;
      return [cx + u * shrink, cy + v * shrink];
    },
    eye:
      camera.focalPx > 0
        ? eyeOf(rotation, shift, camera.pxPerMm, distance, w, h)
        : [w / 2, h / 2, 1e7],
  };
}

/** Where a matrix carries a point. */
export function carry(m: Matrix, [x, y]: Point): Point {
  const k = m[6]! * x + m[7]! * y + m[8]!;
  return [(m[0]! * x + m[1]! * y + m[2]!) / k, (m[3]! * x + m[4]! * y + m[5]!) / k];
}

/** Roll about the line of sight after a tilt about a line in the card: camera axes of card axes. */
function rotationOf({ tiltDeg, tiltTowardsDeg, rollDeg, focalPx }: Camera): Float64Array {
  const t = focalPx > 0 ? (tiltDeg * Math.PI) / 180 : 0;
  const a = (tiltTowardsDeg * Math.PI) / 180;
  const [ux, uy] = [Math.cos(a), Math.sin(a)];
  const [c, s] = [Math.cos(t), Math.sin(t)];
  const tilt = [
    ...[c + ux * ux * (1 - c), ux * uy * (1 - c), uy * s],
    ...[ux * uy * (1 - c), c + uy * uy * (1 - c), -ux * s],
    ...[-uy * s, ux * s, c],
  ];
  const r = (rollDeg * Math.PI) / 180;
  const [p, q] = [Math.cos(r), Math.sin(r)];
  const row = (i: number, j: number, k: number) => i * tilt[k]! + j * tilt[3 + k]!;
  return Float64Array.from([
    ...[row(p, -q, 0), row(p, -q, 1), row(p, -q, 2)],
    ...[row(q, p, 0), row(q, p, 1), row(q, p, 2)],
    ...[tilt[6]!, tilt[7]!, tilt[8]!],
  ]);
}

function eyeOf(
  m: Float64Array,
  shift: Point,
  s: number,
  distance: number,
  w: number,
  h: number,
): readonly [number, number, number] {
  const t = [shift[0] / s, shift[1] / s, distance];
  const along = (k: number) => -(m[k]! * t[0]! + m[3 + k]! * t[1]! + m[6 + k]! * t[2]!);
  return [along(0) + w / 2, along(1) + h / 2, -along(2)];
}

function seenRadius(ideal: number, k1: number): number {
  let seen = ideal;
  for (let i = 0; i < 12; i++) seen -= (seen + k1 * seen ** 3 - ideal) / (1 + 3 * k1 * seen * seen);
  return seen;
}

function inverse(m: Matrix): Matrix {
  const [a, b, c, d, e, f, g, h, i] = m as unknown as [
    ...[number, number, number],
    ...[number, number, number],
    ...[number, number, number],
  ];
  const n = [
    ...[e * i - f * h, c * h - b * i, b * f - c * e],
    ...[f * g - d * i, a * i - c * g, c * d - a * f],
    ...[d * h - e * g, b * g - a * h, a * e - b * d],
  ];
  const det = a * n[0]! + b * n[3]! + c * n[6]!;
  return Float64Array.from(n, (value) => value / det);
}
