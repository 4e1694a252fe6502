/** What the owner's own batches say about how far a population's shares flatter. */
export interface Selection {
  /** Shares as they are for copies such as the owner's. */
  readonly shares: readonly number[];
  /** The tilt, in logarithms of odds a grade; below 0 the owner's copies did worse. */
  readonly tilt: number;
  readonly sd: number;
  /** Outcomes that it rests on. */
  readonly outcomes: number;
}

/**
 * Before any outcome: people send in their best, so a copy at hand is expected to do somewhat worse
 * than those counted, and how much is hardly known. Judgement, no source.
 */
const BEFORE = { mean: -0.25, sd: 0.35 };

/**
 * Shares of grades for the owner's copies: the population's shares, tilted by a factor of
 * exp(tilt) a grade, the tilt integrated over its posterior from the owner's outcomes.
 *
 * The owner too sends in the best, so that it still flatters a copy taken at random.
 * @param shares of the population, worst grade to best, adding up to 1
 * @param outcomes places in `shares` of the grades that the owner's copies came back with
 * @throws RangeError where an outcome is no place of the scale
 */
export function selected(shares: readonly number[], outcomes: readonly number[]): Selection {
  if (outcomes.some((g) => shares[g] === undefined))
    throw new RangeError(`An outcome is a place from 0 to ${shares.length - 1}.`);
  const grid = Array.from({ length: 161 }, (_, i) => (i - 80) / 40);
  const tilted = grid.map((tilt) => tiltedBy(shares, tilt));
  const logs = grid.map((tilt, i) =>
    outcomes.reduce(
      (sum, g) => sum + Math.log(tilted[i]?.[g] as number),
      -0.5 * ((tilt - BEFORE.mean) / BEFORE.sd) ** 2,
    ),
  );
  const weights = normalised(logs);
  const mean = (of: (i: number) => number) =>
    weights.reduce((sum, weight, i) => sum + weight * of(i), 0);
  const tilt = mean((i) => grid[i] as number);
  return {
    shares: shares.map((_, g) => mean((i) => tilted[i]?.[g] as number)),
    tilt,
    sd: Math.sqrt(mean((i) => ((grid[i] as number) - tilt) ** 2)),
    outcomes: outcomes.length,
  };
}

function tiltedBy(shares: readonly number[], tilt: number): readonly number[] {
  const raw = shares.map((share, g) => share * Math.exp(tilt * g));
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((value) => value / sum);
}

function normalised(logs: readonly number[]): readonly number[] {
  const top = Math.max(...logs);
  const raw = logs.map((log) => Math.exp(log - top));
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((value) => value / sum);
}
