import { useRef, useState } from 'react';
import type { BenchFace } from '../../contract/index.ts';
import { useWidth } from '../app/media.ts';
import { AddMark } from './AddMark.tsx';
import { DimensionLines } from './DimensionLines.tsx';
import { cardBox, dimensionsOf, NARROW, partDimensions } from './dimensions.ts';
import { Glass } from './Glass.tsx';
import { MarkNumbers, MarkShapes, markLeaders } from './MarksDrawn.tsx';
import { cardPath, Photograph } from './Photograph.tsx';
import { Stroke } from './Stroke.tsx';
import type { CopyWork } from './useCopyWork.ts';
import { usePen } from './usePen.ts';
import { useView } from './useView.ts';
import { Zooms } from './Zooms.tsx';

interface Props {
  readonly work: CopyWork;
  readonly face: BenchFace;
}

/** The card as seen straight down, measured like a workshop drawing. */
export function CardView({ work, face }: Props) {
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const view = useView(face.size?.mm ?? [1, 1]);
  const box = cardBox(width, Math.max(420, Math.min(900, window.innerHeight - 240)), view.size);
  const slim = width < NARROW;
  const [adding, setAdding] = useState(false);
  const pen = usePen(view.size);
  const path = cardPath(work.copy.id, work.side);
  const round =
    view.zoom > 1.01 ? partDimensions(view.part, box, slim) : dimensionsOf(face, box, slim);
  const leaders = markLeaders(face, view, { box, width, labels: round.labels }, work.chosen);
  return (
    <>
      <div className="drawing" ref={holder} style={{ height: box.all }}>
        <svg width={width} height={box.all} aria-hidden="true">
          <Photograph view={view} box={box} path={path} stamp={work.stamp} />
          <MarkShapes
            marks={face.marks}
            view={view}
            box={box}
            chosen={work.chosen}
            leaders={leaders}
          />
          <DimensionLines {...round} />
          {adding ? <Stroke pen={pen} view={view} box={box} /> : null}
        </svg>
        <Glass
          label={`The ${work.side}, seen straight down. Plus and minus zoom, arrow keys move.`}
          view={view}
          box={box}
          pen={adding ? pen : undefined}
        />
        <MarkNumbers face={face} leaders={leaders} work={work} />
      </div>
      <div className="bench-tools">
        <Zooms view={view} />
        {adding ? null : (
          <button type="button" className="choice" onClick={() => setAdding(true)}>
            Add a mark
          </button>
        )}
      </div>
      {adding ? (
        <AddMark
          work={work}
          pen={pen}
          close={() => {
            pen.clear();
            setAdding(false);
          }}
        />
      ) : null}
    </>
  );
}
