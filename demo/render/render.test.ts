import { describe, expect, it } from 'vitest';
import type { Picture } from '../../src/bench/index.ts';
import { UNMARKED } from './defects.ts';
import type { Face } from './face.ts';
import { lightOf, type Rgb } from './light.ts';
import { randomScene } from './random.ts';
import { render } from './render.ts';
import type { Scene } from './scene.ts';

const GREY: Rgb = [0.5, 0.5, 0.5];
const FACE: Face = {
  sizeMm: [63, 88],
  cornerRadiusMm: 3,
  borderMm: { left: 8, right: 8, top: 5, bottom: 5 },
  borderColour: GREY,
  lineColour: GREY,
  frameStyle: 'plain',
  printRotationDeg: 0,
  art: 'rings',
  hue: 0,
  foil: 0,
  seed: 1,
};

/** A small picture without noise, blur, bow or thickness, so that light is what a sample says. */
const STILL: Scene = {
  ...randomScene('photo', 4),
  face: FACE,
  marks: UNMARKED,
  thicknessMm: 0,
  camera: {
    width: 300,
    height: 400,
    focalPx: 400,
    pxPerMm: 3.5,
    tiltDeg: 12,
    tiltTowardsDeg: 30,
    rollDeg: 5,
    centrePx: [149.5, 199.5],
    k1: 0,
  },
  ground: { kind: 'plain', colour: [0, 0, 0], second: [0, 0, 0], seed: 1, turnDeg: 0, contrast: 0 },
  things: [],
  covers: [],
  lighting: { ambient: 1, lamps: [], ramp: [0, 0], falloff: 0, cast: [1, 1, 1], gloss: [0, 1] },
  develop: {
    ...{ blurPx: 0, discPx: 0, readNoise: 0, shotNoise: 0 },
    ...{ contrastCurve: 0, halo: 0, jpegQuality: 90 },
  },
};

const greenAt = ({ width, samples }: Picture, x: number, y: number) =>
  lightOf((samples[3 * (y * width + x) + 1] as number) / 255);

describe('a rendered picture', () => {
  it('has its left side where the true corners say, by the light of each row', () => {
    const { picture, truth } = render(STILL, 1);
    const [ax, ay] = truth.outline![0]!;
    const [dx, dy] = truth.outline![3]!;
    const errors: number[] = [];
    for (let y = Math.ceil(ay + 25); y < dy - 25; y += 3) {
      const edge = ax + ((dx - ax) * (y - ay)) / (dy - ay);
      const from = Math.floor(edge) - 4;
      let light = 0;
      for (let x = from; x < from + 12; x++) light += Math.min(1, greenAt(picture, x, y) / 0.5);
      // Light of a row up to a place on the border is the way from the edge to that place.
      errors.push(from + 11.5 - light - edge);
    }
    const mean = errors.reduce((a, b) => a + b, 0) / errors.length;
    const spread = Math.sqrt(errors.reduce((a, b) => a + b * b, 0) / errors.length);
    // Measured -0.0003 and 0.040 pixels: samples are steps of 1/255, edges 6 × 6 places.
    expect(Math.abs(mean)).toBeLessThan(0.01);
    expect(spread).toBeLessThan(0.05);
    expect(errors.length).toBeGreaterThan(60);
  });

  it('is lit by Lambert’s law with the square of the lamp’s distance', () => {
    const lamp = { positionMm: [120, -90, 200], power: 1.2, radiusMm: 5 } as const;
    const { picture, truth } = render(
      {
        ...STILL,
        camera: { ...STILL.camera, tiltDeg: 0, rollDeg: 0 },
        lighting: { ...STILL.lighting, ambient: 0, lamps: [lamp] },
      },
      1,
    );
    const [left, top] = truth.outline![0]!;
    const far2 = 120 ** 2 + 90 ** 2 + 200 ** 2;
    for (const [x, y] of [
      [4, 10],
      [4, 70],
      [59, 44],
    ] as const) {
      // Irradiance E = P d₀²/d² · cos θ, and cos θ is height over distance on a flat card.
      const d2 = (x - 31.5 - 120) ** 2 + (y - 44 + 90) ** 2 + 200 ** 2;
      const wanted = (0.5 * 1.2 * far2 * 200) / d2 ** 1.5;
      const seen = greenAt(picture, Math.round(left + 3.5 * x), Math.round(top + 3.5 * y));
      // A sample is a step of 1/255 of the curve, 1 % of the light here at most, and a pixel is 0.3 mm.
      expect(Math.abs(seen / wanted - 1)).toBeLessThan(0.015);
    }
  });

  it('shades the slope of a dent as its own height says', () => {
    const lamp = { positionMm: [400, 0, 300], power: 1, radiusMm: 5 } as const;
    const dent = { centreMm: [31.5, 44], diameterMm: 8, depthMm: 1, profile: 'gaussian' } as const;
    const bare = { ...FACE, borderMm: { left: 40, right: 40, top: 60, bottom: 60 } };
    const flat: Scene = {
      ...STILL,
      face: bare,
      camera: { ...STILL.camera, tiltDeg: 0, rollDeg: 0 },
      lighting: { ...STILL.lighting, ambient: 0, lamps: [lamp] },
    };
    const dented = { ...flat, marks: { ...UNMARKED, dents: [dent] } };
    const seen =
      greenAt(render(dented, 1).picture, 149 + 14, 199) /
      greenAt(render(flat, 1).picture, 149 + 14, 199);
    // z = −2^(−r²/16): slope r/8 · ln 2 · 2^(−r²/16) at r = 4 (13.5 to 14.5 pixels at 3.5 a mm).
    const r = (163 - 149.5) / 3.5;
    const slope = (r / 8) * Math.log(2) * 2 ** (-(r * r) / 16);
    const [lx, lz] = [400 - r, 300];
    const wanted = (-slope * lx + lz) / Math.hypot(1, slope) / lz;
    // Curve steps of 1/255 are 1 % of the light here.
    expect(Math.abs(seen / wanted - 1)).toBeLessThan(0.015);
  });
});
