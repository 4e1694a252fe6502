import type { KeyboardEvent, PointerEvent } from 'react';
import { capital } from '../words/index.ts';
import { Opening } from './Opening.tsx';
import { atOrigin, fromBox, type Part, type Place, toBox } from './part.ts';
import { cornerMoved, middleOf, type Quad, sideMoved } from './quad.ts';
import type { Movable, Moving } from './useMoving.ts';
import { arrowOf, type View, viewKey } from './useView.ts';

interface Drawn {
  readonly view: View;
  readonly box: Part;
}

/** An outline or a frame on the picture. */
export function OutlineDrawn({ quad, view, box }: Drawn & { readonly quad: Quad | null }) {
  if (!quad) return null;
  const local = atOrigin(box);
  const places = quad.map((place) => toBox(view.part, local, place).map((n) => n.toFixed(1)));
  const path = `M${places.map((place) => place.join(' ')).join('L')}Z`;
  return (
    <Opening box={box} name="outline">
      <path className="paper" d={path} />
      <path className="measure" d={path} />
    </Opening>
  );
}

const CORNERS = ['upper left', 'upper right', 'lower right', 'lower left'] as const;
const SIDES = ['upper', 'right', 'lower', 'left'] as const;

/** Corners and sides to take hold of: by pointer, or with Tab and the arrow keys. */
export function Handles({ moving, view, box }: Drawn & { readonly moving: Moving }) {
  const { what, quad, take } = moving;
  if (!what || !quad) return null;
  const shared = { view, box };
  return [0, 1, 2, 3].flatMap((at) => {
    const [corner, middle] = [quad[at] as Place, middleOf(quad, at)];
    return [
      <Handle
        key={`corner ${at}`}
        {...shared}
        name={nameOf(what, `corner ${CORNERS[at]}`)}
        place={corner}
        put={(place) => take(cornerMoved(quad, at, place))}
      />,
      <Handle
        key={`side ${at}`}
        {...shared}
        round
        name={nameOf(what, `${SIDES[at]} side`)}
        place={middle}
        put={([x, y]) => take(sideMoved(quad, at, [x - middle[0], y - middle[1]]))}
      />,
    ];
  });
}

function nameOf(what: Movable, name: string): string {
  return capital(what === 'frame' ? `frame’s ${name}` : name);
}

interface HandleProps extends Drawn {
  readonly name: string;
  /** In pixels of the picture. */
  readonly place: Place;
  readonly put: (place: Place) => void;
  readonly round?: boolean;
}

function Handle({ name, place, put, view, box, round = false }: HandleProps) {
  const local = atOrigin(box);
  const [left, top] = toBox(view.part, local, place);
  const keys = (event: KeyboardEvent) => {
    const arrow = arrowOf(event.key);
    const step = event.shiftKey ? 0.1 : 1;
    const share = [left / box.width, top / box.height] as const;
    if (arrow) put([place[0] + step * arrow[0], place[1] + step * arrow[1]]);
    else if (event.ctrlKey || event.metaKey || !viewKey(view, event.key, share)) return;
    event.preventDefault();
  };
  const drag = (event: PointerEvent) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const glass = event.currentTarget.parentElement?.getBoundingClientRect();
    if (glass)
      put(fromBox(view.part, local, [event.clientX - glass.left, event.clientY - glass.top]));
  };
  if (left < -1 || top < -1 || left > box.width + 1 || top > box.height + 1) return null;
  return (
    <button
      type="button"
      className={round ? 'corner side' : 'corner'}
      style={{ left: left - 13, top: top - 13 }}
      aria-label={`${name}, at ${place[0].toFixed(1)} across and ${place[1].toFixed(1)} down`}
      onKeyDown={keys}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
    />
  );
}
