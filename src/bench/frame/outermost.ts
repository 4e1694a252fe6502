import type { SideLine } from './sides.ts';
import type { Support } from './turn.ts';

/** A printed line beside a side that the strip shows, as far as a quick look tells. */
export interface Candidate {
  readonly line: SideLine;
  /** Share of the columns that change colour at the line and not before it, and 1 for each of them. */
  readonly support: number;
  readonly seenOn: Uint8Array;
  /** Mean size of the change there, in hundredths of the cube root of light. */
  readonly size: number;
}

/** Outermost line that is looked for, in millimetres: ringing and halos of the cut edge lie outside. */
export const NEAREST = 0.5;
/** Least share of the columns that bear out a line. Judgement, no source. */
const LEAST = 0.3;
/** A line as good as this share of the best one may be the outermost frame line. */
const AS_GOOD = 0.75;
/** Fainter than this share of the strongest line, it may be noise of the coding. Judgement, no source. */
const FAINT = 0.12;
/** Changes weaker than this share of the line's own do not end the border before it. */
const STRONG = 0.5;

/** All lines that a side bears out, outermost first. */
export function candidatesOf(support: Support): readonly Candidate[] {
  const { steps, slope, shares } = support;
  const { from, step, depths } = steps.strip;
  const found: Candidate[] = [];
  for (let d = Math.max(2, Math.ceil((NEAREST - from) / step)); d < depths - 2; d++) {
    const share = shares[d] as number;
    if (share < LEAST || share < (shares[d - 1] as number) || share <= (shares[d + 1] as number))
      continue;
    found.push({ line: { depth: from + d * step, slope }, ...weighed(support, d) });
  }
  return found;
}

/** The outermost line that is as good as the best; null where a side has none. */
export function outermostOf(candidates: readonly Candidate[]): Candidate | null {
  const seen = candidates.filter(({ support }) => support >= LEAST);
  const strongest = Math.max(0, ...seen.map(({ size }) => size));
  const strong = seen.filter(({ size }) => size >= FAINT * strongest);
  const best = Math.max(0, ...strong.map(({ support }) => support));
  return strong.find(({ support }) => support >= AS_GOOD * best) ?? null;
}

function weighed({ steps, slope }: Support, at: number): Omit<Candidate, 'line'> {
  const { strip, sizes, peaks } = steps;
  const { columns, along } = strip;
  const middle = ((along[0] as number) + (along[columns - 1] as number)) / 2;
  const seenOn = new Uint8Array(columns);
  let [clear, sum, count] = [0, 0, 0];
  for (let c = 0; c < columns; c++) {
    const d = at + Math.round((slope * ((along[c] as number) - middle)) / strip.step);
    const hit = [d, d - 1, d + 1].find((row) => peaks[row * columns + c] === 1);
    if (hit === undefined) continue;
    const size = sizes[hit * columns + c] as number;
    sum += size;
    count++;
    if (!isClear(steps.strip, sizes, peaks, c, hit - 2, size * STRONG)) continue;
    seenOn[c] = 1;
    clear++;
  }
  return { support: clear / columns, seenOn, size: count ? sum / count : 0 };
}

function isClear(
  { columns, from, step }: Support['steps']['strip'],
  sizes: Float32Array,
  peaks: Uint8Array,
  column: number,
  before: number,
  strong: number,
): boolean {
  for (let d = Math.ceil((NEAREST - from) / step); d < before; d++) {
    const i = d * columns + column;
    if (peaks[i] && (sizes[i] as number) > strong) return false;
  }
  return true;
}
