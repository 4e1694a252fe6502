import { useRef } from 'react';
import { useWidth } from '../app/media.ts';
import { pathOf } from '../wire/index.ts';
import { Glass } from './Glass.tsx';
import { Handles, OutlineDrawn } from './Handles.tsx';
import { MovingTools } from './MovingTools.tsx';
import { fitted } from './Pane.tsx';
import { type PathFor, Photograph } from './Photograph.tsx';
import type { CopyWork } from './useCopyWork.ts';
import { useView } from './useView.ts';
import { Zooms } from './Zooms.tsx';

interface Props {
  readonly work: CopyWork;
  readonly name: string;
}

/** The picture that was measured, as it was taken; the outline on it can be moved. */
export function PictureView({ work, name }: Props) {
  const { face, copy, side } = work;
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const view = useView([face?.width ?? 1, face?.height ?? 1]);
  const box = fitted(view.size, width, Math.max(360, Math.min(900, window.innerHeight - 260)));
  const { moving, seen } = work;
  const frame = seen[side]?.frame?.corners ?? null;
  const outline = moving.set.corners ?? (moving.what === 'outline' ? moving.quad : null);
  const path: PathFor = (part, pixels) => {
    const place = part ? `&x=${part.x}&y=${part.y}&width=${part.width}&height=${part.height}` : '';
    return `${pathOf(copy.id)}/picture/${encodeURIComponent(name)}?pixels=${pixels}${place}`;
  };
  return (
    <>
      <MovingTools work={work} />
      <div className="drawing" ref={holder} style={{ height: box.height }}>
        <svg width={width} height={box.height} aria-hidden="true">
          <Photograph view={view} box={box} path={path} stamp={name} />
          <OutlineDrawn quad={outline ?? face?.outline?.corners ?? null} view={view} box={box} />
          <OutlineDrawn
            quad={moving.what === 'frame' ? moving.quad : frame}
            view={view}
            box={box}
          />
        </svg>
        <Glass
          label={`The ${side} as it was taken, ${name}. Plus and minus zoom, arrow keys move.`}
          view={view}
          box={box}
        >
          <Handles moving={moving} view={view} box={box} />
        </Glass>
      </div>
      <div className="bench-tools">
        <Zooms view={view} />
        <span className="detail">{name}</span>
      </div>
    </>
  );
}
