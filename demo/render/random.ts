import { type Chance, chance } from '../../src/maths/index.ts';
import type { Camera } from './camera.ts';
import type { Point } from './canvas.ts';
import { clutter } from './clutter.ts';
import { UNMARKED } from './defects.ts';
import type { Face } from './face.ts';
import { hsv, type Rgb } from './light.ts';
import { darkColours, randomFace } from './random-face.ts';
import { harder } from './random-hard.ts';
import { randomMarks } from './random-marks.ts';
import { type Develop, GROUNDS, type Ground, type Lighting, type Scene } from './scene.ts';

/** Kinds of scene that can be had by chance. */
export const KINDS = [
  'photo',
  'scan',
  'worn',
  'dented',
  'raking',
  'hard',
  'silvered',
  'inked',
] as const;
/** One kind of scene. */
export type Kind = (typeof KINDS)[number];

/** A scene of that kind by chance, over wide ranges; one seed gives one scene. */
export function randomScene(kind: Kind, seed: number): Scene {
  const random = chance(7919 * seed + KINDS.indexOf(kind));
  if (kind === 'scan') return scanScene(random);
  if (kind === 'dented') return lampScene(random, 'dented');
  if (kind === 'raking') return lampScene(random, 'raking');
  const photo = photoScene(random, kind === 'hard' ? 'hard' : 'photo');
  if (kind === 'hard') return harder(photo, random);
  if (kind === 'silvered') return silvered(photo, random);
  if (kind === 'worn' || kind === 'inked')
    return { ...photo, kind: 'wear', marks: randomMarks(random, photo.face!, kind) };
  return photo;
}

/** A dark or holographic face whose ink or foil is lifted in places; some of them untouched. */
function silvered(photo: Scene, random: Chance): Scene {
  const foil = random.uniform() < 0.6 ? between(random, 0.4, 1) : 0;
  const face: Face = { ...photo.face!, ...darkColours(random), foil };
  const untouched = random.uniform() < 0.15;
  return { ...photo, face, marks: untouched ? UNMARKED : randomMarks(random, face, 'silvered') };
}

const between = (random: Chance, a: number, b: number) => a + (b - a) * random.uniform();

function photoScene(random: Chance, kind: string): Scene {
  const u = random.uniform();
  const tone = u < 0.12 ? 'dark' : u < 0.24 ? 'light' : 'any';
  const face = randomFace(random, tone);
  const camera = randomCamera(random, face, 18);
  return {
    kind,
    face,
    marks: UNMARKED,
    thicknessMm: 0.32,
    sideColour: [0.62, 0.6, 0.55],
    camera,
    ground: randomGround(random, tone),
    things: random.uniform() < 0.3 ? clutter(random, face.sizeMm) : [],
    covers: [],
    lighting: softLight(random),
    dust: 0,
    develop: randomDevelop(random),
  };
}

/** A camera that sees the whole card, tilted at most so far. */
export function randomCamera(random: Chance, face: Pick<Face, 'sizeMm'>, maxTilt: number): Camera {
  const width = 1200 + 30 * random.below(30);
  const height = Math.round((width * 4) / 3 / 20) * 20;
  const sideways = random.uniform() < 0.12;
  const share = between(random, 0.5, 0.78);
  const [w, h] = sideways ? [face.sizeMm[1], face.sizeMm[0]] : face.sizeMm;
  const pxPerMm = Math.min((share * width) / w, (share * height) / h);
  const room: Point = [width * 0.42 - (w * pxPerMm) / 2, height * 0.42 - (h * pxPerMm) / 2];
  return {
    width,
    height,
    focalPx: width * between(random, 1, 1.7),
    pxPerMm,
    tiltDeg: Math.min(maxTilt, Math.abs(0.5 * maxTilt * random.normal())),
    tiltTowardsDeg: between(random, 0, 360),
    rollDeg: 4.5 * random.normal() + (sideways ? (random.uniform() < 0.5 ? 90 : -90) : 0),
    centrePx: [
      width / 2 + Math.max(0, room[0]) * between(random, -0.7, 0.7),
      height / 2 + Math.max(0, room[1]) * between(random, -0.7, 0.7),
    ],
    k1: 0.014 * random.normal(),
  };
}

function randomGround(random: Chance, tone: 'any' | 'dark' | 'light'): Ground {
  const hue = random.uniform();
  const kind = GROUNDS[random.below(GROUNDS.length)]!;
  const value = { dark: 0.16, light: 0.88, any: between(random, 0.15, 0.85) }[tone];
  const tint = tone === 'any' ? between(random, 0.05, 0.6) : 0.06;
  const colour = hsv(hue, tint, value);
  const far = tone === 'any' ? between(random, 0.6, 1.5) : 1.15;
  const second = hsv(hue + 0.08 * random.normal(), tint, Math.min(0.95, value * far));
  return {
    kind,
    colour,
    second,
    seed: random.below(9999),
    turnDeg: between(random, 0, 180),
    contrast: 1,
  };
}

/** Light of the room: even, or from one side. */
export function softLight(random: Chance): Lighting {
  const warm = 0.12 * random.normal();
  return {
    ambient: between(random, 0.65, 1),
    lamps: [],
    ramp: [0.18 * random.normal(), 0.18 * random.normal()],
    falloff: between(random, 0, 0.25),
    cast: [Math.min(1.15, 1 + warm), 1, Math.max(0.7, 1 - warm)],
    gloss: [0, 1],
    ...(random.uniform() < 0.15
      ? {
          shade: {
            at: [30, 40],
            angleDeg: between(random, 0, 360),
            strength: between(random, 0.2, 0.5),
            widthMm: between(random, 2, 8),
          },
        }
      : {}),
  };
}

/** What an ordinary camera makes of the light. */
export function randomDevelop(random: Chance): Develop {
  const phone = random.uniform() < 0.35;
  return {
    blurPx: between(random, 0.55, 1.3),
    discPx: 0,
    readNoise: between(random, 0.001, 0.004),
    shotNoise: between(random, 0.006, 0.018),
    contrastCurve: phone ? between(random, 0.1, 0.35) : 0,
    halo: phone ? between(random, 0.3, 0.9) : 0,
    jpegQuality: 82 + random.below(14),
  };
}

function scanScene(random: Chance): Scene {
  const face = randomFace(random);
  const dpi = [300, 300, 600, 600, 600][random.below(5)]!;
  const pxPerMm = dpi / 25.4;
  const [w, h] = face.sizeMm;
  const margin = () => between(random, 2.5, 9);
  const width = Math.round((w + 2 * margin()) * pxPerMm);
  const height = Math.round((h + 2 * margin()) * pxPerMm);
  const lid = random.uniform() < 0.4 ? 0.85 : between(random, 0.03, 0.3);
  const colour: Rgb = [lid, lid, lid * 0.98];
  return {
    kind: 'scan',
    face,
    marks: UNMARKED,
    thicknessMm: 0.32,
    sideColour: [0.62, 0.6, 0.55],
    camera: {
      width,
      height,
      focalPx: 0,
      pxPerMm,
      tiltDeg: 0,
      tiltTowardsDeg: 0,
      rollDeg: Math.max(-4, Math.min(4, 1.3 * random.normal())),
      centrePx: [width / 2 + between(random, -9, 9), height / 2 + between(random, -9, 9)],
      k1: 0,
    },
    ground: { kind: 'plain', colour, second: colour, seed: 5, turnDeg: 0, contrast: 0 },
    things: [],
    covers: [],
    // A scanner's lamp stands before the line that it reads, so that one side throws a thin shadow.
    lighting: { ambient: 0.9, lamps: [], ramp: [0, 0], falloff: 0, cast: [1, 1, 1], gloss: [0, 1] },
    dust: random.uniform() < 0.6 ? between(random, 0.02, 0.1) : 0,
    develop: {
      blurPx: between(random, 0.5, 0.9),
      discPx: 0,
      readNoise: 0.0015,
      shotNoise: 0.004,
      contrastCurve: 0,
      halo: random.uniform() < 0.3 ? 0.3 : 0,
      jpegQuality: 88 + random.below(8),
    },
  };
}

/** A card under one low lamp, or under several moved about it, seen straight down. */
function lampScene(random: Chance, kind: 'dented' | 'raking'): Scene {
  const face = { ...randomFace(random), sizeMm: [63, 88] as Point };
  const width = 1200 + 50 * random.below(8);
  const height = Math.round(width * 1.28);
  const pxPerMm = (width * between(random, 0.68, 0.78)) / 63;
  const clean = random.uniform() < 0.2;
  const low = kind === 'raking';
  const count = low ? 1 : 4 + random.below(3);
  return {
    kind: low ? 'wear' : 'relief',
    face,
    marks: clean ? UNMARKED : randomMarks(random, face, low ? 'scratched' : 'dented'),
    thicknessMm: 0.32,
    sideColour: [0.62, 0.6, 0.55],
    camera: {
      width,
      height,
      focalPx: width * between(random, 2, 3),
      pxPerMm,
      tiltDeg: low ? Math.abs(3 * random.normal()) : 0,
      tiltTowardsDeg: between(random, 0, 360),
      rollDeg: random.normal(),
      centrePx: [width / 2 + 8 * random.normal(), height / 2 + 8 * random.normal()],
      k1: low ? 0.006 * random.normal() : 0,
    },
    ground: { ...randomGround(random, 'any'), kind: random.uniform() < 0.5 ? 'mat' : 'marble' },
    things: [],
    covers: [],
    ...(low || random.uniform() < 0.5
      ? {}
      : { ball: { centreMm: [-6.5, between(random, 10, 70)] as Point, radiusMm: 3 } }),
    lighting: { ...softLight(random), ...lampsOf(random, count, low) },
    dust: 0,
    develop: {
      ...randomDevelop(random),
      contrastCurve: 0,
      halo: 0,
      blurPx: between(random, 0.5, 0.8),
    },
  };
}

function lampsOf(
  random: Chance,
  count: number,
  low: boolean,
): Pick<Lighting, 'ambient' | 'lamps' | 'gloss' | 'ramp'> {
  const start = between(random, 0, 360);
  const lamps = Array.from({ length: count }, (_, i) => {
    const azimuth = ((start + (i * 360) / count + 10 * random.normal()) * Math.PI) / 180;
    const elevation = (between(random, low ? 9 : 24, low ? 20 : 48) * Math.PI) / 180;
    const far = between(random, low ? 320 : 420, low ? 480 : 680);
    const flat = far * Math.cos(elevation);
    const positionMm = [
      flat * Math.cos(azimuth),
      -flat * Math.sin(azimuth),
      far * Math.sin(elevation),
    ] as const;
    return { positionMm, power: between(random, 0.65, 0.85) / Math.sin(elevation), radiusMm: 12 };
  });
  const gloss =
    random.uniform() < 0.6
      ? ([between(random, 0.02, 0.12), between(random, 15, 60)] as const)
      : ([0, 1] as const);
  return { ambient: 0.04, lamps, gloss, ramp: [0, 0] };
}
