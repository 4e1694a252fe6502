import { layered } from './noise.ts';
import type { Cover, Thing } from './scene.ts';
import { roundedDistance } from './shapes.ts';

/** Changes the light in `out` at a place in millimetres; its answer tells zones with an edge apart. */
export type Layer = (x: number, y: number, out: Float64Array) => number;

/** Something that lies flat on the ground, with a soft shadow about it. */
export function layerOfThing(thing: Thing): Layer {
  const [w, h] = thing.sizeMm;
  const t = (thing.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(t), Math.sin(t)];
  const radius = { card: 3, disc: Math.min(w, h) / 2, pencil: 1, packet: 0.4 }[thing.shape];
  const { colour, second } = thing;
  return (x, y, out) => {
    const u = c * (x - thing.centreMm[0]) + s * (y - thing.centreMm[1]) + w / 2;
    const v = -s * (x - thing.centreMm[0]) + c * (y - thing.centreMm[1]) + h / 2;
    const d = roundedDistance(u, v, w, h, radius);
    if (d > 4) return 0;
    if (d > 0) {
      const dim = 1 - 0.4 * Math.exp(-d / 1.1);
      for (let k = 0; k < 3; k++) out[k] = out[k]! * dim;
      return 0;
    }
    const zone = zoneOf(thing.shape, u, v, d);
    const from = zone === 1 ? colour : second;
    const grain = 0.9 + 0.2 * layered(u / 4, v / 4, 31, 2);
    for (let k = 0; k < 3; k++) out[k] = from[k]! * grain;
    return zone;
  };
}

function zoneOf(shape: Thing['shape'], u: number, v: number, d: number): 1 | 2 {
  if (shape === 'card') return d > -3 ? 1 : 2;
  if (shape === 'packet') return (Math.floor(u / 9) + Math.floor(v / 14)) & 1 ? 1 : 2;
  if (shape === 'pencil') return v > 3 && v < 5 ? 2 : 1;
  return d > -2 ? 1 : 2;
}

/** Something that lies over the card. */
export function layerOfCover(cover: Cover, size: readonly [number, number]): Layer {
  if (cover.kind === 'finger') return fingerLayer(cover);
  if (cover.kind === 'holder') return holderLayer(cover, size);
  return sleeveLayer(cover, size);
}

type Sleeve = Extract<Cover, { kind: 'sleeve' }>;
type Holder = Extract<Cover, { kind: 'holder' }>;
type Finger = Extract<Cover, { kind: 'finger' }>;

function veil(out: Float64Array, pass: number, add: number): void {
  for (let k = 0; k < 3; k++) out[k] = out[k]! * pass + add;
}

function sleeveLayer(cover: Sleeve, [w, h]: readonly [number, number]): Layer {
  const [sw, sh] = cover.sizeMm;
  const t = (cover.turnDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(t), Math.sin(t)];
  return (x, y, out) => {
    const [dx, dy] = [x - w / 2 - cover.offsetMm[0], y - h / 2 - cover.offsetMm[1]];
    const u = c * dx + s * dy + sw / 2;
    const v = -s * dx + c * dy + sh / 2;
    if (u < 0 || v < 0 || u > sw || v > sh) return 0;
    const seam = Math.min(u, sw - u, sh - v);
    const [wx, wy] = [u / sw - cover.windowAt[0], v / sh - cover.windowAt[1]];
    const pane = Math.max(Math.abs(wx + 0.25 * wy) / 0.16, Math.abs(wy) / 0.22);
    const mirrored = cover.glare * Math.max(0, Math.min(1, (1.15 - pane) / 0.3));
    const wave = 0.012 * layered(u / 15, v / 15, 41, 2);
    if (seam < 0.25 || v < 0.2) {
      veil(out, 0.75, 0.16);
      return 3;
    }
    if (seam < 1.1) {
      veil(out, 0.88, 0.05 + wave);
      return 2;
    }
    veil(out, 0.95, 0.012 + wave + mirrored);
    return 1;
  };
}

function holderLayer(
  { sizeMm: [hw, hh], glare }: Holder,
  [w, h]: readonly [number, number],
): Layer {
  return (x, y, out) => {
    const u = x - w / 2 + hw / 2;
    const v = y - h / 2 + hh / 2;
    const d = roundedDistance(u, v, hw, hh, 1.5);
    if (d > 0) return 0;
    const step = roundedDistance(x + 1.2, y + 1.2, w + 2.4, h + 2.4, 0.5);
    const stripe = Math.abs(u - 0.6 * v - 0.25 * hw);
    const mirrored = glare * Math.max(0, Math.min(1, (9 - stripe) / 3));
    if (d > -0.6 || (step > 0 && step < 0.35)) {
      veil(out, 0.6, 0.25);
      return 3;
    }
    if (d > -1.3) {
      veil(out, 0.6, 0.02);
      return 2;
    }
    veil(out, 0.9, 0.025 + mirrored);
    return 1;
  };
}

function fingerLayer({ fromMm: [ax, ay], toMm: [bx, by], radiusMm: r, skin }: Finger): Layer {
  const [dx, dy] = [bx - ax, by - ay];
  const length2 = dx * dx + dy * dy;
  return (x, y, out) => {
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length2));
    const [ux, uy] = [x - ax - t * dx, y - ay - t * dy];
    const d = Math.hypot(ux, uy) / r;
    if (d > 1) {
      const dim = 1 - 0.45 * Math.exp(-(d - 1) * 4);
      for (let k = 0; k < 3; k++) out[k] = out[k]! * dim;
      return 0;
    }
    const nz = Math.sqrt(1 - d * d);
    const light = 0.25 + 0.75 * Math.max(0, 0.85 * nz - 0.35 * (ux / r) - 0.3 * (uy / r));
    const lines = 0.92 + 0.16 * layered(x * 1.5, y * 1.5, 51, 3);
    for (let k = 0; k < 3; k++) out[k] = skin[k]! * light * lines;
    return 1;
  };
}
