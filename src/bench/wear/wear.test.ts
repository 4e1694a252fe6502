import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { faceAlong } from '../examine/face.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { outlineByHand } from '../outline/by-hand.ts';
import { type Picture, pictureOf } from '../picture.ts';
import { wearOf } from './wear.ts';

type Colour = readonly [number, number, number];
type Place = readonly [x: number, y: number];

const SIZE = [63, 88] as const;
const RADIUS = 3;
const PX_PER_MM = 10;
const MARGIN_MM = 6;
const CORNERS: Corners = [
  [60, 60],
  [690, 60],
  [690, 940],
  [60, 940],
];

const BORDERS = { left: 4, right: 4, top: 4, bottom: 4 };

interface Scene {
  readonly border?: Colour;
  readonly ground?: Colour;
  readonly worn?: (place: Place) => boolean;
  /** Where card is missing. */
  readonly lost?: (place: Place) => boolean;
  /** Light that is left of the ground 0.3 mm beside the card, where its shadow lies. */
  readonly shadow?: number;
  readonly noise?: number;
  readonly mirrored?: boolean;
  readonly fall?: number;
}

const NORMALS = (() => {
  const random = chance(7);
  return Float32Array.from({ length: 1 << 16 }, () => random.normal());
})();

/** A card drawn with exact edges, two samples a pixel each way, in linear light. */
function drawn({
  border = [0.03, 0.04, 0.12],
  ground = [0.3, 0.22, 0.12],
  worn,
  lost,
  shadow = 1,
  noise = 0.004,
  mirrored,
  fall = 0,
}: Scene): Picture {
  const [width, height] = [SIZE[0] + 2 * MARGIN_MM, SIZE[1] + 2 * MARGIN_MM].map(
    (mm) => mm * PX_PER_MM + 1,
  ) as [number, number];
  const samples = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const sum = [0, 0, 0];
      for (let k = 0; k < 4; k++) {
        const px = x + ((k % 2) - 0.5) / 2;
        const place: Place = [
          (mirrored ? width - 1 - px : px) / PX_PER_MM - MARGIN_MM,
          (y + ((k >> 1) - 0.5) / 2) / PX_PER_MM - MARGIN_MM,
        ];
        const dark = depthOf(place) > -0.3 ? shadow : 1;
        const beside = ground.map((light) => dark * light) as unknown as Colour;
        const colour = lost?.(place) ? ground : colourAt(place, border, beside, worn);
        for (const c of [0, 1, 2]) sum[c] = (sum[c] as number) + (colour[c] as number) / 4;
      }
      const light = 1 - (fall * y) / height;
      for (const c of [0, 1, 2]) {
        const value =
          encodedOf(Math.max(0, (sum[c] as number) * light)) +
          noise * (NORMALS[(x * 7919 + y * 104_729 + c * 31) & 65_535] as number);
        samples[3 * (y * width + x) + c] = Math.round(255 * Math.min(1, Math.max(0, value)));
      }
    }
  return pictureOf(width, height, samples);
}

function colourAt(place: Place, border: Colour, ground: Colour, worn: Scene['worn']): Colour {
  const depth = depthOf(place);
  if (depth < 0) return ground;
  if (worn?.(place)) return [0.6, 0.58, 0.52];
  const [x, y] = place;
  const inFrame = x > 4 && x < SIZE[0] - 4 && y > 4 && y < SIZE[1] - 4;
  if (!inFrame) return border;
  return y < 14 ? [0.7, 0.68, 0.6] : [0.2 + 0.1 * Math.sin(x), 0.3, 0.25 + 0.1 * Math.cos(y / 3)];
}

/** Depth below the rounded outline, mm, negative outside. */
function depthOf([x, y]: Place): number {
  const across = Math.min(x, SIZE[0] - x);
  const down = Math.min(y, SIZE[1] - y);
  if (across < RADIUS && down < RADIUS) return RADIUS - Math.hypot(RADIUS - across, RADIUS - down);
  return Math.min(across, down);
}

function areaOf(worn: (place: Place) => boolean): number {
  let count = 0;
  for (let y = 0.01; y < SIZE[1]; y += 0.02)
    for (let x = 0.01; x < SIZE[0]; x += 0.02) if (depthOf([x, y]) > 0 && worn([x, y])) count++;
  return count * 0.0004;
}

const mapAt = (corners: Corners) => cardMapOf(corners, SIZE, { k1: 0, width: 751, height: 1001 });
const wear = (scene: Scene, corners = CORNERS) => wearOf(drawn(scene), mapAt(corners), BORDERS);
const sure = (scene: Scene, corners = CORNERS) =>
  wear(scene, corners).defects.filter(({ p }) => p >= 0.5);

const tip = ([x, y]: Place) => SIZE[0] - x + y < 4;
const stretch = ([x, y]: Place) => x < 0.4 && y > 30 && y < 42;
const both = (place: Place) => tip(place) || stretch(place);

describe('wear of corners and edges', () => {
  it('finds a whitened tip and a whitened stretch with their areas', () => {
    const found = sure({ worn: both });
    expect(found.map(({ kind }) => kind).sort()).toEqual(['corner-wear', 'edge-wear']);
    const corner = found.find(({ kind }) => kind === 'corner-wear');
    const edge = found.find(({ kind }) => kind === 'edge-wear');
    // At 10 pixels a millimetre: measured 1.6 % and 0.2 % below the drawn area, allowed 5 %.
    expect(Math.abs((corner?.areaMm2 ?? 0) / areaOf(tip) - 1)).toBeLessThan(0.05);
    expect(Math.abs((edge?.areaMm2 ?? 0) / areaOf(stretch) - 1)).toBeLessThan(0.05);
    // Columns lie 0.1 mm apart, so that each end is known to that.
    expect(Math.abs((edge?.lengthMm ?? 0) - 12)).toBeLessThan(0.2);
    expect(Math.abs((edge?.boxMm[1] ?? 0) - 30)).toBeLessThan(0.15);
  });

  it('measures the radius of the tips', () => {
    // Measured within 0.08 mm on cards with and without wear, allowed 0.15.
    for (const worn of [undefined, both])
      expect(Math.abs(wear({ ...(worn && { worn }) }).tipRadiusMm - RADIUS)).toBeLessThan(0.15);
  });

  it('takes no shadow beside the card for its tips', () => {
    // The shadow's outer rim is the steeper edge; measured 0.02 mm off, allowed 0.1.
    const lid: Scene = { border: [0.3, 0.25, 0.2], ground: [0.8, 0.8, 0.8], shadow: 0.5 };
    const seen = wear(lid);
    expect(Math.abs(seen.tipRadiusMm - RADIUS)).toBeLessThan(0.1);
    expect(seen.defects.filter(({ p }) => p >= 0.5)).toEqual([]);
  });

  it('believes wear no more than the outline along which it was seen', () => {
    const picture = drawn({ worn: stretch });
    const byHand = outlineByHand(picture, CORNERS, { sizeMm: SIZE, dpi: null });
    const [sure, unsure] = [1, 0.6].map((p) =>
      faceAlong(picture, { ...byHand, p }, { sizeMm: SIZE, dpi: null, raking: [] }).defects.find(
        ({ kind }) => kind === 'edge-wear',
      ),
    );
    expect(sure?.p).toBeGreaterThan(0.9);
    expect(unsure?.p).toBeCloseTo(0.6 * (sure?.p ?? 0), 12);
  });

  it('asks for more where art may reach the cut edge', () => {
    const spot = ([x, y]: Place) => Math.hypot(x - 0.35, y - 30) < 0.35;
    const [framed, art] = [BORDERS, null].map((borders) =>
      wearOf(drawn({ worn: (place) => tip(place) || spot(place) }), mapAt(CORNERS), borders)
        .defects.filter(({ p }) => p >= 0.5)
        .map(({ kind }) => kind),
    );
    expect(framed?.sort()).toEqual(['corner-wear', 'edge-wear']);
    expect(art).toEqual(['corner-wear']);
  });

  const grounds: readonly [string, Scene][] = [
    ['a dark ground', { ground: [0.01, 0.01, 0.01] }],
    ['a white ground', { ground: [0.8, 0.8, 0.8] }],
    ['a dark border on a like ground', { ground: [0.035, 0.045, 0.12] }],
    ['a white border', { border: [0.68, 0.67, 0.6] }],
    ['light that falls off', { fall: 0.5 }],
    ['much noise', { noise: 0.03 }],
  ];
  it.each(grounds)('stays quiet on an unworn card: %s', (_, scene) => {
    expect(sure(scene)).toEqual([]);
  });

  it('takes an outline that is a tenth of a millimetre off for no wear', () => {
    const off: Corners = [
      [59, 59],
      [691, 60],
      [690, 941],
      [59.3, 940],
    ];
    expect(sure({ ground: [0.8, 0.8, 0.8] }, off)).toEqual([]);
  });

  it('swaps left and right with a mirrored picture', () => {
    const [seen] = sure({ worn: stretch });
    const [mirrored] = sure({ worn: stretch, mirrored: true });
    // The noise is drawn anew for the mirrored picture: measured 0.4 % and 0.01 mm, allowed 3 % and 0.1 mm.
    expect(Math.abs((mirrored?.areaMm2 ?? 0) / (seen?.areaMm2 ?? 1) - 1)).toBeLessThan(0.03);
    expect(
      Math.abs(SIZE[0] - (mirrored?.centreMm[0] ?? 0) - (seen?.centreMm[0] ?? 0)),
    ).toBeLessThan(0.1);
  });

  it('finds a worn tip of a cream border under the noise of an ordinary picture', () => {
    // Cream lies so near to bare board that noise alone passes for another colour in places.
    const cream: Scene = { border: [0.6, 0.52, 0.33], noise: 0.014 };
    expect(sure({ ...cream, worn: tip }).map(({ kind }) => kind)).toEqual(['corner-wear']);
    // A tip worn far along both sides: its bare board is not taken for the border's own colour.
    const wide = ([x, y]: Place) => SIZE[0] - x + y < 6.5;
    expect(sure({ ...cream, worn: wide }).map(({ kind }) => kind)).toEqual(['corner-wear']);
    expect(sure(cream)).toEqual([]);
  });

  it('is never surer under more noise', () => {
    const chances = [0.004, 0.02, 0.04].map(
      (noise) =>
        wear({ worn: stretch, noise }).defects.find(({ kind }) => kind === 'edge-wear')?.p ?? 0,
    );
    expect(chances[1]).toBeLessThan(chances[0] as number);
    expect(chances[2]).toBeLessThan(chances[1] as number);
  });

  it('says that whitening cannot show on a white border', () => {
    expect(wear({ border: [0.68, 0.67, 0.6] }).detectionLimitMm).toBeNull();
    expect(wear({}).detectionLimitMm).toBeLessThan(0.5);
  });
});

describe('loss of card', () => {
  const bite = ([x, y]: Place) => Math.hypot(x - 30, y + 0.3) < 1.2;
  const clipped = ([x, y]: Place) => x + y < 4;
  const lostIn = (scene: Scene) =>
    wear(scene).defects.filter((one) => one.wear === 'loss' && one.p >= 0.5);

  it('finds a bite and a clipped corner with their areas, and tells them from whitening', () => {
    const found = lostIn({ lost: (place) => bite(place) || clipped(place) });
    expect(found.map(({ kind }) => kind).sort()).toEqual(['corner-wear', 'edge-wear']);
    const chip = found.find(({ kind }) => kind === 'edge-wear');
    // The segment of a circle of 1.2 mm that lies below a chord 0.3 mm from its centre.
    const segment = 1.2 ** 2 * Math.acos(0.3 / 1.2) - 0.3 * Math.sqrt(1.2 ** 2 - 0.3 ** 2);
    // A stated error is a seventh and 0.05 mm².
    expect(Math.abs((chip?.areaMm2 ?? 0) - segment)).toBeLessThan(2 * (0.05 + 0.15 * segment));
    expect(Math.abs((chip?.centreMm[0] ?? 0) - 30)).toBeLessThan(0.2);
    const white = wear({ worn: bite }).defects.filter(({ p }) => p >= 0.5);
    expect(white.map((one) => one.wear)).toEqual(['whitening']);
  });

  it('stays quiet on a whole card, and says where the ground hides it', () => {
    expect(lostIn({})).toEqual([]);
    const alike: Scene = { ground: [0.03, 0.04, 0.12], lost: bite };
    expect(wear(alike).lossLimitMm).toBeNull();
    expect(wear({}).lossLimitMm).toBe(0.5);
  });
});
