import type { Chance } from '../../src/maths/index.ts';
import { ARTS } from './art.ts';
import type { Face, FrameStyle } from './face.ts';
import { hsv, type Rgb } from './light.ts';

/** A card by chance, over wide ranges; of `tone` dark or light where the scene wants it so. */
export function randomFace(random: Chance, tone: 'any' | 'dark' | 'light' = 'any'): Face {
  const one = <T>(list: readonly T[]) => list[random.below(list.length)]!;
  const between = (a: number, b: number) => a + (b - a) * random.uniform();
  const sizeMm = one([
    [63, 88],
    [63, 88],
    [63.5, 88.9],
    [59, 86],
    [57, 87],
    [70, 100],
  ] as const);
  const frameStyle: FrameStyle = one([
    'plain',
    'line',
    'double',
    'plain',
    'line',
    'double',
    'none',
  ]);
  const width = () => between(1.9, 4.6);
  const base = width();
  const border = () => Math.max(1.5, base + 0.45 * random.normal());
  return {
    sizeMm,
    cornerRadiusMm: between(2.2, 4),
    borderMm: { left: border(), right: border(), top: border(), bottom: border() },
    ...colours(random, tone),
    frameStyle,
    printRotationDeg: random.uniform() < 0.4 ? 0.45 * random.normal() : 0,
    art: one(ARTS),
    hue: random.uniform(),
    foil: random.uniform() < 0.15 ? between(0.4, 1) : 0,
    seed: 1 + random.below(1_000_000),
  };
}

/** Colours of a dark border, and of a line on it. */
export function darkColours(random: Chance): Pick<Face, 'borderColour' | 'lineColour'> {
  return colours(random, 'dark');
}

function colours(random: Chance, tone: 'any' | 'dark' | 'light') {
  const u = random.uniform();
  const kind = tone !== 'any' ? tone : u < 0.15 ? 'dark' : u < 0.33 ? 'light' : 'any';
  const hue = random.uniform();
  const border: Rgb = {
    dark: hsv(hue, 0.3 * random.uniform(), 0.1 + 0.1 * random.uniform()),
    light: hsv(hue, 0.07 * random.uniform(), 0.86 + 0.1 * random.uniform()),
    any: hsv(hue, 0.25 + 0.6 * random.uniform(), 0.3 + 0.55 * random.uniform()),
  }[kind];
  const bright = border[0] * 0.21 + border[1] * 0.72 + border[2] * 0.07;
  const line = bright > 0.25 ? hsv(hue + 0.5, 0.5, 0.15) : hsv(0.12, 0.4, 0.8);
  return { borderColour: border, lineColour: line };
}
