import { type RefObject, useMemo } from 'react';
import { useWidth } from '../app/media.ts';
import { yearTicks } from '../draw/index.ts';
import type { LaneLook } from './Lane.tsx';
import type { Axes } from './useAxes.ts';
import { widthsOf } from './widths.ts';

const MANY = 60;
/** Left and right padding of the matter, as in looks/frame.css and looks/narrow.css. */
const PADDING = { wide: 68, narrow: 28 };

/** How lanes are drawn: sizes, the scale of the years and its lines, shared by all of them. */
export function useLook(
  scroller: RefObject<HTMLElement | null>,
  axes: Axes,
  count: number,
): LaneLook {
  const inner = useWidth(scroller, 900) - PADDING[window.innerWidth < 640 ? 'narrow' : 'wide'];
  const { long, close, stacked } = widthsOf(inner);
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
