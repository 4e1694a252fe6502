import { type BySide, bySide, SIDES } from './sides.ts';
import type { Steps } from './steps.ts';
import type { Strip } from './strip.ts';

/** How well straight lines at each depth are borne out by a side, all at one slope. */
export interface Support {
  readonly steps: Steps;
  readonly slope: number;
  /** Share of the columns with a change at the line, by depth of the strip; 0.7 a step beside it. */
  readonly shares: Float64Array;
}

/** Largest turn of a print against its card that is looked for, some 2.9 degrees. */
const LARGEST = 0.05;
/** A tenth of a millimetre over the length of the longest side: finer slopes cannot be told apart. */
const SLOPE_STEP = 0.001;
/** The turn is that of the outer lines: only so many changes of a column, from outside, have a say. */
const FIRST = 3;
/** What a change one depth beside the line counts. */
const BESIDE = 0.7;

/** The changes of one side, each by its depth and by how far it moves for a slope of one. */
interface Votes {
  readonly depths: Float64Array;
  readonly levers: Float64Array;
}

/**
 * The slope that the print's lines have on all four sides at once, and each side's support at it.
 * @param nearest changes further out, in millimetres, are those of the cut edge and do not count
 */
export function supportsOf(steps: BySide<Steps>, nearest: number): BySide<Support> {
  const first = bySide((side) => votesOf(steps[side], nearest, FIRST));
  const sharesAt = (slope: number) =>
    bySide((side) => sharesOf(steps[side].strip, first[side], slope));
  let [slope, most] = [0, -1];
  const last = Math.round(LARGEST / SLOPE_STEP);
  for (let i = -last; i <= last; i++) {
    const shares = sharesAt(i * SLOPE_STEP);
    const total = SIDES.reduce((sum, side) => sum + Math.max(...shares[side]) ** 2, 0);
    if (total > most) [slope, most] = [i * SLOPE_STEP, total];
  }
  return bySide((side) => {
    const votes = votesOf(steps[side], nearest, Infinity);
    return { steps: steps[side], slope, shares: sharesOf(steps[side].strip, votes, slope) };
  });
}

/** The changes of each column, from the cut edge inwards, the first `most` of them. */
function votesOf({ strip, peaks }: Steps, nearest: number, most: number): Votes {
  const { columns, depths, along, from, step } = strip;
  const middle = ((along[0] as number) + (along[columns - 1] as number)) / 2;
  const at: number[] = [];
  const levers: number[] = [];
  for (let c = 0; c < columns; c++)
    for (let d = Math.ceil((nearest - from) / step), n = 0; d < depths && n < most; d++)
      if (peaks[d * columns + c]) {
        at.push(d);
        levers.push(((along[c] as number) - middle) / step);
        n++;
      }
  return { depths: Float64Array.from(at), levers: Float64Array.from(levers) };
}

function sharesOf({ columns, depths }: Strip, votes: Votes, slope: number): Float64Array {
  const counts = new Float64Array(depths + 2);
  for (let i = 0; i < votes.depths.length; i++) {
    const at = (votes.depths[i] as number) - slope * (votes.levers[i] as number);
    if (at < 0 || at > depths - 1) continue;
    const low = at | 0;
    const high = at - low;
    counts[low + 1] = (counts[low + 1] as number) + 1 - high;
    counts[low + 2] = (counts[low + 2] as number) + high;
  }
  return Float64Array.from({ length: depths }, (_, d) => {
    const beside = (counts[d] as number) + (counts[d + 2] as number);
    return Math.min(1, ((counts[d + 1] as number) + BESIDE * beside) / columns);
  });
}
