import { solveSymmetric } from '../../maths/index.ts';
import { type CardMap, cardPointOf, pixelsPerMm, turnOf } from '../geometry/card-map.ts';
import { LUMINANCE, lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';
import { CAMERA_MM, type PlaceMm } from './lighting.ts';
import type { Ball } from './types.ts';

/** Distance at which a lamp is taken to stand where only its direction is known, mm (Judgement, no source). */
export const LAMP_MM = 550;

/** Share of the ball's radius within which it is read; the rim is blurred. */
const RIM = 0.92;

/**
 * Direction to the lamp from a matt ball, in the card's axes: least squares of the light on the
 * ball's normals where it is lit (`woodham:1980` turned round), about a centimetre's error at 500
 * mm for a ball of ninety pixels. Misleads where the ball shines or a shadow falls on it.
 */
export function lampFromBall(picture: Picture, map: CardMap, ball: Ball): PlaceMm {
  const points = readBall(picture, map, ball);
  const most = points.reduce((value, { light }) => Math.max(value, light), 0);
  let lit = points.filter(({ light }) => light > 0.3 * most);
  let direction: PlaceMm = [0, 0, 1];
  for (let round = 0; round < 4; round++) {
    const [gx, gy, gz] = solved(lit);
    const length = Math.hypot(gx, gy, gz);
    direction = [gx / length, gy / length, gz / length];
    lit = points.filter(
      ({ nx, ny, nz }) => nx * direction[0] + ny * direction[1] + nz * direction[2] > 0.15,
    );
  }
  const [width, height] = map.sizeMm;
  const [x, y] = cardPointOf(map, ball.centrePx);
  return [
    x - width / 2 + direction[0] * LAMP_MM,
    y - height / 2 + direction[1] * LAMP_MM,
    ball.radiusMm + direction[2] * LAMP_MM,
  ];
}

interface BallPoint {
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  readonly light: number;
}

function readBall(picture: Picture, map: CardMap, ball: Ball): readonly BallPoint[] {
  const table = lightTable(picture);
  const perMm = pixelsPerMm(map);
  const [a, b, c, d] = turnOf(map).map((value) => value * perMm) as [
    number,
    number,
    number,
    number,
  ];
  const [width, height] = map.sizeMm;
  const [bx, by] = cardPointOf(map, ball.centrePx);
  // The camera looks at the ball aslant: what faces it is turned by so much from straight up.
  const tiltX = -(bx - width / 2) / CAMERA_MM;
  const tiltY = -(by - height / 2) / CAMERA_MM;
  const points: BallPoint[] = [];
  const [cx, cy] = ball.centrePx;
  const reach = ball.radiusPx * RIM;
  for (let y = Math.ceil(cy - reach); y <= cy + reach; y++)
    for (let x = Math.ceil(cx - reach); x <= cx + reach; x++) {
      const u = (x - cx) / ball.radiusPx;
      const v = (y - cy) / ball.radiusPx;
      if (u * u + v * v > RIM * RIM || x < 0 || y < 0 || x >= picture.width || y >= picture.height)
        continue;
      const at = (y * picture.width + x) * 3;
      let light = 0;
      for (let k = 0; k < 3; k++)
        light += (LUMINANCE[k] as number) * (table[picture.samples[at + k] as number] as number);
      const up = Math.sqrt(1 - u * u - v * v);
      const nx = u * a + v * c;
      const ny = u * b + v * d;
      points.push({ ...turned(nx, ny, up, tiltX, tiltY), light });
    }
  return points;
}

/** A direction turned so that straight up becomes the direction to the camera, for small tilts. */
function turned(nx: number, ny: number, nz: number, tiltX: number, tiltY: number) {
  const x = nx + tiltX * nz;
  const y = ny + tiltY * nz;
  const z = nz - tiltX * nx - tiltY * ny;
  const length = Math.hypot(x, y, z);
  return { nx: x / length, ny: y / length, nz: z / length };
}

/** Light = g · normal + ambient · (1 + up) / 2; the three numbers of g. */
function solved(points: readonly BallPoint[]): PlaceMm {
  const normal = new Float64Array(16);
  const right = new Float64Array(4);
  for (const { nx, ny, nz, light } of points) {
    const row = [nx, ny, nz, (1 + nz) / 2];
    for (let i = 0; i < 4; i++) {
      right[i] = (right[i] as number) + (row[i] as number) * light;
      for (let j = 0; j < 4; j++)
        normal[i * 4 + j] = (normal[i * 4 + j] as number) + (row[i] as number) * (row[j] as number);
    }
  }
  for (let i = 0; i < 4; i++) normal[i * 5] = (normal[i * 5] as number) * (1 + 1e-9);
  solveSymmetric(normal, right, 4);
  return [right[0] as number, right[1] as number, right[2] as number];
}
