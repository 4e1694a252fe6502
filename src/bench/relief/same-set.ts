import type { CardMap } from '../geometry/card-map.ts';
import type { PointPx } from '../geometry/points.ts';
import { type Grid, lightOf } from './grid.ts';
import { FARTHEST_MM, type Moved, movedBetween } from './moved.ts';
import { alikeLamps } from './same-lamp.ts';
import type { LampPicture, LampUsed } from './types.ts';
import type { Placed } from './window.ts';

/** Pictures that can be compared point by point, and what was wrong with the others. */
export interface SameSet {
  readonly placed: readonly Placed[];
  readonly lights: readonly Float32Array[];
  readonly lamps: readonly LampUsed[];
  readonly faults: readonly string[];
}

/** Pictures by which a depth can be told: three unknowns and one to check them by. */
export const LEAST_PICTURES = 4;
/** A shift up to this is taken out, mm; beyond it the lamp's place is no longer the one that was given. */
const TAKEN_OUT_MM = 0.3;
/** A shift under this is left as it is, mm: gloss alone feigns up to 0.016 on unsmoothed prints, as measured. */
const LEFT_MM = 0.03;
/** A turn that moves the card's corners by up to this is left as it is, mm (Judgement, no source). */
const TURN_MM = 0.06;
/** Correlation under which two pictures do not show the same print (Judgement, no source). */
const LIKE = 0.3;

/**
 * Lays pictures on the first one: small shifts are taken out; pictures in which the card moved
 * farther, or the lamp did not move, are left out and named.
 */
export function sameSetOf(
  pictures: readonly LampPicture[],
  lamps: readonly LampUsed[],
  map: CardMap,
  grid: Grid,
): SameSet {
  const first = pictures[0] as LampPicture;
  const still = lightOf(first.picture, grid);
  const faults: string[] = [];
  const kept = pictures.flatMap((one, k) => {
    const own = k === 0 ? still : lightOf(one.picture, grid);
    const moved = k === 0 ? null : movedBetween(map, grid, still, own);
    const fault = moved && movedFault(nameOf(one, k), moved, grid);
    if (fault) {
      faults.push(fault);
      return [];
    }
    const px = correctionOf(moved, grid);
    const light = px[0] === 0 && px[1] === 0 ? own : lightOf(one.picture, grid, px);
    const placed = { picture: one.picture, moved: px };
    return [{ name: nameOf(one, k), placed, light, lamp: lamps[k] as LampUsed }];
  });
  const { left, words } = alikeLamps(kept, map, grid);
  const used = kept.filter((_, k) => !left.has(k));
  const all = [...faults, ...words];
  return {
    placed: used.map(({ placed }) => placed),
    lights: used.map(({ light }) => light),
    lamps: used.map(({ lamp }) => lamp),
    faults: used.length < LEAST_PICTURES ? [...all, tooFew(used.length)] : all,
  };
}

/** What is wrong with a set of too few pictures. */
export function tooFew(count: number): string {
  return `Depth needs at least ${LEAST_PICTURES} pictures under a lamp that was moved, found ${count} that can be used.`;
}

function nameOf({ name }: LampPicture, k: number): string {
  return name ?? `Picture ${k + 1}`;
}

function movedFault(name: string, moved: Moved, grid: Grid): string | null {
  const again = 'photograph it again with card and camera fixed, only the lamp moved';
  if (moved.likeness < LIKE)
    return `${name} does not show the print as the first picture does, or the card moved by more than ${FARTHEST_MM} mm: ${again}.`;
  const mm = Math.hypot(...moved.blocks) / grid.perMm;
  if (mm > TAKEN_OUT_MM)
    return `${name} shows the card ${mm.toFixed(2)} mm from where it lies in the first picture: ${again}.`;
  if (cornersMm(moved, grid) > TURN_MM)
    return `${name} shows the card turned by ${((Math.abs(moved.turn) * 180) / Math.PI).toFixed(1)} degrees against the first picture: ${again}.`;
  return null;
}

function cornersMm({ turn }: Moved, { width, height, perMm }: Grid): number {
  return (Math.abs(turn) * Math.hypot(width, height)) / 2 / perMm;
}

function correctionOf(moved: Moved | null, grid: Grid): PointPx {
  if (!moved || Math.hypot(...moved.blocks) / grid.perMm < LEFT_MM) return [0, 0];
  return [moved.blocks[0] * grid.block, moved.blocks[1] * grid.block];
}
