/** A line of an axis: where it stands, from 0 at the left end to 1 at the right one, and its words. */
export interface AxisLine {
  readonly at: number;
  readonly words: string;
}

/** The words of an axis at the head of a column of drawings, each over its line. */
export function AxisWords({ lines }: { readonly lines: readonly AxisLine[] }) {
  return (
    <span className="axis-words">
      {lines.map(({ at, words }) => (
        <span key={words} style={{ left: `${100 * at}%` }}>
          {words}
        </span>
      ))}
    </span>
  );
}

/** The lines of an axis as a path through a drawing 300 wide and 12 high. */
export function axisPath(lines: readonly AxisLine[]): string {
  return lines.map(({ at }) => `M${(2 + 296 * at).toFixed(1)} -6v24`).join('');
}
