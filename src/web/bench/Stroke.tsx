import { type Part, toBox } from './part.ts';
import type { MarkPen } from './usePen.ts';
import type { View } from './useView.ts';

interface Props {
  readonly pen: MarkPen;
  readonly view: View;
  readonly box: Part;
}

/** The line that is being drawn, and the cross where the keys would set a point. */
export function Stroke({ pen, view, box }: Props) {
  const at = (place: readonly [number, number]) => toBox(view.part, box, place);
  const line = pen.points.map((place) =>
    at(place)
      .map((n) => n.toFixed(1))
      .join(' '),
  );
  const [x, y] = at(pen.cursor);
  const cross = `M${x - 10} ${y}h20M${x} ${y - 10}v20`;
  const path = `${line.length > 0 ? `M${line.join('L')}` : ''}${cross}`;
  return (
    <g className="mark chosen">
      <path className="paper" d={path} />
      <path className="ink" d={path} />
    </g>
  );
}
