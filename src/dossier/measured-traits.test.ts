import { describe, expect, it } from 'vitest';
import { measuredOf } from './measured-traits.ts';

const front = { size_mm: [62.41, 87.98], size_sd_mm: [0.06, 0.09], size_from: 'dpi' };
const screen = { process: 'halftone', screens: [{ lpi: 174.6, angle_deg: 15 }, { lpi: 174.4 }] };

describe('what the bench measured', () => {
  it('comes as readings with their standard errors', () => {
    const readings = measuredOf({ machine: { front, screen }, marks: [] });
    expect(
      readings.map(({ trait, value, sd }) => [trait, value.is === 'number' && value.value, sd]),
    ).toEqual([
      ['width', 62.41, 0.06],
      ['height', 87.98, 0.09],
      ['screen', 174.6, 0.5],
    ]);
    expect(measuredOf({ front, screen })).toEqual(readings);
  });

  it('is no reading where the size was told, or nothing was measured', () => {
    expect(measuredOf({ front: { ...front, size_from: 'told' } })).toEqual([]);
    for (const bad of [
      undefined,
      null,
      7,
      [],
      {},
      { front: 7 },
      { machine: { front: { size_from: 'dpi', size_mm: ['a'] } } },
    ])
      expect(measuredOf(bad)).toEqual([]);
  });

  it('knows a print without a screen', () => {
    expect(measuredOf({ screen: { process: 'continuous', screens: [] } })).toMatchObject([
      { trait: 'screen', value: { is: 'none' } },
    ]);
  });
});
