/**
 * A dent as a bowl in a plane. In millimetres from the middle, stretched by `stretch`, the surface
 * lies `depth · (1 − (r²/f²)^flat)^power` below the plane within the foot f: with flat 1, power 1 is
 * a spherical cap (of small slope), 2.3 nearly a raised cosine, a large power a Gaussian; flat 2 has a
 * level floor and steep walls.
 */
export const SHAPE = {
  x: 0,
  y: 1,
  depth: 2,
  /** Logarithm of the width at half the depth, mm; of an oval one the geometric mean of both. */
  logWidth: 3,
  logPower: 4,
  logFlat: 5,
  stretchX: 6,
  stretchXY: 7,
  tiltX: 8,
  tiltY: 9,
} as const;

/** How many numbers describe a dent and the tilt of the plane that it lies in. */
export const SHAPE_SIZE = 10;

/** Half the foot's width, mm: beyond it the plane is undisturbed. */
export function footOf(shape: Float64Array): number {
  const q = 0.5 ** Math.exp(-(shape[SHAPE.logPower] as number));
  const width = Math.exp(shape[SHAPE.logWidth] as number);
  return width / 2 / (1 - q) ** (0.5 / Math.exp(shape[SHAPE.logFlat] as number));
}

/** What is alike for all points of one dent, so that it is worked out once. */
export interface Bowl {
  readonly shape: Float64Array;
  readonly power: number;
  readonly flat: number;
  readonly foot2: number;
  /** The middle term of a stretch that keeps the area. */
  readonly round: number;
  /** Change of the logarithm of the foot's square with the logarithm of the power. */
  readonly byPower: number;
  /** The same with the logarithm of the flatness. */
  readonly byFlat: number;
}

/** Works out a dent's bowl. */
export function bowlOf(shape: Float64Array): Bowl {
  const power = Math.exp(shape[SHAPE.logPower] as number);
  const flat = Math.exp(shape[SHAPE.logFlat] as number);
  const q = 0.5 ** (1 / power);
  const sx = shape[SHAPE.stretchX] as number;
  const sxy = shape[SHAPE.stretchXY] as number;
  return {
    shape,
    power,
    flat,
    foot2: footOf(shape) ** 2,
    round: Math.sqrt(1 + sx * sx + sxy * sxy),
    byPower: (q * Math.LN2) / (power * flat * (1 - q)),
    byFlat: Math.log(1 - q) / flat,
  };
}

/**
 * Slopes of the surface at a point, rise a millimetre along x and y, and their change with each
 * number of the shape: `out` holds the two slopes, then pairs of changes in the order of `SHAPE`.
 * Returns whether the point lies within the foot.
 */
export function slopesAndChanges(bowl: Bowl, x: number, y: number, out: Float64Array): boolean {
  const { shape, power, flat, foot2, round, byPower, byFlat } = bowl;
  const sx = shape[SHAPE.stretchX] as number;
  const sxy = shape[SHAPE.stretchXY] as number;
  const dx = x - (shape[SHAPE.x] as number);
  const dy = y - (shape[SHAPE.y] as number);
  const gx = (round + sx) * dx + sxy * dy;
  const gy = sxy * dx + (round - sx) * dy;
  const u = Math.max((gx * dx + gy * dy) / foot2, 1e-9);
  out[0] = shape[SHAPE.tiltX] as number;
  out[1] = shape[SHAPE.tiltY] as number;
  if (u >= 1) return false;
  const v = u ** flat;
  const rest = Math.max(1 - v, 1e-9);
  const unit = ((2 * power * flat * v) / u) * (rest ** (power - 1) / foot2);
  const pull = (shape[SHAPE.depth] as number) * unit;
  const byU = (pull / u) * (flat - 1 - ((power - 1) * flat * v) / rest);
  out[0] += pull * gx;
  out[1] += pull * gy;
  put(out, SHAPE.x, -byU * ((2 * gx) / foot2), gx, gy, -pull * (round + sx), -pull * sxy);
  put(out, SHAPE.y, -byU * ((2 * gy) / foot2), gx, gy, -pull * sxy, -pull * (round - sx));
  put(out, SHAPE.depth, unit, gx, gy, 0, 0);
  put(out, SHAPE.logWidth, -2 * pull - 2 * u * byU, gx, gy, 0, 0);
  const power1 = pull * (1 + power * Math.log(rest) - byPower) - u * byPower * byU;
  put(out, SHAPE.logPower, power1, gx, gy, 0, 0);
  const logV = flat * Math.log(u);
  const flat1 = pull * (1 + logV - ((power - 1) * v * logV) / rest - byFlat) - u * byFlat * byU;
  put(out, SHAPE.logFlat, flat1, gx, gy, 0, 0);
  const rx = sx / round;
  const byX = ((rx + 1) * dx * dx + (rx - 1) * dy * dy) / foot2;
  put(out, SHAPE.stretchX, byU * byX, gx, gy, pull * (rx + 1) * dx, pull * (rx - 1) * dy);
  const ry = sxy / round;
  const byXY = (ry * dx * dx + 2 * dx * dy + ry * dy * dy) / foot2;
  put(out, SHAPE.stretchXY, byU * byXY, gx, gy, pull * (ry * dx + dy), pull * (dx + ry * dy));
  put(out, SHAPE.tiltX, 0, 0, 0, 1, 0);
  put(out, SHAPE.tiltY, 0, 0, 0, 0, 1);
  return true;
}

/** Writes a pair of changes: of the pull times where it points, and of where it points. */
function put(
  out: Float64Array,
  at: number,
  pull: number,
  gx: number,
  gy: number,
  x: number,
  y: number,
): void {
  out[2 + 2 * at] = pull * gx + x;
  out[3 + 2 * at] = pull * gy + y;
}
