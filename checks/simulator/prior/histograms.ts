import { civilOf, type DateProperty } from '../../../src/evidence/index.ts';
import type { Chance } from '../chance.ts';
import { COVERS, DELAYS, type Signed, YEARS } from './numbers.ts';

/** Masses, adding up to one, from a Dirichlet distribution. */
function dirichlet(chance: Chance, counts: readonly number[]): number[] {
  const gammas = counts.map((a) => (a > 0 ? chance.gamma(a) : 0));
  const total = gammas.reduce((sum, g) => sum + g, 0);
  return gammas.map((g) => g / total);
}

function scaled(mass: readonly number[], weight: number): number[] {
  const total = mass.reduce((sum, m) => sum + m, 0);
  return mass.map((m) => (weight * m) / total);
}

/** A histogram on signed log2 bins of days, drawn for one dossier. */
export class SignedHistogram {
  private readonly mass: readonly number[];

  constructor(chance: Chance, { weight, zero, up, down }: Signed) {
    this.mass = dirichlet(chance, scaled([zero, ...up, ...down], weight));
  }

  /** A signed number of days: bin b holds 2^(b−1) to 2^b − 1 of them. */
  draw(chance: Chance): number {
    const bin = chance.weighted(this.mass);
    if (bin === 0) return 0;
    const half = (this.mass.length - 1) / 2;
    const octave = bin > half ? bin - half : bin;
    const size = 2 ** (octave - 1) + chance.whole(0, 2 ** (octave - 1) - 1);
    return bin > half ? -size : size;
  }

  /** Probability of one day at so many days, either sign. */
  density(days: number): number {
    if (days === 0) return this.mass[0]!;
    const half = (this.mass.length - 1) / 2;
    const octave = Math.floor(Math.log2(Math.abs(days))) + 1;
    if (octave > half) return 0;
    return this.mass[days > 0 ? octave : half + octave]! / 2 ** (octave - 1);
  }
}

/** Gives a day that a statement of a property other than the day of sale names. */
export type Delay = (chance: Chance, day: number, series: string | undefined) => number;

/** Draws the histogram of each property. */
export function drawDelays(chance: Chance): (property: DateProperty) => Delay {
  const made = new Map<DateProperty, Delay>();
  return (property) => {
    const delay = made.get(property) ?? delayOf(chance, property);
    made.set(property, delay);
    return delay;
  };
}

function delayOf(chance: Chance, property: DateProperty): Delay {
  if (property === 'cover-date') return coverDates(chance);
  const years = YEARS[property];
  if (years) {
    const mass = dirichlet(chance, scaled(years.mass, years.weight));
    return (one, day) => inYear(civilOf(day).year + years.counted * yearsOff(one, mass));
  }
  const delay = DELAYS[property]!;
  const histogram = new SignedHistogram(chance, delay);
  const sign = delay.counted === 'from-release' ? 1 : -1;
  return (one, day) => day + sign * histogram.draw(one);
}

const inYear = (year: number) => Math.floor((year - 1970) * 365.2425) + 182;

/** Whole years; "the rest" has no bounds in the model, and is four years either way here. */
function yearsOff(chance: Chance, mass: readonly number[]): number {
  const bin = chance.weighted(mass);
  return bin === 7 ? (chance.yes(0.5) ? 4 : -4) : bin - 3;
}

/** Cover dates by their lead, one histogram for each periodical, drawn about that of all. */
function coverDates(chance: Chance): Delay {
  const weeks = Array.from({ length: COVERS.weeks }, (_, week) => COVERS.mass(week));
  const all = dirichlet(chance, scaled([...weeks, COVERS.restMass], COVERS.weight));
  const own = new Map<string, number[]>();
  return (one, day, series) => {
    const mass =
      series === undefined ? all : (own.get(series) ?? dirichlet(one, scaled(all, COVERS.pooled)));
    if (series !== undefined) own.set(series, mass);
    return day + leadOf(one, mass);
  };
}

function leadOf(chance: Chance, mass: readonly number[]): number {
  const week = chance.weighted(mass);
  if (week < COVERS.weeks) return COVERS.first + 7 * week + chance.whole(0, 6);
  const beyond = chance.whole(0, COVERS.rest - 1);
  const last = COVERS.first + 7 * COVERS.weeks;
  return beyond % 2 === 0 ? last + beyond / 2 : COVERS.first - 1 - (beyond - 1) / 2;
}
