import { useCallback, useMemo, useState } from 'react';
import { moved, type Part, type Place, whole, zoomed, zoomOf } from './part.ts';

/** Which part is shown, and how to look closer and elsewhere. */
export interface View {
  readonly size: Place;
  readonly part: Part;
  readonly zoom: number;
  readonly closer: (factor: number, at?: Place) => void;
  readonly move: (across: number, down: number) => void;
  readonly all: () => void;
}

/** Looks at a card or picture of this size, at all of it first. */
export function useView([width, height]: Place): View {
  const size = useMemo(() => [width, height] as const, [width, height]);
  const [kept, setPart] = useState<{ readonly size: Place; readonly part: Part }>();
  const part = kept?.size === size ? kept.part : whole(size);
  const set = useCallback(
    (next: (part: Part) => Part) =>
      setPart((last) => ({ size, part: next(last?.size === size ? last.part : whole(size)) })),
    [size],
  );
  return {
    size,
    part,
    zoom: zoomOf(part, size),
    closer: useCallback(
      (factor: number, at?: Place) => set((last) => zoomed(last, size, factor, at)),
      [set, size],
    ),
    move: useCallback(
      (across: number, down: number) => set((last) => moved(last, size, [across, down])),
      [set, size],
    ),
    all: useCallback(() => set(() => whole(size)), [set, size]),
  };
}

/** The keys that look closer and elsewhere; true where the key was one of them. */
export function viewKey(view: View, key: string, at?: Place): boolean {
  const arrow = arrowOf(key);
  if (arrow) view.move(0.2 * arrow[0], 0.2 * arrow[1]);
  else if (key === '+' || key === '=') view.closer(1.5, at);
  else if (key === '-') view.closer(1 / 1.5, at);
  else if (key === '0') view.all();
  else return false;
  return true;
}

/** One step of the arrow keys across and down; undefined for other keys. */
export function arrowOf(key: string): Place | undefined {
  return ARROWS.get(key);
}

const ARROWS: ReadonlyMap<string, Place> = new Map([
  ['ArrowLeft', [-1, 0]],
  ['ArrowRight', [1, 0]],
  ['ArrowUp', [0, -1]],
  ['ArrowDown', [0, 1]],
]);
