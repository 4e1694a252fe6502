import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { correctionBy, type Patch } from '../colour/chart.ts';
import { labOfLight, type Three } from '../colour/spaces.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { SizeMm } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { pictureOf } from '../picture.ts';
import { featuresOf } from './features.ts';
import type { Seen } from './seen.ts';
import { compareWithReferences } from './with-references.ts';

const SIZE: SizeMm = [63, 88];
const PX = 8;
const [CARD_WIDTH, HEIGHT] = [SIZE[0] * PX, SIZE[1] * PX];
const WIDTH = CARD_WIDTH + 4 * 56;

/** A camera and its lamp: rows of the light that red, green and blue take from linear sRGB. */
type Camera = readonly [Three, Three, Three];
const WARM: Camera = [
  [0.8, 0.1, 0.02],
  [0.08, 0.66, 0.06],
  [0.02, 0.1, 0.42],
];
const COOL: Camera = [
  [0.5, 0.1, 0.05],
  [0.04, 0.62, 0.1],
  [0, 0.12, 0.78],
];

/** A card of discs with a chart of 24 patches at its right, as a camera shows it; `red` is how much more red its inks let through. */
function photographed(camera: Camera, seed: number, withChart: boolean, red = 1): Seen {
  const light = new Float32Array(WIDTH * HEIGHT * 3).fill(0.3);
  const paint = (x: number, y: number, [r, g, b]: Three) =>
    light.set([r, g, b], (y * WIDTH + x) * 3);
  const art = chance(7);
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < CARD_WIDTH; x++) paint(x, y, [0.5 * red, 0.5, 0.5]);
  for (let k = 0; k < 170; k++) {
    const [cx, cy] = [CARD_WIDTH * art.uniform(), HEIGHT * art.uniform()];
    const r = PX * (0.6 + 2.4 * art.uniform());
    const ink = [art.uniform(), art.uniform(), art.uniform()].map((u) => 0.06 + 0.5 * u);
    for (let y = Math.max(0, Math.ceil(cy - r)); y < Math.min(HEIGHT, cy + r); y++)
      for (let x = Math.max(0, Math.ceil(cx - r)); x < Math.min(CARD_WIDTH, cx + r); x++)
        if (Math.hypot(x - cx, y - cy) < r)
          paint(x, y, [(ink[0] ?? 0) * red, ink[1] ?? 0, ink[2] ?? 0]);
  }
  const patches = Array.from({ length: 24 }, (_, k): Patch => {
    const [x0, y0] = [CARD_WIDTH + 8 + 54 * (k % 4), 20 + 110 * Math.floor(k / 4)];
    const colour = (k < 18
      ? [art.uniform(), art.uniform(), art.uniform()].map((u) => 0.05 + 0.8 * u)
      : Array(3).fill(0.04 * 1.8 ** (k - 18))) as unknown as Three;
    for (let y = y0; y < y0 + 48; y++) for (let x = x0; x < x0 + 48; x++) paint(x, y, colour);
    return { lab: labOfLight(colour), centrePx: [x0 + 23.5, y0 + 23.5], sizePx: 44 };
  });
  const noise = chance(seed);
  const samples = new Uint8Array(light.length);
  for (let i = 0; i < light.length; i += 3)
    camera.forEach((row, c) => {
      const seen = row.reduce((sum, share, j) => sum + share * (light[i + j] ?? 0), 0);
      samples[i + c] = Math.round(255 * encodedOf(Math.min(1, seen)) + 1.2 * noise.normal());
    });
  const picture = pictureOf(WIDTH, HEIGHT, samples);
  const [right, bottom] = [CARD_WIDTH - 0.5, HEIGHT - 0.5];
  const corners = [
    [-0.5, -0.5],
    [right, -0.5],
    [right, bottom],
    [-0.5, bottom],
  ] as const;
  const map = cardMapOf(corners, SIZE, { k1: 0, width: WIDTH, height: HEIGHT });
  const seen: Seen = { picture, map, cornerSdMm: 0.02, measured: null, defects: [] };
  if (!withChart) return seen;
  const correction = correctionBy(picture, patches);
  if ('why' in correction) throw new Error(correction.why);
  return { ...seen, chart: correction };
}

const reference = photographed(WARM, 1, true);
const copy = photographed(COOL, 2, true);
const redder = photographed(COOL, 3, true, 1.2);

describe('colour by charts', () => {
  it('takes lamp and camera out, and keeps what the print itself differs in everywhere', () => {
    const alike = featuresOf(reference, copy, SIZE);
    const apart = featuresOf(reference, redder, SIZE);
    // Measured 0.2 and 6.9; another camera alone is 1 at the most.
    expect(alike?.charted?.rms).toBeLessThan(1);
    expect(apart?.charted?.rms).toBeGreaterThan(4);
    // A lamp explains it as well.
    expect(apart?.colour.rms).toBeLessThan(1);
    // Nothing differs: what is seen lies within what the corrections leave open over the card, where
    // the light is foretold by a chart at its side (measured 0.2 and 1.4).
    expect(alike?.charted?.rms).toBeLessThan(alike?.charted?.noise ?? 0);
    expect(alike?.charted?.noise).toBeLessThan(2);
  });

  it('weighs against the copy what the lamp would have hidden', () => {
    const colourOf = (seen: Seen) => {
      const { findings, cautions } = compareWithReferences(seen, [reference], SIZE);
      const finding = findings.find(({ what }) => what.startsWith('colour'));
      return { ratio: finding?.log10Lr ?? 0, cautions: cautions.join(' ') };
    };
    // One reference carries little: measured −0.23 with the charts, +0.08 without.
    const charted = colourOf(redder);
    expect(charted.ratio).toBeLessThan(-0.15);
    expect(charted.cautions).toMatch(/corrected by the charts .* in 1 of the references/);
    const { chart: _, ...unlit } = redder;
    const bare = colourOf(unlit);
    expect(bare.ratio).toBeGreaterThan(0);
    expect(bare.cautions).toMatch(/Colour says no more than 1\.\d to one here/);
  });
});
