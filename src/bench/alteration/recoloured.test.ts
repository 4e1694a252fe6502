import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import type { BorderStrip } from '../wear/border-strip.ts';
import { type RimColour, rimColourOf } from '../wear/rim-colour.ts';
import { raysOf } from '../wear/round-outline.ts';
import { recolouredSign } from './recoloured.ts';

const WHITE = [0.8, 0.8, 0.75];
const BORDER = [0.2, 0.08, 0.05];

/** A plain border unrolled, its rim from 40 to 46 mm down the left side of a light of its own. */
function stripOf(rim: readonly number[] | null, mirrored = false): BorderStrip {
  const rays = raysOf([63, 88], 3, 3.5, 0.1);
  const [rows, firstMm, stepMm] = [73, -0.8, 0.05];
  const random = chance(4);
  const values = [0, 1, 2].map(() => new Float32Array(rays.length * rows)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  rays.forEach(({ x, y }, column) => {
    const changed = rim !== null && (mirrored ? x > 62 : x < 1) && y > 40 && y < 46;
    for (let row = 0; row < rows; row++) {
      const own = changed && firstMm + row * stepMm < 0.7 ? rim : BORDER;
      for (const k of [0, 1, 2] as const)
        values[k][column * rows + row] = (own[k] as number) * (1 + 0.03 * random.normal());
    }
  });
  return { rays, rows, firstMm, stepMm, values };
}
const rimOf = (light: readonly number[] | null, mirrored = false) =>
  rimColourOf(stripOf(light, mirrored), WHITE) as RimColour;
const INK = [0.12, 0.1, 0.06];

describe('a rim that ink was laid on', () => {
  it('is found where it lies, with how far its colour is off', () => {
    const { centreMm, difference, usual } = rimOf(INK);
    expect(Math.abs(centreMm[0] - 0.4)).toBeLessThan(0.05);
    expect(centreMm[1]).toBeGreaterThan(40);
    expect(centreMm[1]).toBeLessThan(46);
    // Lab (D50) of both lights as shares of white by the standard's formulae and Bradford's matrix:
    // 18.57 apart, the rim darker, so that no white is in it; noise may move it by a half, allowed 1.
    expect(Math.abs(difference - 18.57)).toBeLessThan(1);
    expect(usual).toBeLessThan(1);
  });

  it('is spoken for by ink, and neither by whitening nor by a rim as printed', () => {
    const ratio = (light: readonly number[] | null) => recolouredSign(rimOf(light), []).log10Lr;
    expect(ratio(INK)).toBeGreaterThan(0.3);
    expect(ratio(null)).toBeLessThan(0);
    // Half way to white.
    expect(ratio(BORDER.map((light, k) => (light + (WHITE[k] as number)) / 2))).toBeLessThan(0);
  });

  it('is the same mirrored', () => {
    const [one, other] = [rimOf(INK), rimOf(INK, true)];
    // Noise falls elsewhere: allowed 1 in Lab.
    expect(Math.abs(one.difference - other.difference)).toBeLessThan(1);
    expect(Math.abs(63 - other.centreMm[0] - one.centreMm[0])).toBeLessThan(0.05);
  });

  it('names both explanations, and says less among copies whose rims are as odd', () => {
    const rim = rimOf(INK);
    const alone = recolouredSign(rim, []);
    const among = recolouredSign(rim, [rim, rim, rim]);
    expect(among.log10Lr).toBeLessThan(alone.log10Lr);
    expect(alone.cautions.length).toBe(among.cautions.length + 1);
    for (const explanation of alone.between) expect(alone.words).toContain(explanation);
    expect(alone.words).not.toMatch(/genuine|fake/i);
  });

  it('agrees with Student’s density of three degrees of freedom written out', () => {
    const rim: RimColour = { centreMm: [0, 40], difference: 7.9, usual: 0, texture: 0.5 };
    const density = (x: number, scale: number) =>
      2 / (Math.PI * Math.sqrt(3) * scale * (1 + (x / scale) ** 2 / 3) ** 2);
    // A belief worth one copy: its scale grows by the root of two.
    const colour =
      density(Math.log(8) - Math.log(9), 0.6 * Math.SQRT2) /
      density(Math.log(8) - Math.log(2.5), 0.4 * Math.SQRT2);
    const texture = density(0.5, 0.8) / density(0.5, 0.35);
    expect(recolouredSign(rim, []).log10Lr).toBeCloseTo(Math.log10(colour * texture), 9);
  });
});
