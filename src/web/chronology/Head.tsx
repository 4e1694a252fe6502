import { fits, offsetTicks, offsetX, type Scale, yearTicks } from '../draw/index.ts';
import type { Axes } from './useAxes.ts';

interface Props {
  readonly scale: Scale;
  readonly close: number;
  readonly stacked: boolean;
  readonly axes: Axes;
}

/** The head of the lanes: years and days, each with its zoom. It stays while lanes scroll. */
export function Head({ scale, close, stacked, axes }: Props) {
  return (
    <div className={stacked ? 'head stacked' : 'head'}>
      <div className="zooms">
        <Zoom
          name="years"
          nearer={() => axes.zoom(2)}
          wider={() => axes.zoom(0.5)}
          hint="keys + and −"
        />
        <Zoom
          name="days"
          nearer={() => axes.closer(-1)}
          wider={() => axes.closer(1)}
          hint="keys ] and ["
        />
      </div>
      <div className="head-drawn">
        {stacked ? null : <Years scale={scale} />}
        <Days reach={axes.reach} width={close} stacked={stacked} />
      </div>
      <span className="head-day">release</span>
    </div>
  );
}

interface ZoomProps {
  readonly name: string;
  readonly nearer: () => void;
  readonly wider: () => void;
  readonly hint: string;
}

function Zoom({ name, nearer, wider, hint }: ZoomProps) {
  return (
    <fieldset className="zoom" title={hint}>
      <legend className="unseen">Zoom of the {name}</legend>
      <span aria-hidden="true">{name}</span>
      <button type="button" aria-label={`Fewer ${name}`} onClick={nearer}>
        +
      </button>
      <button type="button" aria-label={`More ${name}`} onClick={wider}>
        −
      </button>
    </fieldset>
  );
}

function Years({ scale }: { readonly scale: Scale }) {
  return (
    <svg className="axis" width={scale.width} height="24" aria-hidden="true">
      {yearTicks(scale)
        .filter((tick) => tick.major)
        .map((tick) => (
          <g key={tick.label}>
            <path className="major" d={`M${tick.x.toFixed(1)} 6v18`} />
            {fits(tick, scale) ? (
              <text x={tick.x + 4} y="16">
                {tick.label}
              </text>
            ) : null}
          </g>
        ))}
    </svg>
  );
}

interface DaysProps {
  readonly reach: number;
  readonly width: number;
  readonly stacked: boolean;
}

/** The last number is followed by its unit, outside the picture where there is room. */
function Days({ reach, width, stacked }: DaysProps) {
  const ticks = offsetTicks(reach);
  return (
    <svg className="axis" width={width} height="24" aria-hidden="true">
      {ticks.map((offset, at) => (
        <text
          key={offset}
          x={offsetX(offset, reach, width)}
          y="16"
          textAnchor={at === 0 ? 'start' : 'middle'}
        >
          {offset > 0 ? `+${offset}` : offset < 0 ? `−${-offset}` : '0'}
        </text>
      ))}
      {stacked ? null : (
        <text x={offsetX(ticks.at(-1) ?? 0, reach, width) + 16} y="16">
          days
        </text>
      )}
    </svg>
  );
}
