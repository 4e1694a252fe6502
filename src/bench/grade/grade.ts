import { capLikelihood } from './caps.ts';
import { type LookAt, shownBy } from './looks.ts';
import { type Amount, type Limit, MEASURES, type Measure, type Scale, type Side } from './types.ts';

/** What a service might say of a copy. */
export interface GradeAnswer {
  readonly scale: Scale;
  /** Probability of each grade, worst to best; adds up to 1. */
  readonly p: readonly number[];
  /** Looks not yet taken, the one that would settle most first. */
  readonly looks: readonly Look[];
  /** What most probably holds the grade down, the strongest first; adds up to at most 1. */
  readonly heldBy: readonly {
    readonly side: Side;
    readonly measure: Measure;
    readonly p: number;
  }[];
}

/** A further look at the copy, and how far it would narrow the grade down. */
export interface Look {
  /** `photo`: of the back, where none is there yet; the others of each face that is there. */
  readonly look: LookAt;
  readonly gainBits: number;
}

/**
 * How often each measure is what holds a grade down, both faces together; the front counts for
 * three quarters. Judgement, no source: services publish no such shares.
 */
const HOLDS: Readonly<Record<Measure, number>> = {
  centering: 0.2,
  'corner-wear': 0.2,
  'edge-wear': 0.17,
  scratch: 0.15,
  dent: 0.09,
  crease: 0.06,
  speck: 0.05,
  'print-line': 0.04,
  stain: 0.04,
};
const FRONT = 0.75;

interface Cap {
  readonly amount: Amount;
  /** Of the best grade that this measure allows, worst to best. */
  readonly p: readonly number[];
}

/**
 * The distribution of the grade that a service would give. The grade is the least of what the
 * measures of both faces allow (competing risks with proportional hazards, `cox:1984`): each
 * measure's survival over the grades is the population's, raised to the share of cases in which that
 * measure holds a grade down; what was measured makes it a posterior; the least of them is the grade.
 *
 * A guess from counts, limits and marks; no service is bound by it. Misleads where limits are far
 * from the service's own, and where the copy has a fault of a kind that is not listed.
 * @param shares prior shares of the grades, worst to best, adding up to 1 (`selected`)
 * @throws RangeError where shares and grades differ in number
 */
export function gradeOf(
  amounts: readonly Amount[],
  scale: Scale,
  limits: readonly Limit[],
  shares: readonly number[],
): GradeAnswer {
  if (shares.length !== scale.grades.length)
    throw new RangeError(
      `${scale.grades.length} grades have as many shares, found ${shares.length}.`,
    );
  const caps = completed(amounts).map((amount) => capOf(amount, scale, limits, shares));
  const survival = leastOf(caps.map(({ p }) => survivalOf(p)));
  return {
    scale,
    p: massOf(survival),
    looks: looksWorth(caps, survival),
    heldBy: heldBy(caps, massOf(survival)),
  };
}

/** Every measure on both faces; what was not looked at shows nothing. */
function completed(amounts: readonly Amount[]): readonly Amount[] {
  return (['front', 'back'] as const).flatMap((side) =>
    MEASURES.map(
      (measure) =>
        amounts.find((amount) => amount.side === side && amount.measure === measure) ?? {
          side,
          measure,
          parts: [{ weight: 1, mean: 0, sd: 0 }],
          shown: 0,
        },
    ),
  );
}

function capOf(
  amount: Amount,
  scale: Scale,
  limits: readonly Limit[],
  shares: readonly number[],
): Cap {
  const weight = HOLDS[amount.measure] * (amount.side === 'front' ? FRONT : 1 - FRONT);
  const before = massOf(survivalOf(shares).map((s) => s ** weight));
  const likelihood = capLikelihood(amount, scale, limits);
  const raw = before.map((p, g) => p * (likelihood[g] as number));
  const sum = raw.reduce((a, b) => a + b, 0);
  // Where limits and prior contradict each other outright, what was measured decides.
  if (sum < 1e-12) return { amount, p: normalised(likelihood) };
  return { amount, p: raw.map((p) => p / sum) };
}

function normalised(raw: readonly number[]): readonly number[] {
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((value) => value / sum);
}

/** P(at least this grade), worst to best. */
function survivalOf(p: readonly number[]): readonly number[] {
  let left = 0;
  const upwards = [...p].reverse().map((mass) => {
    left += mass;
    return Math.min(1, left);
  });
  return upwards.reverse();
}

function massOf(survival: readonly number[]): readonly number[] {
  const total = survival[0] ?? 1;
  return survival.map((s, g) => (s - (survival[g + 1] ?? 0)) / total);
}

/** The survival of the least of independent grades. */
function leastOf(survivals: readonly (readonly number[])[]): readonly number[] {
  return (survivals[0] ?? []).map((_, g) =>
    survivals.reduce((product, survival) => product * (survival[g] as number), 1),
  );
}

function heldBy(caps: readonly Cap[], p: readonly number[]): GradeAnswer['heldBy'] {
  const survivals = caps.map((cap) => survivalOf(cap.p));
  return caps
    .map(({ amount, p: own }, i) => ({
      side: amount.side,
      measure: amount.measure,
      // It allows just the grade, and every other measure allows more or as much.
      p: p.reduce((sum, _, g) => {
        const others = survivals.reduce(
          (product, survival, j) => (j === i ? product : product * (survival[g + 1] ?? 0)),
          1,
        );
        return sum + (own[g] as number) * others;
      }, 0),
    }))
    .sort((a, b) => b.p - a.p);
}

function looksWorth(caps: readonly Cap[], survival: readonly number[]): readonly Look[] {
  const seen = new Set(caps.flatMap(({ amount }) => (amount.shown > 0 ? [amount.side] : [])));
  return (['photo', 'scan', 'raking', 'lamps'] as const)
    .map((look) => {
      const more = ({ side, measure, shown }: Amount) =>
        (look === 'photo') !== seen.has(side) ? (1 - shown) * shownBy([look], measure) : 0;
      return { look, gainBits: gainOf(caps, survival, more) };
    })
    .filter(({ gainBits }) => gainBits > 1e-4)
    .sort((a, b) => b.gainBits - a.gainBits);
}

/**
 * Bits that a look would tell of the grade: for what it shows more of, the mutual information of the
 * least that those measures allow and the grade, by the share that it shows more of them.
 */
function gainOf(
  caps: readonly Cap[],
  survival: readonly number[],
  more: (amount: Amount) => number,
): number {
  const gains = caps.map(({ amount }) => more(amount));
  const seen = leastOf(caps.map(({ p }, i) => survivalOf(p).map((s) => (gains[i] ? s : 1))));
  const rest = leastOf(caps.map(({ p }, i) => survivalOf(p).map((s) => (gains[i] ? 1 : s))));
  const covered = caps.filter((_, i) => gains[i]);
  if (covered.length === 0) return 0;
  const share = gains.reduce((a, b) => a + b, 0) / covered.length;
  return share * (entropy(massOf(survival)) - entropyGiven(massOf(seen), rest));
}

/** What remains open of the grade once the least that the look shows is known, in bits. */
function entropyGiven(seen: readonly number[], rest: readonly number[]): number {
  return seen.reduce((sum, p, least) => {
    const capped = rest.map((s, g) => (g > least ? 0 : s));
    return sum + p * entropy(massOf(capped));
  }, 0);
}

function entropy(p: readonly number[]): number {
  return p.reduce((sum, mass) => (mass > 0 ? sum - mass * Math.log2(mass) : sum), 0);
}
