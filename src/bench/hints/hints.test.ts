import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners, PointMm } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { type Picture, pictureOf } from '../picture.ts';
import type { Placed } from '../surface/scratch-marks.ts';
import { type ReliefHint, reliefHintsOf } from './hints.ts';
import { relitCardOf } from './relit-card.ts';

/** Exact light of a hollow and of a ridge under a low lamp, by numpy (checks/makers/bench/one_lamp.py). */
const witness = JSON.parse(readFileSync('checks/fixtures/bench/one_lamp.json', 'utf8')) as {
  azimuth_deg: number;
  step_mm: number;
  hollow: { depth_mm: number; width_mm: number; light: number[][]; linear_most: number };
  ridge: { height_mm: number; width_mm: number; across_deg: number; light: number[] };
};

const SIZE = [63, 88] as const;
const PX_PER_MM = 7;
const RIM = 14;
const [WIDTH, HEIGHT] = [SIZE[0] * PX_PER_MM + 2 * RIM, SIZE[1] * PX_PER_MM + 2 * RIM];
const CORNERS: Corners = [
  [RIM, RIM],
  [WIDTH - RIM, RIM],
  [WIDTH - RIM, HEIGHT - RIM],
  [RIM, HEIGHT - RIM],
];
const MAP = cardMapOf(CORNERS, SIZE, { k1: 0, width: WIDTH, height: HEIGHT });

const random = chance(11);
const NORMALS = Float32Array.from({ length: 1 << 16 }, () => random.normal());

interface Lit {
  readonly low: boolean;
  /** Places of hollows, each as the witness has it, its lobes so many times as strong. */
  readonly hollows?: readonly PointMm[];
  readonly times?: number;
  /** A fold through this point, 30 mm long; -1 for a groove. */
  readonly fold?: { readonly at: PointMm; readonly sign: 1 | -1 };
  readonly noise?: number;
  readonly mirrored?: boolean;
}

/** A printed card in soft light, or under a lamp at the witness's azimuth that falls off. */
function lit({ low, hollows = [], times = 1, fold, noise = 0.004, mirrored = false }: Lit): Placed {
  const salt = low ? 12_345 : 777;
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  const a = (witness.azimuth_deg * Math.PI) / 180;
  for (let y = 0; y < HEIGHT; y++)
    for (let px = 0; px < WIDTH; px++) {
      const x = mirrored ? WIDTH - 1 - px : px;
      const [u, v] = [(x - RIM) / PX_PER_MM, (y - RIM) / PX_PER_MM];
      const on = u > 0 && v > 0 && u < SIZE[0] && v < SIZE[1];
      const toLamp = (u - 31) * Math.cos(a) - (v - 44) * Math.sin(a);
      let shade = low ? 0.6 * Math.exp(0.006 * toLamp) : 1;
      if (low && on) {
        for (const [cx, cy] of hollows) shade *= 1 + times * (hollowAt(u - cx, v - cy) - 1);
        if (fold) shade *= foldAt(u - fold.at[0], v - fold.at[1], fold.sign);
      }
      for (let c = 0; c < 3; c++) {
        const code = encodedOf(on ? printed(u, v, c) * shade + (low ? 0.01 : 0) : 0.03);
        const at = 3 * (y * WIDTH + px) + c;
        const grain = NORMALS[(at * 31 + c * 7919 + salt + (at >> 7)) & 65_535] as number;
        samples[at] = Math.round(255 * Math.min(1, Math.max(0, code + noise * grain)));
      }
    }
  const picture: Picture = pictureOf(WIDTH, HEIGHT, samples);
  return { picture, map: MAP };
}

function step(distance: number): number {
  return 1 / (1 + Math.exp(-20 * distance));
}

function printed(u: number, v: number, c: number): number {
  const ring = step(Math.sin(1.3 * Math.hypot(u - 30, v - 70)) - 0.6) * step(v - 45);
  const disc = step(7 - Math.hypot(u - 44, v - 20));
  const rule = Math.min(1, step(0.1 - Math.abs(v - 42)) + step(0.1 - Math.abs(u - 3)));
  return 0.12 + 0.06 * c + 0.2 * ring + 0.25 * disc * (1 - 0.2 * c) + 0.3 * rule;
}

function between(row: readonly number[], at: number): number {
  const i = Math.floor(at);
  const [a, b] = [row[i], row[i + 1]];
  return a === undefined || b === undefined ? 1 : a + (b - a) * (at - i);
}

function hollowAt(dx: number, dy: number): number {
  const rows = witness.hollow.light;
  const middle = (rows.length - 1) / 2;
  const row = middle + dy / witness.step_mm;
  const i = Math.floor(row);
  const [above, below] = [rows[i], rows[i + 1]];
  if (!above || !below) return 1;
  const x = middle + dx / witness.step_mm;
  return between(above, x) + (between(below, x) - between(above, x)) * (row - i);
}

function foldAt(dx: number, dy: number, sign: 1 | -1): number {
  const across = (witness.ridge.across_deg * Math.PI) / 180;
  const [nx, ny] = [Math.cos(across), -Math.sin(across)];
  if (Math.abs(dx * ny - dy * nx) > 15) return 1;
  const middle = (witness.ridge.light.length - 1) / 2;
  const d = sign * (dx * nx + dy * ny);
  return between(witness.ridge.light, middle + d / witness.step_mm);
}

const SOFT = lit({ low: false });
const hints = (how: Partial<Lit>, azimuthDeg: number | null = witness.azimuth_deg, soft = SOFT) =>
  reliefHintsOf(lit({ low: true, ...how }), soft, azimuthDeg);
const sure = (...how: Parameters<typeof hints>) =>
  hints(...how).defects.filter(({ p }) => p >= 0.5);
const near = (one: ReliefHint | undefined, [x, y]: PointMm) =>
  Math.hypot((one?.centreMm[0] ?? 99) - x, (one?.centreMm[1] ?? 99) - y);

const plain: PointMm = [16, 24];
const onDisc: PointMm = [44, 18];
const both = { hollows: [plain, onDisc] };

describe('light under one lamp with the print divided out', () => {
  it('is that of the exact cosine, and all but that of the linear relation', () => {
    const { left, view } = relitCardOf(lit({ low: true, hollows: [plain], noise: 0 }), SOFT);
    const [cx, cy] = plain.map((mm) => Math.round(mm / view.stepMm[0] - 0.5)) as [number, number];
    let most = 0;
    for (let y = cy - 8; y <= cy + 8; y++)
      for (let x = cx - 8; x <= cx + 8; x++)
        most = Math.max(most, left.values[y * left.width + x] as number);
    // A pixel is the mean over 0.2 mm, and a veil of 0.01 adds to the light: measured 0.129 of 0.1405.
    expect(Math.abs(most - (Math.max(...witness.hollow.light.flat()) - 1))).toBeLessThan(0.015);
    expect(witness.hollow.linear_most - 1 - most).toBeLessThan(0.016);
  });
});

describe('hints of relief under one low lamp', () => {
  it.each([
    ['told', witness.azimuth_deg],
    ['not told', null],
  ] as const)('finds hollows on plain and on busy print, where the lamp is %s', (_, azimuth) => {
    const found = sure(both, azimuth);
    expect(found.map(({ kind }) => kind)).toEqual(['dent', 'dent']);
    for (const place of [plain, onDisc]) {
      const [one] = [...found].sort((a, b) => near(a, place) - near(b, place));
      // A pixel of the grid is 0.2 mm: measured 0.1, allowed 0.2.
      expect(near(one, place)).toBeLessThan(0.2);
      const width = ((one?.boxMm[2] ?? 0) - (one?.boxMm[0] ?? 0)) / 2;
      expect(Math.abs(width / witness.hollow.width_mm - 1)).toBeLessThan(0.25);
      expect(one?.depthMm).toBeNull();
      expect(one?.words).toContain('One lamp cannot tell depth from tilt');
    }
  });

  it('takes no bump for a hollow where it is told that the lamp stood on the other side', () => {
    expect(sure(both, witness.azimuth_deg - 180)).toEqual([]);
  });

  it.each([
    ['ridge', 1],
    ['groove', -1],
  ] as const)('finds a fold once, and tells a %s', (shape, sign) => {
    const [fold, ...others] = sure({ fold: { at: [30, 22], sign } });
    expect(others).toEqual([]);
    expect(fold?.kind).toBe('crease');
    expect(fold?.words).toContain(`A ${shape}`);
    // Ends fade over half a piece of 3.4 mm.
    expect(Math.abs((fold?.lengthMm ?? 0) - 30)).toBeLessThan(4);
    for (const [x, y] of fold?.polygonMm ?? []) {
      const a = (witness.ridge.across_deg * Math.PI) / 180;
      expect(Math.abs((x - 30) * Math.cos(a) - (y - 22) * Math.sin(a))).toBeLessThan(0.3);
    }
  });

  it('stays quiet where there is none, calm or noisy', () => {
    expect(sure({})).toEqual([]);
    expect(sure({}, null)).toEqual([]);
    expect(sure({ noise: 0.02 })).toEqual([]);
  });

  it('swaps left and right with mirrored pictures', () => {
    const soft = lit({ low: false, mirrored: true });
    const [one] = sure({ hollows: [plain], mirrored: true }, 180 - witness.azimuth_deg, soft);
    expect(near(one, [SIZE[0] - plain[0], plain[1]])).toBeLessThan(0.2);
  });

  it('is never surer under more noise, nor promises more', () => {
    const seen = [0.004, 0.02, 0.06].map((noise) => {
      const { defects, limits } = hints(
        { hollows: [plain], noise },
        null,
        lit({ low: false, noise }),
      );
      return {
        p: Math.max(0, ...defects.filter((one) => near(one, plain) < 1).map(({ p }) => p)),
        mm: limits.find(({ kinds }) => kinds.includes('dent'))?.mm ?? 99,
      };
    });
    const [calm, rough, wild] = seen as [(typeof seen)[0], (typeof seen)[0], (typeof seen)[0]];
    expect(calm.p).toBeGreaterThan(0.5);
    expect(rough.p).toBeLessThanOrEqual(calm.p);
    expect(wild.p).toBeLessThan(0.5);
    expect(rough.mm).toBeGreaterThanOrEqual(calm.mm);
    expect(wild.mm).toBeGreaterThan(calm.mm);
  });

  it('would have shown a hollow as wide as it says, with lobes a tenth apart', () => {
    const noise = 0.006;
    const soft = lit({ low: false, noise });
    const apart =
      Math.max(...witness.hollow.light.flat()) - Math.min(...witness.hollow.light.flat());
    const limit = hints({ noise }, undefined, soft).limits.find(({ kinds }) =>
      kinds.includes('dent'),
    );
    expect(limit?.mm ?? 99).toBeLessThan(witness.hollow.width_mm);
    expect(sure({ hollows: [plain], times: 0.1 / apart, noise }, undefined, soft)).toHaveLength(1);
    expect(sure({ hollows: [plain], times: 0.015 / apart, noise }, undefined, soft)).toEqual([]);
  });
});
