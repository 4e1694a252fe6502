import { type RefObject, useLayoutEffect, useState, useSyncExternalStore } from 'react';
import { flushSync } from 'react-dom';

/** Whether a media query holds, followed as it changes. */
export function useMedia(query: string): boolean {
  const list = window.matchMedia(query);
  return useSyncExternalStore(
    (changed) => {
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    () => list.matches,
  );
}

let printing = false;

function followPrinting(changed: () => void): () => void {
  const list = window.matchMedia('print');
  const set = (to: boolean) => () => {
    printing = to;
    flushSync(changed);
  };
  const begin = set(true);
  const end = set(false);
  window.addEventListener('beforeprint', begin);
  window.addEventListener('afterprint', end);
  list.addEventListener('change', changed);
  return () => {
    window.removeEventListener('beforeprint', begin);
    window.removeEventListener('afterprint', end);
    list.removeEventListener('change', changed);
  };
}

/** True while the page is being printed: every lane must be there then, at once. */
export function usePrinting(): boolean {
  return useSyncExternalStore(followPrinting, () => printing || window.matchMedia('print').matches);
}

/** The inner width of an element in pixels, followed as it grows and shrinks. */
export function useWidth(element: RefObject<HTMLElement | null>, first = 640): number {
  const [width, setWidth] = useState(first);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const measure = () => setWidth(Math.max(200, watched.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
