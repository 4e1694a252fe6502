/** A stretch of a card in millimetres, or of a picture in its pixels. */
export interface Part {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place: across, down. */
export type Place = readonly [x: number, y: number];

/** The whole of something of this size. */
export function whole([width, height]: Place): Part {
  return { x: 0, y: 0, width, height };
}

/** How many times larger the part is drawn than the whole; 1 or more. */
export function zoomOf(part: Part, size: Place): number {
  return size[0] / part.width;
}

/** Most that a part is enlarged. */
const MOST = 40;

/** The part drawn `factor` times larger; the place at the shares `at` of the part stays there. */
export function zoomed(part: Part, size: Place, factor: number, at: Place = [0.5, 0.5]): Part {
  const zoom = Math.min(MOST, Math.max(1, zoomOf(part, size) * factor));
  const [width, height] = [size[0] / zoom, size[1] / zoom];
  return inside(
    {
      x: part.x + (part.width - width) * at[0],
      y: part.y + (part.height - height) * at[1],
      width,
      height,
    },
    size,
  );
}

/** The part moved on by shares of itself, at most to the edge. */
export function moved(part: Part, size: Place, [across, down]: Place): Part {
  return inside({ ...part, x: part.x + across * part.width, y: part.y + down * part.height }, size);
}

function inside(part: Part, [width, height]: Place): Part {
  const within = (at: number, room: number) => Math.min(Math.max(0, at), Math.max(0, room));
  return {
    ...part,
    x: within(part.x, width - part.width),
    y: within(part.y, height - part.height),
  };
}

/** A box as it is counted from its own upper left corner. */
export function atOrigin({ width, height }: Part): Part {
  return { x: 0, y: 0, width, height };
}

/** Where a place of the part is drawn in a box. */
export function toBox(part: Part, box: Part, [x, y]: Place): Place {
  return [
    box.x + ((x - part.x) / part.width) * box.width,
    box.y + ((y - part.y) / part.height) * box.height,
  ];
}

/** The place of the part that is drawn there in the box. */
export function fromBox(part: Part, box: Part, [x, y]: Place): Place {
  return toBox(box, part, [x, y]);
}

/** Whether a place lies in the part. */
export function holds({ x, y, width, height }: Part, [px, py]: Place): boolean {
  return px >= x && px <= x + width && py >= y && py <= y + height;
}
