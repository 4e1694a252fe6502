import type { Candidate } from './candidates.ts';
import { areOfOneInk, type Densities, type InkName } from './inks.ts';
import { stepsApart } from './peaks.ts';
import { TILE } from './spectrum.ts';

/** A pair of peaks taken for the screen of an ink. */
export interface Chosen {
  readonly ink: InkName;
  readonly peak: Candidate;
}

/** Rulings of one print differ by at most 6 % (ISO 12647-9:2021, 4.2.3), and 0.5 % for measuring. */
const ALIKE = 1.065;

/** How far apart the screens of two inks lie at least, in steps of the spectrum. */
const APART = 2.5;

/** How far the peaks of a screen stand above their rings. Judgement, tuned on invented prints. */
const LEAST = 30;

/** No ink brightens: where a channel falls by this share while another rises, it is no ink. */
const BRIGHTENS = -0.15;

const NAMES = ['cyan', 'magenta', 'yellow', 'black'] as const;

/**
 * The screens of a print: one for each ink, all of nearly one ruling, combinations of coarser
 * lattices left out. The ruling is the one whose peaks stand out most and fit the inks best.
 *
 * @param low lowest frequency that a screen may have, cycles a pixel; peaks below it are drawn
 * @returns none where nothing fits
 */
export function chooseScreens(candidates: readonly Candidate[], low: number): readonly Chosen[] {
  const base = candidates.filter(
    (one) =>
      one.frequency >= low &&
      one.lesser > LEAST &&
      Math.min(...one.colour) > BRIGHTENS &&
      !candidates.some((other) =>
        other.frequency < low ? isDrawn(one, other) : isMultiple(one, other) || isGhost(one, other),
      ),
  );
  let best: readonly Chosen[] = [];
  for (const lowest of base) {
    const near = base.filter(
      ({ frequency }) => frequency >= lowest.frequency && frequency <= lowest.frequency * ALIKE,
    );
    const chosen = assigned(near.slice(0, 8));
    if (worthOf(chosen) > worthOf(best)) best = chosen;
  }
  return best;
}

/** Whether a peak belongs to crossed lines of a coarser pitch, which are the stronger ones. */
function isDrawn(one: Candidate, coarse: Candidate): boolean {
  return coarse.power > 0.5 * one.power && isCombination(one, coarse, 0.6);
}

/** Whether a peak is a finer one of the lattice of the same ink's screen, or of a much stronger one's. */
function isMultiple(one: Candidate, base: Candidate): boolean {
  const stands =
    base.ink === one.ink ? base.power > 0.1 * one.power : base.lesser > 0.3 * one.lesser;
  return stands && isCombination(one, base, 1.2);
}

/** Whether a peak is a faint pattern that a screen of the same ink makes with the grid of plate or scan. */
function isGhost(one: Candidate, screen: Candidate): boolean {
  const isFaint = one.lesser < 100 && one.power < 0.05 * screen.power;
  return isFaint && areOfOneInk(one.colour, screen.colour);
}

/** Whether a frequency is a whole combination of the two directions of a lattice, in steps of the spectrum. */
function isCombination(one: Candidate, base: Candidate, tolerance: number): boolean {
  if (base.frequency >= one.frequency / 1.3) return false;
  const square = base.frequency ** 2;
  const p = Math.round((one.x * base.x + one.y * base.y) / square);
  const q = Math.round((one.x * base.y - one.y * base.x) / square);
  const off = Math.hypot(one.x - (p * base.x + q * base.y), one.y - (p * base.y - q * base.x));
  return off * TILE < tolerance;
}

/** The best way to give candidates to inks, each at most once. */
function assigned(candidates: readonly Candidate[]): readonly Chosen[] {
  let best: readonly Chosen[] = [];
  const go = (ink: number, taken: readonly Chosen[]) => {
    const name = NAMES[ink];
    if (name === undefined) {
      if (worthOf(taken) > worthOf(best)) best = taken;
      return;
    }
    go(ink + 1, taken);
    for (const peak of candidates)
      if (taken.every((one) => stepsApart(one.peak, peak) > APART))
        go(ink + 1, [...taken, { ink: name, peak }]);
  };
  go(0, []);
  return best;
}

function worthOf(chosen: readonly Chosen[]): number {
  return chosen.reduce(
    (sum, { ink, peak }) => sum + Math.log(peak.lesser / 10) - Math.log1p(misfit(peak.colour, ink)),
    0,
  );
}

/**
 * How badly a colour fits the name of an ink: by its saturation for black, by its hue for the
 * others. About 1 is ordinary. Judgement, no source.
 */
export function misfit(colour: Densities, ink: InkName): number {
  const mean = (colour[0] + colour[1] + colour[2]) / 3;
  const [r, g, b] = colour.map((density) => density - mean) as [number, number, number];
  const saturation = Math.hypot(r, g, b);
  if (ink === 'black') return (saturation / 0.1) ** 2;
  const hue = (Math.atan2(Math.sqrt(3) * (g - b), 2 * r - g - b) * 180) / Math.PI;
  const turn = ((hue - (HUES[ink as keyof typeof HUES] ?? 0) + 540) % 360) - 180;
  const grey = Math.max(0, 0.28 - saturation);
  return ((turn / 25) * (1 - grey / 0.28)) ** 2 + (grey / 0.15) ** 2;
}

/** Where ordinary inks lie on the wheel of what they take from red (0), green (120), blue (240). */
const HUES = { cyan: 15, magenta: 145, yellow: 244 };
