import type { RefObject } from 'react';
import { useBook } from '../app/context.ts';
import { type Scale, xOf, yearTicks } from '../draw/index.ts';
import { type Book, drawnOf } from '../view/index.ts';
import type { LaneLook } from './Lane.tsx';
import { useSeen } from './useRows.ts';

interface Props {
  readonly ids: readonly string[];
  readonly scroller: RefObject<HTMLElement | null>;
  readonly look: LaneLook;
}

function ticks(ids: readonly string[], { dated }: Book, scale: Scale): string {
  return ids
    .map((id) => drawnOf(dated.get(id)).centre)
    .filter((day) => day !== undefined)
    .map((day) => `M${xOf(scale, day + 0.5).toFixed(1)} 0v14`)
    .join('');
}

/** The years in one strip for a narrow page: all printings faint, those in view in full ink. */
export function Strip({ ids, scroller, look }: Props) {
  const book = useBook();
  const seen = useSeen({ scroller, row: look.height, count: ids.length });
  return (
    <svg className="axis strip" width={look.scale.width} height="32" aria-hidden="true">
      {yearTicks(look.scale, 48)
        .filter((tick) => tick.major)
        .map((tick) => (
          <g key={tick.label}>
            <path className="major" d={`M${tick.x.toFixed(1)} 0v32`} />
            <text x={tick.x + 3} y="28">
              {tick.label}
            </text>
          </g>
        ))}
      <path className="faint" d={ticks(ids, book, look.scale)} />
      <path className="here" d={ticks(ids.slice(seen.from, seen.to), book, look.scale)} />
    </svg>
  );
}
