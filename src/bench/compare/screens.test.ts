import { describe, expect, it } from 'vitest';
import type { PrintProcess } from '../screen/screen.ts';
import { screenFindings } from './screens.ts';

/** A halftone of four inks at a ruling, the whole piece turned. */
function halftone(lpi: number, turnDeg = 0, yellowDeg = 0): PrintProcess {
  const angles = { cyan: 15, magenta: 75, yellow: yellowDeg, black: 45 } as const;
  const screens = (['cyan', 'magenta', 'yellow', 'black'] as const).map((ink) => ({
    ink,
    lpi,
    angleDeg: (angles[ink] + turnDeg + 90) % 90,
    strength: 0.1,
  }));
  return { process: 'halftone', screens, rosette: true, texture: 0.02, range: [80, 240] };
}

const bare = (process: 'stochastic' | 'continuous'): PrintProcess => ({
  ...{ process, screens: [], rosette: null, texture: 0.1, range: [80, 240] },
});

const total = (found: ReturnType<typeof screenFindings>) =>
  found.reduce((sum, { log10Lr }) => sum + log10Lr, 0);

describe('print processes of a copy and of references', () => {
  const references = [halftone(150), halftone(150.2, 1)];

  it('that agree say a little for one printing, however the piece lay in its scan', () => {
    const straight = screenFindings([halftone(150.1)], references);
    const turned = screenFindings([halftone(150.1, 37)], references);
    expect(straight.map(({ what }) => what.split(':')[0])).toEqual(['screen', 'screen', 'screen']);
    // By chance one in three other prints has the ruling, four in five each angle, two in three the
    // process: log10(1/0.35 · 1/0.8³ · 0.95/0.7) = 0.88 at most.
    expect(total(straight)).toBeGreaterThan(0.6);
    expect(total(straight)).toBeLessThan(0.9);
    expect(total(turned)).toBeCloseTo(total(straight), 6);
  });

  it('of another ruling speak for another print', () => {
    const [finding] = screenFindings([halftone(175)], references).filter(({ what }) =>
      what.includes('ruling'),
    );
    expect(finding?.difference).toBeCloseTo(25, 0);
    expect(finding?.log10Lr).toBeLessThan(-1);
  });

  it('with one ink at another angle speak for another print', () => {
    const angles = screenFindings([halftone(150, 12, 30)], references).find(({ what }) =>
      what.includes('angles'),
    );
    expect(angles?.difference).toBeCloseTo(30, 6);
    expect(angles?.log10Lr).toBeLessThan(-1);
  });

  it('of another kind speak for another print, and no stronger than readings err', () => {
    const [process, ...none] = screenFindings([bare('continuous')], references);
    expect(none).toEqual([]);
    expect(process?.difference).toBe(1);
    // 0.05 / 2 of readings against 0.15 of prints at large.
    expect(process?.log10Lr).toBeCloseTo(Math.log10(0.025 / 0.15), 6);
  });

  it('say nothing where a side has no scan that tells', () => {
    expect(screenFindings([], references)).toEqual([]);
    expect(screenFindings([halftone(150)], [])).toEqual([]);
  });
});
