import { type Picture, pictureOf } from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { gaussian } from './develop.ts';
import { codeOf, type Rgb } from './light.ts';
import { hashed } from './noise.ts';
import type { Truth } from './truth.ts';

/** The four process inks, in the order of the plates. */
export const INKS = ['cyan', 'magenta', 'yellow', 'black'] as const;

/** How a print comes about. */
export interface Printing {
  readonly process: 'halftone' | 'stochastic' | 'continuous';
  /** Lines an inch of every plate. */
  readonly lpi: number;
  /** On the plate, counter-clockwise from the x axis with y up, for each ink. */
  readonly anglesDeg: readonly [number, number, number, number];
  /** How far each plate lies out of register, in millimetres. */
  readonly registrationMm: readonly (readonly [number, number])[];
}

/** A cut of a print as a scanner sees it. */
export interface Cut {
  readonly printing: Printing;
  readonly sizePx: number;
  /** Clockwise as seen. */
  readonly scanRotationDeg: number;
  /** Light of the print without its dots, at millimetres of the cut. */
  readonly lightAt: (xMm: number, yMm: number) => Rgb;
}

const DPI = 1200;
/** Dots of a plate to a pixel of the scan, along each side: 2,400 to an inch. */
const FINER = 2;
/** Share of red, green and blue that passes a full dot of each ink. */
const PASSES: readonly Rgb[] = [
  [0.08, 0.42, 0.68],
  [0.62, 0.07, 0.24],
  [0.86, 0.72, 0.06],
  [0.045, 0.045, 0.05],
];
const PAPER: Rgb = [0.86, 0.85, 0.81];

/** Renders a cut of a print at 1,200 dpi from one-bit plates at 2,400 dpi. */
export function renderCut(cut: Cut, seed: number): { picture: Picture; truth: Truth } {
  const { sizePx, printing } = cut;
  const light = new Float32Array(sizePx * sizePx * 3);
  const plates = INKS.map((_, ink) => plateOf(printing, ink, seed));
  const turn = (cut.scanRotationDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const wanted = new Float64Array(4);
  for (let y = 0; y < sizePx; y++)
    for (let x = 0; x < sizePx; x++) {
      const k = 3 * (y * sizePx + x);
      for (let sub = 0; sub < FINER * FINER; sub++) {
        const px = (x + ((sub % FINER) + 0.5) / FINER - 0.5) * (25.4 / DPI);
        const py = (y + (Math.floor(sub / FINER) + 0.5) / FINER - 0.5) * (25.4 / DPI);
        const [u, v] = [c * px + s * py, -s * px + c * py];
        const bare = cut.lightAt(u, v);
        printed(printing, bare, wanted, plates, u, v, light, k);
      }
    }
  gaussian(light, sizePx, sizePx, 0.65);
  return {
    picture: pictureOf(sizePx, sizePx, coded(light, seed), DPI),
    truth: truthOfCut(cut, seed),
  };
}

type Plate = (u: number, v: number, share: number) => boolean;

function printed(
  { process }: Printing,
  bare: Rgb,
  wanted: Float64Array,
  plates: readonly Plate[],
  u: number,
  v: number,
  light: Float32Array,
  k: number,
): void {
  const part = 1 / FINER ** 2;
  if (process === 'continuous') {
    for (let i = 0; i < 3; i++) light[k + i] = light[k + i]! + part * bare[i]! * PAPER[i]!;
    return;
  }
  separated(bare, wanted);
  let [r, g, b] = PAPER as readonly number[] as [number, number, number];
  for (let ink = 0; ink < 4; ink++) {
    if (!plates[ink]!(u, v, wanted[ink]!)) continue;
    const pass = PASSES[ink]!;
    r *= pass[0];
    g *= pass[1];
    b *= pass[2];
  }
  light[k] = light[k]! + part * r;
  light[k + 1] = light[k + 1]! + part * g;
  light[k + 2] = light[k + 2]! + part * b;
}

/** Ink shares of a light, with two thirds of the grey moved to black. */
function separated([r, g, b]: Rgb, out: Float64Array): void {
  const [c, m, y] = [1 - codeOf(r), 1 - codeOf(g), 1 - codeOf(b)];
  const black = 0.65 * Math.max(0, Math.min(c, m, y));
  out[0] = (c - black) / (1 - black);
  out[1] = (m - black) / (1 - black);
  out[2] = (y - black) / (1 - black);
  out[3] = black;
}

/** Where a plate prints: above a threshold of a spot function, or of clustered chance. */
function plateOf(
  { process, lpi, anglesDeg, registrationMm }: Printing,
  ink: number,
  seed: number,
): Plate {
  const [dx, dy] = registrationMm[ink] ?? [0, 0];
  if (process === 'stochastic') {
    const dot = 25.4 / 1200;
    return (u, v, share) =>
      hashed(Math.floor((u - dx) / dot), Math.floor((v - dy) / dot), seed + 31 * ink) < share;
  }
  // Angles count with y up, the picture's y runs down.
  const t = (-(anglesDeg[ink] as number) * Math.PI) / 180;
  const f = (2 * Math.PI * lpi) / 25.4;
  const [c, s] = [Math.cos(t) * f, Math.sin(t) * f];
  return (u, v, share) => {
    const [x, y] = [u - dx, v - dy];
    const spot = (Math.cos(c * x + s * y) + Math.cos(-s * x + c * y)) / 4 + 0.5;
    return spot > 1 - spread(share);
  };
}

/** Height above which the spot function covers that share: its own distribution, inverted. */
function spread(share: number): number {
  const i = Math.max(0, Math.min(1, share)) * (RANKED.length - 1);
  return 1 - RANKED[Math.round(RANKED.length - 1 - i)]!;
}

const RANKED = Float64Array.from({ length: 128 * 128 }, (_, i) => {
  const [a, b] = [((i % 128) + 0.5) / 128, (Math.floor(i / 128) + 0.5) / 128];
  return (Math.cos(2 * Math.PI * a) + Math.cos(2 * Math.PI * b)) / 4 + 0.5;
}).sort();

function coded(light: Float32Array, seed: number): Uint8Array {
  const random = chance(seed);
  return Uint8Array.from(light, (value) => {
    const noisy = value + 0.004 * random.normal();
    return Math.max(0, Math.min(255, Math.round(255 * codeOf(Math.max(0, noisy)))));
  });
}

/** The truth of a cut: where each screen lies as scanned and as plated. */
export function truthOfCut(
  { printing, sizePx, scanRotationDeg }: Omit<Cut, 'lightAt'>,
  seed: number,
): Truth {
  const { process, lpi, anglesDeg, registrationMm } = printing;
  const screens = INKS.map((ink, i) => [
    ink,
    { lpi, angleDeg: (anglesDeg[i]! - scanRotationDeg + 180) % 90, angleOnPlateDeg: anglesDeg[i] },
  ]);
  return {
    kind: 'halftone',
    image: 'patch.jpg',
    size: [sizePx, sizePx],
    seed,
    dpi: DPI,
    process,
    outline: null,
    screens: process === 'halftone' ? Object.fromEntries(screens) : null,
    scanRotationDeg,
    registrationMm: Object.fromEntries(INKS.map((ink, i) => [ink, registrationMm[i]])),
  };
}
