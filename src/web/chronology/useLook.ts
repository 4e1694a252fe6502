import { type RefObject, useMemo } from 'react';
import { yearTicks } from '../draw/index.ts';
import type { LaneLook } from './Lane.tsx';
import type { Axes } from './useAxes.ts';
import { useWidths } from './useWidths.ts';

const MANY = 60;

/** How lanes are drawn: sizes, the scale of the years and its lines, shared by all of them. */
export function useLook(
  scroller: RefObject<HTMLElement | null>,
  axes: Axes,
  count: number,
): LaneLook {
  const { long, close, stacked } = useWidths(scroller);
  const [from, to] = axes.span;
  const reach = axes.reach;
  return useMemo(() => {
    const scale = { from, to, width: long };
    const height = stacked ? 84 : count > MANY ? 28 : 44;
    const ticks = yearTicks(scale);
    const path = (major: boolean) =>
      ticks
        .filter((tick) => tick.major === major)
        .map((tick) => `M${tick.x.toFixed(1)} 0v${height}`)
        .join('');
    return {
      height,
      stacked,
      scale,
      reach,
      close,
      lines: { major: path(true), minor: path(false) },
    };
  }, [from, to, long, close, stacked, count, reach]);
}
