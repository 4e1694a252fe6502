import { type PathFor, Photograph } from './Photograph.tsx';
import { type Part, toBox } from './part.ts';
import type { Loupe } from './useLoupe.ts';
import type { View } from './useView.ts';

interface Props {
  readonly loupe: Loupe;
  readonly view: View;
  readonly box: Part;
  readonly path: PathFor;
  readonly stamp: string;
  /** Of the whole drawing. */
  readonly width: number;
}

/** Side of the loupe in drawing units. */
const SIDE = 240;
/** How far it stands from the place that it shows. */
const AWAY = 26;

/** What the loupe shows, beside the place that it is held over, with that place framed. */
export function LoupeDrawn({ loupe, view, box, path, stamp, width }: Props) {
  const { part, at } = loupe;
  const [x, y] = toBox(view.part, box, at);
  const [left, top] = toBox(view.part, box, [part.x, part.y]);
  const scale = box.width / view.part.width;
  const side = Math.min(SIDE, width - 8);
  const right = x + AWAY + side < width ? x + AWAY : x - AWAY - side;
  const place = {
    x: Math.min(Math.max(4, right), width - side - 4),
    y: Math.min(Math.max(4, y - side / 2), Math.max(4, box.y + box.height - side)),
    ...{ width: side, height: side },
  };
  const within = { ...view, part, zoom: view.size[0] / part.width };
  return (
    <g className="loupe">
      <rect x={left} y={top} width={part.width * scale} height={part.height * scale} />
      <rect className="ground" {...place} />
      <Photograph view={within} box={place} path={path} stamp={stamp} wholeAt={box.width} />
      <rect {...place} />
      <text x={place.x + 6} y={place.y + side - 8}>
        {part.width} mm across, at {at[0].toFixed(1)}, {at[1].toFixed(1)} mm
      </text>
    </g>
  );
}
