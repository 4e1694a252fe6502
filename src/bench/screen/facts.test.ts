import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { encodedOf } from '../light/srgb.ts';
import { pictureOf } from '../picture.ts';
import { type PrintProcess, printProcessOf } from './screen.ts';

const facts = JSON.parse(
  readFileSync('checks/fixtures/bench/print_and_size_facts.json', 'utf8'),
) as {
  scanned_screen_frequency: {
    cases: readonly { lpi: number; dpi: number; angle: number; period_px: number }[];
  };
  screen_ruling: { lpi: Record<string, number> };
};

/** Black dots as two crossed waves of density, of so many pixels a line. */
function waves(periodPx: number, angleDeg: number, side: number) {
  const angle = (angleDeg * Math.PI) / 180;
  const step = (2 * Math.PI) / periodPx;
  const samples = new Uint8Array(side * side * 3);
  for (let y = 0, i = 0; y < side; y++)
    for (let x = 0; x < side; x++, i += 3) {
      const along = step * (Math.cos(angle) * x - Math.sin(angle) * y);
      const across = step * (Math.sin(angle) * x + Math.cos(angle) * y);
      const density = 0.4 + 0.15 * (Math.cos(along) + Math.cos(across));
      samples.fill(Math.round(255 * encodedOf(10 ** -density)), i, i + 3);
    }
  return pictureOf(side, side, samples);
}

const measured = (periodPx: number, angle: number, dpi: number) =>
  printProcessOf(waves(periodPx, angle, dpi > 2000 ? 1100 : 600), dpi) as PrintProcess;

describe('a scanned screen shows at the frequency that its ruling and the scan give', () => {
  const fine = facts.scanned_screen_frequency.cases.filter(({ dpi }) => dpi >= 1200);
  it.each(fine)(
    '$lpi lines an inch at $angle degrees in $dpi dpi',
    ({ lpi, dpi, angle, ...one }) => {
      const { process, screens } = measured(one.period_px, angle, dpi);
      expect(process).toBe('halftone');
      expect(screens.map(({ ink }) => ink)).toEqual(['black']);
      // The parabola through a Hann peak is off by up to 0.03 steps of 4.7 lpi; allowed 0.3 lpi, 0.15°.
      expect(Math.abs((screens[0]?.lpi as number) - lpi)).toBeLessThan(0.3);
      expect(Math.abs((screens[0]?.angleDeg as number) - angle)).toBeLessThan(0.15);
    },
  );

  it.each([0.4, 1.1, 45, 88.9, 89.6])(
    'finds a screen at %d degrees, along the grid or not',
    (angle) => {
      const { screens } = measured(1200 / 123.4, angle, 1200);
      expect(screens).toHaveLength(1);
      expect(Math.abs((screens[0]?.angleDeg as number) - angle)).toBeLessThan(0.15);
    },
  );

  it.each(facts.scanned_screen_frequency.cases.filter(({ dpi }) => dpi < 800))(
    'refuses $dpi dpi',
    ({ lpi, dpi, angle, ...one }) => {
      const found = printProcessOf(waves(one.period_px, angle, 600), dpi);
      expect(found).toHaveProperty('why', expect.stringContaining('scan at 1,200 dpi or more'));
    },
  );

  it.each(Object.entries(facts.screen_ruling.lpi).filter(([perCm]) => Number(perCm) <= 80))(
    'measures the %s lines a centimetre of ISO 12647-9',
    (_, lpi) => {
      const { screens } = measured(1200 / lpi, 33, 1200);
      expect(Math.abs((screens[0]?.lpi as number) - lpi)).toBeLessThan(0.3);
    },
  );
});

describe('laws', () => {
  const lattice = waves(7.5, 20, 600);
  const found = printProcessOf(lattice, 1200) as PrintProcess;
  const angleOf = (samples: Uint8Array) =>
    (printProcessOf(pictureOf(600, 600, samples), 1200) as PrintProcess).screens[0]
      ?.angleDeg as number;
  const moved = (from: (x: number, y: number) => number) => {
    const samples = new Uint8Array(lattice.samples.length);
    for (let y = 0, i = 0; y < 600; y++)
      for (let x = 0; x < 600; x++, i += 3)
        samples.fill(lattice.samples[3 * from(x, y)] as number, i, i + 3);
    return samples;
  };

  it('more dots an inch are a finer ruling in proportion, at the same angle', () => {
    const finer = printProcessOf(lattice, 1300) as PrintProcess;
    const ratio = (finer.screens[0]?.lpi as number) / (found.screens[0]?.lpi as number);
    expect(ratio).toBeCloseTo(1300 / 1200, 9);
    expect(finer.screens[0]?.angleDeg).toBeCloseTo(found.screens[0]?.angleDeg as number, 9);
  });

  // Turned and mirrored samples fall into other tiles: measured 0.01°, allowed 0.1°.
  it('a quarter turn leaves the angle, a mirror turns it about', () => {
    const angle = found.screens[0]?.angleDeg as number;
    expect(Math.abs(angleOf(moved((x, y) => x * 600 + (599 - y))) - angle)).toBeLessThan(0.1);
    expect(Math.abs(angleOf(moved((x, y) => y * 600 + (599 - x))) - (90 - angle))).toBeLessThan(
      0.1,
    );
  });
});

describe('what cannot be measured is answered with what to do', () => {
  const lattice = waves(8, 45, 300);
  it.each([
    [null, 'state them with --dpi'],
    [72, 'At 72 dpi'],
    [2400, 'too small'],
  ])('%s dpi', (dpi, why) => {
    expect(printProcessOf(lattice, dpi)).toHaveProperty('why', expect.stringContaining(why));
  });
});
