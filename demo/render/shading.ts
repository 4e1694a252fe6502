import type { Relief } from './relief.ts';
import type { Scene } from './scene.ts';

type Eye = readonly [number, number, number];
type Distance = (x: number, y: number) => number;

/** How light falls on each thing of a scene; all places in millimetres of the card. */
export interface Shading {
  card(x: number, y: number, out: Float64Array, foil: number): void;
  side(x: number, y: number, out: Float64Array): void;
  ground(x: number, y: number, out: Float64Array, distance: Distance): void;
  /** True where the ball hides the card's plane; its light is in `out` then. */
  ball(x: number, y: number, out: Float64Array): boolean;
  /** Fall-off, ramp and cast, by pixels from the picture's middle. */
  camera(u: number, v: number, out: Float64Array): void;
}

/** The shading of a scene with its lamps, seen from a place in millimetres of the card. */
export function shadingOf(scene: Scene, relief: Relief | null, eye: Eye): Shading {
  const light = lightOn(scene, eye);
  const normal = new Float64Array(3);
  const both = new Float64Array(2);
  const [w, h] = scene.face?.sizeMm ?? [63, 88];
  const shaded = shadeOf(scene);
  const { thicknessMm: t } = scene;
  const first = scene.lighting.lamps[0]?.positionMm ?? [-160, -220, 420];
  const away = t / Math.max(first[2], 30);
  const [sx, sy] = [first[0] * away, first[1] * away];
  const soft = scene.lighting.lamps.length > 0 ? 0.12 + 0.3 * away : 0.5;
  const dark = scene.lighting.lamps.length > 0 ? 0.85 : 0.55;
  return {
    card(x, y, out, foil) {
      slope(relief, x, y, normal);
      light(x, y, 0, normal, both);
      const glint = foil > 0 ? foil * rainbow(x, y, eye, out, both) : 0;
      const dim = shaded(x, y);
      for (let k = 0; k < 3; k++) out[k] = (out[k]! * both[0]! + both[1]! + glint * 0.02) * dim;
    },
    side(x, y, out) {
      // An upright face turned outwards, lit by the room and by the lamps on its own side.
      const [nx, ny] = outwards(x, y, w, h);
      normal[0] = nx;
      normal[1] = ny;
      normal[2] = 0.05;
      light(x, y, -t / 2, normal, both);
      const room = 0.35 * scene.lighting.ambient;
      for (let k = 0; k < 3; k++) out[k] = out[k]! * (0.45 * both[0]! + room) * shaded(x, y);
    },
    ground(x, y, out, distance) {
      normal[0] = 0;
      normal[1] = 0;
      normal[2] = 1;
      light(x, y, -t, normal, both);
      const near = distance(x + sx, y + sy);
      const cast = near < 4 * soft ? dark / (1 + Math.exp(near / (0.3 * soft))) : 0;
      const close = 0.35 * Math.exp(-Math.max(0, distance(x, y)) / 0.35);
      const dim = (1 - cast) * (1 - close) * shaded(x, y);
      for (let k = 0; k < 3; k++) out[k] = out[k]! * both[0]! * dim;
    },
    ball: ballOf(scene, eye, light),
    camera: cameraOf(scene),
  };
}

type Light = (x: number, y: number, z: number, n: Float64Array, both: Float64Array) => void;

/** Lambert's law and a lobe of gloss about the half vector (Blinn 1977), over all lamps. */
function lightOn(scene: Scene, eye: Eye): Light {
  const { ambient, lamps, gloss } = scene.lighting;
  const [w, h] = scene.face?.sizeMm ?? [63, 88];
  const [share, exponent] = gloss;
  const placed = lamps.map(({ positionMm: [x, y, z], power }) => {
    const far2 = x * x + y * y + z * z;
    return { x: x + w / 2, y: y + h / 2, z, power: power * far2 };
  });
  return (x, y, z, n, both) => {
    const open = 0.5 + 0.5 * n[2]!;
    both[0] = ambient * open;
    both[1] = 0;
    for (const lamp of placed) {
      const [lx, ly, lz] = [lamp.x - x, lamp.y - y, lamp.z - z];
      const d2 = lx * lx + ly * ly + lz * lz;
      const d = Math.sqrt(d2);
      const facing = (n[0]! * lx + n[1]! * ly + n[2]! * lz) / d;
      if (facing <= 0) continue;
      const strength = lamp.power / d2;
      both[0] = both[0]! + strength * facing;
      if (share === 0) continue;
      const [ex, ey, ez] = [eye[0] - x, eye[1] - y, eye[2] - z];
      const e = Math.sqrt(ex * ex + ey * ey + ez * ez);
      const [hx, hy, hz] = [lx / d + ex / e, ly / d + ey / e, lz / d + ez / e];
      const along = (n[0]! * hx + n[1]! * hy + n[2]! * hz) / Math.sqrt(hx * hx + hy * hy + hz * hz);
      both[1] = both[1]! + share * strength * facing * along ** exponent;
    }
  };
}

function slope(relief: Relief | null, x: number, y: number, n: Float64Array): void {
  n[0] = 0;
  n[1] = 0;
  n[2] = 1;
  if (!relief) return;
  const { slopes, scale, margin, width } = relief;
  const u = (x + margin) * scale - 0.5;
  const v = (y + margin) * scale - 0.5;
  const i = Math.floor(u);
  const j = Math.floor(v);
  const k = 2 * (j * width + i);
  const l = k + 2 * width;
  const [fu, fv] = [u - i, v - j];
  const at = (c: number) => {
    const a = slopes[k + c]! + (slopes[k + 2 + c]! - slopes[k + c]!) * fu;
    const b = slopes[l + c]! + (slopes[l + 2 + c]! - slopes[l + c]!) * fu;
    return a + (b - a) * fv;
  };
  const [p, q] = [at(0), at(1)];
  const length = Math.sqrt(1 + p * p + q * q);
  n[0] = -p / length;
  n[1] = -q / length;
  n[2] = 1 / length;
}

function outwards(x: number, y: number, w: number, h: number): readonly [number, number] {
  const sides = [x, w - x, y, h - y];
  const nearest = sides.indexOf(Math.min(...sides));
  return (
    [
      [-1, 0],
      [1, 0],
      [0, -1],
      [0, 1],
    ] as const
  )[nearest as 0 | 1 | 2 | 3];
}

/** Bands of colour that move with the eye, as foil shows them; tints `out`, answers their light. */
function rainbow(x: number, y: number, eye: Eye, out: Float64Array, both: Float64Array): number {
  const phase = 0.19 * x + 0.11 * y + (eye[0] - x) * 0.013 + (eye[1] - y) * 0.017;
  for (let k = 0; k < 3; k++) {
    const wave = 0.5 + 0.5 * Math.sin(phase + 2.1 * k + 0.7 * Math.sin(0.35 * x - 0.2 * y));
    out[k] = out[k]! * (0.72 + 0.4 * wave) + 0.09 * wave;
  }
  return both[0]!;
}

function shadeOf(scene: Scene): (x: number, y: number) => number {
  const shade = scene.lighting.shade;
  if (!shade) return () => 1;
  const t = (shade.angleDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(t), Math.sin(t)];
  return (x, y) => {
    const d = c * (x - shade.at[0]) + s * (y - shade.at[1]);
    return 1 - shade.strength / (1 + Math.exp(-d / shade.widthMm));
  };
}

function ballOf({ ball, thicknessMm }: Scene, eye: Eye, light: Light): Shading['ball'] {
  if (!ball) return () => false;
  const [bx, by] = ball.centreMm;
  const r = ball.radiusMm;
  const bz = r - thicknessMm;
  const n = new Float64Array(3);
  const both = new Float64Array(2);
  return (x, y, out) => {
    const [dx, dy, dz] = [x - eye[0], y - eye[1], -eye[2]];
    const [ox, oy, oz] = [eye[0] - bx, eye[1] - by, eye[2] - bz];
    const a = dx * dx + dy * dy + dz * dz;
    const b = ox * dx + oy * dy + oz * dz;
    const root = b * b - a * (ox * ox + oy * oy + oz * oz - r * r);
    if (root < 0) return false;
    const t = (-b - Math.sqrt(root)) / a;
    n[0] = (ox + t * dx) / r;
    n[1] = (oy + t * dy) / r;
    n[2] = (oz + t * dz) / r;
    light(bx + r * n[0], by + r * n[1], bz + r * n[2], n, both);
    for (let k = 0; k < 3; k++) out[k] = 0.6 * both[0]!;
    return true;
  };
}

function cameraOf({ camera, lighting }: Scene): Shading['camera'] {
  const unit2 = (camera.width ** 2 + camera.height ** 2) / 4;
  const { ramp, falloff, cast } = lighting;
  return (u, v, out) => {
    const bright =
      (1 + (ramp[0] * u) / camera.width + (ramp[1] * v) / camera.height) *
      (1 - (falloff * (u * u + v * v)) / unit2);
    for (let k = 0; k < 3; k++) out[k] = out[k]! * bright * cast[k]!;
  };
}
