import { type Picture, pictureOf } from '../../src/bench/index.ts';
import type { Chance } from '../../src/maths/index.ts';
import { type Lab, lightOf } from './light.ts';

/** An invented chart with test patches beside it, as a camera saw them. */
export interface Photographed {
  readonly picture: Picture;
  readonly patches: readonly {
    readonly lab: Lab;
    readonly known: boolean;
    readonly centre: readonly [number, number];
    readonly size: number;
  }[];
}

/** How a chart is photographed; drawn at random where not given. */
export interface Shot {
  readonly width: number;
  readonly height: number;
  /** Light at the picture's sides against its centre: slopes along x and y, fall-off. */
  readonly field: readonly [number, number, number];
  /** Camera's light of linear sRGB, by rows. */
  readonly camera: readonly (readonly [number, number, number])[];
  /** Strength of a contrast curve, 0 to 0.15. */
  readonly contrast: number;
  /** Noise in steps of an 8-bit sample. */
  readonly noise: number;
}

/** A shot drawn over wide ranges: lamps, cameras, curves. */
export function inventedShot(chance: Chance, fixed: Partial<Shot> = {}): Shot {
  const between = (low: number, high: number) => low + (high - low) * chance.uniform();
  const gains = [between(0.75, 1), between(0.75, 1), between(0.5, 1)] as const;
  const brightest = Math.max(...gains);
  const cross = () => between(0, 0.14);
  const camera = [0, 1, 2].map((i) => {
    const row = [cross(), cross(), cross()] as [number, number, number];
    row[i] = 1 - row.reduce((sum, one, j) => (j === i ? sum : sum + one), 0);
    return row.map((one) => (one * (gains[i] as number) * 0.93) / brightest) as [
      number,
      number,
      number,
    ];
  });
  return {
    width: 1600,
    height: 1000,
    field: [between(-0.12, 0.12), between(-0.1, 0.1), between(-0.12, 0)],
    camera,
    contrast: chance.uniform() < 0.5 ? 0 : between(0, 0.1),
    noise: between(0.5, 2.5),
    ...fixed,
  };
}

/** Photographs an invented chart of twenty colours and seven greys, and ten test patches below. */
export function photographed(shot: Shot, chance: Chance): Photographed {
  const { width, height } = shot;
  const colours = Array.from({ length: 20 }, () => randomLab(chance));
  const greys = [94, 82, 70, 57, 44, 31, 18].map((L) => [L, 0, 0] as const);
  const size = width / 13;
  const known = [...colours, ...greys].map((lab, i) => ({
    lab,
    known: true,
    centre: [size * (2 + (i % 9) * 1.13), size * (1.2 + Math.floor(i / 9) * 1.15)] as const,
    size: size * 0.6,
  }));
  const tests = Array.from({ length: 10 }, (_, i) => ({
    lab: randomLab(chance),
    known: false,
    centre: [size * (3 + (i % 5) * 1.7), size * (5.2 + Math.floor(i / 5) * 1.3)] as const,
    size: size * 0.6,
  }));
  const patches = [...known, ...tests];
  const ground = randomLab(chance);
  const samples = new Uint8ClampedArray(width * height * 3);
  const owner = (x: number, y: number) =>
    patches.find(
      ({ centre }) =>
        Math.abs(x - centre[0]) < size * 0.48 && Math.abs(y - centre[1]) < size * 0.48,
    );
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i += 3)
      exposed(shot, owner(x, y)?.lab ?? ground, x, y).forEach((value, c) => {
        samples[i + c] = 255 * value + shot.noise * chance.normal();
      });
  return { picture: pictureOf(width, height, Uint8Array.from(samples)), patches };
}

/** The coded channels of a colour at a pixel, as a shot's lamp, camera and curve make them. */
export function exposed(shot: Shot, lab: Lab, x: number, y: number): readonly number[] {
  const unit = shot.width / 2;
  const [u, v] = [(x - shot.width / 2) / unit, (y - shot.height / 2) / unit];
  const [a, b, c] = shot.field;
  const light = lightOf(lab).map((one) => one * (1 + a * u + b * v + c * (u * u + v * v)));
  return shot.camera.map((row) => {
    const one = row.reduce((sum, share, i) => sum + share * (light[i] as number), 0);
    const held = Math.min(1, Math.max(0, one));
    const coded = held <= 0.0031308 ? held * 12.92 : 1.055 * held ** (1 / 2.4) - 0.055;
    return coded - (shot.contrast * Math.sin(2 * Math.PI * coded)) / (2 * Math.PI);
  });
}

/** A colour that an sRGB screen can show, neither very light nor very dark. */
export function randomLab(chance: Chance): Lab {
  for (;;) {
    const lab = [
      25 + 60 * chance.uniform(),
      120 * chance.uniform() - 60,
      120 * chance.uniform() - 60,
    ] as const;
    const light = lightOf(lab);
    if (Math.min(...light) > 0.015 && Math.max(...light) < 0.92) return lab;
  }
}
