import { type RefObject, useEffect } from 'react';
import type { Axes } from './useAxes.ts';

/** Ctrl and the wheel zoom the axis under the pointer; the wheel alone scrolls as ever. */
export function useWheel(scroller: RefObject<HTMLElement | null>, axes: Axes): void {
  const { zoom, closer } = axes;
  useEffect(() => {
    const element = scroller.current;
    if (!element) return;
    const turn = (event: WheelEvent) => {
      if (!event.ctrlKey) return;
      const axis = (event.target as Element).closest('.lane-drawn, .head-drawn');
      const drawn = axis?.querySelectorAll('svg') ?? [];
      const [long, close] = drawn.length > 1 ? drawn : [undefined, drawn[0]];
      if (!close) return;
      event.preventDefault();
      const within = long?.getBoundingClientRect();
      if (within && event.clientX < within.right) {
        zoom(event.deltaY < 0 ? 1.25 : 0.8, (event.clientX - within.left) / within.width);
      } else closer(event.deltaY < 0 ? -1 : 1);
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [scroller, zoom, closer]);
}
