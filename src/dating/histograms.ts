import type { DateProperty } from '../evidence/index.ts';

/**
 * Lags and delays as histograms. Most are on signed log2 bins of days: bin 0 is "within the stated
 * days", bins 1 to 14 are 1, 2–3, 4–7 … days one way, bins 15 to 28 the same the other way.
 */
export const BINS = 64;
const OCTAVES = 14;

/** Index into the table of histograms; a periodical's own cover leads follow after these. */
export const NOISE_HIST = 0;
const PROPERTY_HIST: Readonly<Record<DateProperty, number>> = {
  'on-sale': NOISE_HIST,
  announced: 1,
  'cover-date': 2,
  'label-year': 3,
  'copyright-year': 4,
  'printed-on': 5,
  'seen-by': 6,
  'not-before': 7,
  'unlisted-on': 8,
  'distributed-until': 9,
};
export const FIXED_HISTS = 10;
export const COVER_HIST = PROPERTY_HIST['cover-date'];
export const UNLISTED_HIST = PROPERTY_HIST['unlisted-on'];

/** Index of the histogram of a property. */
export function histOf(property: DateProperty): number {
  return PROPERTY_HIST[property];
}

/** Bin of a signed number of days on the log2 scale. */
export function signedBin(delta: number): number {
  if (delta === 0) return 0;
  const octave = Math.min(OCTAVES, 32 - Math.clz32(Math.abs(delta)));
  return delta > 0 ? octave : OCTAVES + octave;
}

const COVER_FIRST = -70;
const COVER_BINS = 50;

/** Weekly bins of a cover's lead, from ten weeks behind to forty weeks ahead, and one for the rest. */
function coverBin(lead: number): number {
  const bin = Math.floor((lead - COVER_FIRST) / 7);
  return bin < 0 || bin >= COVER_BINS ? COVER_BINS : bin;
}

/** Bins of whole years: −3 to 3, and one for the rest. */
function yearBin(years: number): number {
  return years < -3 || years > 3 ? 7 : years + 3;
}

/**
 * The bin in which a day puts a statement.
 *
 * @param property the statement's property
 * @param lo first stated day, may be infinite
 * @param hi last stated day, may be infinite
 * @param day the day tried
 * @param yearOf calendar year of a day
 */
export function binOf(
  property: DateProperty,
  lo: number,
  hi: number,
  day: number,
  yearOf: (day: number) => number,
): number {
  switch (property) {
    case 'on-sale':
      return signedBin(day > hi ? hi - day : day < lo ? lo - day : 0);
    case 'announced':
    case 'printed-on':
      return signedBin(day > hi ? day - hi : day < lo ? day - lo : 0);
    case 'cover-date':
      return coverBin((Number.isFinite(lo) ? lo : hi) - day);
    case 'label-year':
      return yearBin(yearOf(lo) - yearOf(day));
    case 'copyright-year':
      return yearBin(yearOf(day) - yearOf(lo));
    case 'seen-by':
    case 'distributed-until':
      return signedBin((Number.isFinite(hi) ? hi : lo) - day);
    case 'not-before':
      return signedBin(day - (Number.isFinite(lo) ? lo : hi));
    case 'unlisted-on':
      return signedBin((Number.isFinite(hi) ? hi : lo) - day);
  }
}

/** Days (or years) that a bin holds, so that mass becomes density. */
export function binWidths(hist: number): Float64Array {
  const widths = new Float64Array(BINS).fill(1);
  if (hist === 3 || hist === 4 || hist === UNLISTED_HIST) return widths;
  if (hist === COVER_HIST || hist >= FIXED_HISTS) {
    widths.fill(7, 0, COVER_BINS);
    widths[COVER_BINS] = 4000;
    return widths;
  }
  for (let o = 1; o <= OCTAVES; o++) widths[o] = widths[OCTAVES + o] = 2 ** (o - 1);
  return widths;
}

const signed = (
  zero: number,
  positive: readonly number[],
  negative: readonly number[],
): number[] => {
  const out = new Array<number>(BINS).fill(0);
  out[0] = zero;
  positive.forEach((v, i) => {
    out[1 + i] = v;
  });
  negative.forEach((v, i) => {
    out[1 + OCTAVES + i] = v;
  });
  return out;
};

const NOISE = [1, 2, 5, 9, 13, 14, 12, 10, 8, 6, 4, 3, 2, 1];
const SMALL = [0.5, 0.5, 0.5, 0.5, 0.5, 0.4, 0.3, 0.3, 0.3, 0.2, 0.2, 0.1, 0.1, 0.1];

/** Prior pseudo-counts of each histogram: shape and sign by judgement, no source; width learned. */
const PRIORS: readonly { readonly weight: number; readonly mass: readonly number[] }[] = [
  { weight: 40, mass: signed(0, NOISE, NOISE) },
  {
    weight: 8,
    mass: signed(
      40,
      [2, 3, 6, 8, 9, 8, 7, 4, 2, 1, 0.5, 0.2, 0.1, 0.1],
      SMALL.map((m) => m * 2),
    ),
  },
  { weight: 6, mass: coverPrior() },
  { weight: 8, mass: [0.7, 1.5, 8, 68, 17, 2, 0.8, 2] },
  { weight: 8, mass: [0.3, 0.3, 2, 64, 17, 6, 3, 7] },
  { weight: 8, mass: signed(12, [3, 4, 7, 12, 16, 16, 12, 6, 3, 2, 1, 0.5, 0.2, 0.1], SMALL) },
  {
    weight: 8,
    mass: signed(
      4,
      [3, 4, 5, 6, 8, 9, 11, 12, 13, 13, 11, 7, 4, 2],
      SMALL.map((m) => m * 0.7),
    ),
  },
  {
    weight: 8,
    mass: signed(
      4,
      [3, 4, 5, 6, 8, 9, 11, 12, 12, 10, 7, 4, 2, 1],
      SMALL.map((m) => m * 0.7),
    ),
  },
  { weight: 0, mass: [] },
  { weight: 8, mass: signed(3, [1, 2, 3, 4, 6, 8, 10, 13, 15, 14, 10, 5, 3, 1], SMALL) },
];

function coverPrior(): number[] {
  const mass = new Array<number>(BINS).fill(0);
  for (let b = 0; b < COVER_BINS; b++) {
    const lead = (COVER_FIRST + 7 * b + 3.5) / 7;
    mass[b] = 100 * Math.exp(-0.5 * ((lead - 6) / 6) ** 2) + 2;
  }
  mass[COVER_BINS] = 40;
  return mass;
}

/** Prior pseudo-counts of a fixed histogram; a periodical's own leads use its parent's shape. */
export function histPrior(hist: number): Float64Array {
  const { weight, mass } = PRIORS[hist]!;
  const total = mass.reduce((a, b) => a + b, 0);
  const out = new Float64Array(BINS);
  mass.forEach((m, b) => {
    out[b] = (weight * m) / total;
  });
  return out;
}

/**
 * Weak evidence of absence: how probable it is that a source which lists the like does not list
 * this one, if it had been out for so long. Judgement, no source.
 */
export function unlistedMass(): Float64Array {
  const out = new Float64Array(BINS).fill(0.02);
  for (let o = 0; o <= OCTAVES; o++) out[o] = o < 6 ? 0.5 : o < 9 ? 0.25 : 0.12;
  for (let o = 1; o <= OCTAVES; o++) out[OCTAVES + o] = 1;
  return out;
}
