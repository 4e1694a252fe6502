import { hsv } from '../render/light.ts';
import type { Ball, Cover, Develop, Ground, Lamp, Lighting, Scene } from '../render/scene.ts';
import { OF_THE_LISTING, REFERENCES, SPECIMENS, type Specimen } from './specimens.ts';

/** One picture of the demo: its file in the dossier, its scene, and what it is for. */
export interface Shot {
  readonly file: string;
  readonly of: string;
  readonly role: 'arrival' | 'lamp' | 'listing' | 'reference';
  readonly side: 'front' | 'back';
  readonly scene: Scene;
  readonly seed: number;
}

const CAMERA = {
  width: 1200,
  height: 1560,
  focalPx: 3000,
  pxPerMm: 14.6,
  tiltDeg: 0,
  tiltTowardsDeg: 0,
  k1: -0.004,
};
const SMALL = { ...CAMERA, width: 860, height: 1100, focalPx: 2150, pxPerMm: 10.4, k1: 0 };

const DESK: Ground = {
  kind: 'mat',
  colour: hsv(0.6, 0.12, 0.3),
  second: hsv(0.6, 0.12, 0.42),
  seed: 4,
  turnDeg: 0,
  contrast: 1,
};
const SOFT: Lighting = {
  ambient: 0.9,
  lamps: [],
  ramp: [0.06, -0.05],
  falloff: 0.06,
  cast: [1.03, 1, 0.95],
  gloss: [0, 1],
};
const CLEAR: Develop = {
  blurPx: 0.7,
  discPx: 0,
  readNoise: 0.0015,
  shotNoise: 0.006,
  contrastCurve: 0,
  halo: 0,
  jpegQuality: 85,
};

/** A lamp so far from the card's centre, by where it stands (counter-clockwise) and how high. */
function lampAt(azimuthDeg: number, elevationDeg: number, far: number): Lamp {
  const [a, e] = [(azimuthDeg * Math.PI) / 180, (elevationDeg * Math.PI) / 180];
  const round = (value: number) => Math.round(value * 10) / 10;
  const flat = far * Math.cos(e);
  const positionMm = [
    round(flat * Math.cos(a)),
    round(-flat * Math.sin(a)),
    round(far * Math.sin(e)),
  ] as const;
  return { positionMm, power: 0.75 / Math.sin(e), radiusMm: 10 };
}

/** The four lamps of the relief set, and the low one. */
export const LAMPS: readonly Lamp[] = [25, 118, 204, 296].map((azimuth, i) =>
  lampAt(azimuth, [34, 31, 36, 29][i]!, 520 + 20 * i),
);
const LOW = lampAt(140, 13, 420);

function sceneOf(
  one: Specimen,
  side: 'front' | 'back',
  how: Pick<Scene, 'camera' | 'lighting'>,
): Scene {
  const covers: readonly Cover[] = one.slab
    ? [{ kind: 'holder', sizeMm: [72, 99], glare: 0.03 }]
    : [];
  return {
    kind: 'photo',
    face: side === 'front' ? one.front : one.back,
    marks: side === 'front' ? one.frontMarks : one.backMarks,
    thicknessMm: 0.31,
    sideColour: [0.6, 0.58, 0.53],
    ground: DESK,
    things: [],
    covers,
    dust: 0,
    develop: CLEAR,
    ...how,
  };
}

function camera(base: typeof CAMERA, rollDeg: number, dx = 0, dy = 0) {
  return { ...base, rollDeg, centrePx: [base.width / 2 + dx, base.height / 2 + dy] as const };
}

function ofCopy(id: string, one: Specimen, at: number): readonly Shot[] {
  const folder = `desk/photos/${id}`;
  const gloss: Lighting['gloss'] = one.front.foil > 0 ? [0.06, 30] : [0.03, 20];
  const straight = camera(CAMERA, 0.8 - 0.5 * at, 6, -8);
  const lit = (lamp: Lamp): Lighting => ({
    ...SOFT,
    ambient: 0.05,
    ramp: [0, 0],
    lamps: [lamp],
    gloss,
  });
  const shot = (
    name: string,
    role: Shot['role'],
    side: Shot['side'],
    how: Pick<Scene, 'camera' | 'lighting'>,
    seed: number,
  ): Shot => ({
    file: `${folder}/${name}.jpg`,
    of: id,
    role,
    side,
    scene: sceneOf(one, side, how),
    seed: 1000 * at + seed,
  });
  const lamps = LAMPS.map((lamp, i) => {
    const made = shot(
      `front.light-${i + 1}`,
      'lamp',
      'front',
      { camera: camera(SMALL, 0.3), lighting: lit(lamp) },
      10 + i,
    );
    const ball: Ball = { centreMm: [-5.2, 60], radiusMm: 3 };
    return one.slab ? made : { ...made, scene: { ...made.scene, ball } };
  });
  return [
    shot('front', 'arrival', 'front', { camera: straight, lighting: SOFT }, 1),
    shot('back', 'arrival', 'back', { camera: camera(CAMERA, -0.6, -5, 4), lighting: SOFT }, 2),
    shot('front.raking', 'lamp', 'front', { camera: straight, lighting: lit(LOW) }, 3),
    ...lamps,
    listing(id, one, at),
  ];
}

/** The seller's picture: on a table of wood, tilted; of another card where the listing shows one. */
function listing(id: string, one: Specimen, at: number): Shot {
  const shown = id === 'hare-1' ? OF_THE_LISTING : one;
  const base = {
    ...CAMERA,
    width: 900,
    height: 1200,
    focalPx: 1250,
    pxPerMm: 9.6,
    tiltDeg: 9 + at,
    tiltTowardsDeg: 40 + 70 * at,
    k1: 0.012,
  };
  const ground: Ground = {
    kind: 'wood',
    colour: hsv(0.08, 0.5, 0.45),
    second: hsv(0.07, 0.55, 0.3),
    seed: 9 + at,
    turnDeg: 12,
    contrast: 1,
  };
  const scene = sceneOf(shown, 'front', {
    camera: camera(base, 3.5 - 2 * at, 10, -14),
    lighting: { ...SOFT, cast: [1.1, 1, 0.84], ramp: [0.2, 0.1], ambient: 0.82 },
  });
  const develop = {
    ...CLEAR,
    blurPx: 0.9,
    shotNoise: 0.012,
    contrastCurve: 0.2,
    halo: 0.4,
    jpegQuality: 80,
  };
  return {
    file: `${`desk/photos/${id}`}/listing.jpg`,
    of: id,
    role: 'listing',
    side: 'front',
    scene: { ...scene, ground, develop },
    seed: 1000 * at + 20,
  };
}

function ofReference(id: string, one: Specimen, at: number): Shot {
  const base = { ...CAMERA, width: 960, height: 1250, focalPx: 2400, pxPerMm: 11.7 };
  const scene = sceneOf(one, 'front', {
    camera: camera(base, 0.7 * at - 1),
    lighting: { ...SOFT, ambient: 0.86 + 0.03 * at },
  });
  return {
    file: `pictures/${id}.jpg`,
    of: 'gb-first',
    role: 'reference',
    side: 'front',
    scene,
    seed: 9000 + at,
  };
}

/** Every photograph of the demo. Cuts at 1,200 dpi and the chart are made apart. */
export const SHOTS: readonly Shot[] = [
  ...Object.entries(SPECIMENS).flatMap(([id, one], at) => ofCopy(id, one, at)),
  ...Object.entries(REFERENCES).map(([id, one], at) => ofReference(id, one, at)),
];
