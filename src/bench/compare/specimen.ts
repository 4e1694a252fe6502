import type { Defect } from '../defects.ts';
import type { SizeMm } from '../geometry/points.ts';
import { shiftAt } from './affine.ts';
import { type Features, featuresOf } from './features.ts';
import { type Comparison, type Finding, notRegistered } from './finding.ts';
import {
  type Belief,
  learned,
  log10Ratio,
  logNext,
  logSum,
  logT,
  TRIED,
  together,
} from './likelihood-ratio.ts';
import type { Seen } from './seen.ts';
import { sentenceOf } from './words.ts';

const BETWEEN = [
  'the two pictures show one specimen',
  'they show two copies of one printing',
] as const;

/**
 * How copies of one printing differ, until other copies at hand say better: where the print lies in
 * the cut, how it is turned, and how red and blue lie on green. Judgement, no source.
 */
const PLACE: Belief = { mean: 0, kappa: 1, nu: 3, sd: 0.3 };
const TURN: Belief = { mean: 0, kappa: 1, nu: 3, sd: 0.15 };
const PLATES: Belief = { mean: 0, kappa: 1, nu: 3, sd: 0.04 };

/**
 * Probability that copies of this printing lie alike: cut in one stack, or printed in perfect
 * register, so that these numbers tell no two of them apart. Judgement, no source.
 */
const ALIKE = { cut: 0.1, plates: 0.5 };

/** Errors that pictures of one specimen share in no standard error: flatness, lens, light. Judgement. */
const FLOOR = { placeMm: 0.03, turnDeg: 0.03, platesMm: 0.012 };

/**
 * Whether two pictures show one specimen or two copies of one printing: the print's place and turn in
 * the cut, the register of its colours, and marks. Each gives a likelihood ratio; copies known to be
 * different (`others`, of the same printing) teach how much copies differ.
 *
 * A copy that was worn, trimmed or changed between the pictures is another specimen to these numbers.
 */
export function compareSpecimens(
  a: Seen,
  b: Seen,
  others: readonly Seen[],
  sizeMm: SizeMm,
): Comparison {
  const pair = featuresOf(a, b, sizeMm);
  if (!pair) return notRegistered(BETWEEN);
  const among = others.flatMap((other) => featuresOf(a, other, sizeMm) ?? []);
  const findings = [
    ...cut(pair, among, Math.hypot(a.cornerSdMm, b.cornerSdMm), sizeMm),
    ...plates(pair, among),
    ...marks(a.defects, b.defects, sizeMm),
  ];
  const log10Lr = together(findings);
  return {
    registered: true,
    findings: [...findings].sort((x, y) => Math.abs(y.log10Lr) - Math.abs(x.log10Lr)),
    log10Lr,
    between: BETWEEN,
    words: sentenceOf(log10Lr, BETWEEN),
    cautions: [
      ...(among.length === 0
        ? ['No other copy of this printing was at hand: how much copies differ is a guess.']
        : []),
      TRIED,
      'Sleeves, light and a picture made worse can hide marks; copies cut in one stack lie alike.',
    ],
  };
}

/** One number that a specimen keeps, measured on a pair of pictures and on pairs of different copies. */
interface Kept {
  readonly difference: number;
  readonly se: number;
  readonly copies: Belief;
  readonly seen: readonly number[];
}

function cut(
  pair: Features,
  among: readonly Features[],
  cornerSd: number,
  [width, height]: SizeMm,
): readonly Finding[] {
  const middle = [width / 2, height / 2] as const;
  const at = (one: Features) => shiftAt(one.registration.shift, middle);
  // The middle of four corners errs half as much as one of them.
  const se = Math.hypot(pair.registration.sdMm, cornerSd / 2, FLOOR.placeMm);
  const turnSe = Math.hypot((cornerSd / height) * (180 / Math.PI), FLOOR.turnDeg);
  const numbers: readonly Kept[] = [
    { difference: at(pair)[0], se, copies: PLACE, seen: among.map((one) => at(one)[0]) },
    { difference: at(pair)[1], se, copies: PLACE, seen: among.map((one) => at(one)[1]) },
    { difference: turnOf(pair), se: turnSe, copies: TURN, seen: among.map(turnOf) },
  ];
  const difference = Math.hypot(...at(pair));
  return [
    {
      what: 'place and turn of the print in the cut, mm',
      ...{ whereMm: null, difference, sd: se, log10Lr: keptRatio(numbers, ALIKE.cut) },
    },
  ];
}

function turnOf({ registration: { shift } }: Features): number {
  return ((shift.y[1] - shift.x[2]) / 2) * (180 / Math.PI);
}

function plates(pair: Features, among: readonly Features[]): readonly Finding[] {
  const own = pair.plates;
  if (!own) return [];
  const se = Math.hypot(own.sdMm, FLOOR.platesMm);
  const known = among.flatMap(({ plates: other }) => (other ? [other] : []));
  const numbers = (['red', 'blue'] as const).flatMap((ink) =>
    ([0, 1] as const).map((k): Kept => {
      const seen = known.map((other) => other[ink][k]);
      return { difference: own[ink][k], se, copies: PLATES, seen };
    }),
  );
  const difference = Math.max(Math.hypot(...own.red), Math.hypot(...own.blue));
  return [
    {
      what: 'red and blue on green, mm',
      ...{ whereMm: null, difference, sd: se, log10Lr: keptRatio(numbers, ALIKE.plates) },
    },
  ];
}

/**
 * The ratio for numbers that a specimen keeps. Two copies either lie alike, so that the numbers tell
 * nothing, or differ as `copies` says; which of the two holds for this printing is learned from pairs
 * of different copies, from `alike` on.
 */
function keptRatio(numbers: readonly Kept[], alike: number): number {
  const sum = (of: (kept: Kept) => number) => numbers.reduce((total, kept) => total + of(kept), 0);
  // Errors of measurement with four degrees of freedom: their tails are longer than stated.
  const error = (value: number, se: number) => logT(value, 4, se);
  const same = sum(({ difference, se }) => error(difference, se));
  const seenAlike =
    Math.log(alike) +
    sum(({ seen, se }) => seen.reduce((total, value) => total + error(value, se), 0));
  const seenApart =
    Math.log(1 - alike) +
    sum(({ seen, se, copies }) =>
      seen.reduce(
        (total, value, j) => total + logNext(apartAfter(copies, seen.slice(0, j)), value, se),
        0,
      ),
    );
  const apart = sum(({ difference, se, seen, copies }) =>
    logNext(apartAfter(copies, seen), difference, se),
  );
  const other = logSum(seenAlike + same, seenApart + apart) - logSum(seenAlike, seenApart);
  return log10Ratio(same, other);
}

/** How pairs of copies differ after some pairs were seen: about nothing, by the root of two of a copy's own. */
function apartAfter(copies: Belief, seen: readonly number[]): Belief {
  return { ...learned({ ...copies, sd: copies.sd * Math.SQRT2 }, seen), mean: 0 };
}

/** Marks of one kind nearer than this are taken for one. */
const NEAR_MM = 0.8;
/** Chance that a picture shows a mark which the other one showed. Judgement, no source. */
const SHOWN_AGAIN = 0.6;
/** Marks of a kind on a square millimetre of another copy. Judgement, no source. */
const MARKS_EACH_MM2 = 1 / 2500;

function marks(
  a: readonly Defect[],
  b: readonly Defect[],
  [width, height]: SizeMm,
): readonly Finding[] {
  const sure = a.filter(({ p }) => p >= 0.5);
  if (sure.length === 0) return [];
  const area = Math.PI * NEAR_MM ** 2;
  const chance = 1 - Math.exp(-area * Math.max(MARKS_EACH_MM2, b.length / (width * height)));
  let log = 0;
  let found = 0;
  for (const mark of sure) {
    const again = b.some((other) => other.kind === mark.kind && near(mark, other));
    // The mark is on the copy with probability p, and shown again; else it is met by chance.
    const same = mark.p * SHOWN_AGAIN + (1 - mark.p * SHOWN_AGAIN) * chance;
    log += again ? Math.log(same / chance) : Math.log((1 - same) / (1 - chance));
    if (again) found += 1;
  }
  return [
    {
      what: `marks of the first picture seen again in the second, of ${sure.length}`,
      whereMm: sure[0]?.centreMm ?? null,
      difference: found,
      sd: Math.sqrt(sure.length * SHOWN_AGAIN * (1 - SHOWN_AGAIN)),
      log10Lr: log10Ratio(log, 0),
    },
  ];
}

function near(one: Defect, other: Defect): boolean {
  const [x, y] = one.centreMm;
  const [u, v] = other.centreMm;
  return Math.hypot(x - u, y - v) < NEAR_MM;
}
