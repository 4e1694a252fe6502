import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Chance, chance } from '../../maths/index.ts';
import type { Defect } from '../defects.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { SizeMm } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { pictureOf } from '../picture.ts';
import { featuresOf } from './features.ts';
import { learned, logT } from './likelihood-ratio.ts';
import type { Seen } from './seen.ts';
import { compareSpecimens } from './specimen.ts';
import { compareWithReferences } from './with-references.ts';
import { sentenceOf, verbal } from './words.ts';

const SIZE: SizeMm = [63, 88];
const PX = 8;

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly ink: readonly [number, number, number];
}

interface Drawn {
  /** The design; copies of one printing share it. */
  readonly design: number;
  /** Where the print lies in the cut, in mm. */
  readonly print?: readonly [number, number];
  /** Where red and blue lie from green, in mm across. */
  readonly plates?: readonly [red: number, blue: number];
  readonly lamp?: readonly [number, number, number];
  readonly noise?: number;
  readonly seed?: number;
  readonly tint?: number;
}

function designOf(seed: number): readonly Disc[] {
  const random = chance(seed);
  return Array.from({ length: 160 }, () => ({
    x: 3 + 57 * random.uniform(),
    y: 3 + 82 * random.uniform(),
    r: 0.5 + 2.5 * random.uniform(),
    ink: [0.2 + 0.7 * random.uniform(), 0.2 + 0.7 * random.uniform(), 0.2 + 0.7 * random.uniform()],
  }));
}

/** A face drawn from discs whose rims fall off over a tenth of a millimetre, straight down. */
function drawn(given: Drawn, defects: readonly Defect[] = []): Seen {
  const [width, height] = [SIZE[0] * PX, SIZE[1] * PX];
  const light = new Float32Array(width * height * 3).fill(0.8);
  const [px, py] = given.print ?? [0, 0];
  const plates = [given.plates?.[0] ?? 0, 0, given.plates?.[1] ?? 0];
  designOf(given.design).forEach(({ x, y, r, ink }, k) => {
    for (let c = 0; c < 3; c++) {
      const [cx, cy] = [(x + px + (plates[c] as number)) * PX, (y + py) * PX];
      const reach = (r + 0.3) * PX;
      const through = (ink[c] as number) * (k % 7 === 0 ? 1 - (given.tint ?? 0) * (c - 1) : 1);
      for (let v = Math.max(0, Math.floor(cy - reach)); v <= Math.min(height - 1, cy + reach); v++)
        for (
          let u = Math.max(0, Math.floor(cx - reach));
          u <= Math.min(width - 1, cx + reach);
          u++
        ) {
          const inside =
            1 / (1 + Math.exp((Math.hypot(u + 0.5 - cx, v + 0.5 - cy) / PX - r) / 0.05));
          const i = (v * width + u) * 3 + c;
          light[i] = (light[i] as number) * (1 - inside * (1 - through));
        }
    }
  });
  return seenOf(light, width, height, given, defects);
}

function seenOf(
  light: Float32Array,
  width: number,
  height: number,
  { lamp = [1, 1, 1], noise = 0, seed = 1 }: Drawn,
  defects: readonly Defect[],
): Seen {
  const random: Chance = chance(seed);
  const samples = Uint8Array.from(light, (value, i) => {
    const lit = value * (lamp[i % 3] as number) * (0.9 + (0.2 * (i / 3)) / (width * height));
    const noisy = noise > 0 ? lit + noise * random.normal() : lit;
    return Math.round(255 * encodedOf(Math.min(1, Math.max(0, noisy))));
  });
  const corner = (x: number, y: number) => [x * width - 0.5, y * height - 0.5] as const;
  const corners = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)] as const;
  const map = cardMapOf(corners, SIZE, { k1: 0, width, height });
  const picture = pictureOf(width, height, samples);
  return { picture, map, cornerSdMm: 0.02, measured: null, defects };
}

const mark = (x: number, y: number): Defect => ({
  kind: 'scratch',
  centreMm: [x, y],
  boxMm: [x - 1, y - 1, x + 1, y + 1],
  areaMm2: 0.2,
  lengthMm: 2,
  polygonMm: [],
  p: 0.95,
  sd: { centreMm: 0.1, areaMm2: null, lengthMm: null },
  seenFrom: 'still',
});

const first = drawn({ design: 1, noise: 0.005, seed: 3 });
const lamp = [0.9, 1, 0.7] as const;

describe('two prints of one design', () => {
  it('are laid on each other to a hundredth of a millimetre, whatever the lamp', () => {
    const other = drawn({ design: 1, print: [0.31, -0.17], lamp, noise: 0.01, seed: 4 });
    const found = featuresOf(first, other, SIZE);
    // Put in: 0.31 and −0.17 mm. Measured within 0.0013 mm, allowed 0.01.
    expect(Math.abs((found?.registration.shift.x[0] ?? 9) - 0.31)).toBeLessThan(0.01);
    expect(Math.abs((found?.registration.shift.y[0] ?? 9) + 0.17)).toBeLessThan(0.01);
    // Another lamp is no difference of the print: measured 0.08 CIEDE2000, allowed 0.2.
    expect(found?.colour.rms).toBeLessThan(0.2);
  });

  it('show where their plates lie', () => {
    const other = drawn({ design: 1, plates: [0.06, -0.04], noise: 0.005, seed: 5 });
    const plates = featuresOf(first, other, SIZE)?.plates;
    // Put in: 0.06 and −0.04 mm. Measured within 0.002 mm, allowed 0.01.
    expect(Math.abs((plates?.red[0] ?? 9) - 0.06)).toBeLessThan(0.01);
    expect(Math.abs((plates?.blue[0] ?? 9) + 0.04)).toBeLessThan(0.01);
  });

  it('of another design do not lie on each other', () => {
    const { registered, log10Lr } = compareSpecimens(first, drawn({ design: 2 }), [], SIZE);
    expect([registered, log10Lr]).toEqual([false, 0]);
  });
});

describe('one specimen or two copies', () => {
  it('is told by the cut, the plates and the marks', () => {
    const again = drawn({ design: 1, lamp, noise: 0.01, seed: 6 }, [mark(20, 30)]);
    const marked = { ...first, defects: [mark(20.2, 30)] };
    const same = compareSpecimens(marked, again, [], SIZE);
    const copy = drawn({ design: 1, print: [0.3, 0.25], plates: [0.07, -0.05], seed: 7 });
    const other = compareSpecimens(marked, copy, [], SIZE);
    // Held at twelve to one, by the pairs on which it was tried.
    expect(same.log10Lr).toBeCloseTo(Math.log10(12), 12);
    expect(other.log10Lr).toBeCloseTo(-Math.log10(12), 12);
    expect(other.words).toContain('two copies');
    // One mark that is not seen again says less than one that is.
    const part = (of: typeof same) => of.findings.find(({ what }) => what.startsWith('marks'));
    expect(part(same)?.log10Lr).toBeGreaterThan(-(part(other)?.log10Lr ?? 0));
  });

  it('says less where other copies lie as this one does', () => {
    const again = drawn({ design: 1, noise: 0.01, seed: 8 });
    const stack = [11, 12, 13].map((seed) => drawn({ design: 1, noise: 0.01, seed }));
    expect(compareSpecimens(first, again, stack, SIZE).log10Lr).toBeLessThan(
      compareSpecimens(first, again, [], SIZE).log10Lr,
    );
  });
});

describe('a copy beside references', () => {
  const references = [21, 22, 23].map((seed) => drawn({ design: 1, noise: 0.008, seed, lamp }));
  const copy = drawn({ design: 1, noise: 0.008, seed: 31 });
  const same = compareWithReferences(copy, references, SIZE);

  it('of the same printing is like them, one with other inks is not', () => {
    const tinted = drawn({ design: 1, noise: 0.008, seed: 32, tint: 0.9 });
    const other = compareWithReferences(tinted, references, SIZE);
    expect(same.log10Lr).toBeGreaterThan(0);
    expect(other.findings[0]?.what).toContain('colour');
    // Lines are the same, and say so a little: colour alone speaks for another print.
    expect(other.findings[0]?.log10Lr).toBeLessThan(-0.15);
    expect(other.log10Lr).toBeLessThan(same.log10Lr - 0.3);
    for (const { words } of [same, other]) expect(words).not.toMatch(/genuine|fake/i);
  });

  it('carries little with one reference, and says so', () => {
    const one = compareWithReferences(copy, references.slice(0, 1), SIZE);
    expect(Math.abs(one.log10Lr)).toBeLessThan(Math.abs(same.log10Lr));
    expect(one.cautions[0]).toContain('one reference');
  });
});

describe('likelihood ratios', () => {
  it('rest on Student’s density', () => {
    // Student's density with four degrees in closed form (textbook): 3/8 · (1 + x²/4)^(−5/2).
    expect(logT(1.3, 4, 1)).toBeCloseTo(Math.log((3 / 8) * (1 + 1.3 ** 2 / 4) ** -2.5), 12);
    expect(logT(2.6, 4, 2)).toBeCloseTo(logT(1.3, 4, 1) - Math.log(2), 12);
  });

  it('learn mean and spread as the conjugate formulas say', () => {
    // Murphy 2007, equations 86 to 89, worked out by hand for mean 0, kappa 1, nu 3, sd 1 and the
    // values 1 and 3: mean 4/3, kappa 3, nu 5, nu · sd² = 3 + 2 + (1 · 2 / 3) · 4 = 23/3.
    const after = learned({ mean: 0, kappa: 1, nu: 3, sd: 1 }, [1, 3]);
    expect(after.mean).toBeCloseTo(4 / 3, 12);
    expect([after.kappa, after.nu]).toEqual([3, 5]);
    expect(5 * after.sd ** 2).toBeCloseTo(23 / 3, 12);
  });

  it.each(
    JSON.parse(
      readFileSync('checks/fixtures/bench/likelihood_ratio_scales.json', 'utf8'),
    ).enfsi_2015.bands.filter(({ lo }: { lo: number }) => lo > 1) as {
      lo: number;
      phrase: string;
    }[],
  )('are worded as ENFSI words them from $lo on', ({ lo, phrase }) => {
    expect(verbal(lo)).toBe(phrase);
    expect(verbal(lo * 0.999)).not.toBe(phrase);
  });

  it('below two support neither explanation', () => {
    expect(sentenceOf(0.2, ['a', 'b'])).toContain('neither');
    expect(sentenceOf(-1.5, ['a', 'b'])).toContain('moderate support to one explanation (b)');
  });
});
