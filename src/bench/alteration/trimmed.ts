import type { Finding } from '../compare/finding.ts';
import { type Belief, learned, log10Ratio, logNext, logT } from '../compare/likelihood-ratio.ts';
import type { SizeMm } from '../geometry/points.ts';
import type { Sign } from './sign.ts';
import { signOf } from './sign.ts';

const BETWEEN = [
  'an edge was cut off after the card left its maker',
  'the card has the size it was cut to when it was made',
] as const;

/** How far cards of one product lie off its size, mm, before any other one was measured. Judgement, no source. */
const CUT: Belief = { mean: 0, kappa: 1, nu: 3, sd: 0.12 };
/** Mean of what is cut off where an edge is trimmed, mm. Judgement, no source. */
const TRIM_MM = 0.6;
/** How far the print lies off the middle of a card as made: difference of two borders, mm. Judgement, no source. */
const OFF_CENTRE_MM = 0.6;
const STEPS = 60;

/** One way across a card: its size, and the two borders there. */
export interface Across {
  readonly mm: number;
  readonly sdMm: number;
  /** Left less right, or top less bottom, mm; null where no frame was found. */
  readonly borderDifference: number | null;
}

/**
 * Whether an edge was trimmed: a size below the product's own, and a border that is narrower by what
 * is missing. The cut is integrated over, from either side; other copies measured in one way teach
 * how much the product's size varies.
 *
 * @param others sizes of copies believed untouched, mm; none: the spread is a guess
 */
export function trimmedSign(
  [width, height]: readonly [Across, Across],
  nominal: SizeMm,
  others: readonly SizeMm[],
): Sign {
  const findings = ([width, height] as const).map((across, k) =>
    findingOf(
      k === 0 ? 'width' : 'height',
      across,
      nominal[k as 0 | 1],
      others.map((size) => size[k as 0 | 1]),
    ),
  );
  return signOf('trimmed', findings, BETWEEN, [
    ...(others.length === 0
      ? [
          'How much cards of this product differ in size as made is a guess: no other copy was measured.',
        ]
      : []),
    'Early or careless cutting makes small cards too; a scanner’s scale may be off by a thousandth.',
  ]);
}

function findingOf(
  what: string,
  { mm, sdMm, borderDifference }: Across,
  nominal: number,
  others: readonly number[],
): Finding {
  const belief = learned(
    CUT,
    others.map((other) => other - nominal),
  );
  const off = mm - nominal;
  const made = logNext(belief, off, sdMm) + border(borderDifference, 0);
  let sum = 0;
  for (let k = 0; k < STEPS; k++) {
    const cut = -TRIM_MM * Math.log(1 - (k + 0.5) / STEPS);
    const size = logNext(belief, off + cut, sdMm);
    // Cut off on the far side, or on the near one.
    const sides = [cut, -cut].map((by) => Math.exp(border(borderDifference, by)));
    sum += (Math.exp(size) * ((sides[0] as number) + (sides[1] as number))) / 2 / STEPS;
  }
  return {
    what: `${what} less the product’s, mm`,
    whereMm: null,
    difference: off,
    sd: Math.hypot(belief.sd, sdMm),
    log10Lr: log10Ratio(Math.log(sum + 1e-300), made),
  };
}

function border(difference: number | null, cut: number): number {
  return difference === null ? 0 : logT(difference - cut, 4, OFF_CENTRE_MM);
}
