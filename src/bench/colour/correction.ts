import { BELIEVED, corrected, noiseOf, SIZE } from './camera.ts';
import type { Lab } from './ciede2000.ts';
import { type Least, leastSquares } from './least-squares.ts';
import type { Reading } from './reading.ts';
import { lightOfLab } from './spaces.ts';

/** A patch whose colour is known, and what the picture shows of it. */
export interface Known {
  readonly lab: Lab;
  readonly reading: Reading;
}

/** What no reading can be better than, in L and in a and b. Judgement, no source. */
const FLOOR = [0.15, 0.25, 0.25] as const;

/** Misfit in standard deviations from which a patch pulls less (`huber:1981`). */
const HUBER = 2.5;

/**
 * The correction that carries the readings of known patches to their colours: light field, tone
 * curve and camera matrix in one robust fit, what is believed beforehand holding the field and the
 * curve where patches tell little.
 *
 * @param start values to begin with; else the plain matrix that fits best
 * @throws RangeError where the patches leave the matrix undetermined.
 */
export function fitCorrection(known: readonly Known[], start?: Float64Array): Least {
  let least: Least | undefined;
  let values = start ?? plainMatrix(known);
  for (let round = 0; round < (start ? 2 : 4); round++) {
    const from = values;
    const weights = known.map((one) => weightOf(from, one, round === 0 && !start));
    least = leastSquares((now) => residualsOf(now, known, weights), values, start ? 4 : 15);
    values = least.values;
  }
  return least as Least;
}

/** Misfits of L, a and b of a patch in standard deviations. */
export function misfitOf(values: Float64Array, { lab, reading }: Known): Lab {
  const spread = spreadOf(values, reading, lab);
  return corrected(values, reading).map(
    (value, i) => (value - (lab[i] as number)) / (spread[i] as number),
  ) as unknown as Lab;
}

/** Standard deviations of L, a and b that noise and the floor leave to a reading. */
export function spreadOf(values: Float64Array, reading: Reading, [, a, b]: Lab): Lab {
  const stretch = 1 + 0.02 * Math.hypot(a, b);
  return noiseOf(values, reading).map((sd, i) =>
    Math.hypot(sd, (FLOOR[i] as number) * (i === 0 ? 1 : stretch)),
  ) as unknown as Lab;
}

interface Weight {
  readonly pull: number;
  readonly spread: Lab;
}

function weightOf(values: Float64Array, one: Known, first: boolean): Weight {
  const spread = spreadOf(values, one.reading, one.lab);
  const size = Math.hypot(...misfitOf(values, one)) / Math.sqrt(3);
  return { spread, pull: first || size < HUBER ? 1 : Math.sqrt(HUBER / size) };
}

function residualsOf(
  values: Float64Array,
  known: readonly Known[],
  weights: readonly Weight[],
): Float64Array {
  const out = new Float64Array(known.length * 3 + BELIEVED.length);
  known.forEach(({ lab, reading }, k) => {
    const { pull, spread } = weights[k] as Weight;
    const found = corrected(values, reading);
    for (let i = 0; i < 3; i++)
      out[3 * k + i] = (pull * ((found[i] as number) - (lab[i] as number))) / (spread[i] as number);
  });
  BELIEVED.forEach((sd, i) => {
    out[known.length * 3 + i] = (values[SIZE - BELIEVED.length + i] as number) / sd;
  });
  return out;
}

/** The matrix alone that carries the light of the patches nearest to their linear sRGB. */
function plainMatrix(known: readonly Known[]): Float64Array {
  const values = new Float64Array(SIZE);
  const wanted = known.map(({ lab }) => lightOfLab(lab));
  for (const row of [0, 1, 2]) {
    const { values: three } = leastSquares(
      (now) =>
        Float64Array.from(known, ({ reading: { light } }, k) => {
          const sum = light.reduce((total, one, i) => total + one * (now[i] as number), 0);
          const target = wanted[k]?.[row] as number;
          return (sum - target) / (0.02 + Math.abs(target));
        }),
      [row === 0 ? 1 : 0, row === 1 ? 1 : 0, row === 2 ? 1 : 0],
    );
    values.set(three, row * 3);
  }
  return values;
}
