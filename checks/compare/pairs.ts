import type { Face } from '../../demo/render/face.ts';
import { hsv } from '../../demo/render/light.ts';
import { randomScene } from '../../demo/render/random.ts';
import { render } from '../../demo/render/render.ts';
import type { Scene } from '../../demo/render/scene.ts';
import { cardMapOf, faceOf, type Seen, type SizeMm } from '../../src/bench/index.ts';
import { type Chance, chance } from '../../src/maths/index.ts';

/** Pictures of one invented design: two of one copy, two other copies, and another print of it. */
export interface Family {
  readonly sizeMm: SizeMm;
  readonly first: Seen | null;
  readonly again: Seen | null;
  readonly copies: readonly (Seen | null)[];
  readonly other: Seen | null;
}

/** Renders a family: cut, print flaws, camera, lamp and processing differ from picture to picture. */
export function familyOf(seed: number): Family {
  const random = chance(104_729 * seed);
  const drawn = bordered(seed);
  const design: Face = { ...drawn, sizeMm: [63, 88], foil: 0, seed: drawn.seed };
  const sizeMm = design.sizeMm as SizeMm;
  const own = copyOf(design, random);
  const shot = (face: Face, k: number) => seenOn(face, 1000 * seed + k, sizeMm);
  return {
    sizeMm,
    first: shot(own, 1),
    again: shot(own, 2),
    copies: [3, 4].map((k) => shot(copyOf(design, random), k)),
    other: shot(copyOf(reprinted(design, random), random), 5),
  };
}

/** The first design of a seed that has a border. */
function bordered(seed: number): Face {
  for (let k = 0; ; k++) {
    const { face } = randomScene('photo', 31 * seed + k);
    if (face && face.frameStyle !== 'none') return face;
  }
}

/** One copy: its print lies somewhere in the cut, a little turned, with flaws of its own. */
function copyOf(face: Face, random: Chance): Face {
  const [x, y] = [0.35 * random.normal(), 0.35 * random.normal()];
  const { left, right, top, bottom } = face.borderMm;
  return {
    ...face,
    borderMm: { left: left + x, right: right - x, top: top + y, bottom: bottom - y },
    printRotationDeg: 0.15 * random.normal(),
    flawSeed: 1 + random.below(1_000_000),
  };
}

/** Another print of a design: its strokes are thicker or thinner, its colours lie elsewhere. */
function reprinted(face: Face, random: Chance): Face {
  const [r, g, b] = face.borderColour;
  const tint = hsv(random.uniform(), 0.15, 1);
  return {
    ...face,
    hue: face.hue + (random.uniform() < 0.5 ? 0.04 : -0.04) * (0.5 + random.uniform()),
    strokeWeight: random.uniform() < 0.5 ? 1.35 : 0.72,
    borderColour: [r * tint[0], g * tint[1], b * tint[2]],
  };
}

/** A face photographed with another camera, lamp and ground each time; null where it has no sure outline. */
function seenOn(face: Face, seed: number, sizeMm: SizeMm): Seen | null {
  const scene: Scene = { ...randomScene('photo', seed), face, things: [] };
  const { picture } = render(smaller(scene), seed);
  const { outline, trouble, defects } = faceOf(picture, { sizeMm, dpi: null, raking: [] });
  if (!outline || trouble) return null;
  const map = cardMapOf(outline.corners, sizeMm, outline.lens);
  const [[x0, y0], [x1, y1]] = outline.corners;
  const variances = Array.from({ length: 8 }, (_, i) => outline.covariance[9 * i] as number);
  const sdPx = Math.sqrt(variances.reduce((a, b) => a + b, 0) / 8);
  const cornerSdMm = (sdPx * sizeMm[0]) / Math.hypot(x1 - x0, y1 - y0);
  return { picture, map, cornerSdMm, measured: null, defects };
}

/** The same scene on fewer pixels, the card upright, which takes less time. */
function smaller(scene: Scene): Scene {
  const { camera } = scene;
  const [width, height] = [840, 1120];
  const pxPerMm = 9.5;
  return {
    ...scene,
    camera: {
      ...camera,
      ...{ width, height, pxPerMm, focalPx: 1.3 * width, centrePx: [width / 2, height / 2] },
      rollDeg: camera.rollDeg > 45 || camera.rollDeg < -45 ? 2 : camera.rollDeg,
    },
  };
}

/** Cost of likelihood ratios in bits, 0 perfect and 1 as good as none (`brummer:2006`, equation 34). */
export function cllrOf(same: readonly number[], other: readonly number[]): number {
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  return (
    (mean(same.map((log10) => Math.log2(1 + 10 ** -log10))) +
      mean(other.map((log10) => Math.log2(1 + 10 ** log10)))) /
    2
  );
}
