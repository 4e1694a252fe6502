import type { BenchSide } from '../../contract/index.ts';
import { pathOf, usePicture } from '../wire/index.ts';
import { Opening } from './Opening.tsx';
import type { Part } from './part.ts';
import { useSettled } from './useSettled.ts';
import type { View } from './useView.ts';

/** Asks for the whole, or for a part of it, that many pixels wide; null where there are no parts. */
export type PathFor = (part: Part | null, pixels: number) => string | null;

/** The card of a copy as seen straight down, by millimetres of the card; `of` is another picture of it, or beside it. */
export function cardPath(copy: string, side: BenchSide, of?: string): PathFor {
  const other = of === undefined ? '' : `&of=${encodeURIComponent(of)}`;
  return (part, pixels) => {
    const place = part
      ? `&x0=${part.x}&y0=${part.y}&x1=${part.x + part.width}&y1=${part.y + part.height}`
      : '';
    return `${pathOf(copy)}/card/${side}?pixels=${pixels}${place}${other}`;
  };
}

interface Props {
  readonly view: View;
  readonly box: Part;
  readonly path: PathFor;
  readonly stamp: string;
  /** Width at which the whole is asked for, where that is not the box's. */
  readonly wholeAt?: number;
  /** Shows the last picture until the next is there, as while a lamp is moved. */
  readonly flows?: boolean;
}

/** The picture in its box: the whole at once, the part that is shown in full detail as it comes. */
export function Photograph({ view, box, path, stamp, wholeAt, flows = false }: Props) {
  const { part, size, zoom } = view;
  const pixels = pixelsFor(box.width);
  const base = usePicture(path(null, pixelsFor(wholeAt ?? box.width)), stamp, flows);
  const still = useSettled(part, 180);
  const detail = usePicture(zoom > 1.01 ? path(still, pixels) : null, stamp);
  const scale = box.width / part.width;
  const drawn = (of: Part, address: string | undefined) =>
    address ? (
      <image
        href={address}
        x={(of.x - part.x) * scale}
        y={(of.y - part.y) * scale}
        width={of.width * scale}
        height={of.height * scale}
        preserveAspectRatio="none"
      />
    ) : null;
  return (
    <Opening box={box} name="photograph">
      <rect className="ground" width={box.width} height={box.height} />
      {drawn({ x: 0, y: 0, width: size[0], height: size[1] }, base.address)}
      {zoom > 1.01 ? drawn(still, detail.address) : null}
      {base.error ? (
        <text x={12} y={24}>
          {base.error.message}
        </text>
      ) : null}
    </Opening>
  );
}

/** Pixels that fill a box on this screen, in few sizes, so that the same are asked for again. */
function pixelsFor(width: number): number {
  const wanted = width * window.devicePixelRatio * 1.25;
  return Math.min(4096, Math.max(400, Math.ceil(wanted / 400) * 400));
}
