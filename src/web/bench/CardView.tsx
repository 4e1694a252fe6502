import { useRef, useState } from 'react';
import type { BenchFace } from '../../contract/index.ts';
import { useWidth } from '../app/media.ts';
import { AddMark } from './AddMark.tsx';
import { DimensionLines } from './DimensionLines.tsx';
import { cardBox, dimensionsOf, NARROW, partDimensions } from './dimensions.ts';
import { Glass } from './Glass.tsx';
import { LoupeDrawn } from './LoupeDrawn.tsx';
import { MarkNumbers, MarkShapes, markLeaders } from './MarksDrawn.tsx';
import { cardPath, Photograph } from './Photograph.tsx';
import { Stroke } from './Stroke.tsx';
import type { CopyWork } from './useCopyWork.ts';
import { type Loupe, useLoupe } from './useLoupe.ts';
import { usePen } from './usePen.ts';
import { useView, type View } from './useView.ts';
import { Zooms } from './Zooms.tsx';

interface Props {
  readonly work: CopyWork;
  readonly face: BenchFace;
  /** Another picture of the face, by one low lamp or one of several. */
  readonly of?: string | undefined;
}

/** The card as seen straight down, measured like a workshop drawing. */
export function CardView({ work, face, of }: Props) {
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const view = useView(face.size?.mm ?? [1, 1]);
  const box = cardBox(width, Math.max(420, Math.min(900, window.innerHeight - 240)), view.size);
  const slim = width < NARROW;
  const [adding, setAdding] = useState(false);
  const pen = usePen(view.size);
  const path = cardPath(work.copy.id, work.side, of);
  const loupe = useLoupe(view.size);
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
          {loupe.open ? (
            <LoupeDrawn {...{ loupe, view, box, path, width }} stamp={work.stamp} />
          ) : null}
        </svg>
        <Glass
          label={`The ${work.side}, seen straight down. Plus and minus zoom, arrow keys move, L takes the loupe.`}
          view={view}
          box={box}
          pen={adding ? pen : loupe.open ? loupe : undefined}
          keys={{ l: loupe.toggle }}
        />
        <MarkNumbers face={face} leaders={leaders} work={work} />
      </div>
      <CardTools view={view} loupe={loupe} add={adding ? undefined : () => setAdding(true)} />
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

interface ToolsProps {
  readonly view: View;
  readonly loupe: Loupe;
  /** Undefined while a mark is being added. */
  readonly add: (() => void) | undefined;
}

function CardTools({ view, loupe, add }: ToolsProps) {
  return (
    <div className="bench-tools">
      <Zooms view={view} />
      {loupe.open ? (
        <span className="detail" aria-live="polite">
          Loupe at {loupe.at[0].toFixed(1)} across, {loupe.at[1].toFixed(1)} down, in mm
        </span>
      ) : null}
      <span className="acts">
        <button type="button" className="choice" aria-pressed={loupe.open} onClick={loupe.toggle}>
          Loupe
        </button>
        {add ? (
          <button type="button" className="choice" onClick={add}>
            Add a mark
          </button>
        ) : null}
      </span>
    </div>
  );
}
