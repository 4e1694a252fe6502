import { type KeyboardEvent, type PointerEvent, useState } from 'react';
import type { BenchOutline } from '../../contract/index.ts';
import { Opening } from './Opening.tsx';
import { atOrigin, fromBox, type Part, type Place, toBox } from './part.ts';
import type { CopyWork } from './useCopyWork.ts';
import { arrowOf, type View, viewKey } from './useView.ts';

type Corners = NonNullable<BenchOutline['corners']>;
const NAMES = ['upper left', 'upper right', 'lower right', 'lower left'] as const;

/** The outline that is shown, and the hand that may move it. */
export interface MovableCorners {
  readonly shown: Corners | null;
  readonly moving: boolean;
  readonly start: () => void;
  readonly set: (at: number, place: Place) => void;
  readonly take: (corners: Corners) => void;
  readonly leave: () => void;
}

/** Corners of the face that is shown; where the outline is not sure, they may be moved at once. */
export function useCorners({ face }: CopyWork): MovableCorners {
  const [draft, setDraft] = useState<Corners>();
  const found = face?.outline?.corners ?? null;
  const unsure = face !== null && (face.outline?.p ?? 0) < 0.5;
  const proposed = found ?? (face ? inset(face.width, face.height) : null);
  const shown = draft ?? (unsure ? proposed : found);
  return {
    shown,
    moving: draft !== undefined || unsure,
    start: () => proposed && setDraft(proposed),
    take: setDraft,
    leave: () => setDraft(undefined),
    set: (at, [x, y]) =>
      setDraft((last) => {
        const from = last ?? proposed;
        return from?.map((corner, k) => (k === at ? [x, y] : corner)) as Corners | undefined;
      }),
  };
}

/** Where nothing was found: a rectangle to begin with, a sixth from the edges. */
function inset(width: number, height: number): Corners {
  const [x0, y0, x1, y1] = [width / 6, height / 6, (width * 5) / 6, (height * 5) / 6];
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

interface Drawn {
  readonly view: View;
  readonly box: Part;
}

/** The outline on the picture. */
export function OutlineDrawn({ corners, view, box }: Drawn & { readonly corners: Corners | null }) {
  if (!corners) return null;
  const local = atOrigin(box);
  const places = corners.map((corner) => toBox(view.part, local, corner).map((n) => n.toFixed(1)));
  const path = `M${places.map((place) => place.join(' ')).join('L')}Z`;
  return (
    <Opening box={box} name="outline">
      <path className="paper" d={path} />
      <path className="measure" d={path} />
    </Opening>
  );
}

/** The four corners to take hold of: by pointer, or with Tab and the arrow keys. */
export function CornerHandles({
  corners,
  view,
  box,
}: Drawn & { readonly corners: MovableCorners }) {
  const local = atOrigin(box);
  return corners.shown?.map((corner, at) => (
    <Handle
      key={NAMES[at]}
      name={NAMES[at] ?? ''}
      corner={corner}
      place={toBox(view.part, local, corner)}
      set={(place) => corners.set(at, place)}
      drop={(place) => corners.set(at, fromBox(view.part, local, place))}
      view={view}
      box={box}
    />
  ));
}

interface HandleProps extends Drawn {
  readonly name: string;
  readonly corner: Place;
  readonly place: Place;
  readonly set: (corner: Place) => void;
  readonly drop: (place: Place) => void;
}

function Handle({ name, corner, place, set, drop, view, box }: HandleProps) {
  const [left, top] = place;
  const keys = (event: KeyboardEvent) => {
    const arrow = arrowOf(event.key);
    const step = event.shiftKey ? 0.1 : 1;
    const share = [left / box.width, top / box.height] as const;
    if (arrow) set([corner[0] + step * arrow[0], corner[1] + step * arrow[1]]);
    else if (event.ctrlKey || event.metaKey || !viewKey(view, event.key, share)) return;
    event.preventDefault();
  };
  const drag = (event: PointerEvent) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const glass = event.currentTarget.parentElement?.getBoundingClientRect();
    if (glass) drop([event.clientX - glass.left, event.clientY - glass.top]);
  };
  if (left < -1 || top < -1 || left > box.width + 1 || top > box.height + 1) return null;
  return (
    <button
      type="button"
      className="corner"
      style={{ left: left - 13, top: top - 13 }}
      aria-label={`Corner ${name}, at ${corner[0].toFixed(1)} across and ${corner[1].toFixed(1)} down`}
      onKeyDown={keys}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
    />
  );
}

interface ToolsProps {
  readonly work: CopyWork;
  readonly corners: MovableCorners;
}

/** What can be done with the outline. */
export function CornerTools({ work, corners }: ToolsProps) {
  const { face } = work;
  if (!face) return null;
  return (
    <div className="corner-tools">
      {corners.moving ? (
        <p className="hint">
          {(face.outline?.p ?? 0) < 0.5
            ? 'Is this the card? The outline is not sure. Move the corners '
            : 'Move the corners '}
          to where its straight sides would meet, beyond the rounding. By keyboard: Tab to a corner,
          arrow keys move it by 1 pixel, with Shift by 0.1.
        </p>
      ) : null}
      <div className="acts">
        {corners.moving ? (
          <MovingTools work={work} corners={corners} />
        ) : (
          <button type="button" className="choice" onClick={corners.start}>
            Move the corners
          </button>
        )}
        {face.outline?.byHand ? <GiveUp work={work} leave={corners.leave} /> : null}
      </div>
    </div>
  );
}

function MovingTools({ work, corners }: ToolsProps) {
  const { side, act, busy } = work;
  const { shown } = corners;
  const refine = async () => {
    const body = { side, corners: shown, refine: true, keep: false };
    const settled = (await act({ to: 'outline', body }))?.[side]?.outline?.corners;
    if (settled) corners.take(settled);
  };
  const keep = async () => {
    const body = { side, corners: shown, refine: false, keep: true };
    if (await act({ to: 'outline', body }, 'The outline was kept, and all was measured by it.')) {
      corners.leave();
    }
  };
  return (
    <>
      <button type="button" className="choice" disabled={busy} onClick={refine}>
        Draw onto the edges
      </button>
      <button type="button" className="choice" disabled={busy} onClick={keep}>
        Keep it
      </button>
      <button type="button" className="choice" onClick={corners.leave}>
        Leave it
      </button>
    </>
  );
}

function GiveUp({ work, leave }: { readonly work: CopyWork; readonly leave: () => void }) {
  const { side, act, busy } = work;
  const give = async () => {
    const body = { side, corners: null, refine: false, keep: true };
    if (await act({ to: 'outline', body }, 'The outline set by hand was given up.')) leave();
  };
  return (
    <button type="button" className="choice" disabled={busy} onClick={give}>
      Give up the outline set by hand
    </button>
  );
}
