import { type Rows, type Scale, xOf, yearTicks } from '../draw/index.ts';
import { type DatedPrinting, drawnOf } from '../view/index.ts';

interface Props {
  readonly ids: readonly string[];
  readonly dated: ReadonlyMap<string, DatedPrinting>;
  readonly rows: Rows;
  readonly scale: Scale;
}

function ticks(ids: readonly string[], { dated, scale }: Props): string {
  return ids
    .map((id) => drawnOf(dated.get(id)).centre)
    .filter((day) => day !== undefined)
    .map((day) => `M${xOf(scale, day + 0.5).toFixed(1)} 0v14`)
    .join('');
}

/** The years in one strip for a narrow page: all printings faint, those in view in full ink. */
export function Strip(props: Props) {
  const { ids, rows, scale } = props;
  return (
    <svg className="axis strip" width={scale.width} height="32" aria-hidden="true">
      {yearTicks(scale, 48)
        .filter((tick) => tick.major)
        .map((tick) => (
          <g key={tick.label}>
            <path className="major" d={`M${tick.x.toFixed(1)} 0v32`} />
            <text x={tick.x + 3} y="28">
              {tick.label}
            </text>
          </g>
        ))}
      <path className="faint" d={ticks(ids, props)} />
      <path className="here" d={ticks(ids.slice(rows.from, rows.to), props)} />
    </svg>
  );
}
