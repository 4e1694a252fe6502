import type { Defect } from '../defects.ts';
import { cardMapOf, pixelOf } from '../geometry/card-map.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import { lightTable } from '../light/srgb.ts';
import { movedMap, registered } from './registration.ts';
import type { Seen } from './seen.ts';

/** A bright mark of a copy, and what references of the printing show at its place. */
export interface MarkAgainst {
  /** The mark, with the probability that the references leave it. */
  readonly mark: Defect;
  /** What was believed of it without them. */
  readonly alone: number;
  /** How much of its brightness over the print around the references show too: about 1 for print. */
  readonly shown: number;
}

/**
 * How many times as probable it is to see so much of a mark's brightness in a reference where the
 * mark is print as where it is the copy's own. Judgement, no source; held within this.
 */
const MOST = 30;
/** Chance that a bright spot inside the print, one with no like elsewhere, is the copy's own. Judgement, no source. */
const BEFORE = 0.3;
/** Print cannot be told from the mark where it lies less far above its surroundings, as a share of light. */
const LEAST = 0.1;
const NEAR_MM = 0.15;

/**
 * Bright marks of a copy beside registered references: a spot that a reference shows too is print,
 * one that none shows is the copy's own, also inside the print, where one picture alone cannot tell.
 * A mark that no reference can speak of is left out. Misleads where a reference is worn at the very
 * place, or too blurred for a spot so small.
 */
export function marksAgainst(
  copy: Seen,
  references: readonly Seen[],
  sizeMm: SizeMm,
): readonly MarkAgainst[] {
  const own = lookAt(copy);
  const others = references.flatMap((one) => {
    const lies = registered(copy, one, sizeMm);
    return lies ? [lookAt({ ...one, map: movedMap(one.map, sizeMm, lies.shift) })] : [];
  });
  if (others.length === 0) return [];
  return copy.defects.filter(isBright).flatMap((mark) => {
    const here = standsOut(own, mark);
    if (!(here > LEAST)) return [];
    const shown = Math.max(...others.map((look) => standsOut(look, mark))) / here;
    return [{ mark: { ...mark, p: believed(mark, shown) }, alone: mark.p, shown }];
  });
}

function isBright({ kind, wear }: Defect): boolean {
  return kind === 'speck' || ((kind === 'edge-wear' || kind === 'corner-wear') && wear !== 'loss');
}

/** Mean light of green about a place of the card; NaN outside the picture. */
type Look = (at: PointMm) => number;

function lookAt({ picture, map }: Seen): Look {
  const { width, height, samples } = picture;
  const table = lightTable(picture);
  const own = cardMapOf(map.corners, map.sizeMm, map.lens);
  return ([x, y]) => {
    let sum = 0;
    for (let i = 0; i < 9; i++) {
      const at: PointMm = [
        x + NEAR_MM * ((i % 3) - 1) * 0.5,
        y + NEAR_MM * (Math.floor(i / 3) - 1) * 0.5,
      ];
      const [u, v] = pixelOf(own, at).map(Math.round) as [number, number];
      if (u < 0 || v < 0 || u >= width || v >= height) return Number.NaN;
      sum += table[samples[3 * (v * width + u) + 1] as number] as number;
    }
    return sum / 9;
  };
}

/** How much lighter the mark's middle is than the print around it, as a share of that print's light. */
function standsOut(look: Look, { centreMm: [x, y], boxMm: [x0, y0, x1, y1] }: Defect): number {
  const [right, down] = [(x1 - x0) / 2 + 0.6, (y1 - y0) / 2 + 0.6];
  const around = Array.from({ length: 12 }, (_, k) => {
    const angle = (Math.PI * k) / 6;
    return look([x + right * Math.cos(angle), y + down * Math.sin(angle)]);
  })
    .filter((light) => !Number.isNaN(light))
    .sort((a, b) => a - b);
  const middle = around[around.length >> 1] ?? Number.NaN;
  return (look([x, y]) - middle) / (middle + 0.01);
}

/** Odds before times what the references say; a mark inside the print begins anew, as they tell what art has. */
function believed({ kind, p }: Defect, shown: number): number {
  const before = Math.min(0.99, kind === 'speck' && p < 0.5 ? Math.max(p, BEFORE) : p);
  // One half shown speaks for neither.
  const ratio = MOST ** Math.max(-1, Math.min(1, 1 - 2 * shown));
  const odds = (before / (1 - before)) * ratio;
  return odds / (1 + odds);
}
