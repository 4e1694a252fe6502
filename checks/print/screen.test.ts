import { describe, expect, it } from 'vitest';
import { type PrintProcess, printProcessOf } from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { artOf } from './art.ts';
import { inventedPrint } from './invent.ts';
import { scanOf } from './plates.ts';
import { INKS, type Print } from './print.ts';

const SIZE = 560;

function measured(seed: number, process: Print['process'], fixed: Partial<Print> = {}) {
  const lot = chance(seed);
  const print = inventedPrint(lot, process, SIZE, fixed);
  return { print, found: printProcessOf(scanOf(print, lot), print.dpi) as PrintProcess };
}

/** Angles between screens, 0 to 45 degrees. */
function apart(a: number, b: number): number {
  return Math.abs(((((a - b) % 90) + 135) % 90) - 45);
}

const art = (kind: Parameters<typeof artOf>[0], seed: number) =>
  artOf(kind, (SIZE / 1200) * 25.4, chance(seed));

describe('invented halftones', () => {
  it.each([
    [1, { art: art('mosaic', 1) }],
    [2, { art: art('rings', 2), spot: 'elliptical' as const }],
    [3, { art: art('hatching', 3), spot: 'round' as const }],
    [4, { art: art('sky', 4), spot: 'diamond' as const, blurPx: 0.9 }],
    [5, { art: art('weave', 5), scanTurnDeg: 6 }],
  ])('show every ink by name, seed %d', (seed, fixed) => {
    const { print, found } = measured(seed, 'halftone', fixed);
    expect(found.process).toBe('halftone');
    expect(found.screens.map(({ ink }) => ink).sort()).toEqual([...INKS].sort());
    print.screens.forEach(({ lpi, angleDeg }, i) => {
      const own = found.screens.find(({ ink }) => ink === INKS[i]);
      // On sixty prints of this kind measured 0.15° and 1.2 lpi at the 95th share; the largest
      // come from weak inks in small cuts like these, so 0.5° and 2.5 lpi are allowed.
      expect(apart(own?.angleDeg as number, angleDeg - print.scanTurnDeg)).toBeLessThan(0.5);
      expect(Math.abs((own?.lpi as number) - lpi)).toBeLessThan(2.5);
    });
    const strengths = found.screens.map(({ strength }) => strength);
    expect(strengths).toEqual([...strengths].sort((a, b) => b - a));
  });
});

describe('prints without a screen show none', () => {
  it.each([
    ['stochastic', 11, 'sky'],
    ['stochastic', 12, 'hatching'],
    ['stochastic', 13, 'mosaic'],
    ['continuous', 14, 'rings'],
    ['continuous', 15, 'hatching'],
    ['continuous', 16, 'weave'],
  ] as const)('%s, seed %d, %s', (process, seed, kind) => {
    const { found } = measured(seed, process, { art: art(kind, seed) });
    expect(found.process).toBe(process);
    expect(found.screens).toEqual([]);
  });
});
