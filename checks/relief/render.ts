import {
  type CardMap,
  type Corners,
  cardMapOf,
  type Picture,
  pictureOf,
} from '../../src/bench/index.ts';
import { type Chance, chance } from '../../src/maths/index.ts';
import { heightAt, type Scene } from './scene.ts';

/** Pictures of a scene, one a lamp, and the true map of its card. */
export interface Rendered {
  readonly pictures: readonly Picture[];
  readonly map: CardMap;
}

const MARGIN_MM = 4;
const GROUND = [0.12, 0.12, 0.13] as const;

/** Pictures of a made card: shading of `scene.gloss.law`, square lamps, noise, eight bits of the sRGB curve. */
export function render(scene: Scene): Rendered {
  const { sizeMm, perMm, turn } = scene;
  const side = Math.ceil((Math.hypot(...sizeMm) + 2 * MARGIN_MM) * perMm);
  const upright = turn % 180 === 0;
  const width = upright ? Math.ceil((sizeMm[0] + 2 * MARGIN_MM) * perMm) : side;
  const height = upright ? Math.ceil((sizeMm[1] + 2 * MARGIN_MM) * perMm) : side;
  const a = (turn * Math.PI) / 180;
  const toPixel = (x: number, y: number): [number, number] => {
    const u = (x - sizeMm[0] / 2) * perMm;
    const v = (y - sizeMm[1] / 2) * perMm;
    return [
      (width - 1) / 2 + u * Math.cos(a) - v * Math.sin(a),
      (height - 1) / 2 + u * Math.sin(a) + v * Math.cos(a),
    ];
  };
  const corners = [
    toPixel(0, 0),
    toPixel(sizeMm[0], 0),
    toPixel(...sizeMm),
    toPixel(0, sizeMm[1]),
  ] as unknown as Corners;
  const map = cardMapOf(corners, sizeMm, { k1: 0, width, height });
  const random = chance(scene.seed);
  const surface = surfaceOf(scene, width, height, a);
  const pictures = scene.lamps.map((lamp) =>
    pictureOf(width, height, exposed(scene, lamp, surface, random)),
  );
  return { pictures, map };
}

/** By pixel: place from the card's centre, slopes, print; on a card that is flat but for its dents. */
function surfaceOf(scene: Scene, width: number, height: number, a: number): Float64Array {
  const out = new Float64Array(width * height * 8);
  const [w, h] = scene.sizeMm;
  for (let py = 0; py < height; py++)
    for (let px = 0; px < width; px++) {
      const u = (px - (width - 1) / 2) / scene.perMm;
      const v = (py - (height - 1) / 2) / scene.perMm;
      const x = u * Math.cos(a) + v * Math.sin(a);
      const y = -u * Math.sin(a) + v * Math.cos(a);
      const on = Math.abs(x) < w / 2 && Math.abs(y) < h / 2;
      const cx = x + w / 2;
      const cy = y + h / 2;
      const e = 5e-4;
      const { dents, lines } = scene;
      const near =
        on && (lines.length > 0 || dents.some((d) => Math.hypot(d.x - cx, d.y - cy) < 4 * d.width));
      const zx = near ? (heightAt(scene, cx + e, cy) - heightAt(scene, cx - e, cy)) / (2 * e) : 0;
      const zy = near ? (heightAt(scene, cx, cy + e) - heightAt(scene, cx, cy - e)) / (2 * e) : 0;
      out.set([x, y, zx, zy], (py * width + px) * 8);
      out.set(on ? scene.print(cx, cy) : GROUND, (py * width + px) * 8 + 4);
      out[(py * width + px) * 8 + 7] = on ? 1 : 0;
    }
  return out;
}

function exposed(
  scene: Scene,
  lamp: readonly [number, number, number],
  surface: Float64Array,
  random: Chance,
): Uint8Array {
  const n = surface.length / 8;
  const samples = new Uint8Array(n * 3);
  const distance = Math.hypot(...lamp);
  const [floor, share] = scene.noise;
  const points = [-1, 1].map((i) => cornerOf(lamp, i, i, scene.lampHalf));
  for (let i = 0; i < n; i++) {
    const at = i * 8;
    const on = surface[at + 7] === 1;
    let matt = 0;
    let shine = 0;
    for (const point of points) {
      const seen = shadeOf(scene, point, surface, at, distance);
      matt += seen[0] / points.length;
      shine += seen[1] / points.length;
    }
    const sky = (scene.ambient * lamp[2]) / distance;
    for (let c = 0; c < 3; c++) {
      const light = surface[at + 4 + c]! * (matt + sky) + (on ? shine : 0);
      const noisy = light + random.normal() * (floor + share * light);
      samples[i * 3 + c] = Math.round(255 * encoded(Math.min(Math.max(noisy, 0), 1)));
    }
  }
  return samples;
}

/** A corner of a square lamp, which lies as flat as the card: half its side to each direction. */
function cornerOf(lamp: readonly [number, number, number], i: number, j: number, half: number) {
  return [lamp[0] + (i * half) / Math.SQRT2, lamp[1] + (j * half) / Math.SQRT2, lamp[2]] as const;
}

/** Matt and shining light of a point under one point of a lamp. */
function shadeOf(
  { gloss, falls, cameraMm }: Scene,
  [px, py, pz]: readonly [number, number, number],
  surface: Float64Array,
  at: number,
  distance: number,
): readonly [number, number] {
  const x = surface[at]!;
  const y = surface[at + 1]!;
  const zx = surface[at + 2]!;
  const zy = surface[at + 3]!;
  const length = Math.hypot(px - x, py - y, pz);
  const l = [(px - x) / length, (py - y) / length, pz / length] as const;
  const away = Math.hypot(x, y, cameraMm);
  const v = [-x / away, -y / away, cameraMm / away] as const;
  const half = Math.hypot(l[0] + v[0], l[1] + v[1], l[2] + v[2]);
  const up = 1 / Math.hypot(zx, zy, 1);
  const dot = (d: readonly [number, number, number]) => (d[2] - zx * d[0] - zy * d[1]) * up;
  const nl = Math.max(0, dot(l));
  const nh = Math.max(1e-6, dot(l) + dot(v)) / half;
  const strength = falls ? (distance / length) ** 2 : 1;
  return [strength * nl, nl > 0 ? strength * gloss.strength * lobe(gloss, nh, nl) : 0];
}

/** Lobes scaled to 1 at the normal: Beckmann and Spizzichino 1963, Blinn 1977, Walter et al. 2007. */
function lobe({ law, roughness }: Scene['gloss'], nh: number, nl: number): number {
  const a2 = roughness * roughness;
  switch (law) {
    case 'beckmann':
      return (Math.exp((1 - 1 / (nh * nh)) / a2) / nh ** 4) * Math.min(1, 2 * nl);
    case 'blinn':
      return nh ** (2 / a2);
    case 'ggx':
      return (a2 / (nh * nh * (a2 - 1) + 1)) ** 2 * Math.min(1, 2 * nl);
  }
}

function encoded(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}
