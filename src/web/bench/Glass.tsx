import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef } from 'react';
import { fromBox, type Part, type Place } from './part.ts';
import { type View, viewKey } from './useView.ts';

/** A pen on the glass, where something is being drawn. */
export interface Pen {
  readonly begin: (at: Place) => void;
  readonly on: (at: Place) => void;
  /** The pointer passes over, nothing pressed. */
  readonly over?: (at: Place) => void;
  /** True where the key was the pen's. */
  readonly key: (event: KeyboardEvent) => boolean;
}

interface Props {
  readonly label: string;
  readonly view: View;
  readonly box: Part;
  readonly pen?: Pen | undefined;
  /** What further single keys do here. */
  readonly keys?: Readonly<Record<string, () => void>>;
  readonly children?: ReactNode;
}

/** What lies over a picture and takes wheel, pointer and keys. */
export function Glass({ label, view, box, pen, keys: more = {}, children }: Props) {
  const glass = useRef<HTMLDivElement>(null);
  const last = useRef<Place>(undefined);
  useWheelOn(glass, view);
  const within = (event: PointerEvent): Place => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    return [event.clientX - left + box.x, event.clientY - top + box.y];
  };
  const begin = (event: PointerEvent) => {
    if (event.button !== 0 || event.target !== glass.current) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    last.current = within(event);
    pen?.begin(fromBox(view.part, box, last.current));
  };
  const on = (event: PointerEvent) => {
    const at = within(event);
    if (!last.current) {
      pen?.over?.(fromBox(view.part, box, at));
      return;
    }
    if (pen) pen.on(fromBox(view.part, box, at));
    else view.move((last.current[0] - at[0]) / box.width, (last.current[1] - at[1]) / box.height);
    last.current = at;
  };
  const end = () => {
    last.current = undefined;
  };
  const keys = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const own = more[event.key.toLowerCase()];
    if (pen?.key(event) || viewKey(view, event.key)) event.preventDefault();
    else if (own) {
      event.preventDefault();
      own();
    }
  };
  return (
    <div
      className={glassName(pen !== undefined, view.zoom)}
      ref={glass}
      role="application"
      aria-label={label}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys that zoom and move work here
      tabIndex={0}
      style={{ left: box.x, top: box.y, width: box.width, height: box.height }}
      onPointerDown={begin}
      onPointerMove={on}
      onPointerUp={end}
      onPointerCancel={end}
      onKeyDown={keys}
    >
      {children}
    </div>
  );
}

function glassName(pen: boolean, zoom: number): string {
  if (pen) return 'glass drawing-pen';
  return zoom > 1.01 ? 'glass closer' : 'glass';
}

/** The wheel zooms at the pointer: alone where the glass has the keys, with Ctrl everywhere. */
function useWheelOn(glass: React.RefObject<HTMLDivElement | null>, { closer }: View): void {
  useEffect(() => {
    const element = glass.current;
    if (!element) return;
    const turn = (event: WheelEvent) => {
      if (!event.ctrlKey && !element.contains(document.activeElement)) return;
      event.preventDefault();
      const { left, top, width, height } = element.getBoundingClientRect();
      const at = [(event.clientX - left) / width, (event.clientY - top) / height] as const;
      closer(event.deltaY < 0 ? 1.25 : 0.8, at);
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [glass, closer]);
}
