import type { Picture } from '../picture.ts';
import { corrected } from './camera.ts';
import { ciede2000, type Lab } from './ciede2000.ts';
import { fitCorrection, type Known, misfitOf, spreadOf } from './correction.ts';
import type { Least } from './least-squares.ts';
import { type Reading, readPatch } from './reading.ts';

/** A patch in a picture: its colour (D50, 2 degrees) where it is known, and where it lies, pixels. */
export interface Patch {
  readonly lab: Lab | null;
  readonly centrePx: readonly [number, number];
  /** Side of a square that lies wholly in the patch. */
  readonly sizePx: number;
}

/** The colour of a patch as corrected. */
export interface Measured {
  readonly lab: Lab;
  /** Standard deviations of L, a and b, the doubt of the correction included. */
  readonly sd: Lab;
}

/** A patch that could not be used, and why. */
export interface LeftOut {
  /** Which of the chart's patches, from 0. */
  readonly patch: number;
  readonly why: string;
}

/** What a picture with a chart tells. */
export interface ChartAnswer {
  /** In the order of the chart; null for a patch that lies outside the picture or is blown out. */
  readonly patches: readonly (Measured | null)[];
  /** CIEDE2000 of each known patch that was used, predicted by the others alone. */
  readonly fit: { readonly mean: number; readonly max: number };
  readonly leftOut: readonly LeftOut[];
}

/** Why no correction can be given, with what to photograph again. */
export interface NoCorrection {
  readonly why: string;
  readonly leftOut: readonly LeftOut[];
}

/** Known patches without which no correction is given. Judgement: the matrix alone has nine entries. */
const FEWEST = 10;

/** Share of blown samples, and unevenness, from which a patch is left out. Judgement, no source. */
const BLOWN = 0.02;
const UNEVEN = 0.25;

/** What the stated deviations are never shrunk below, as a share of what noise and floor say. */
const LEAST_SCALE = 0.6;

/** Misfit in standard deviations and in CIEDE2000 from which a known patch is left out. */
const STRANGE = { deviations: 5, difference: 6 };

/**
 * Corrects a picture by the patches whose colour is known and measures the others. Says which known
 * patches could not be used; where too few are left, what to photograph again.
 *
 * @param covered patches that are known to show something else
 */
export function chartColours(
  picture: Picture,
  chart: readonly Patch[],
  covered: readonly number[] = [],
): ChartAnswer | NoCorrection {
  const readings = readingsOf(picture, chart);
  const by = correctionFrom(readings, chart, covered);
  if ('why' in by) return by;
  return {
    patches: readings.map((reading) =>
      reading === null || reading.blown >= BLOWN ? null : by.measure(reading),
    ),
    fit: by.fit,
    leftOut: by.leftOut,
  };
}

/** What a chart corrects the colours of its picture by. */
export interface Correction extends Pick<ChartAnswer, 'fit' | 'leftOut'> {
  /** The colour of a reading of the same picture, the correction's doubt carried along. */
  readonly measure: (reading: Reading) => Measured;
}

/** The correction by the patches whose colour is known, for whatever else the picture shows. */
export function correctionBy(
  picture: Picture,
  chart: readonly Patch[],
  covered: readonly number[] = [],
): Correction | NoCorrection {
  return correctionFrom(readingsOf(picture, chart), chart, covered);
}

type Readings = readonly (Reading | null)[];

function readingsOf(picture: Picture, chart: readonly Patch[]): Readings {
  return chart.map(({ centrePx, sizePx }) => readPatch(picture, centrePx, sizePx));
}

function correctionFrom(
  readings: Readings,
  chart: readonly Patch[],
  covered: readonly number[],
): Correction | NoCorrection {
  const faults = readings.map((one, k) => (covered.includes(k) ? STRANGE_WHY : faultOf(one)));
  const leftOut: LeftOut[] = faults.flatMap((why, patch) => (why === null ? [] : [{ patch, why }]));
  let used = chart.flatMap(({ lab }, patch) =>
    lab && faults[patch] === null ? [{ patch, lab, reading: readings[patch] as Reading }] : [],
  );
  const alike = alikeOnes(used);
  leftOut.push(...alike.map((patch) => ({ patch, why: ALIKE_WHY })));
  used = used.filter(({ patch }) => !alike.includes(patch));
  if (used.length < FEWEST) return tooFew(used.length, leftOut);
  const strange = strangeOnes(used);
  leftOut.push(...strange.map((patch) => ({ patch, why: STRANGE_WHY })));
  used = used.filter(({ patch }) => !strange.includes(patch));
  if (used.length < FEWEST) return tooFew(used.length, leftOut);
  const fit = fitCorrection(used);
  const left = predictedByOthers(used, fit);
  const scale = Math.max(LEAST_SCALE, rootMeanSquare(left.flatMap(({ misfit }) => misfit)));
  const differences = left.map(({ difference }) => difference);
  const mean = differences.reduce((sum, one) => sum + one, 0) / differences.length;
  if (mean > MOST_MISFIT) return noOneLight(mean, leftOut);
  return {
    measure: (reading) => measured(fit, reading, scale),
    fit: { mean, max: Math.max(...differences) },
    leftOut: leftOut.sort((a, b) => a.patch - b.patch),
  };
}

const STRANGE_WHY =
  'its colour does not agree with what the other patches say: it may be covered, dirty, in glare or another patch';

function faultOf(reading: Reading | null): string | null {
  if (reading === null) return 'it does not lie wholly in the picture';
  if (reading.blown >= BLOWN) return 'it is blown out';
  if (reading.uneven >= UNEVEN)
    return 'it is uneven: partly covered, in glare, or its place is wrong';
  return null;
}

function tooFew(count: number, leftOut: readonly LeftOut[]): NoCorrection {
  return {
    why: `Only ${count} patches of known colour can be used and ${FEWEST} are needed: photograph the whole chart again, uncovered, evenly lit and not too bright.`,
    leftOut,
  };
}

/** Mean misfit in CIEDE2000 from which patches are said to agree on nothing. Judgement, no source. */
const MOST_MISFIT = 8;

function noOneLight(mean: number, leftOut: readonly LeftOut[]): NoCorrection {
  return {
    why: `The patches agree with no one lamp and camera: each predicted by the others is off by ${mean.toFixed(0)} in CIEDE2000 on average. Part of the chart is covered or in glare, it is another chart, or the places told are wrong: photograph the whole chart again, uncovered and evenly lit.`,
    leftOut,
  };
}

interface Used extends Known {
  readonly patch: number;
}

/** So many patches that show one colour though theirs lie so far apart (CIEDE2000) are covered. Judgement, no source. */
const COVERED = { others: 3, apart: 15, light: 0.06 };

const ALIKE_WHY =
  'it shows the same colour as other patches whose colours are far from its own: something lies over them';

/** Patches that show the colour of what lies over several of them. */
function alikeOnes(used: readonly Used[]): readonly number[] {
  const together = (one: Used, other: Used) =>
    showAlike(one.reading, other.reading) && ciede2000(one.lab, other.lab) > COVERED.apart;
  return used
    .filter((one) => used.filter((other) => together(one, other)).length >= COVERED.others)
    .map(({ patch }) => patch);
}

function showAlike({ light: a }: Reading, { light: b }: Reading): boolean {
  return a.every((one, c) => Math.abs(one - (b[c] as number)) < COVERED.light * one + 0.002);
}

/** Patches that disagree with a fit in which those that misfit pull less. */
function strangeOnes(used: readonly Used[]): readonly number[] {
  const { values } = fitCorrection(used);
  const sizes = used.map((one) => Math.hypot(...misfitOf(values, one)) / Math.sqrt(3));
  const usual = Math.max(1, [...sizes].sort((a, b) => a - b)[sizes.length >> 1] as number);
  return used
    .filter(
      (one, i) =>
        (sizes[i] as number) > STRANGE.deviations * usual &&
        ciede2000(corrected(values, one.reading), one.lab) > STRANGE.difference,
    )
    .map(({ patch }) => patch);
}

/** For each known patch, how far the correction from all others misses it. */
function predictedByOthers(used: readonly Used[], fit: Least) {
  return used.map((one) => {
    const others = fitCorrection(
      used.filter((other) => other !== one),
      fit.values,
    );
    const { lab, sd } = measured(others, one.reading, 1);
    return {
      misfit: lab.map((value, i) => (value - (one.lab[i] as number)) / (sd[i] as number)),
      difference: ciede2000(lab, one.lab),
    };
  });
}

/** The colour of a reading with what noise, the correction's doubt and its misfit leave open. */
function measured({ values, covariance }: Least, reading: Reading, scale: number): Measured {
  const lab = corrected(values, reading);
  const slopes = Array.from(values, (value, k) => {
    const step = 1e-5 * Math.max(0.1, Math.abs(value));
    const moved = values.slice();
    moved[k] = value + step;
    return corrected(moved, reading).map((after, i) => (after - (lab[i] as number)) / step);
  });
  const spread = spreadOf(values, reading, lab);
  const sd = lab.map((_, i) => {
    let variance = (spread[i] as number) ** 2;
    covariance.forEach((row, k) => {
      row.forEach((entry, m) => {
        variance += entry * (slopes[k]?.[i] as number) * (slopes[m]?.[i] as number);
      });
    });
    return scale * Math.sqrt(variance);
  });
  return { lab, sd: sd as unknown as Lab };
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}
