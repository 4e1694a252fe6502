import type { Chance } from '../../src/maths/index.ts';
import type { Point } from './canvas.ts';
import { clutter } from './clutter.ts';
import { hsv, mixed, type Rgb } from './light.ts';
import type { Cover, Scene, Thing } from './scene.ts';

type Trouble = (scene: Scene, random: Chance) => Scene;

/** A photograph with one of the troubles that photographs have. */
export function harder(scene: Scene, random: Chance): Scene {
  const names = Object.keys(TROUBLES);
  const name = names[random.below(names.length)]!;
  return { ...TROUBLES[name]!(scene, random), kind: `hard-${name}` };
}

/** What can make a photograph hard, each by its name. */
export const TROUBLES: Readonly<Record<string, Trouble>> = {
  sleeve: (scene, random) => covered(scene, sleeve(random, scene.face!.sizeMm, 0.6, 3)),
  'loose-sleeve': (scene, random) => covered(scene, sleeve(random, scene.face!.sizeMm, 3.5, 9)),
  holder: (scene, random) =>
    covered(scene, {
      kind: 'holder',
      sizeMm: [scene.face!.sizeMm[0] + 13, scene.face!.sizeMm[1] + 13],
      glare: 0.1 + 0.25 * random.uniform(),
    }),
  fingers: (scene, random) => ({ ...scene, covers: fingers(random, scene.face!.sizeMm) }),
  blur: (scene, random) => ({
    ...scene,
    develop: { ...scene.develop, discPx: 2.5 + 4 * random.uniform() },
  }),
  tilt: (scene, random) => ({
    ...scene,
    camera: {
      ...scene.camera,
      tiltDeg: 25 + 10 * random.uniform(),
      pxPerMm: scene.camera.pxPerMm * 0.85,
      centrePx: [scene.camera.width / 2, scene.camera.height / 2],
    },
  }),
  'second-card': (scene, random) => ({
    ...scene,
    things: [beneath(random, scene, 'card'), ...scene.things],
  }),
  packet: (scene, random) => ({
    ...scene,
    things: [beneath(random, scene, 'packet'), ...scene.things],
  }),
  clutter: (scene, random) => ({
    ...scene,
    things: [...clutter(random, scene.face!.sizeMm), ...clutter(random, scene.face!.sizeMm)],
  }),
  faint(scene, random) {
    const { borderColour } = scene.face!;
    const step = (3 / 255) * (random.uniform() < 0.5 ? -1 : 1);
    const near = borderColour.map(
      (v) => Math.max(0.004, v ** (1 / 2.2) + step) ** 2.2,
    ) as unknown as Rgb;
    return {
      ...scene,
      thicknessMm: 0.12,
      ground: { ...scene.ground, kind: 'mat', colour: near, second: near },
    };
  },
  phone: (scene, random) => ({
    ...scene,
    develop: {
      ...scene.develop,
      halo: 1 + random.uniform(),
      contrastCurve: 0.4,
      jpegQuality: 74 + random.below(10),
    },
  }),
  'double-frame': (scene) => ({ ...scene, face: { ...scene.face!, frameStyle: 'double' } }),
  'no-card': (scene, random) => ({
    ...scene,
    face: null,
    things:
      random.uniform() < 0.5
        ? []
        : clutter(random, [63, 88]).filter(({ shape }) => shape === 'disc' || shape === 'pencil'),
  }),
  'cut-off': (scene, random) => ({
    ...scene,
    camera: {
      ...scene.camera,
      centrePx: [
        scene.camera.centrePx[0] * (random.uniform() < 0.5 ? 0.35 : 1.65),
        scene.camera.centrePx[1],
      ],
    },
  }),
};

function covered(scene: Scene, cover: Cover): Scene {
  return { ...scene, covers: [cover] };
}

function sleeve(random: Chance, [w, h]: Point, least: number, most: number): Cover {
  const extra = least + (most - least) * random.uniform();
  const loose = Math.max(0, extra / 2 - 0.6);
  return {
    kind: 'sleeve',
    sizeMm: [w + extra, h + extra + 1],
    offsetMm: [loose * (2 * random.uniform() - 1), loose * (2 * random.uniform() - 1)],
    turnDeg: 0.3 * extra * random.normal() * 0.6,
    windowAt: [0.2 + 0.6 * random.uniform(), 0.2 + 0.6 * random.uniform()],
    glare: 0.35 * random.uniform(),
  };
}

function fingers(random: Chance, [w, h]: Point): readonly Cover[] {
  const right = random.uniform() < 0.6;
  const tone = random.uniform();
  const skin = mixed([0.55, 0.3, 0.2], [0.12, 0.055, 0.035], tone);
  const y = h * (0.25 + 0.5 * random.uniform());
  return Array.from({ length: 1 + random.below(3) }, (_, i): Cover => {
    const lean = 8 * random.normal();
    const tip = 3 + 9 * random.uniform();
    const at = y + 19 * i;
    return {
      kind: 'finger',
      fromMm: right ? [w - tip, at] : [tip, at],
      toMm: right ? [w + 90, at + lean + 20] : [-90, at + lean + 20],
      radiusMm: 7 + 1.5 * random.uniform(),
      skin,
    };
  });
}

function beneath(random: Chance, scene: Scene, shape: 'card' | 'packet'): Thing {
  const [w, h] = scene.face!.sizeMm;
  const colour =
    random.uniform() < 0.4
      ? scene.face!.borderColour
      : hsv(random.uniform(), 0.5, 0.3 + 0.5 * random.uniform());
  return {
    shape,
    centreMm: [w / 2 + 14 * random.normal(), h / 2 + 14 * random.normal()],
    sizeMm: shape === 'card' ? [w, h] : [72, 120],
    turnDeg: 12 * random.normal(),
    colour,
    second: hsv(random.uniform(), 0.55, 0.6),
  };
}
