import type { NumberValue, TraitValue } from '../traits/value.ts';

/** A tolerance that is not told, as a share of the number. Judgement, no source. */
const UNTOLD = 0.02;
/** 95 % of a normal distribution lie within so many standard deviations. */
const WITHIN = 1.959964;
/** How much wider a careless measurement scatters. Judgement, no source. */
const CARELESS = 4;

/** What numbers a trait shows, and how far from them it may be measured. */
export interface NumberChannel {
  /** Mean and spread of the numbers that its bearers have. */
  readonly centre: number;
  readonly spread: number;
}

/** The spread of a value itself: of copies measured with care. */
export function sdOfValue({ value, tolerance, rounding }: NumberValue): number {
  return (tolerance ?? Math.max(UNTOLD * Math.abs(value), rounding)) / WITHIN;
}

/** The channel of the numbers among some values; undefined where there are none. */
export function numberChannel(
  values: readonly (TraitValue | undefined)[],
): NumberChannel | undefined {
  const numbers = values.filter((one): one is NumberValue => one?.is === 'number');
  if (numbers.length === 0) return undefined;
  const centre = mean(numbers.map(({ value }) => value));
  const sd = Math.sqrt(mean(numbers.map(({ value }) => (value - centre) ** 2)));
  const own = mean(numbers.map(sdOfValue));
  return { centre, spread: Math.max(sd, 3 * own, 0.01 * Math.abs(centre)) };
}

/** Densities of a number as measured on a bearer: with care, and in error. */
export function measuredOn(
  seen: number,
  bearer: NumberValue,
  extraSd: number,
  channel: NumberChannel,
): readonly [right: number, wrong: number] {
  const sd = Math.hypot(sdOfValue(bearer), extraSd);
  const wrong = 0.5 * heavy(seen, bearer.value, CARELESS * sd) + 0.5 * anyNumber(seen, channel);
  return [normal(seen, bearer.value, sd), wrong];
}

/** Density of a number on one whose own is not known: like the others, near them, or anywhere. */
export function guessed(
  seen: number,
  bearers: readonly NumberValue[],
  extraSd: number,
  channel: NumberChannel,
): number {
  const near = channel.spread * bearers.length ** -0.2;
  const mean = (sd: (bearer: NumberValue) => number) =>
    bearers.reduce((sum, one) => sum + normal(seen, one.value, sd(one)), 0) / bearers.length;
  const same = mean((one) => Math.hypot(sdOfValue(one), extraSd));
  const smooth = mean((one) => Math.hypot(sdOfValue(one), extraSd, near));
  return 0.2 * same + 0.6 * smooth + 0.2 * anyNumber(seen, channel);
}

/** Density of a number of which nothing is known but what the trait's other bearers have. */
export function anyNumber(seen: number, { centre, spread }: NumberChannel): number {
  return heavy(seen, centre, spread);
}

function normal(x: number, centre: number, sd: number): number {
  return Math.exp(-0.5 * ((x - centre) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));
}

/** Student's t with three degrees of freedom, in closed form. */
function heavy(x: number, centre: number, scale: number): number {
  const t = (x - centre) / scale;
  return 2 / (Math.PI * Math.sqrt(3) * scale * (1 + (t * t) / 3) ** 2);
}

function mean(all: readonly number[]): number {
  return all.reduce((sum, one) => sum + one, 0) / all.length;
}
