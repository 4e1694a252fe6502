import type { BoxMm, Defect } from '../defects.ts';
import type { ReliefDefect } from '../relief/types.ts';
import { type Doubtful, totalOf } from './amounts.ts';
import { type LookAt, shownBy } from './looks.ts';
import { type Amount, MEASURES, type Measure, type Part, type Side } from './types.ts';

/** What one face of a copy was found to have. */
export interface Face {
  readonly side: Side;
  readonly looks: readonly LookAt[];
  /** Shares in per cent of the wider borders, left to right and top to bottom; null: none measured. */
  readonly centering: {
    readonly wider: readonly [number, number];
    readonly sd: readonly [number, number];
  } | null;
  readonly defects: readonly Defect[];
}

/** The amounts of every measure on a face, as limits speak of them. */
export function amountsOf(face: Face): readonly Amount[] {
  return MEASURES.flatMap((measure): readonly Amount[] => {
    const { side, looks, centering } = face;
    if (measure !== 'centering')
      return [
        { side, measure, shown: shownBy(looks, measure), parts: totalOf(marksOf(face, measure)) },
      ];
    return centering ? [{ side, measure, shown: 1, parts: worseOf(centering) }] : [];
  });
}

function marksOf(face: Face, measure: Measure): readonly Doubtful[] {
  return face.defects
    .filter(({ kind }) => kind === measure)
    .map((defect) => ({ p: defect.p, ...sizeOf(defect) }));
}

function sizeOf(defect: Defect | ReliefDefect): { size: number; sd: number } {
  const { kind, areaMm2, lengthMm, sd } = defect;
  const across = acrossOf(defect.boxMm);
  switch (kind) {
    case 'speck':
      return { size: 1, sd: 0 };
    case 'dent':
      // A moved lamp tells the width at half the depth; else the whole hollow is taken.
      return 'diameterMm' in defect
        ? { size: defect.diameterMm, sd: defect.sd.diameterMm }
        : { size: across, sd: 0.2 * across };
    case 'corner-wear':
    case 'edge-wear':
    case 'stain':
      return { size: areaMm2, sd: sd.areaMm2 ?? 0.3 * areaMm2 };
    default:
      return { size: lengthMm ?? across, sd: sd.lengthMm ?? 0.1 * (lengthMm ?? across) };
  }
}

/** The longer side of a mark's box. */
function acrossOf([x0, y0, x1, y1]: BoxMm): number {
  return Math.max(x1 - x0, y1 - y0);
}

/** The worse of the two ways: the larger share, both where they are too near to tell. */
function worseOf({ wider, sd }: NonNullable<Face['centering']>): readonly Part[] {
  const [a, b] = wider;
  const worse = a >= b ? 0 : 1;
  const apart = Math.abs(a - b) / Math.hypot(sd[0], sd[1], 1e-9);
  const whole = { weight: 1, mean: wider[worse], sd: sd[worse] };
  if (apart > 3) return [whole];
  return [0, 1].map((i) => ({
    weight: 0.5,
    mean: Math.max(wider[i] as number, (a + b) / 2),
    sd: sd[i] as number,
  }));
}
