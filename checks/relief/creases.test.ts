import { describe, expect, it } from 'vitest';
import { type ReliefDefect, reliefOf } from '../../src/bench/index.ts';
import { render } from './render.ts';
import type { PlantedLine } from './scene.ts';
import { base, dents, LAMPS } from './scenes.ts';

function found(lines: readonly PlantedLine[], planted = base.dents): readonly ReliefDefect[] {
  const { pictures, map } = render({ ...base, lines, dents: planted });
  const set = pictures.map((picture, k) => ({ picture, lampMm: LAMPS[k] ?? null }));
  return reliefOf(set, map, null).defects.filter(({ p }) => p >= 0.5);
}

const ridge: PlantedLine = { from: [4, 5], to: [20, 25], height: 0.04, width: 0.6 };
const groove: PlantedLine = { from: [3, 20], to: [21, 12], height: -0.05, width: 0.5 };

describe('lines pressed into a made card, over bright and over dark, glossy print', () => {
  it.each([
    ['a ridge', ridge],
    ['a groove', groove],
    ['a broad ridge', { from: [12, 2], to: [12, 28], height: 0.08, width: 1.4 }],
  ] as const)('are found once, as creases, as wide and as high as they are: %s', (_, line) => {
    const [crease, ...others] = found([line]);
    expect(others).toEqual([]);
    expect(crease?.kind).toBe('crease');
    const size = crease?.heightMm ?? -(crease?.depthMm ?? 0);
    // Measured 4 to 9 % too low, allowed twice that and three of its own standard errors.
    expect(Math.abs(size / line.height - 1)).toBeLessThan(0.18);
    expect(Math.abs(size - line.height)).toBeLessThan(3 * (crease?.sd.depthMm as number));
    expect(Math.abs((crease?.diameterMm as number) - line.width)).toBeLessThan(0.1);
    const length = Math.hypot(line.to[0] - line.from[0], line.to[1] - line.from[1]);
    // Ends fade over a millimetre: measured 1.5 to 2.7 short.
    expect(Math.abs((crease?.lengthMm as number) - length)).toBeLessThan(4);
    for (const [x, y] of crease?.polygonMm ?? []) {
      const [dx, dy] = [line.to[0] - line.from[0], line.to[1] - line.from[1]];
      const off = ((y - line.from[1]) * dx - (x - line.from[0]) * dy) / length;
      expect(Math.abs(off)).toBeLessThan(0.3);
    }
  });

  it('are scratches without a depth where they are narrow grooves', () => {
    const [scratch, ...others] = found([{ from: [3, 9], to: [21, 14], height: -0.02, width: 0.2 }]);
    expect(others).toEqual([]);
    expect(scratch).toMatchObject({ kind: 'scratch', depthMm: null, heightMm: null });
  });

  it('are told from a dent beside them', () => {
    const [dent] = dents;
    const line: PlantedLine = { from: [3, 24], to: [15, 16], height: 0.04, width: 0.6 };
    expect(found([line], [dent as (typeof dents)[number]]).map(({ kind }) => kind)).toEqual([
      'dent',
      'crease',
    ]);
  });

  it('are not found where nothing was pressed in', () => {
    expect(
      found([
        { ...ridge, height: 0 },
        { ...groove, height: 0 },
      ]),
    ).toEqual([]);
  });
});
