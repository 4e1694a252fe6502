import { type ReactNode, useRef } from 'react';
import { useWidth } from '../app/media.ts';
import { Glass } from './Glass.tsx';
import { type PathFor, Photograph } from './Photograph.tsx';
import type { Part, Place } from './part.ts';
import type { View } from './useView.ts';

interface Props {
  readonly label: string;
  readonly view: View;
  readonly path: PathFor;
  readonly stamp: string;
  readonly flows?: boolean;
  readonly keys?: Readonly<Record<string, () => void>>;
  /** What is drawn over the picture, in its box. */
  readonly children?: (box: Part) => ReactNode;
}

/** A picture of a card without dimensions, as large as there is room for. */
export function Pane({ label, view, path, stamp, flows = false, keys = {}, children }: Props) {
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const box = fitted(view.size, width, Math.max(360, Math.min(860, window.innerHeight - 300)));
  return (
    <div className="drawing" ref={holder} style={{ height: box.height }}>
      <svg width={width} height={box.height} aria-hidden="true">
        <Photograph view={view} box={box} path={path} stamp={stamp} flows={flows} />
        {children?.(box)}
      </svg>
      <Glass label={label} view={view} box={box} keys={keys} />
    </div>
  );
}

/** The largest box of that shape in a width and a height, in the middle. */
export function fitted([w, h]: Place, width: number, most: number): Part {
  const scale = Math.min(width / w, most / h);
  return { x: (width - w * scale) / 2, y: 0, width: w * scale, height: h * scale };
}
