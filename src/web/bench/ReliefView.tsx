import { useState } from 'react';
import type { BenchFace, BenchRelief } from '../../contract/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { pathOf, useRelief } from '../wire/index.ts';
import { capital, outOfHundred, sayP } from '../words/index.ts';
import { Pane } from './Pane.tsx';
import { type Part, toBox } from './part.ts';
import { kindName, whereOn } from './tell.ts';
import type { CopyWork } from './useCopyWork.ts';
import { useView, type View } from './useView.ts';
import { Zooms } from './Zooms.tsx';

interface Props {
  readonly work: CopyWork;
  readonly face: BenchFace;
}

/** The measured relief under a lamp that the reader moves. */
export function ReliefView({ work, face }: Props) {
  const { copy, side, stamp } = work;
  const { data: relief, error } = useRelief(copy.id, side, stamp);
  const view = useView(face.size?.mm ?? [1, 1]);
  const [azimuth, setAzimuth] = useState(135);
  const [height, setHeight] = useState(20);
  const [steeper, setSteeper] = useState(4);
  if (error) return <p className="slip-note">{error.message}</p>;
  if (!relief) return <p className="pending">The relief is being measured from the lamps …</p>;
  const address = `${pathOf(copy.id)}/shaded/${side}?azimuth=${azimuth}&height=${height}&steeper=${steeper}`;
  const turn = (by: number) => () => setAzimuth((last) => (last + by + 360) % 360);
  return (
    <>
      {relief.faults.map((fault) => (
        <p key={fault} className="slip-note">
          {fault}
        </p>
      ))}
      {relief.shown ? (
        <>
          <div className="lamp-sliders">
            <Slider
              name="Lamp round the card"
              said={`${azimuth}°`}
              {...{ value: azimuth, least: 0, most: 355, step: 5, set: setAzimuth }}
            />
            <Slider
              name="Lamp above the card"
              said={`${height}°`}
              {...{ value: height, least: 5, most: 90, step: 1, set: setHeight }}
            />
            <Slider
              name="Slopes drawn"
              said={`${steeper} times`}
              {...{ value: steeper, least: 1, most: 20, step: 1, set: setSteeper }}
            />
          </div>
          <Pane
            label={`The relief of the ${side} under a lamp. Plus and minus zoom, arrow keys move, comma and full stop turn the lamp.`}
            view={view}
            path={(part) => (part ? null : address)}
            stamp={stamp}
            flows
            keys={{ ',': turn(15), '.': turn(-15) }}
          >
            {(box) => <Dents marks={relief.marks} view={view} box={box} />}
          </Pane>
          <div className="bench-tools">
            <Zooms view={view} />
            <span className="detail">
              Slopes measured from {relief.lamps.length} lamps, shaded as matt grey; not a
              photograph.
            </span>
          </div>
        </>
      ) : null}
      <DentList relief={relief} size={view.size} />
    </>
  );
}

interface SliderProps {
  readonly name: string;
  readonly said: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly set: (value: number) => void;
}

function Slider({ name, said, value, least, most, step, set }: SliderProps) {
  return (
    <label className="lamp">
      <span>
        {name}: {said}
      </span>
      <input
        type="range"
        min={least}
        max={most}
        step={step}
        value={value}
        aria-valuetext={said}
        onChange={(event) => set(Number(event.target.value))}
      />
    </label>
  );
}

interface DentsProps {
  readonly marks: BenchRelief['marks'];
  readonly view: View;
  readonly box: Part;
}

/** A ring round each mark that is more probable than not. */
function Dents({ marks, view, box }: DentsProps) {
  const scale = box.width / view.part.width;
  return (
    <g className="mark">
      {marks
        .filter(({ p }) => p >= 0.5)
        .map(({ centre, diameter }) => {
          const [cx, cy] = toBox(view.part, box, centre);
          const r = Math.max(8, diameter * scale);
          return <circle key={centre.join()} className="ink" {...{ cx, cy, r }} />;
        })}
    </g>
  );
}

function DentList({ relief, size }: { readonly relief: BenchRelief; readonly size: View['size'] }) {
  const held = relief.marks.filter(({ p }) => p >= 0.5);
  const limit = relief.limits[0];
  return (
    <section className="dents">
      <h3>
        In the surface <span>probability</span>
      </h3>
      <ul className="rows">
        {held.map(({ kind, centre, diameter, diameterSd, depth, depthSd, p }) => (
          <li key={centre.join()}>
            <span>
              {capital(kindName(kind))}, {whereOn(centre, size)}{' '}
              <span className="detail">
                {diameter.toFixed(2)} ± {sayDoubt(diameterSd, 2)} mm wide at half its depth
                {depth === null
                  ? '; how deep, these pictures do not tell'
                  : `, ${depth.toFixed(3)} ± ${sayDoubt(depthSd ?? 0, 3)} mm deep`}
              </span>
            </span>
            <Num
              why={`Of marks that look like this one, ${outOfHundred(p)} are in the card’s surface and no trace of print, gloss or lamp.`}
            >
              {sayP(p)}
            </Num>
          </li>
        ))}
      </ul>
      {held.length === 0 ? <p className="detail">No dent was found.</p> : null}
      {limit ? (
        <p className="detail">
          A dent {limit.diameter.toFixed(1)} mm wide would have shown from {limit.depth.toFixed(3)}{' '}
          mm of depth on, on nine tenths of the card.
        </p>
      ) : null}
    </section>
  );
}
