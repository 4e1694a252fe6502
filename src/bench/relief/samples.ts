import { type CardMap, cardPointOf } from '../geometry/card-map.ts';
import { centreOf, type Grid } from './grid.ts';

/** Points of the card and their light under each lamp. */
export interface Samples {
  /** From the card's centre, mm. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Luminance, by point, then lamp. */
  readonly light: Float64Array;
  /** Steps of luminance to the neighbouring blocks, the mean over the lamps. */
  readonly edge: Float64Array;
}

/** Points on a card that suffice to learn its light. */
const POINTS = 1500;
/** Rim that is left out, mm: wear and the card's round edge. */
const RIM_MM = 1;

/** Evenly spread blocks of the card, with the light that each lamp gave them. */
export function samplesOf(map: CardMap, grid: Grid, lights: readonly Float32Array[]): Samples {
  const every = Math.max(1, Math.floor(Math.sqrt((grid.width * grid.height) / POINTS)));
  const x: number[] = [];
  const y: number[] = [];
  const light: number[] = [];
  const edge: number[] = [];
  const [width, height] = map.sizeMm;
  for (let j = 1; j < grid.height - 1; j += every)
    for (let i = 1 + ((j * 7) % every); i < grid.width - 1; i += every) {
      const [px, py] = cardPointOf(map, centreOf(grid, i, j));
      if (px < RIM_MM || py < RIM_MM || px > width - RIM_MM || py > height - RIM_MM) continue;
      x.push(px - width / 2);
      y.push(py - height / 2);
      const at = j * grid.width + i;
      let step = 0;
      for (const plane of lights) {
        light.push(plane[at] as number);
        const across = (plane[at + 1] as number) - (plane[at - 1] as number);
        const down = (plane[at + grid.width] as number) - (plane[at - grid.width] as number);
        step += Math.hypot(across, down) / 2 / lights.length;
      }
      edge.push(step);
    }
  return {
    x: Float64Array.from(x),
    y: Float64Array.from(y),
    light: Float64Array.from(light),
    edge: Float64Array.from(edge),
  };
}
