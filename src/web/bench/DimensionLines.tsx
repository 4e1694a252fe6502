import { type Dimensions, strokesOf } from './dimensions.ts';

/** Dimension lines as on a workshop drawing, in cyan, all of them outside the card. */
export function DimensionLines({ lines, labels }: Dimensions) {
  const strokes = lines.map(strokesOf);
  return (
    <g className="dimensions">
      <path className="leads" d={strokes.map(([, lead]) => lead).join('')} />
      <path className="measure" d={strokes.map(([line]) => line).join('')} />
      {labels.map(({ at: [x, y], anchor, lines: words, why }) => (
        <text key={`${x}|${y}|${words[0]}`} x={x} y={y} textAnchor={anchor} data-why={why}>
          {words.map((line, k) => (
            <tspan key={line} x={x} dy={k === 0 ? 0 : 17} className={k === 0 ? '' : 'doubt'}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </g>
  );
}
