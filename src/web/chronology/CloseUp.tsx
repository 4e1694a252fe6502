import { memo } from 'react';
import {
  type Bar,
  type ClaimMark,
  claimMarks,
  closeup,
  markPath,
  offsetTicks,
  offsetX,
} from '../draw/index.ts';
import type { Drawn } from '../view/index.ts';

interface Props {
  readonly drawn: Drawn;
  readonly reach: number;
  readonly width: number;
  readonly height: number;
}

/** The days round the best day: a bar a day, claims beneath, and what lies beyond either edge. */
export const CloseUp = memo(function CloseUp({ drawn, reach, width, height }: Props) {
  const tall = height > 30;
  const base = tall ? 25 : 16;
  const centre = drawn.centre;
  if (centre === undefined)
    return <svg className="axis" width={width} height={height} aria-hidden="true" />;
  const x = (day: number) => offsetX(day - centre, reach, width);
  const { bars, before, after } = closeup(drawn.days, centre, reach, {
    width,
    height: base - (tall ? 4 : 2),
  });
  const claims = claimMarks(drawn.claims, x, width);
  const path = (slip: boolean) =>
    claims.marks
      .filter((mark) => mark.slip === slip)
      .map((mark) => markPath(mark, base + 3, width))
      .join('');
  return (
    <svg className="axis" width={width} height={height} aria-hidden="true">
      <path className="minor" d={gridPath(reach, width, height)} />
      <path className="base" d={`M0 ${base}.5H${width}`} />
      <path className="ink" d={bars.map((bar) => barPath(bar, base)).join('')} />
      <path className="agrees" d={path(false)} />
      <path className="slips" d={path(true)} />
      {tall
        ? labels(claims.marks, width).map((mark) => (
            <Label key={`${mark.label}${mark.x0}`} mark={mark} base={base} width={width} />
          ))
        : null}
      {before > 0.01 || claims.before > 0 ? (
        <path className="beyond" d={`M5 ${base + 4}l-4 3l4 3`} />
      ) : null}
      {after > 0.01 || claims.after > 0 ? (
        <path className="beyond" d={`M${width - 5} ${base + 4}l4 3l-4 3`} />
      ) : null}
    </svg>
  );
});

function barPath(bar: Bar, base: number): string {
  const height = bar.height.toFixed(1);
  return `M${bar.x.toFixed(1)} ${base}v-${height}h${bar.width.toFixed(1)}v${height}z`;
}

function gridPath(reach: number, width: number, height: number): string {
  return offsetTicks(reach)
    .map((offset) => `M${offsetX(offset, reach, width).toFixed(1)} 0v${height}`)
    .join('');
}

/** The labels that can stand without touching each other; the edge that is named must be in view. */
function labels(marks: readonly ClaimMark[], width: number): readonly ClaimMark[] {
  const kept: ClaimMark[] = [];
  for (const mark of marks) {
    if (mark.label === '' || mark.x0 < 0 || mark.x0 > width - 4) continue;
    if (kept.every((other) => Math.abs(other.x0 - mark.x0) > 56)) kept.push(mark);
  }
  return kept;
}

interface LabelProps {
  readonly mark: ClaimMark;
  readonly base: number;
  readonly width: number;
}

function Label({ mark, base, width }: LabelProps) {
  const late = mark.x0 > width - 48;
  return (
    <text
      className="small"
      x={late ? width : mark.x0}
      y={base - 2}
      textAnchor={late ? 'end' : 'start'}
    >
      {mark.label}
    </text>
  );
}
