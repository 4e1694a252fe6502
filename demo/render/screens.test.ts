import { describe, expect, it } from 'vitest';
import type { Picture } from '../../src/bench/index.ts';
import { INKS, type Printing, renderCut } from './screens.ts';

const PRINTING: Printing = {
  process: 'halftone',
  lpi: 141,
  anglesDeg: [18, 71, 0, 46],
  registrationMm: [
    [0.01, 0],
    [-0.02, 0.015],
    [0.01, 0.02],
    [0, 0],
  ],
};
const PIXELS = 320;
/** The channel that each ink takes most of: red, green, blue, and green for black. */
const CHANNELS = [0, 1, 2, 1];

function cut(scanRotationDeg: number, printing = PRINTING) {
  // One colour all over, which needs every ink.
  const lightAt = () => [0.28, 0.34, 0.2] as const;
  return renderCut({ printing, sizePx: PIXELS, scanRotationDeg, lightAt }, 5);
}

/**
 * Strength of one wave in one channel, in steps of 1/255: the discrete Fourier sum at that very
 * frequency under a Hann window. Lines an inch and degrees, counter-clockwise with y up.
 */
function waveAt({ samples }: Picture, channel: number, lpi: number, degrees: number): number {
  const angle = (degrees * Math.PI) / 180;
  const f = (2 * Math.PI * lpi) / 1200;
  const hann = (i: number) => 1 - Math.cos((2 * Math.PI * (i + 0.5)) / PIXELS);
  const across = Float64Array.from({ length: PIXELS }, (_, x) => f * Math.cos(angle) * x);
  const cosines = across.map((phase, x) => hann(x) * Math.cos(phase));
  const sines = across.map((phase, x) => hann(x) * Math.sin(phase));
  let [re, im] = [0, 0];
  for (let y = 0; y < PIXELS; y++) {
    let [rowRe, rowIm] = [0, 0];
    for (let x = 0; x < PIXELS; x++) {
      const value = samples[3 * (y * PIXELS + x) + channel] as number;
      rowRe += value * cosines[x]!;
      rowIm += value * sines[x]!;
    }
    const [c, s] = [Math.cos(-f * Math.sin(angle) * y), Math.sin(-f * Math.sin(angle) * y)];
    re += hann(y) * (rowRe * c - rowIm * s);
    im += hann(y) * (rowRe * s + rowIm * c);
  }
  return (2 * Math.hypot(re, im)) / PIXELS ** 2;
}

/** Where the strongest of three waves lies, by the parabola through their logarithms. */
function peakOf(step: number, strengthAt: (offset: number) => number): number {
  const [a, b, c] = [-step, 0, step].map((offset) => Math.log(strengthAt(offset))) as [
    number,
    number,
    number,
  ];
  return (step * (a - c)) / (2 * (a - 2 * b + c));
}

const angleOf = (truth: unknown, ink: string) =>
  (truth as { readonly screens: Record<string, { readonly angleDeg: number }> }).screens[ink]!
    .angleDeg;

describe.each([0, 6.5, -9])('the screens of a print that is scanned at %d degrees', (turn) => {
  const { picture, truth } = cut(turn);

  it.each(INKS.map((ink, i) => [ink, i] as const))('hold %s where the truth says', (ink, i) => {
    const degrees = angleOf(truth, ink);
    const at = (lpi: number, angle: number) => waveAt(picture, CHANNELS[i]!, lpi, angle);
    const strength = at(141, degrees);
    // Measured 24 steps at least, of those between screens 0.5 at most.
    expect(strength).toBeGreaterThan(20);
    // A square screen has the same wave a quarter turn on: measured within 0.009.
    expect(Math.abs(at(141, degrees + 90) / strength - 1)).toBeLessThan(0.02);
    // Measured 0.029 degrees and 0.011 lines an inch: pixels are steps, and plates lie over others.
    expect(Math.abs(peakOf(0.8, (offset) => at(141, degrees + offset)))).toBeLessThan(0.05);
    expect(Math.abs(peakOf(2, (offset) => at(141 + offset, degrees)))).toBeLessThan(0.03);
  });

  it('lie turned clockwise by as much as the print', () => {
    for (const [i, ink] of INKS.entries()) {
      const expected = (((PRINTING.anglesDeg[i]! - turn) % 90) + 90) % 90;
      expect(angleOf(truth, ink)).toBeCloseTo(expected, 9);
    }
  });

  it('leave no wave of their ruling between them', () => {
    const between = [9, 32, 58].map((angle) => angle - turn);
    for (const channel of [0, 1, 2])
      for (const angle of between) expect(waveAt(picture, channel, 141, angle)).toBeLessThan(1);
  });
});

it('shows no wave where nothing was screened', () => {
  for (const process of ['stochastic', 'continuous'] as const) {
    const { picture } = cut(0, { ...PRINTING, process });
    // Scattered dots hold a little of every wave: measured 0.8.
    for (const [i, angle] of PRINTING.anglesDeg.entries())
      expect(waveAt(picture, CHANNELS[i]!, 141, angle)).toBeLessThan(1.5);
  }
});
