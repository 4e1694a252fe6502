import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const cut = fileURLToPath(
  new URL('../fixtures/bench/pictures/print-halftone/cut.jpg', import.meta.url),
);

/** The truth of checks/fixtures/README.md: angles as they lie in the picture, all of 141 lpi. */
const TRUTH = { cyan: 21.6, magenta: 51.6, yellow: 6.6, black: 81.6 };

describe('screen', () => {
  it('prints the fixed parts, which agree with how the print was made', async () => {
    const { exit, out, err } = await answerTo(['screen', cut, '--dpi', '1200', '--json']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { process, screens, rosette, ms } = JSON.parse(out);
    expect({ process, rosette }).toEqual({ process: 'halftone', rosette: true });
    expect(screens.map(({ ink }: { ink: string }) => ink).sort()).toEqual(
      Object.keys(TRUTH).sort(),
    );
    for (const { ink, angle_deg, lpi, strength } of screens) {
      // Measured 0.10° and 0.6 lpi on this small cut, allowed 0.3° and 1.
      expect(Math.abs(angle_deg - TRUTH[ink as keyof typeof TRUTH])).toBeLessThan(0.3);
      expect(Math.abs(lpi - 141)).toBeLessThan(1);
      expect(strength).toBeGreaterThan(0);
    }
    expect(Object.keys(ms)).toEqual(['decode', 'measure']);
  });

  it('takes the dots an inch from the file, and shows a table', async () => {
    const { exit, out } = await answerTo(['screen', cut]);
    expect(exit).toBe(0);
    expect(out).toContain('Halftone');
    expect(out).toMatch(/^black +1\d\d\.\d +8\d\.\d° /m);
  });

  it('says what to do where the scan is too coarse', async () => {
    const { exit, out, err } = await answerTo(['screen', cut, '--dpi', '300']);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(`${cut}: At 300 dpi`);
    expect(err).toContain('scan at 1,200 dpi or more');
  });
});
