import { type Scale, xOf } from './scale.ts';

/** A day (whole days since 1970) with its probability. */
export type DayMass = readonly [number, number];

/** A stretch of a ribbon: `ink` is its depth between 0 and 1. */
export interface Inked {
  readonly x: number;
  readonly width: number;
  readonly ink: number;
}

/**
 * A distribution over days as a ribbon: cells of `cell` pixels, each as deep as the probability
 * that the day lies in it (its square root, so that one in a hundred can still be seen).
 * Neighbouring cells of one depth are joined. It misleads where two printings are compared at
 * different zooms: a cell holds more days when zoomed out.
 */
export function ribbon(days: readonly DayMass[], scale: Scale, cell = 3): readonly Inked[] {
  const cells = new Map<number, number>();
  for (const [day, p] of days) {
    const x = xOf(scale, day + 0.5);
    if (x < 0 || x > scale.width) continue;
    const index = Math.floor(x / cell);
    cells.set(index, (cells.get(index) ?? 0) + p);
  }
  const inked: Inked[] = [];
  for (const index of [...cells.keys()].sort((a, b) => a - b)) {
    const ink = depth(cells.get(index) ?? 0);
    const last = inked.at(-1);
    const x = index * cell;
    if (ink === 0) continue;
    if (last && last.ink === ink && last.x + last.width === x) {
      inked[inked.length - 1] = { ...last, width: last.width + cell };
    } else inked.push({ x, width: cell, ink });
  }
  return inked;
}

/** Depth of ink for a probability, in sixteen steps; nothing under one in two hundred. */
export function depth(p: number): number {
  if (p < 0.005) return 0;
  return Math.max(1, Math.round(Math.sqrt(Math.min(1, p)) * 16)) / 16;
}
