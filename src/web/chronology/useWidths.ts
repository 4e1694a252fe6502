import { type RefObject, useLayoutEffect, useState } from 'react';

/** Widths of the drawn columns, in pixels; `stacked` where the close-up stands under the name. */
export interface Widths {
  readonly stacked: boolean;
  readonly long: number;
  readonly close: number;
}

/** Splits what the names and days leave between the two axes. */
export function widthsOf(inner: number): Widths {
  if (inner < 600) {
    const width = Math.max(120, inner - 8);
    return { stacked: true, long: width, close: width };
  }
  const name = Math.min(240, Math.round(inner * 0.24));
  const day = 136;
  const rest = Math.max(200, inner - name - day - 32);
  const close = Math.max(150, Math.round(rest * 0.42));
  return { stacked: false, long: rest - close, close };
}

/** The widths for an element, followed as it grows and shrinks. */
export function useWidths(element: RefObject<HTMLElement | null>): Widths {
  const [widths, setWidths] = useState(() => widthsOf(900));
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const measure = () => {
      const next = widthsOf(watched.clientWidth);
      setWidths((now) => (now.long === next.long && now.close === next.close ? now : next));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return widths;
}
