import { type Picture, pictureOf } from '../../src/bench/index.ts';
import { developed } from './develop.ts';
import { paintFace } from './face.ts';
import { eyeSide, MANY } from './look.ts';
import type { Scene } from './scene.ts';
import { type Truth, truthOf } from './truth.ts';
import { type Whitened, whiten } from './wear.ts';

/** A picture and all that is true of it. */
export interface Rendered {
  readonly picture: Picture;
  readonly truth: Truth;
  /** The whitened places as drawn; null where there is no card. */
  readonly whitened: Whitened | null;
}

/** Renders a scene; the seed is that of the noise. One pixel is one sample, edges are `MANY`. */
export function render(scene: Scene, seed: number): Rendered {
  const { camera, face, marks } = scene;
  const scale = Math.min(48, Math.max(6, camera.pxPerMm * 1.2));
  const canvas = face && paintFace(face, scale);
  const whitened = face && canvas && whiten(canvas, marks, face.sizeMm, face.cornerRadiusMm);
  const light = exposed(scene, canvas);
  const samples = developed(light, camera.width, camera.height, scene.develop, seed);
  const dpi = camera.focalPx > 0 ? null : Math.round(camera.pxPerMm * 25.4);
  return {
    picture: pictureOf(camera.width, camera.height, samples, dpi),
    truth: truthOf(scene, seed, whitened),
    whitened,
  };
}

/** Light of every pixel; where neighbours see different things, the mean of many samples. */
function exposed(scene: Scene, canvas: ReturnType<typeof paintFace> | null): Float32Array {
  const { width, height } = scene.camera;
  const look = eyeSide(scene, canvas);
  const light = new Float32Array(width * height * 3);
  const zones = new Uint16Array(width * height);
  const out = new Float64Array(3);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      zones[i] = look(x, y, out);
      light[3 * i] = out[0]!;
      light[3 * i + 1] = out[1]!;
      light[3 * i + 2] = out[2]!;
    }
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      const z = zones[i]!;
      if (
        (x + 1 < width && zones[i + 1] !== z) ||
        (x > 0 && zones[i - 1] !== z) ||
        (y + 1 < height && zones[i + width] !== z) ||
        (y > 0 && zones[i - width] !== z)
      )
        average(look, x, y, out, light, 3 * i);
    }
  return light;
}

function average(
  look: ReturnType<typeof eyeSide>,
  x: number,
  y: number,
  out: Float64Array,
  light: Float32Array,
  at: number,
): void {
  let [r, g, b] = [0, 0, 0];
  for (let j = 0; j < MANY; j++)
    for (let i = 0; i < MANY; i++) {
      look(x + (i + 0.5) / MANY - 0.5, y + (j + 0.5) / MANY - 0.5, out);
      r += out[0]!;
      g += out[1]!;
      b += out[2]!;
    }
  light[at] = r / MANY ** 2;
  light[at + 1] = g / MANY ** 2;
  light[at + 2] = b / MANY ** 2;
}
