import { type KeyboardEvent, useState } from 'react';
import type { Pen } from './Glass.tsx';
import type { Part, Place } from './part.ts';
import { arrowOf } from './useView.ts';

/** A loupe over a card: it follows the pointer or the keys, and shows some millimetres at full detail. */
export interface Loupe extends Pen {
  readonly open: boolean;
  /** What it shows, in card millimetres. */
  readonly part: Part;
  /** Its middle. */
  readonly at: Place;
  readonly toggle: () => void;
}

/** Millimetres across that it can show, the least first. */
const SPANS = [2, 4, 8, 16] as const;

/** The loupe for a card of this size. Arrow keys go 1 mm, with Shift 0.1 mm; [ and ] show more or less. */
export function useLoupe([width, height]: Place): Loupe {
  const [on, setOn] = useState(false);
  const [at, setAt] = useState<Place>([width / 2, height / 2]);
  const [span, setSpan] = useState(2);
  const go = ([x, y]: Place) =>
    setAt([Math.min(width, Math.max(0, x)), Math.min(height, Math.max(0, y))]);
  const key = ({ key: pressed, shiftKey }: KeyboardEvent): boolean => {
    const arrow = arrowOf(pressed);
    const step = shiftKey ? 0.1 : 1;
    if (arrow) go([at[0] + step * arrow[0], at[1] + step * arrow[1]]);
    else if (pressed === '[') setSpan((last) => Math.min(SPANS.length - 1, last + 1));
    else if (pressed === ']') setSpan((last) => Math.max(0, last - 1));
    else if (pressed === 'Escape' || pressed.toLowerCase() === 'l') setOn(false);
    else return false;
    return true;
  };
  const across = SPANS[span] ?? 8;
  const part = { x: at[0] - across / 2, y: at[1] - across / 2, width: across, height: across };
  return {
    ...{ open: on, part, at, key },
    toggle: () => setOn((last) => !last),
    begin: go,
    on: go,
    over: go,
  };
}
