import { leastSquares } from '../../../maths/index.ts';
import { carried, type Homography } from '../../geometry/homography.ts';
import type { EvenPlace } from './patches.ts';

type Point = readonly [number, number];

/** A place of a lattice: column and row as counted from where its growth began. */
export interface Member {
  readonly cell: readonly [column: number, row: number];
  readonly place: EvenPlace;
}

/** Places that lie on a lattice seen in perspective. */
export interface Lattice {
  readonly members: readonly Member[];
  /** From cells to pixels of the reduced picture. */
  readonly toPicture: Homography;
  /** Root mean square distance of a member from its cell, by the median, in pixels of the reduced picture. */
  readonly residual: number;
  /** Median side of the members over the step of the lattice where they are. */
  readonly sideShare: number;
}

/** Neighbours of a place that are tried as steps, how far they may lie, and how sizes may differ. */
const NEIGHBOURS = 8;
const REACH = 3.2;
const ALIKE = 1.7;

/** How far, in steps, a place may lie from where its neighbours foretell it, and from its cell. */
const ASIDE = 0.22;
const OFF_CELL = 0.12;

/** Fewer members are no lattice. Judgement, no source. */
const FEWEST = 6;

/** The largest lattices among places, at most three, none of which shares most of another's members. */
export function latticesOf(places: readonly EvenPlace[]): readonly Lattice[] {
  const grown: Member[][] = [];
  const taken = new Map<EvenPlace, number>();
  for (const seed of places) {
    // A place in a lattice already grown would mostly grow it again.
    if ((taken.get(seed) ?? 0) >= 12) continue;
    const best = stepsAt(seed, places)
      .map((steps) => grownFrom(seed, steps, places))
      .reduce<Member[]>((a, b) => (b.length > a.length ? b : a), []);
    if (best.length < FEWEST) continue;
    grown.push(best);
    for (const { place } of best) taken.set(place, Math.max(best.length, taken.get(place) ?? 0));
  }
  grown.sort((a, b) => b.length - a.length);
  const kept: Member[][] = [];
  for (const one of grown) {
    const own = new Set(one.map(({ place }) => place));
    const again = kept.some(
      (other) => other.filter(({ place }) => own.has(place)).length > 0.5 * one.length,
    );
    if (!again && kept.length < 3) kept.push(one);
  }
  return kept.flatMap((members) => fitted(members, places) ?? []);
}

type Steps = readonly [across: Point, down: Point];

/** Pairs of steps from a place to neighbours of its size, at wide angles, neither a sum of the others. */
function stepsAt({ at, side }: EvenPlace, places: readonly EvenPlace[]): readonly Steps[] {
  const vectors = places
    .filter((other) => alike(other.side, side) && other.at !== at)
    .map((other): Point => [other.at[0] - at[0], other.at[1] - at[1]])
    .filter((vector) => Math.hypot(...vector) < REACH * side)
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
    .slice(0, NEIGHBOURS);
  return vectors.flatMap((u, i) =>
    vectors.slice(i + 1).flatMap((v): readonly Steps[] => {
      const [short, long] = [Math.hypot(...u), Math.hypot(...v)];
      const along = Math.abs(u[0] * v[0] + u[1] * v[1]);
      return long < 2.5 * short && along < 0.5 * short * short ? [[u, v]] : [];
    }),
  );
}

function alike(a: number, b: number): boolean {
  return a < ALIKE * b && b < ALIKE * a;
}

/** Walks from a place by its steps, each taken anew from where the last one led. */
function grownFrom(seed: EvenPlace, steps: Steps, places: readonly EvenPlace[]): Member[] {
  const members: (Member & { readonly steps: Steps })[] = [{ cell: [0, 0], place: seed, steps }];
  const known = new Set(['0 0']);
  const used = new Set([seed]);
  for (let k = 0; k < members.length; k++) {
    const { cell, place, steps: own } = members[k] as (typeof members)[number];
    for (const axis of [0, 1] as const)
      for (const way of [1, -1] as const) {
        const next = [cell[0] + (axis === 0 ? way : 0), cell[1] + (axis === 1 ? way : 0)] as const;
        if (known.has(`${next[0]} ${next[1]}`)) continue;
        const [dx, dy] = own[axis];
        const wanted: Point = [place.at[0] + way * dx, place.at[1] + way * dy];
        const found = nearest(places, wanted, ASIDE * Math.hypot(dx, dy));
        if (!found || used.has(found) || !alike(found.side, place.side)) continue;
        const step: Point = [way * (found.at[0] - place.at[0]), way * (found.at[1] - place.at[1])];
        known.add(`${next[0]} ${next[1]}`);
        used.add(found);
        members.push({
          cell: next,
          place: found,
          steps: axis === 0 ? [step, own[1]] : [own[0], step],
        });
      }
  }
  return members.map(({ cell, place }) => ({ cell, place }));
}

function nearest(places: readonly EvenPlace[], [x, y]: Point, reach: number): EvenPlace | null {
  let best: EvenPlace | null = null;
  let least = reach;
  for (const place of places) {
    const away = Math.hypot(place.at[0] - x, place.at[1] - y);
    if (away < least) [best, least] = [place, away];
  }
  return best;
}

/** The homography of a lattice, with the members beyond gaps that it foretells; null on one line. */
function fitted(members: readonly Member[], places: readonly EvenPlace[]): Lattice | null {
  let all = members;
  let toPicture = homographyThrough(all);
  for (let round = 0; toPicture && round < 3; round++) {
    all = onCells(toPicture, places, all);
    toPicture = all.length >= FEWEST ? homographyThrough(all) : null;
  }
  if (!toPicture) return null;
  const map = toPicture;
  const shares = all.map(({ cell, place }) => place.side / stepAt(map, cell));
  return {
    members: all,
    toPicture,
    // The root mean square of a normal error in the plane is 1.2011 of its median length.
    residual: 1.2011 * median(offsOf(all, map)),
    sideShare: median(shares),
  };
}

/** The shorter of the two steps at a cell, in pixels. */
export function stepAt(map: Homography, [column, row]: Point): number {
  const [x, y] = carried(map, [column, row]);
  const ends = [carried(map, [column + 1, row]), carried(map, [column, row + 1])];
  return Math.min(...ends.map(([u, v]) => Math.hypot(u - x, v - y)));
}

/** The places that lie on cells of a homography, one to a cell, near those that are known. */
function onCells(map: Homography, places: readonly EvenPlace[], known: readonly Member[]) {
  const columns = known.map(({ cell }) => cell[0]);
  const rows = known.map(({ cell }) => cell[1]);
  const side = median(known.map(({ place }) => place.side));
  const found: Member[] = [];
  for (let row = Math.min(...rows) - 2; row <= Math.max(...rows) + 2; row++)
    for (let column = Math.min(...columns) - 2; column <= Math.max(...columns) + 2; column++) {
      const cell = [column, row] as const;
      const place = nearest(places, carried(map, cell), OFF_CELL * stepAt(map, cell));
      if (place && alike(place.side, side)) found.push({ cell, place });
    }
  return found;
}

/** How much a lattice may be foreshortened from one cell to the next. Judgement, no source. */
const FORESHORTENED = 0.04;

/**
 * The homography nearest to all members: the direct linear form with each equation divided by its
 * depth, six times (`hartley:2003`, 4.1.2), members that misfit pulling less and the two perspective
 * terms held near nothing where few members tell of them. Null where they lie on one line.
 */
function homographyThrough(members: readonly Member[]): Homography | null {
  const spans = [0, 1].map((k) => new Set(members.map(({ cell }) => cell[k as 0 | 1])).size);
  if (Math.min(...spans) < 2) return null;
  const scale = Math.max(...members.flatMap(({ place: { at } }) => at));
  let h: readonly number[] = [0, 0, 0, 0, 0, 0, 0, 0];
  let pulls = members.map(() => 1);
  for (let round = 0; round < ROUNDS; round++) {
    const [p, q] = [h[6] as number, h[7] as number];
    const rows: number[][] = [];
    const targets: number[] = [];
    const weights: number[] = [];
    members.forEach(({ cell: [x, y], place: { at } }, k) => {
      const [u, v] = [at[0] / scale, at[1] / scale];
      const weight = (pulls[k] as number) / (1 + p * x + q * y) ** 2;
      rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]);
      targets.push(u, v);
      weights.push(weight, weight);
    });
    // A pixel of the reduced picture is what a member may be off.
    for (const k of [6, 7]) {
      rows.push(Array.from({ length: 8 }, (_, i) => (i === k ? 1 : 0)));
      targets.push(0);
      weights.push((1 / scale / FORESHORTENED) ** 2);
    }
    h = leastSquares(rows, targets, weights);
    pulls = pullsOf(members, scaled(h, scale));
  }
  return scaled(h, scale);
}

const ROUNDS = 6;

/** Members that lie far off for what is usual pull less: part of them may be covered. */
function pullsOf(members: readonly Member[], map: Homography): number[] {
  const offs = offsOf(members, map);
  const usual = median(offs);
  return offs.map((off) => 1 / (1 + (off / (2 * usual + 0.1)) ** 2) ** 2);
}

/** How far each member lies from its cell, in pixels. */
function offsOf(members: readonly Member[], map: Homography): readonly number[] {
  return members.map(({ cell, place: { at } }) => {
    const [x, y] = carried(map, cell);
    return Math.hypot(x - at[0], y - at[1]);
  });
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] as number;
}

function scaled(h: readonly number[], scale: number): Homography {
  return [...h.map((value, k) => (k < 6 ? value * scale : value)), 1] as unknown as Homography;
}
