import { type RefObject, useEffect, useState } from 'react';
import { usePrinting } from '../app/media.ts';
import { type Rows, rowsInView } from '../draw/index.ts';

/** Height of the head that stays over the lanes, in pixels. */
const HEAD = 44;
/** Rows are put in and taken out of the document this many at a time. */
const STEP = 6;

interface Measured {
  readonly scroller: RefObject<HTMLElement | null>;
  /** Height of a row in pixels. */
  readonly row: number;
  readonly count: number;
}

function lanesIn(scroller: HTMLElement): HTMLElement | null {
  return scroller.querySelector<HTMLElement>('#lanes');
}

function measure({ scroller, row, count }: Measured, spare: number): Rows {
  const element = scroller.current;
  const lanes = element && lanesIn(element);
  if (!element || !lanes) return { from: 0, to: Math.min(count, 40) };
  const top = element.getBoundingClientRect().top - lanes.getBoundingClientRect().top;
  return rowsInView(top, element.clientHeight, row, count, spare);
}

function inSteps({ from, to }: Rows, count: number): Rows {
  return { from: from - (from % STEP), to: Math.min(count, to + STEP - (to % STEP)) };
}

function useMeasured(measured: Measured, spare: number, step: boolean): Rows {
  const { scroller, row, count } = measured;
  const [rows, setRows] = useState<Rows>({ from: 0, to: Math.min(count, 40) });
  useEffect(() => {
    const element = scroller.current;
    if (!element) return;
    const update = () => {
      const found = measure({ scroller, row, count }, spare);
      const next = step ? inSteps(found, count) : found;
      setRows((now) => (now.from === next.from && now.to === next.to ? now : next));
    };
    update();
    element.addEventListener('scroll', update, { passive: true });
    const observer = new ResizeObserver(update);
    observer.observe(element);
    return () => {
      element.removeEventListener('scroll', update);
      observer.disconnect();
    };
  }, [scroller, row, count, spare, step]);
  return rows;
}

/** The rows that have to be in the document: those in view and some more, or all on paper. */
export function useRows(measured: Measured): Rows {
  const rows = useMeasured(measured, 12, true);
  return usePrinting() ? { from: 0, to: measured.count } : rows;
}

/** The rows that are in view now. */
export function useSeen(measured: Measured): Rows {
  return useMeasured(measured, 0, false);
}

/** Scrolls a row into view, below the head. */
export function bring(scroller: HTMLElement, row: number, at: number): void {
  const lanes = lanesIn(scroller);
  if (!lanes) return;
  const top = lanes.getBoundingClientRect().top - scroller.getBoundingClientRect().top + at * row;
  if (top < HEAD) scroller.scrollBy(0, top - HEAD);
  else if (top + row > scroller.clientHeight) {
    scroller.scrollBy(0, top + row - scroller.clientHeight);
  }
}
