import { useState } from 'react';
import type {
  BenchBorders,
  BenchCopy,
  BenchFace,
  BenchMoved,
  BenchSide,
} from '../../contract/index.ts';
import { useFollowed, useTried } from '../wire/index.ts';
import { type Quad, shrunk } from './quad.ts';
import { useSettled } from './useSettled.ts';

/** What of a face a hand may move. */
export type Movable = 'outline' | 'frame';

/** The hand that moves the outline or the frame of a face, and what follows. */
export interface Moving {
  /** What is being moved; undefined: nothing. */
  readonly what: Movable | undefined;
  /** Where it stands now. */
  readonly quad: Quad | null;
  /** All that a hand has set, as it would be kept. */
  readonly set: BenchMoved;
  readonly start: (what: Movable) => void;
  readonly take: (quad: Quad) => void;
  readonly leave: () => void;
  /** Follows at once. */
  readonly borders: BenchBorders | undefined;
  /** Follows behind, with all marks. */
  readonly whole: BenchCopy | undefined;
  /** Marks are being looked for. */
  readonly behind: boolean;
  readonly trouble: string;
}

/** How long a hand rests before marks are looked for, in milliseconds. */
const REST = 500;

/** Lets a hand move the outline of a face, at once where it is not sure, or its frame. */
export function useMoving(id: string, side: BenchSide, face: BenchFace | null): Moving {
  const [wanted, setWanted] = useState<Movable>();
  const [draft, setDraft] = useState<BenchMoved>();
  const { borders, trouble, follow, forget } = useFollowed(id);
  const rested = useSettled(draft, REST);
  const whole = useTried(id, draft && rested === draft ? draft : undefined);
  const unsure = face !== null && (face.outline?.p ?? 0) < 0.5;
  const what = wanted ?? (unsure ? 'outline' : undefined);
  const set = draft ?? handOn(side, face);
  const take = (quad: Quad) => {
    const next = { ...set, ...(what === 'frame' ? { frame: quad } : { corners: quad }) };
    setDraft(next);
    follow(next);
  };
  const start = (which: Movable) => {
    setWanted(which);
    // The picture is read meanwhile, so that the first step is followed at once.
    if (face?.outline) follow(set);
  };
  const leave = () => {
    setWanted(undefined);
    setDraft(undefined);
    forget();
  };
  const quad = what && (set[what === 'frame' ? 'frame' : 'corners'] ?? proposed(what, face));
  const behind = draft !== undefined && whole === undefined;
  return { what, quad: quad ?? null, set, start, take, leave, borders, whole, behind, trouble };
}

/** What hands have set of a face already. */
function handOn(side: BenchSide, face: BenchFace | null): BenchMoved {
  const outline = face?.outline ?? null;
  const frame = face?.frame ?? null;
  return {
    side,
    corners: outline?.byHand ? outline.corners : null,
    frame: frame?.byHand ? frame.corners : null,
  };
}

/** Where to begin: what was found, else a rectangle to be moved. */
function proposed(what: Movable, face: BenchFace | null): Quad | null {
  if (!face) return null;
  const outline = face.outline?.corners ?? within(face.width, face.height);
  return what === 'outline' ? outline : (face.frame?.corners ?? shrunk(outline, 0.12));
}

/** A rectangle a sixth from the edges of a picture. */
function within(width: number, height: number): Quad {
  const rim: Quad = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  return shrunk(rim, 1 / 3);
}

/** A copy as it would be: borders at once, marks behind. */
export function copyMoved(copy: BenchCopy, side: BenchSide, moving: Moving): BenchCopy {
  const { borders, whole, set } = moving;
  const seen = whole ?? copy;
  const face = seen[side];
  if (!borders || !face) return seen;
  const outline = set.corners ? { corners: set.corners, p: 1, byHand: true } : face.outline;
  return { ...seen, [side]: { ...face, outline, size: borders.size, frame: borders.frame } };
}
