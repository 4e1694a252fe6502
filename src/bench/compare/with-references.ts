import type { SizeMm } from '../geometry/points.ts';
import type { PrintProcess } from '../screen/screen.ts';
import type { Charted } from './charted.ts';
import { type Features, featuresOf } from './features.ts';
import { type Comparison, type Finding, notRegistered } from './finding.ts';
import {
  type Belief,
  learned,
  log10Ratio,
  logNext,
  logSum,
  TRIED,
  together,
} from './likelihood-ratio.ts';
import type { OverPlaces } from './places.ts';
import { screenFindings } from './screens.ts';
import type { Seen } from './seen.ts';
import { sentenceOf } from './words.ts';

const BETWEEN = [
  'the copy is of the same printing as the references',
  'the copy is of another print of the same design',
] as const;

/**
 * What is believed of a difference before any two references were compared, for copies of one
 * printing and for another print of the design. Judgement, no source: wide, so that a single
 * reference carries little.
 */
interface Family {
  readonly what: string;
  readonly same: Belief;
  readonly other: Belief;
}

const COLOUR: Family = {
  what: 'colour: what no lamp explains, CIEDE2000',
  same: { mean: Math.log(1.5), kappa: 1, nu: 3, sd: 0.5 },
  other: { mean: Math.log(3.6), kappa: 1, nu: 3, sd: 0.7 },
};
const CHARTED: Family = { ...COLOUR, what: 'colour: by the charts in both pictures, CIEDE2000' };
const DETAIL: Family = {
  what: 'line and text: share of detail',
  same: { mean: Math.log(0.2), kappa: 1, nu: 3, sd: 0.5 },
  other: { mean: Math.log(0.4), kappa: 1, nu: 3, sd: 0.7 },
};
const SHARPNESS: Family = {
  what: 'line: sharpness of the finest lines, logarithm',
  same: { mean: 0, kappa: 1, nu: 3, sd: 0.35 },
  other: { mean: 0, kappa: 1, nu: 3, sd: 0.8 },
};
const STROKES: Family = {
  what: 'text and line: width of dark strokes, logarithm',
  same: { mean: 0, kappa: 1, nu: 3, sd: 0.2 },
  other: { mean: 0, kappa: 1, nu: 3, sd: 0.4 },
};
const WIDTH: Family = {
  what: 'size: width, mm',
  same: { mean: 0, kappa: 1, nu: 3, sd: 0.15 },
  other: { mean: 0, kappa: 1, nu: 3, sd: 0.5 },
};
const HEIGHT: Family = { ...WIDTH, what: 'size: height, mm' };

/** Print processes of a copy and of references, from scans that tell them, also of pieces alone. */
export interface Prints {
  readonly copy: readonly PrintProcess[];
  readonly references: readonly PrintProcess[];
}

const NO_PRINTS: Prints = { copy: [], references: [] };

/**
 * Compares a copy with pictures of references: how it differs from them, against how they differ
 * among themselves. Each family of differences gives a likelihood ratio from Student's predictive
 * distribution (`murphy:2007`); their logarithms add up, which takes families as independent.
 *
 * The second explanation is another print of the same design, whatever its origin. References that
 * are all pictures by one camera make other cameras look like other prints. With no picture of a
 * whole face, or none that lies on another, the print processes are compared alone.
 * @throws RangeError where no reference is given at all
 */
export function compareWithReferences(
  copy: Seen | null,
  references: readonly Seen[],
  sizeMm: SizeMm,
  prints: Prints = NO_PRINTS,
): Comparison {
  if (references.length + prints.references.length === 0)
    throw new RangeError('At least one reference is wanted.');
  const screens = screenFindings(prints.copy, prints.references);
  const usable = copy ? references.flatMap((one) => featuresOf(one, copy, sizeMm) ?? []) : [];
  const faces = copy && usable.length > 0 ? faceFindings(copy, references, usable, sizeMm) : [];
  const findings = [...faces, ...screens];
  if (findings.length === 0) return notRegistered(BETWEEN);
  const log10Lr = together(findings);
  return {
    registered: usable.length > 0,
    findings: [...findings].sort((a, b) => Math.abs(b.log10Lr) - Math.abs(a.log10Lr)),
    log10Lr,
    between: BETWEEN,
    words: sentenceOf(log10Lr, BETWEEN),
    cautions: [
      ...(usable.length > 0
        ? [...cautionsOf(references.length, usable.length), ...colourCautions(usable, faces)]
        : ['No face was laid on another: the print process was compared alone.']),
      ...(screens.length > 0 && prints.references.length === 1
        ? ['With one scan of a reference nobody knows how its screens vary: that carries little.']
        : []),
    ],
  };
}

function faceFindings(
  copy: Seen,
  references: readonly Seen[],
  usable: readonly Features[],
  sizeMm: SizeMm,
): readonly Finding[] {
  const known = references.flatMap((one, i) =>
    references.slice(i + 1).flatMap((other) => featuresOf(one, other, sizeMm) ?? []),
  );
  const strokes = (all: readonly Features[]) => all.flatMap((one) => one.strokes ?? []);
  return [
    colour(usable, known),
    overPlaces(DETAIL, detailsOf(usable), detailsOf(known)),
    signed(
      SHARPNESS,
      usable.map(({ sharpness }) => sharpness),
      known.map(({ sharpness }) => sharpness),
      0.05,
    ),
    ...(strokes(usable).length > 0 ? [signed(STROKES, strokes(usable), strokes(known), 0.02)] : []),
    ...sizes(copy, references),
  ];
}

/** By charts where the copy and a reference have one, and then by these pairs alone. */
function colour(usable: readonly Features[], known: readonly Features[]): Finding {
  const charted = chartedAmong(usable);
  if (charted.length > 0) return overPlaces(CHARTED, charted, chartedAmong(known));
  const lit = (all: readonly Features[]) => all.map((one) => one.colour);
  return overPlaces(COLOUR, lit(usable), lit(known));
}

function chartedAmong(all: readonly Features[]): readonly Charted[] {
  return all.flatMap(({ charted }) => charted ?? []);
}

function detailsOf(all: readonly Features[]): readonly OverPlaces[] {
  return all.map(({ detail }) => detail);
}

function overPlaces(
  family: Family,
  against: readonly (OverPlaces & Partial<Pick<Charted, 'noise'>>)[],
  among: readonly OverPlaces[],
): Finding {
  const value = mean(against.map(({ rms }) => Math.log(rms + 1e-6)));
  const strongest = against.reduce((a, b) => (b.worst.value > a.worst.value ? b : a));
  const pairs = thinned(among.map(({ rms }) => Math.log(rms + 1e-6)));
  const { mean: usual, sd } = learned(family.same, pairs);
  // A copy that is more alike than the references are among themselves is not less alike for it.
  const weighed = Math.max(value, usual);
  // The doubt of a correction is shared by all places, and so by their mean.
  const noise = mean(against.map(({ noise: own }) => own ?? 0));
  return {
    what: family.what,
    whereMm: strongest.worst.atMm,
    difference: Math.exp(value),
    sd: Math.hypot(Math.exp(value) * sd, noise),
    log10Lr: ratio(family, weighed, pairs, noise * Math.exp(-weighed)),
  };
}

/** A difference with a sign, of the copy from each reference and of references from each other. */
function signed(
  family: Family,
  against: readonly number[],
  among: readonly number[],
  se: number,
): Finding {
  // Two copies differ by the root of two of what each lies from the mean; either order is a pair.
  const pairs = thinned(among.map((value) => value / Math.SQRT2));
  const value = mean(against);
  return {
    what: family.what,
    whereMm: null,
    difference: value,
    sd: Math.hypot(learned(family.same, pairs).sd, se),
    log10Lr: ratio(family, value, pairs, se),
  };
}

/**
 * Another print of the design is alike in most things: in each family with this probability, so that
 * agreement says little. Judgement; with less, rendered pairs were told worse than without any ratio.
 */
const ALIKE = 0.7;

function ratio(family: Family, value: number, pairs: readonly number[], se: number): number {
  const same = logNext(learned(family.same, pairs), value, se);
  const apart = logNext(family.other, value, se);
  return log10Ratio(same, logSum(Math.log(ALIKE) + same, Math.log(1 - ALIKE) + apart));
}

/** Pairs of n copies hold what n − 1 values hold: as many are taken, evenly. */
function thinned(pairs: readonly number[]): readonly number[] {
  const copies = (1 + Math.sqrt(1 + 8 * pairs.length)) / 2;
  const wanted = Math.max(0, Math.round(copies) - 1);
  const sorted = [...pairs].sort((a, b) => a - b);
  return Array.from(
    { length: wanted },
    (_, i) => sorted[Math.floor(((i + 0.5) * sorted.length) / wanted)] as number,
  );
}

function sizes(copy: Seen, references: readonly Seen[]): readonly Finding[] {
  const own = copy.measured;
  const known = references.flatMap(({ measured }) => (measured ? [measured] : []));
  if (!own || known.length === 0) return [];
  return ([WIDTH, HEIGHT] as const).map((family, k) => {
    const values = known.map(({ mm }) => mm[k as 0 | 1]);
    const middle = mean(values);
    const apart = values.length > 1 ? values.map((value) => value - middle) : [];
    const se = Math.hypot(own.sd, mean(known.map(({ sd }) => sd)));
    const value = own.mm[k as 0 | 1] - middle;
    return {
      what: family.what,
      whereMm: null,
      difference: value,
      sd: Math.hypot(learned(family.same, apart).sd, se),
      log10Lr: ratio(family, value, apart, se),
    };
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length;
}

/** What colour rests on, and without a chart how little it says. */
function colourCautions(usable: readonly Features[], faces: readonly Finding[]): readonly string[] {
  const charted = chartedAmong(usable);
  if (charted.length > 0) {
    const noise = mean(charted.map((one) => one.noise)).toFixed(1);
    return [
      `Colours were corrected by the charts in the copy’s picture and in ${charted.length} of the references’; what these leave open, ${noise} in CIEDE2000, is reckoned with.`,
    ];
  }
  const own = faces.find(({ what }) => what === COLOUR.what)?.log10Lr ?? 0;
  const says = (10 ** Math.abs(own)).toFixed(1);
  return [
    `No chart lies beside the card in both pictures: lamp and camera are taken out by what all places share, so that an ink which is off alike everywhere does not show. Colour says no more than ${says} to one here.`,
  ];
}

function cautionsOf(given: number, usable: number): readonly string[] {
  const left = given - usable;
  return [
    ...(usable === 1
      ? [
          'With one reference nobody knows how copies of this printing differ: what it says carries little.',
        ]
      : []),
    ...(left > 0
      ? [`${left} of ${given} references do not lie on the copy’s print and were left out.`]
      : []),
    TRIED,
    'Another camera, lens or light is part of every difference; pictures by one hand in one light compare best.',
  ];
}
