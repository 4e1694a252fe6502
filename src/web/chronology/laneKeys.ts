import type { KeyboardEvent } from 'react';
import { singleKeys } from '../app/shortcuts.ts';
import type { Axes } from './useAxes.ts';

interface Work {
  readonly count: number;
  readonly active: number;
  readonly go: (at: number) => void;
  readonly open: () => void;
  readonly close: () => void;
  readonly axes: Axes;
}

const MOVES: Record<string, (at: number, count: number) => number> = {
  ArrowDown: (at) => at + 1,
  ArrowUp: (at) => at - 1,
  PageDown: (at) => at + 10,
  PageUp: (at) => at - 10,
  Home: () => 0,
  End: (_, count) => count - 1,
};

const ZOOMS: Record<string, (axes: Axes) => void> = {
  '+': (axes) => axes.zoom(2),
  '=': (axes) => axes.zoom(2),
  '-': (axes) => axes.zoom(0.5),
  ']': (axes) => axes.closer(-1),
  '[': (axes) => axes.closer(1),
  '0': (axes) => axes.reset(),
};

/** Keys while the lanes hold the focus: arrows move, Enter opens, Esc closes, + − [ ] 0 zoom. */
export function laneKeys({ count, active, go, open, close, axes }: Work) {
  return (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const move = MOVES[event.key];
    if (move) go(Math.max(0, Math.min(count - 1, move(active, count))));
    else if (event.key === 'ArrowLeft') axes.pan(-0.2);
    else if (event.key === 'ArrowRight') axes.pan(0.2);
    else if (event.key === 'Enter') open();
    else if (event.key === 'Escape') close();
    else if (singleKeys() && ZOOMS[event.key]) ZOOMS[event.key]?.(axes);
    else return;
    event.preventDefault();
  };
}
