import { sightOf } from './camera.ts';
import type { Canvas } from './canvas.ts';
import { surfaceOf } from './ground.ts';
import { reliefOf } from './relief.ts';
import type { Scene } from './scene.ts';
import { shadingOf } from './shading.ts';
import { roundedDistance } from './shapes.ts';
import { layerOfCover, layerOfThing } from './things.ts';
import { dustAt } from './wear.ts';

/** Samples along each side of a pixel that an edge crosses. */
export const MANY = 6;

/** Light that falls on a place of the sensor, into `out`; the answer tells what is seen there. */
export type Look = (x: number, y: number, out: Float64Array) => number;

/** What the camera of a scene sees at each place of its sensor. */
// long because one closure holds what every pixel needs, so that none is allocated for it
export function eyeSide(scene: Scene, canvas: Canvas | null): Look {
  const { camera, face, thicknessMm } = scene;
  const [w, h] = face?.sizeMm ?? [63, 88];
  const radius = face?.cornerRadiusMm ?? 3;
  const sight = sightOf(camera, [w, h]);
  const top = sight.fromPicture(0);
  const low = sight.fromPicture(-thicknessMm);
  const surface = surfaceOf(scene.ground);
  const things = scene.things.map(layerOfThing);
  const covers = scene.covers.map((cover) => layerOfCover(cover, [w, h]));
  const relief = face && reliefOf(scene.marks, face.sizeMm, Math.max(16, camera.pxPerMm * 1.2));
  const shading = shadingOf(scene, relief, sight.eye);
  const { loss } = scene.marks;
  const distance = (x: number, y: number) => {
    let d = face ? roundedDistance(x, y, w, h, radius) : 1e9;
    if (d < -2.5) return d;
    for (const { centreMm, radiusMm } of loss)
      d = Math.max(d, radiusMm - Math.hypot(x - centreMm[0], y - centreMm[1]));
    return d;
  };
  const [cx, cy] = [(camera.width - 1) / 2, (camera.height - 1) / 2];
  const unit2 = (camera.width ** 2 + camera.height ** 2) / 4;
  return (px, py, out) => {
    const [u, v] = [px - cx, py - cy];
    const bow = 1 + (camera.k1 * (u * u + v * v)) / unit2;
    const [X, Y] = [u * bow, v * bow];
    const kt = 1 / (top[6]! * X + top[7]! * Y + top[8]!);
    const x = (top[0]! * X + top[1]! * Y + top[2]!) * kt;
    const y = (top[3]! * X + top[4]! * Y + top[5]!) * kt;
    let zone = 0;
    if (shading.ball(x, y, out)) zone = 1;
    else if (canvas && distance(x, y) < 0) {
      zone = 2;
      sampled(canvas, x, y, out);
      shading.card(x, y, out, foilAt);
    } else {
      const kl = 1 / (low[6]! * X + low[7]! * Y + low[8]!);
      const gx = (low[0]! * X + low[1]! * Y + low[2]!) * kl;
      const gy = (low[3]! * X + low[4]! * Y + low[5]!) * kl;
      if (distance(gx, gy) < 0) {
        zone = 3;
        for (let k = 0; k < 3; k++) out[k] = scene.sideColour[k]!;
        shading.side(gx, gy, out);
      } else {
        surface(gx, gy, out);
        zone = 4;
        for (const thing of things) zone = zone * 3 + thing(gx, gy, out);
        shading.ground(gx, gy, out, distance);
      }
    }
    for (const cover of covers) zone = zone * 4 + cover(x, y, out);
    if (scene.dust > 0) {
      const dust = 0.5 * dustAt(x, y, 91, scene.dust);
      for (let k = 0; k < 3; k++) out[k] = out[k]! + dust * (0.75 - out[k]!);
    }
    shading.camera(u, v, out);
    return zone;
  };
}

let foilAt = 0;

/** The canvas at a place in millimetres, between its four nearest texels. */
function sampled(
  { values, width, scale, margin }: Canvas,
  x: number,
  y: number,
  out: Float64Array,
): void {
  const u = (x + margin) * scale - 0.5;
  const v = (y + margin) * scale - 0.5;
  const i = Math.floor(u);
  const j = Math.floor(v);
  const [fu, fv] = [u - i, v - j];
  const k = 4 * (j * width + i);
  const below = k + 4 * width;
  for (let c = 0; c < 4; c++) {
    const a = values[k + c]! + (values[k + 4 + c]! - values[k + c]!) * fu;
    const b = values[below + c]! + (values[below + 4 + c]! - values[below + c]!) * fu;
    if (c < 3) out[c] = a + (b - a) * fv;
    else foilAt = a + (b - a) * fv;
  }
}
