import { type Loss, type Marks, UNMARKED } from '../render/defects.ts';
import type { Face } from '../render/face.ts';
import { hsv, type Rgb } from '../render/light.ts';

/** One physical card of the invented world. */
export interface Specimen {
  readonly front: Face;
  readonly back: Face;
  readonly frontMarks: Marks;
  readonly backMarks: Marks;
  /** Whether it lies in a case of its service. */
  readonly slab: boolean;
  readonly lpi: number;
}

const SEA: Rgb = hsv(0.56, 0.62, 0.42);
const SILVER: Rgb = hsv(0.6, 0.08, 0.62);
const LINE: Rgb = hsv(0.13, 0.45, 0.82);

const FIRST: Face = {
  sizeMm: [63, 88],
  cornerRadiusMm: 3,
  borderMm: { left: 3.1, right: 2.9, top: 3.2, bottom: 3 },
  borderColour: SEA,
  lineColour: LINE,
  frameStyle: 'line',
  printRotationDeg: 0,
  art: 'hare',
  hue: 0.02,
  foil: 0,
  seed: 3101,
  textSeed: 77,
};

const BACK: Face = {
  ...FIRST,
  borderMm: { left: 2.6, right: 2.6, top: 2.6, bottom: 2.6 },
  borderColour: hsv(0.08, 0.25, 0.85),
  frameStyle: 'plain',
  art: 'back',
  hue: 0.56,
  seed: 12,
};

const PLAIN = { backMarks: UNMARKED, frontMarks: UNMARKED, slab: false, lpi: 150 };

/** Two holes that staples left along the left side. */
const STAPLES: readonly Loss[] = [21, 23.5, 64, 66.5].map((y) => ({
  centreMm: [1.4, y],
  radiusMm: 0.32,
}));

/** Bites of a perforation along the left side. */
const PERFORATION: readonly Loss[] = Array.from({ length: 56 }, (_, i) => ({
  centreMm: [-0.2, 2 + 1.5 * i],
  radiusMm: 0.42,
}));

/**
 * The copies on the desk. hare-1: trimmed by 0.6 mm on its right, two corners white, a dent, which
 * its seller did not say. hare-4: a light scratch on the back, which its seller did say.
 */
export const SPECIMENS: Readonly<Record<string, Specimen>> = {
  'hare-1': {
    ...PLAIN,
    front: {
      ...FIRST,
      sizeMm: [62.4, 88],
      borderMm: { ...FIRST.borderMm, right: 2.3 },
      flawSeed: 11,
    },
    back: { ...BACK, sizeMm: [62.4, 88], borderMm: { ...BACK.borderMm, left: 2 }, flawSeed: 12 },
    frontMarks: {
      ...UNMARKED,
      wear: [
        { type: 'corner', at: 1, reachMm: 1.3, seed: 5 },
        { type: 'corner', at: 3, reachMm: 0.8, seed: 6 },
        { type: 'edge', side: 'left', fromMm: 37, toMm: 51, depthMm: 0.38, seed: 7 },
      ],
      dents: [{ centreMm: [44.5, 22], diameterMm: 1.5, depthMm: 0.13, profile: 'gaussian' }],
    },
  },
  'hare-2': {
    ...PLAIN,
    front: {
      ...FIRST,
      borderMm: { left: 3, right: 3.1, top: 2.8, bottom: 3.3 },
      borderColour: hsv(0.95, 0.5, 0.5),
      frameStyle: 'double',
      art: 'hare-right',
      hue: 0.1,
      foil: 0.7,
      seed: 1998,
      flawSeed: 21,
    },
    back: { ...BACK, hue: 0.93, flawSeed: 22 },
    frontMarks: { ...UNMARKED, loss: STAPLES },
    backMarks: {
      ...UNMARKED,
      loss: STAPLES.map(({ centreMm: [x, y], radiusMm }) => ({ centreMm: [63 - x, y], radiusMm })),
    },
    lpi: 175,
  },
  'hare-3': {
    ...PLAIN,
    front: {
      ...FIRST,
      borderMm: { left: 2.8, right: 3.2, top: 3, bottom: 3.1 },
      borderColour: hsv(0.4, 0.45, 0.3),
      frameStyle: 'plain',
      art: 'hare-right',
      hue: 0.9,
      foil: 0.5,
      seed: 2000,
      flawSeed: 31,
    },
    back: { ...BACK, hue: 0.4, flawSeed: 32 },
    frontMarks: { ...UNMARKED, loss: PERFORATION },
    backMarks: {
      ...UNMARKED,
      loss: PERFORATION.map(({ centreMm: [x, y], radiusMm }) => ({
        centreMm: [63 - x, y],
        radiusMm,
      })),
    },
    slab: true,
  },
  'hare-4': {
    ...PLAIN,
    front: {
      ...FIRST,
      borderMm: { left: 3.4, right: 2.7, top: 3, bottom: 3.1 },
      borderColour: SILVER,
      foil: 0.9,
      seed: 3102,
      textSeed: 88,
      flawSeed: 41,
    },
    back: { ...BACK, flawSeed: 42 },
    backMarks: {
      ...UNMARKED,
      scratches: [
        {
          polylineMm: Array.from(
            { length: 16 },
            (_, i) => [20 + 1.3 * i, 60 - 0.9 * i + 0.02 * i * i] as const,
          ),
          widthMm: 0.16,
          depthMm: 0.022,
        },
      ],
    },
    lpi: 133,
  },
};

/** Another card of hare-1's printing, which its seller's pictures show. */
export const OF_THE_LISTING: Specimen = {
  ...PLAIN,
  front: { ...FIRST, borderMm: { left: 3.4, right: 2.6, top: 2.9, bottom: 3.3 }, flawSeed: 91 },
  back: { ...BACK, flawSeed: 92 },
};

/** Copies believed genuine, that others are compared with. */
export const REFERENCES: Readonly<Record<string, Specimen>> = Object.fromEntries(
  [1, 2, 3].map((k) => [
    `gb-first-${k}`,
    {
      ...PLAIN,
      front: {
        ...FIRST,
        borderMm: {
          left: 3.1 + 0.12 * (k - 2),
          right: 2.9 - 0.12 * (k - 2),
          top: 3.1,
          bottom: 3.1,
        },
        flawSeed: 100 + k,
      },
      back: { ...BACK, flawSeed: 110 + k },
    },
  ]),
);
