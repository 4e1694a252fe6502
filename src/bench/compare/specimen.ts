import type { Defect } from '../defects.ts';
import type { SizeMm } from '../geometry/points.ts';
import { shiftAt } from './affine.ts';
import { type Features, featuresOf } from './features.ts';
import type { Comparison, Finding } from './finding.ts';
import { type Belief, learned, log10Ratio, logNext, logT } from './likelihood-ratio.ts';
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
  if (!pair) return apart();
  const among = others.flatMap((other) => featuresOf(a, other, sizeMm) ?? []);
  const findings = [
    ...cut(pair, among, Math.hypot(a.cornerSdMm, b.cornerSdMm), sizeMm),
    ...plates(pair, among),
    ...marks(a.defects, b.defects, sizeMm),
  ];
  const log10Lr = findings.reduce((sum, finding) => sum + finding.log10Lr, 0);
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
      'Sleeves, light and a picture made worse can hide marks; copies cut in one stack lie alike.',
    ],
  };
}

function cut(
  pair: Features,
  among: readonly Features[],
  cornerSd: number,
  [width, height]: SizeMm,
): readonly Finding[] {
  const middle = [width / 2, height / 2] as const;
  const at = (one: Features) => shiftAt(one.registration.shift, middle);
  const se = Math.hypot(pair.registration.sdMm, cornerSd, FLOOR.placeMm);
  const turnSe = Math.hypot((cornerSd / height) * (180 / Math.PI), FLOOR.turnDeg);
  return [
    fingerprint(
      'print across in the cut, mm',
      at(pair)[0],
      se,
      PLACE,
      among.map((x) => at(x)[0]),
    ),
    fingerprint(
      'print along in the cut, mm',
      at(pair)[1],
      se,
      PLACE,
      among.map((x) => at(x)[1]),
    ),
    fingerprint('turn of the print, degrees', turnOf(pair), turnSe, TURN, among.map(turnOf)),
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
  return (['red', 'blue'] as const).flatMap((ink) =>
    ([0, 1] as const).map((k) =>
      fingerprint(
        `${ink} on green, ${k === 0 ? 'across' : 'along'}, mm`,
        own[ink][k],
        se,
        PLATES,
        known.map((other) => other[ink][k]),
      ),
    ),
  );
}

/** One number that a specimen keeps: its difference is the error alone, or two copies' difference. */
function fingerprint(
  what: string,
  difference: number,
  se: number,
  copies: Belief,
  seen: readonly number[],
): Finding {
  // Two copies differ by the root of two of what each lies from their mean.
  const belief = learned({ ...copies, sd: copies.sd * Math.SQRT2 }, seen);
  // Errors of measurement with four degrees of freedom: their tails are longer than stated.
  const same = logT(difference, 4, se);
  return {
    what,
    whereMm: null,
    difference,
    sd: se,
    log10Lr: log10Ratio(same, logNext({ ...belief, mean: 0 }, difference, se)),
  };
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

function apart(): Comparison {
  return {
    registered: false,
    findings: [],
    log10Lr: 0,
    between: BETWEEN,
    words:
      'The prints do not lie on each other, so that nothing was compared: another face, another design, or a picture too small or blurred for its lines.',
    cautions: [],
  };
}
