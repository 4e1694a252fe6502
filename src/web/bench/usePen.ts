import { type KeyboardEvent, useState } from 'react';
import type { Pen } from './Glass.tsx';
import type { Place } from './part.ts';
import { arrowOf } from './useView.ts';

/** A pen that draws one line of places in card millimetres, by pointer or by keys. */
export interface MarkPen extends Pen {
  readonly points: readonly Place[];
  /** Where the keys would set the next point. */
  readonly cursor: Place;
  readonly clear: () => void;
}

/** Millimetres between places that the pointer leaves. */
const STEP = 0.25;
/** Most places that a mark is sent with. */
const MOST = 400;

/** The pen for a card of this size. Arrow keys go 1 mm, with Shift 0.1 mm; Enter sets a point. */
export function usePen([width, height]: Place): MarkPen {
  const [points, setPoints] = useState<readonly Place[]>([]);
  const [cursor, setCursor] = useState<Place>([width / 2, height / 2]);
  const onCard = ([x, y]: Place): Place => [
    Math.min(width, Math.max(0, x)),
    Math.min(height, Math.max(0, y)),
  ];
  const add = (at: Place) => {
    const place = onCard(at);
    setCursor(place);
    setPoints((last) => (far(last.at(-1), place) && last.length < MOST ? [...last, place] : last));
  };
  const key = ({ key: pressed, shiftKey }: KeyboardEvent): boolean => {
    const arrow = arrowOf(pressed);
    const step = shiftKey ? 0.1 : 1;
    if (arrow) setCursor(([x, y]) => onCard([x + step * arrow[0], y + step * arrow[1]]));
    else if (pressed === 'Enter') add(cursor);
    else if (pressed === 'Backspace') setPoints((last) => last.slice(0, -1));
    else return false;
    return true;
  };
  return {
    points,
    cursor,
    key,
    on: add,
    begin: (at) => {
      setPoints([]);
      add(at);
    },
    clear: () => setPoints([]),
  };
}

function far(last: Place | undefined, next: Place): boolean {
  return !last || Math.hypot(next[0] - last[0], next[1] - last[1]) >= STEP;
}
