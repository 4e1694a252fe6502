interface Props {
  /** Width and height in mm; a common size where it is not told. */
  readonly card: readonly [number, number] | null;
  /** `x0 y0 x1 y1` in mm; empty where it is not told. */
  readonly region: string;
  readonly side: 'front' | 'back';
}

/** Where on a card a trait stands, as a small drawing; the words beside it say the same. */
export function CardPlace({ card, region, side }: Props) {
  const [width, height] = card ?? [63, 88];
  const [x0, y0, x1, y1] = (region.match(/\d+(\.\d+)?/g) ?? []).map(Number);
  const known = x0 !== undefined && y0 !== undefined && x1 !== undefined && y1 !== undefined;
  return (
    <svg
      className={`card-place ${side}`}
      viewBox={`-1 -1 ${width + 2} ${height + 2}`}
      aria-hidden="true"
    >
      <rect className="card" width={width} height={height} rx="3" />
      {known ? <rect className="place" x={x0} y={y0} width={x1 - x0} height={y1 - y0} /> : null}
    </svg>
  );
}
