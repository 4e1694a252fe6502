import type { DayMass } from './ribbon.ts';

/** A bar of the close-up, standing on its base line. */
export interface Bar {
  readonly x: number;
  readonly width: number;
  readonly height: number;
  readonly p: number;
}

export interface Closeup {
  readonly bars: readonly Bar[];
  /** Probability that lies before and after the days shown. */
  readonly before: number;
  readonly after: number;
}

/** Half-widths of the close-up in days, from nearest to widest. */
export const REACHES = [7, 14, 28, 56, 84, 168, 365, 730] as const;

/**
 * The days round `centre`, a bar a day, as high as the square root of the probability (a day of
 * one in a hundred is a tenth as high as a sure one). Where a day is narrower than a pixel, days
 * are put together into pixels.
 */
export function closeup(
  days: readonly DayMass[],
  centre: number,
  reach: number,
  size: { readonly width: number; readonly height: number },
): Closeup {
  const perDay = size.width / (2 * reach + 1);
  const columns = new Map<number, number>();
  let before = 0;
  let after = 0;
  for (const [day, p] of days) {
    const offset = day - centre;
    if (offset < -reach) before += p;
    else if (offset > reach) after += p;
    else {
      const column = perDay >= 1 ? offset + reach : Math.floor((offset + reach) * perDay);
      columns.set(column, (columns.get(column) ?? 0) + p);
    }
  }
  const step = Math.max(1, perDay);
  const width = Math.min(step > 3 ? step - 1 : step, 5);
  const bars = [...columns].map(([column, p]) => ({
    x: column * step + (step - width) / 2,
    width,
    height: Math.max(1, Math.sqrt(p) * size.height),
    p,
  }));
  return { bars: bars.filter((bar) => bar.p >= 0.003), before, after };
}

/** Middle of a day in the close-up, in pixels. */
export function offsetX(offset: number, reach: number, width: number): number {
  return ((offset + reach + 0.5) / (2 * reach + 1)) * width;
}

/** Offsets from the best day that the head of the close-up names. */
export function offsetTicks(reach: number): readonly number[] {
  const step = [1, 2, 7, 14, 28, 56, 91, 182, 365].find((days) => days * 3 >= reach) ?? 365;
  const ticks: number[] = [];
  for (let offset = -Math.floor(reach / step) * step; offset <= reach; offset += step) {
    ticks.push(offset);
  }
  return ticks;
}
