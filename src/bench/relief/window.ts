import { type CardMap, cardPointOf, pixelOf } from '../geometry/card-map.ts';
import type { PointMm, PointPx } from '../geometry/points.ts';
import { lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';
import { wholeShifts } from './grid.ts';
import { LAMP_STRIDE, type Lighting, lampsAt } from './lighting.ts';

/** A round cut of every picture about a point of the card, in blocks of pixels. */
export interface Window {
  /** Blocks across. */
  readonly columns: number;
  /** Number of the block in each place of the square about it, rows from the top; -1 beyond the cut or the card. */
  readonly cells: Int32Array;
  readonly lamps: number;
  /** From the card's centre, mm, of each block. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Light in each block, by block, then lamp, then red, green, blue. */
  readonly light: Float64Array;
  /** Standard error of each of them. */
  readonly sd: Float64Array;
  /** What `lampsAt` says of each block. */
  readonly directions: Float64Array;
  /** Side of a block, mm. */
  readonly stepMm: number;
}

/** A picture and by how many pixels it lies beside the first one. */
export interface Placed {
  readonly picture: Picture;
  readonly moved: PointPx;
}

/**
 * Cuts `half` mm to each side of a point, in blocks of `block` pixels, out of every picture.
 * Blocks beyond the card's sides are left out, so that a window at a side is smaller.
 */
export function windowAt(
  pictures: readonly Placed[],
  map: CardMap,
  lighting: Lighting,
  centre: PointMm,
  half: number,
  block: number,
): Window {
  const [cx, cy] = pixelOf(map, centre);
  const step = stepsAt(map, [cx, cy]);
  const perMm = 1 / Math.sqrt(Math.abs(step[0] * step[3] - step[1] * step[2]));
  const reach = Math.ceil((half * perMm) / block);
  const places = placesOf(map, centre, [cx, cy], step, reach, block);
  const n = places.length;
  const lamps = pictures.length;
  const window: Window = {
    columns: 2 * reach + 1,
    cells: new Int32Array((2 * reach + 1) ** 2).fill(-1),
    lamps,
    x: Float64Array.from(places, ({ x }) => x),
    y: Float64Array.from(places, ({ y }) => y),
    light: new Float64Array(n * lamps * 3),
    sd: new Float64Array(n * lamps * 3),
    directions: new Float64Array(n * lamps * LAMP_STRIDE),
    stepMm: block / perMm,
  };
  const lampNumbers = new Float64Array(lamps * LAMP_STRIDE);
  for (let i = 0; i < n; i++) {
    window.cells[(places[i] as Place).cell] = i;
    lampsAt(lighting.lamps, window.x[i] as number, window.y[i] as number, lampNumbers);
    window.directions.set(lampNumbers, i * lamps * LAMP_STRIDE);
  }
  pictures.forEach((placed, k) => {
    readLight(placed, places, block, k, window);
  });
  weigh(window, lighting, block);
  return window;
}

interface Place {
  readonly cell: number;
  readonly left: number;
  readonly top: number;
  readonly x: number;
  readonly y: number;
}

function stepsAt(map: CardMap, [px, py]: PointPx): readonly [number, number, number, number] {
  const here = cardPointOf(map, [px, py]);
  const right = cardPointOf(map, [px + 1, py]);
  const down = cardPointOf(map, [px, py + 1]);
  return [right[0] - here[0], right[1] - here[1], down[0] - here[0], down[1] - here[1]];
}

/** The blocks about a pixel that lie on the card, and where; the map is straight over so short a way. */
function placesOf(
  map: CardMap,
  centre: PointMm,
  [cx, cy]: PointPx,
  step: readonly [number, number, number, number],
  reach: number,
  block: number,
): readonly Place[] {
  const [width, height] = map.sizeMm;
  const places: Place[] = [];
  const margin = 0.25;
  const firstLeft = Math.round(cx - (block - 1) / 2) - reach * block;
  const firstTop = Math.round(cy - (block - 1) / 2) - reach * block;
  for (let row = 0; row <= 2 * reach; row++)
    for (let column = 0; column <= 2 * reach; column++) {
      const left = firstLeft + column * block;
      const top = firstTop + row * block;
      const u = left + (block - 1) / 2 - cx;
      const v = top + (block - 1) / 2 - cy;
      const x = centre[0] + u * step[0] + v * step[2];
      const y = centre[1] + u * step[1] + v * step[3];
      if (Math.hypot(u, v) > (reach + 0.5) * block) continue;
      if (x < margin || y < margin || x > width - margin || y > height - margin) continue;
      const cell = row * (2 * reach + 1) + column;
      places.push({ cell, left, top, x: x - width / 2, y: y - height / 2 });
    }
  return places;
}

function readLight(
  { picture, moved }: Placed,
  places: readonly Place[],
  block: number,
  k: number,
  { light, lamps }: Window,
): void {
  const table = lightTable(picture);
  const { width, height, samples } = picture;
  for (const { whole, share } of wholeShifts(moved)) {
    const [shiftX, shiftY] = whole;
    const each = share / (block * block);
    places.forEach(({ left, top }, i) => {
      const at = (i * lamps + k) * 3;
      for (let row = top + shiftY; row < top + shiftY + block; row++)
        for (let column = left + shiftX; column < left + shiftX + block; column++) {
          const inX = Math.min(Math.max(column, 0), width - 1);
          const from = (Math.min(Math.max(row, 0), height - 1) * width + inX) * 3;
          for (let c = 0; c < 3; c++)
            light[at + c] =
              (light[at + c] as number) + each * (table[samples[from + c] as number] as number);
        }
    });
  }
}

/** Share of the light by which any simple model of a surface errs (Judgement, no source). */
const MODEL = 0.006;

/** Standard errors by the noise learned from luminance in the grid's blocks. */
function weigh({ light, sd }: Window, { noise }: Lighting, block: number): void {
  const scale = Math.max(noise.block / block, 1);
  for (let i = 0; i < sd.length; i++)
    sd[i] = Math.hypot(
      scale * noise.floor,
      Math.hypot(scale * noise.relative, MODEL) * (light[i] as number),
    );
}
