import { fits, type Scale, yearTicks } from '../draw/index.ts';

interface Props {
  readonly scale: Scale;
  readonly height: number;
  /** What the upper edge stands for. */
  readonly most: number;
}

/** Days along the foot, and a count from nothing to the most up the side. */
export function TimeAxis({ scale, height, most }: Props) {
  const { width } = scale;
  return (
    <>
      {[0, 1].map((share) => (
        <text key={share} className="small" x={-6} y={height * (1 - share) + 4} textAnchor="end">
          {share * most}
        </text>
      ))}
      <path className="minor" d={`M0 .5H${width}`} />
      <path className="base" d={`M0 ${height}.5H${width}`} />
      {yearTicks(scale, 60)
        .filter((tick) => tick.major && fits(tick, scale))
        .map((tick) => (
          <g key={tick.label}>
            <path className="major" d={`M${tick.x.toFixed(1)} ${height}v5`} />
            <text className="small" x={tick.x} y={height + 17} textAnchor="middle">
              {tick.label}
            </text>
          </g>
        ))}
    </>
  );
}
