import type { Outcome } from './outcomes.ts';

/** Readings that may all be wrong together, since they tell the same thing or come from one mouth. */
export interface Group {
  readonly key: string;
  /** Chance that all of them are of another printing. */
  readonly slip: number;
  readonly parts: readonly Part[];
}

/** One reading: what it says, and how often such readings err. */
export interface Part {
  readonly outcome: Outcome;
  readonly misread: number;
}

/** How much more or less than usual a collector misreads: log odds on a grid, with weights. */
export interface Levels {
  readonly shifts: readonly number[];
  readonly weights: Float64Array;
}

/** One standard deviation of the log odds of misreading about the usual. Judgement, no source. */
const LEVEL_SD = 0.9;
const STEPS = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2] as const;

/** The levels before anything is learned: a normal distribution on nine points. */
export function levelsBefore(): Levels {
  const raw = STEPS.map((x) => Math.exp(-0.5 * x * x));
  const sum = raw.reduce((all, one) => all + one, 0);
  return {
    shifts: STEPS.map((x) => LEVEL_SD * x),
    weights: Float64Array.from(raw, (one) => one / sum),
  };
}

/** A chance of misreading at another level. */
export function misreadAt(usual: number, shift: number): number {
  return 1 / (1 + Math.exp(-(Math.log(usual / (1 - usual)) + shift)));
}

/**
 * How likely each hypothesis makes the readings of a group, at a level. With a small chance all of
 * them are of another printing: so traits that tell the same thing cannot claim more than that.
 */
export function factorOf(group: Group, shift: number, prior: Float64Array): Float64Array {
  const factor = new Float64Array(prior.length).fill(1);
  for (const { outcome, misread } of group.parts) {
    const error = misreadAt(misread, shift);
    for (let h = 0; h < factor.length; h++) {
      const p = (1 - error) * (outcome.right[h] as number) + error * (outcome.wrong[h] as number);
      factor[h] = (factor[h] as number) * p;
    }
  }
  const astray = factor.reduce((sum, one, h) => sum + one * (prior[h] as number), 0);
  return factor.map((one) => (1 - group.slip) * one + group.slip * astray);
}

/** Joint probability of level (row) and hypothesis (column); all entries add up to 1. */
export type Joint = readonly Float64Array[];

/** Weighs groups of readings; `logEvidence` is the log chance of all readings. */
export function weigh(
  groups: readonly Group[],
  prior: Float64Array,
  { shifts, weights }: Levels,
): { readonly joint: Joint; readonly logEvidence: readonly number[] } {
  const logs = shifts.map((shift) => {
    const log = prior.map(Math.log);
    for (const group of groups) {
      const factor = factorOf(group, shift, prior);
      for (let h = 0; h < log.length; h++)
        log[h] = (log[h] as number) + Math.log(factor[h] as number);
    }
    return log;
  });
  const most = Math.max(...logs.map((log) => Math.max(...log)));
  const joint = logs.map((log, m) =>
    log.map((one) => (weights[m] as number) * Math.exp(one - most)),
  );
  const sum = joint.reduce((all, row) => all + total(row), 0);
  return {
    joint: joint.map((row) => row.map((one) => one / sum)),
    logEvidence: logs.map((log) => most + Math.log(total(log.map((one) => Math.exp(one - most))))),
  };
}

/** The probabilities of the hypotheses, over all levels. */
export function overLevels(joint: Joint): Float64Array {
  const p = new Float64Array(joint[0]?.length ?? 0);
  for (const row of joint)
    row.forEach((one, h) => {
      p[h] = (p[h] as number) + one;
    });
  return p;
}

/** Levels after the readings on other copies, by the chance that each level gives them. */
export function learned(levels: Levels, evidence: readonly (readonly number[])[]): Levels {
  const logs = levels.shifts.map(
    (_, m) =>
      Math.log(levels.weights[m] as number) +
      evidence.reduce((sum, copy) => sum + (copy[m] as number), 0),
  );
  const most = Math.max(...logs);
  const raw = Float64Array.from(logs, (one) => Math.exp(one - most));
  const sum = total(raw);
  return { ...levels, weights: raw.map((one) => one / sum) };
}

function total(row: Float64Array): number {
  return row.reduce((sum, one) => sum + one, 0);
}
