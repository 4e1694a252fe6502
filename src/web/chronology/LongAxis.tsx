import { memo } from 'react';
import {
  claimMarks,
  type Inked,
  markPath,
  ribbon,
  type Scale,
  telling,
  xOf,
} from '../draw/index.ts';
import type { Drawn } from '../view/index.ts';

interface Props {
  readonly drawn: Drawn;
  readonly scale: Scale;
  readonly height: number;
  readonly lines: { readonly major: string; readonly minor: string };
}

/** The years of one lane: the ribbon, its claims beneath, and the lines of the axis behind. */
export const LongAxis = memo(function LongAxis({ drawn, scale, height, lines }: Props) {
  const tall = height > 30;
  const top = tall ? 6 : 3;
  const ink = tall ? 18 : 12;
  const y = top + ink + (tall ? 3 : 1);
  const claims = telling(drawn.claims, drawn.dayKnown);
  const { marks } = claimMarks(claims, (day) => xOf(scale, day + 0.5), scale.width);
  const path = (slip: boolean) => {
    const drawnMarks = marks.filter((mark) => mark.slip === slip);
    return [...new Set(drawnMarks.map((mark) => markPath(mark, y, scale.width)))].join('');
  };
  return (
    <svg className="axis" width={scale.width} height={height} aria-hidden="true">
      <path className="minor" d={lines.minor} />
      <path className="major" d={lines.major} />
      {[...byDepth(ribbon(drawn.days, scale), top, ink)].map(([depth, d]) => (
        <path key={depth} className="ink" d={d} fillOpacity={depth} />
      ))}
      <path className="agrees" d={path(false)} />
      <path className="slips" d={path(true)} />
    </svg>
  );
});

/** The cells of one depth as one path. */
function byDepth(
  cells: readonly Inked[],
  top: number,
  height: number,
): ReadonlyMap<number, string> {
  const paths = new Map<number, string>();
  for (const { x, width, ink } of cells) {
    paths.set(ink, `${paths.get(ink) ?? ''}M${x} ${top}h${width}v${height}h${-width}z`);
  }
  return paths;
}
