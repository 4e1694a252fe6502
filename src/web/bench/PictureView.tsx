import { useRef } from 'react';
import { useWidth } from '../app/media.ts';
import { pathOf } from '../wire/index.ts';
import { CornerHandles, CornerTools, OutlineDrawn, useCorners } from './Corners.tsx';
import { Glass } from './Glass.tsx';
import { type PathFor, Photograph } from './Photograph.tsx';
import type { Part } from './part.ts';
import type { CopyWork } from './useCopyWork.ts';
import { useNatural } from './useNatural.ts';
import { useView } from './useView.ts';
import { Zooms } from './Zooms.tsx';

interface Props {
  readonly work: CopyWork;
  readonly name: string;
  /** It is the picture that was measured, so the outline can be drawn on it. */
  readonly still: boolean;
}

/** A picture as it was taken; on the one that was measured the outline can be moved. */
export function PictureView({ work, name, still }: Props) {
  const { face, copy, stamp, side } = work;
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const address = `${pathOf(copy.id)}/picture/${encodeURIComponent(name)}`;
  const natural = useNatural(still && face ? null : `${address}?pixels=4096`, stamp);
  const size = still && face ? ([face.width, face.height] as const) : natural;
  const view = useView(size);
  const most = Math.max(360, Math.min(900, window.innerHeight - 260));
  const scale = Math.min(width / size[0], most / size[1]);
  const [across, down] = [size[0] * scale, size[1] * scale];
  const box: Part = { x: (width - across) / 2, y: 0, width: across, height: down };
  const corners = useCorners(work);
  const path: PathFor = (part, pixels) => {
    // Where its own size is not known, the whole is asked for, as large as there is.
    if (!still) return `${address}?pixels=4096`;
    const place = part ? `&x=${part.x}&y=${part.y}&width=${part.width}&height=${part.height}` : '';
    return `${address}?pixels=${pixels}${place}`;
  };
  return (
    <>
      {still ? <CornerTools work={work} corners={corners} /> : null}
      <div className="drawing" ref={holder} style={{ height: down }}>
        <svg width={width} height={down} aria-hidden="true">
          <Photograph view={view} box={box} path={path} stamp={still ? name : stamp} />
          {still ? <OutlineDrawn corners={corners.shown} view={view} box={box} /> : null}
        </svg>
        <Glass
          label={`The ${side} as it was taken, ${name}. Plus and minus zoom, arrow keys move.`}
          view={view}
          box={box}
        >
          {still && corners.moving ? (
            <CornerHandles corners={corners} view={view} box={box} />
          ) : null}
        </Glass>
      </div>
      <div className="bench-tools">
        <Zooms view={view} />
        <span className="detail">{name}</span>
      </div>
    </>
  );
}
