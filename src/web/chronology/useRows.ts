import { type RefObject, useCallback, useEffect, useState } from 'react';
import { usePrinting } from '../app/media.ts';
import { type Rows, rowsInView } from '../draw/index.ts';

function measure(scroller: HTMLElement, row: number, count: number, spare?: number): Rows {
  const lanes = scroller.querySelector<HTMLElement>('#lanes');
  const top = lanes
    ? scroller.getBoundingClientRect().top - lanes.getBoundingClientRect().top
    : scroller.scrollTop;
  return rowsInView(top, scroller.clientHeight, row, count, spare);
}

/** `rows` are in the document, `seen` are in view; `bring` scrolls one into view. */
export interface RowsSeen {
  readonly rows: Rows;
  readonly seen: Rows;
  readonly bring: (at: number) => void;
}

/** The rows in view of a scrolling element, and the way to bring one into view. */
export function useRows(
  scroller: RefObject<HTMLElement | null>,
  row: number,
  count: number,
): RowsSeen {
  const [rows, setRows] = useState<Rows>({ from: 0, to: Math.min(count, 40) });
  const [seen, setSeen] = useState<Rows>({ from: 0, to: 0 });
  const printing = usePrinting();
  const update = useCallback(() => {
    const element = scroller.current;
    if (!element) return;
    const next = measure(element, row, count);
    const inView = measure(element, row, count, 0);
    setSeen((now) => (now.from === inView.from && now.to === inView.to ? now : inView));
    setRows((now) => {
      const near = Math.abs(now.from - next.from) < 6 && Math.abs(now.to - next.to) < 6;
      return near && now.to <= count && now.to >= Math.min(count, next.to - 6) ? now : next;
    });
  }, [scroller, row, count]);
  useEffect(() => {
    const element = scroller.current;
    if (!element) return;
    setRows(measure(element, row, count));
    setSeen(measure(element, row, count, 0));
    element.addEventListener('scroll', update, { passive: true });
    const observer = new ResizeObserver(update);
    observer.observe(element);
    return () => {
      element.removeEventListener('scroll', update);
      observer.disconnect();
    };
  }, [scroller, update, row, count]);
  const bring = useCallback(
    (at: number) => {
      const element = scroller.current;
      const lanes = element?.querySelector<HTMLElement>('#lanes');
      if (!element || !lanes) return;
      const head = 44;
      const top =
        lanes.getBoundingClientRect().top - element.getBoundingClientRect().top + at * row;
      if (top < head) element.scrollBy(0, top - head);
      else if (top + row > element.clientHeight)
        element.scrollBy(0, top + row - element.clientHeight);
    },
    [scroller, row],
  );
  return { rows: printing ? { from: 0, to: count } : rows, seen, bring };
}
