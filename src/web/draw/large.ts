import type { Bar } from './closeup.ts';
import type { DayMass } from './ribbon.ts';
import type { Scale } from './scale.ts';

/** The whole distribution of one printing, drawn large. */
export interface Large {
  readonly scale: Scale;
  readonly bars: readonly Bar[];
  /** Largest probability of one bar: the top of the upright axis. */
  readonly top: number;
  /** Days put together in one bar. */
  readonly daysPerBar: number;
}

/** Largest probability a bar may hold before the upright axis takes the next step. */
const TOPS = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1];

/**
 * Bars with a true upright axis (height in proportion to probability), at least `least` pixels
 * wide; where the days are too many for that, several days share a bar, and `daysPerBar` says so.
 */
export function large(
  days: readonly DayMass[],
  size: { readonly width: number; readonly height: number },
  least = 2,
): Large {
  const known = days.length > 0 ? days : ([[0, 0]] as const);
  const first = Math.min(...known.map(([day]) => day));
  const last = Math.max(...known.map(([day]) => day));
  const air = Math.max(3, Math.ceil((last - first) * 0.04));
  const from = first - air;
  const count = last + air + 1 - from;
  const daysPerBar = Math.max(1, Math.ceil((count * least) / size.width));
  const bins = new Map<number, number>();
  for (const [day, p] of days) {
    const bin = Math.floor((day - from) / daysPerBar);
    bins.set(bin, (bins.get(bin) ?? 0) + p);
  }
  const scale = { from, to: from + count, width: size.width };
  const most = Math.max(0.001, ...bins.values());
  const top = TOPS.find((step) => step >= most) ?? 1;
  const step = (daysPerBar / count) * size.width;
  const width = step > 4 ? Math.min(step - 1, 12) : step;
  const bars = [...bins].map(([bin, p]) => ({
    x: bin * step + (step - width) / 2,
    width,
    height: (p / top) * size.height,
    p,
  }));
  return { scale, bars, top, daysPerBar };
}
