import { useMemo, useRef } from 'react';
import { useWidth } from '../app/media.ts';
import {
  claimMarks,
  fits,
  type Large,
  large,
  markPath,
  type Scale,
  xOf,
  yearTicks,
} from '../draw/index.ts';
import { type DatedPrinting, drawnOf } from '../view/index.ts';
import { count, sayP, sayWindow } from '../words/index.ts';

const HEIGHT = 180;
const LEFT = 36;

/** The full distribution of the day, drawn large, with the claims beneath. */
export function Distribution({ dated }: { readonly dated: DatedPrinting }) {
  const holder = useRef<HTMLElement>(null);
  const width = useWidth(holder) - LEFT - 4;
  const drawn = drawnOf(dated);
  const picture = useMemo(() => large(drawn.days, { width, height: HEIGHT }), [drawn, width]);
  const perBar = picture.daysPerBar === 1 ? 'a day' : count(picture.daysPerBar, 'day');
  return (
    <figure className="distribution" ref={holder}>
      <svg
        className="axis"
        width={width + LEFT}
        height={HEIGHT + 64}
        role="img"
        aria-label={told(dated)}
      >
        <Upright picture={picture} width={width} />
        <g transform={`translate(${LEFT} 8)`}>
          <path className="ink" d={bars(picture)} />
          <path className="base" d={`M0 ${HEIGHT}.5H${width}`} />
          <Claims dated={dated} scale={picture.scale} />
          {yearTicks(picture.scale, 72)
            .filter((tick) => tick.major)
            .map((tick) => (
              <g key={tick.label}>
                <path className="major" d={`M${tick.x.toFixed(1)} ${HEIGHT}v34`} />
                {fits(tick, picture.scale) ? (
                  <text x={tick.x + 4} y={HEIGHT + 34}>
                    {tick.label}
                  </text>
                ) : null}
              </g>
            ))}
        </g>
      </svg>
      <figcaption>
        The days that hold 99.9 % of the probability; each bar is {perBar}. Beneath, the claims that
        fall within it.
      </figcaption>
    </figure>
  );
}

function bars({ bars: all }: Large): string {
  return all
    .map(({ x, width, height }) => {
      const tall = Math.max(0.5, height).toFixed(1);
      return `M${x.toFixed(1)} ${HEIGHT}v-${tall}h${width.toFixed(1)}v${tall}z`;
    })
    .join('');
}

function Upright({ picture, width }: { readonly picture: Large; readonly width: number }) {
  return [0, 0.5, 1].map((share) => {
    const y = 8 + HEIGHT * (1 - share);
    return (
      <g key={share}>
        <path className="minor" d={`M${LEFT} ${y}.5h${width}`} />
        <text x={LEFT - 6} y={y + 5} textAnchor="end">
          {share === 0 ? '0' : String(Number((picture.top * share).toPrecision(2)))}
        </text>
      </g>
    );
  });
}

function Claims({ dated, scale }: { readonly dated: DatedPrinting; readonly scale: Scale }) {
  const { marks } = claimMarks(drawnOf(dated).claims, (day) => xOf(scale, day + 0.5), scale.width);
  const path = (slip: boolean) =>
    marks
      .filter((mark) => mark.slip === slip)
      .map((mark) => markPath(mark, HEIGHT + 6, scale.width))
      .join('');
  return (
    <>
      <path className="agrees" d={path(false)} />
      <path className="slips" d={path(true)} />
    </>
  );
}

function told(dated: DatedPrinting): string {
  const [day, p] = [...dated.days].sort((a, b) => b[1] - a[1])[0] ?? ['', 0];
  const window = dated.interval95 ? sayWindow(...dated.interval95, false) : '';
  return `Distribution of the day of release: highest on ${day} with ${sayP(p)}; 95 % within ${window}.`;
}
