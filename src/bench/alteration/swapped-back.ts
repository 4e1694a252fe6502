import type { Finding } from '../compare/finding.ts';
import { log10Ratio, logT } from '../compare/likelihood-ratio.ts';
import type { FaceAnswer } from '../examine/types.ts';
import { type Sign, signOf } from './sign.ts';

const BETWEEN = ['the back was joined to another front', 'front and back are of one card'] as const;

/** Error of a difference of tip radii of one card, and how much cards of two cuts differ, mm. Judgement, no source. */
const RADIUS = { error: 0.15, spread: 0.5 };
/** The same for a side measured from both faces at known dots an inch, mm. Judgement, no source. */
const SIDE = { error: 0.05, spread: 0.25 };
/** Chance of a worn corner on a face: any, and where its other face is worn there or is not. Judgement, no source. */
const WORN = { any: 0.3, alsoThere: 0.6, notThere: 0.17 };
const NEAR_CORNER_MM = 5;

/**
 * Whether front and back disagree as faces of two cards would: radius of the tips, size of two scans,
 * and which corners are worn. Null where not both faces were measured in millimetres.
 */
export function swappedBackSign(front: FaceAnswer, back: FaceAnswer): Sign | null {
  const findings = [...radii(front, back), ...sizes(front, back), ...corners(front, back)];
  if (findings.length === 0) return null;
  return signOf('swapped-back', findings, BETWEEN, [
    'A card that was split and joined again well agrees with itself; one face may wear more than the other.',
  ]);
}

function radii({ tipRadiusMm: a }: FaceAnswer, { tipRadiusMm: b }: FaceAnswer): readonly Finding[] {
  if (a === null || b === null) return [];
  return [
    difference('radius of the tips, front less back, mm', a - b, RADIUS.error, RADIUS.spread),
  ];
}

function sizes({ size: a }: FaceAnswer, { size: b }: FaceAnswer): readonly Finding[] {
  if (a?.from !== 'dpi' || b?.from !== 'dpi') return [];
  return ([0, 1] as const).map((k) =>
    difference(
      `${k === 0 ? 'width' : 'height'}, front less back, mm`,
      a.mm[k] - b.mm[k],
      Math.hypot(SIDE.error, a.sdMm?.[k] ?? 0, b.sdMm?.[k] ?? 0),
      SIDE.spread,
    ),
  );
}

/** One difference: the error of measurement alone, or the spread of two cards beside it; long tails both. */
function difference(what: string, value: number, error: number, spread: number): Finding {
  const one = logT(value, 4, error);
  const two = logT(value, 4, Math.hypot(error, spread));
  return { what, whereMm: null, difference: value, sd: error, log10Lr: log10Ratio(two, one) };
}

function corners(front: FaceAnswer, back: FaceAnswer): readonly Finding[] {
  const shown = [front, back].every(({ limits }) =>
    limits.some(({ kinds }) => kinds.includes('corner-wear')),
  );
  const size = front.size?.mm;
  if (!shown || !size) return [];
  const [f, b] = [wornOf(front, size), wornOf(back, size)];
  let log = 0;
  let apart = 0;
  // The back is seen mirrored: its left is the front's right.
  [1, 0, 3, 2].forEach((mirrored, k) => {
    const [here, there] = [f[k] as number, b[mirrored] as number];
    const given = here * WORN.alsoThere + (1 - here) * WORN.notThere;
    const chance = (p: number) => there * p + (1 - there) * (1 - p);
    log += Math.log(chance(WORN.any) / chance(given));
    apart += Math.abs(here - there);
  });
  return [
    {
      what: 'corners worn on one face alone, of four',
      whereMm: null,
      difference: apart,
      sd: 1,
      log10Lr: log10Ratio(log, 0),
    },
  ];
}

/** Probability that each corner is worn: top-left, top-right, bottom-right, bottom-left. */
function wornOf({ defects }: FaceAnswer, [w, h]: readonly [number, number]): readonly number[] {
  return [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ].map(([x, y]) =>
    Math.max(
      0,
      ...defects
        .filter(
          ({ kind, centreMm: [u, v] }) =>
            kind === 'corner-wear' &&
            Math.hypot(u - (x as number), v - (y as number)) < NEAR_CORNER_MM,
        )
        .map(({ p }) => p),
    ),
  );
}
