import { pictureOf } from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { developed } from './develop.ts';
import { lightOfLab, type Rgb } from './light.ts';

/** A patch of a chart with its colour (Lab, D50, 2°) and the middle of where it is seen. */
export interface Patch {
  readonly lab: Rgb;
  readonly centrePx: readonly [number, number];
}

/** A chart as it lies; `tests` are patches that a reader is not told. */
export interface Chart {
  readonly patches: readonly Patch[];
  readonly tests: readonly Patch[];
  /** Pixels of its picture. */
  readonly size: readonly [width: number, height: number];
  /** Side of a square that lies wholly in a patch. */
  readonly sizePx: number;
}

const COLUMNS = 9;
const PATCH = 84;
const STEP = 116;

/** A chart of 20 random colours and 7 greys, and these test colours below it. */
export function chartOf(tests: readonly Rgb[], seed: number): Chart {
  const random = chance(seed);
  const colours = Array.from({ length: 20 }, (): Rgb => randomLab(random));
  const greys = [94, 82, 70, 57, 44, 31, 19].map((l): Rgb => [l, 0, 0]);
  const place = (labs: readonly Rgb[], row: number) =>
    labs.map(
      (lab, i): Patch => ({
        lab,
        centrePx: [100 + STEP * (i % COLUMNS), 100 + STEP * (row + Math.floor(i / COLUMNS))],
      }),
    );
  return {
    patches: place([...colours, ...greys], 0),
    tests: place(tests, 3.4),
    size: [STEP * COLUMNS + 84, Math.ceil(STEP * (4.4 + tests.length / COLUMNS)) + 60],
    sizePx: 56,
  };
}

/** The picture of a chart under a warm, uneven lamp; the seed is that of the noise. */
export function renderChart({ patches, tests, size: [width, height] }: Chart, seed: number) {
  const light = exposed([...patches, ...tests], width, height);
  const how = {
    ...{ blurPx: 0.8, discPx: 0, readNoise: 0.002, shotNoise: 0.01 },
    ...{ contrastCurve: 0, halo: 0, jpegQuality: 92 },
  };
  return pictureOf(width, height, developed(light, width, height, how, seed));
}

function randomLab(random: ReturnType<typeof chance>): Rgb {
  for (;;) {
    const lab: Rgb = [30 + 55 * random.uniform(), 45 * random.normal(), 45 * random.normal()];
    if (lightOfLab(lab).every((value) => value > 0.02 && value < 0.9)) return lab;
  }
}

/** Each channel leaks a little into the others, as filters of a camera do. */
const LEAK: readonly Rgb[] = [
  [0.86, 0.11, 0.03],
  [0.07, 0.87, 0.06],
  [0.02, 0.13, 0.85],
];
const WARM: Rgb = [0.98, 0.86, 0.66];

function exposed(patches: readonly Patch[], width: number, height: number): Float32Array {
  const light = new Float32Array(width * height * 3).fill(0);
  const seen = new Float64Array(width * height * 3).fill(0.32);
  for (const {
    lab,
    centrePx: [cx, cy],
  } of patches) {
    const colour = lightOfLab(lab);
    for (let y = cy - PATCH / 2; y < cy + PATCH / 2; y++)
      for (let x = cx - PATCH / 2; x < cx + PATCH / 2; x++)
        for (let c = 0; c < 3; c++)
          seen[3 * (Math.round(y) * width + Math.round(x)) + c] = colour[c]!;
  }
  for (let y = 0, k = 0; y < height; y++)
    for (let x = 0; x < width; x++, k += 3) {
      const bright = 0.92 - (0.2 * x) / width + (0.1 * y) / height;
      for (let c = 0; c < 3; c++) {
        const [r, g, b] = LEAK[c]!;
        light[k + c] = bright * WARM[c]! * (r * seen[k]! + g * seen[k + 1]! + b * seen[k + 2]!);
      }
    }
  return light;
}
