import { sightOf } from './camera.ts';
import type { Point } from './canvas.ts';
import type { Dent, Marks, Scratch } from './defects.ts';
import { bordersOnMidLines, type Face, frameCornersMm } from './face.ts';
import { boxOf } from './relief.ts';
import type { Scene } from './scene.ts';
import { MASK_SCALE, type Whitened } from './wear.ts';

/** What is true of a rendered picture: put in before it was made, none of it measured. */
export type Truth = Readonly<Record<string, unknown>> & {
  readonly kind: string;
  readonly size: Point;
  /** Virtual corners as the card is read; null where there is no card. */
  readonly outline: readonly Point[] | null;
};

const SIDES = { left: 'left', right: 'right', top: 'top', bottom: 'bottom' } as const;

/** The truth of a scene, in the words of the pictures' `truth.json`. */
export function truthOf(scene: Scene, seed: number, whitened: Whitened | null): Truth {
  const { camera, face, kind } = scene;
  const shot = {
    kind,
    image: 'front.jpg',
    size: [camera.width, camera.height] as const,
    seed,
    k1: camera.k1,
    background: scene.ground.kind,
    tags: tagsOf(scene),
    ...(camera.focalPx > 0
      ? { tiltDeg: camera.tiltDeg, rollDeg: camera.rollDeg }
      : { dpi: Math.round(camera.pxPerMm * 25.4), scanRotationDeg: camera.rollDeg }),
  };
  if (!face) return { ...shot, outline: null };
  const sight = sightOf(camera, face.sizeMm);
  const pixelOf = (point: Point) => sight.pixelOf(point);
  const defects = defectsOf(scene.marks, whitened, pixelOf);
  return {
    ...shot,
    ...cardTruth(face, pixelOf),
    defects,
    clean: defects.length === 0,
    ...lampTruth(scene, pixelOf),
    ...(whitened && scene.marks.wear.length + scene.marks.silvering.length > 0
      ? { mask: 'mask.png', maskPxPerMm: MASK_SCALE }
      : {}),
  };
}

/** Outline, borders and frame of a card. */
function cardTruth(face: Face, pixelOf: (p: Point) => Point) {
  const [w, h] = face.sizeMm;
  const corners: readonly Point[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  const borders = bordersOnMidLines(face);
  const frame = frameCornersMm(face);
  const share = (a: number, b: number): Point => [(100 * a) / (a + b), (100 * b) / (a + b)];
  return {
    cardMm: face.sizeMm,
    cornerRadiusMm: face.cornerRadiusMm,
    outline: corners.map(pixelOf),
    borderMm: borders,
    centering: borders && {
      leftRight: share(borders.left, borders.right),
      topBottom: share(borders.top, borders.bottom),
    },
    printRotationDeg: frame && face.printRotationDeg,
    frameCornersMm: frame,
    frameCornersPx: frame?.map(pixelOf) ?? null,
    frameStyle: face.frameStyle,
    art: face.art,
  };
}

function tagsOf({ covers, things, develop, face, lighting }: Scene): readonly string[] {
  return [
    ...new Set(covers.map(({ kind }) => kind)),
    ...new Set(things.map(({ shape }) => shape)),
    ...(develop.halo > 0 ? ['phone'] : []),
    ...(develop.discPx > 0 ? ['soft'] : []),
    ...(face && face.foil > 0 ? ['foil'] : []),
    ...(lighting.shade ? ['shade'] : []),
    ...(face ? [] : ['no card']),
  ];
}

function defectsOf(marks: Marks, whitened: Whitened | null, pixelOf: (p: Point) => Point) {
  const corners = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'];
  const worn = marks.wear.map((wear, i) => ({
    ...(wear.type === 'corner'
      ? { type: 'cornerWhitening', where: corners[wear.at] }
      : {
          type: 'edgeWhitening',
          where: SIDES[wear.side],
          fromMm: wear.fromMm,
          toMm: wear.toMm,
          lengthMm: wear.toMm - wear.fromMm,
        }),
    ...(wear.ink ? { type: 'recolouring' } : {}),
    ...whitened?.places[i],
  }));
  const bare = marks.silvering.map((_, i) => ({ type: 'silvering', ...whitened?.silvered[i] }));
  const lost = marks.loss.map(({ centreMm: [x, y], radiusMm: r }) => ({
    type: 'loss',
    centroidMm: [x, y],
    bboxMm: [x - r, y - r, x + r, y + r],
    radiusMm: r,
  }));
  const folds = marks.creases.map(({ polylineMm, widthMm }) => ({
    type: 'crease',
    ...lineTruth({ polylineMm, widthMm }, pixelOf),
  }));
  const dents = marks.dents.map((dent) => dentTruth(dent, pixelOf));
  const scratches = marks.scratches.map((one) => ({ type: 'scratch', ...lineTruth(one, pixelOf) }));
  return [...worn, ...bare, ...lost, ...folds, ...dents, ...scratches];
}

function dentTruth(dent: Dent, pixelOf: (p: Point) => Point) {
  const [x, y] = dent.centreMm;
  const r = dent.diameterMm * (dent.profile === 'cap' ? Math.SQRT1_2 : 1);
  return {
    type: 'dent',
    centreMm: dent.centreMm,
    centroidMm: dent.centreMm,
    centrePx: pixelOf(dent.centreMm),
    diameterMm: dent.diameterMm,
    depthMm: dent.depthMm,
    profile: dent.profile,
    bboxMm: [x - r, y - r, x + r, y + r],
  };
}

function lineTruth(
  { polylineMm, widthMm }: Pick<Scratch, 'polylineMm' | 'widthMm'>,
  pixelOf: (p: Point) => Point,
) {
  let length = 0;
  for (let i = 1; i < polylineMm.length; i++) {
    const [[a, b], [c, d]] = [polylineMm[i - 1]!, polylineMm[i]!];
    length += Math.hypot(c - a, d - b);
  }
  const middle = polylineMm[Math.floor(polylineMm.length / 2)]!;
  return {
    polylineMm,
    polylinePx: polylineMm.map(pixelOf),
    widthMm,
    lengthMm: length,
    bboxMm: boxOf(polylineMm, 0),
    centroidMm: middle,
  };
}

function lampTruth(scene: Scene, pixelOf: (p: Point) => Point) {
  const { lamps } = scene.lighting;
  if (lamps.length === 0) return {};
  const lampsTruth = lamps.map(({ positionMm }) => {
    const [x, y, z] = positionMm;
    const far = Math.hypot(x, y, z);
    return {
      positionMm,
      direction: [x / far, y / far, z / far],
      azimuthDeg: ((Math.atan2(-y, x) * 180) / Math.PI + 360) % 360,
      elevationDeg: (Math.asin(z / far) * 180) / Math.PI,
    };
  });
  const { ball, camera } = scene;
  if (!ball) return { lampsTruth };
  const scale =
    camera.pxPerMm * (1 + ((ball.radiusMm - scene.thicknessMm) * camera.pxPerMm) / camera.focalPx);
  const reference = {
    ballCentrePx: pixelOf(ball.centreMm),
    ballRadiusPx: ball.radiusMm * scale,
    ballRadiusMm: ball.radiusMm,
  };
  return { lampsTruth, reference };
}
