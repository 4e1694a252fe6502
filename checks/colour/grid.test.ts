import { describe, expect, it } from 'vitest';
import {
  type ChartFound,
  type Corners,
  chartColours,
  findChart,
  pictureOf,
} from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { inventedShot, randomLab } from './chart.ts';
import {
  awayFrom,
  type Grid,
  inventedCorners,
  inventedGrid,
  type Laid,
  photographedGrid,
} from './grid.ts';

const SIZE = { width: 640, height: 500 };

/** A chart of random colours as it lies, photographed. */
function shotOf(seed: number, rows: number, columns: number, how: Partial<How> = {}) {
  const { turnDeg, shift, over } = { turnDeg: 0, shift: 0, over: () => null, ...how };
  const lot = chance(seed);
  const grid = inventedGrid(rows, columns, lot);
  const shot = inventedShot(lot, SIZE);
  const corners = inventedCorners(grid, shot, lot, turnDeg).map(
    ([x, y]) => [x + shift, y] as const,
  ) as unknown as Corners;
  const laid: Laid = { corners, ground: randomLab(lot), over };
  return { grid, laid, picture: photographedGrid(grid, laid, shot, lot) };
}

interface How {
  readonly turnDeg: number;
  readonly shift: number;
  readonly over: Laid['over'];
}

const soughtIn = ({ grid, picture }: ReturnType<typeof shotOf>, sizeMm: Size = null) =>
  findChart(picture, { columns: grid.columns, labs: grid.labs, sizeMm });
type Size = readonly [number, number] | null;

/** The largest distance of a patch found from where it is, in patches. */
const worst = (found: ChartFound, { grid, laid }: { grid: Grid; laid: Laid }) =>
  Math.max(...found.patches.map(({ centrePx }, k) => awayFrom(grid, laid, SIZE, k, centrePx)));

describe('a chart told as a grid', () => {
  it.each([
    [1, 4, 6, 0],
    [2, 5, 8, 90],
    [3, 3, 9, 180],
    [4, 7, 5, 270],
    [5, 2, 8, 0],
  ])(
    'is found in perspective (chart %i: %i × %i, turned by %i°)',
    (seed, rows, columns, turnDeg) => {
      const shot = shotOf(seed, rows, columns, { turnDeg });
      const found = soughtIn(shot) as ChartFound;
      expect(found.p).toBeGreaterThan(0.99);
      // Measured 0.004 to 0.022 of a patch over 40 such charts; a square of 0.8 of a patch has room for 0.1.
      expect(worst(found, shot)).toBeLessThan(0.05);
      expect(found.residualPx).toBeLessThan(1);
      expect(found.covered).toEqual([]);
    },
  );

  it('is found where half of it is covered, and says which patches are', () => {
    const shot = shotOf(6, 6, 8, { over: (x) => (x < SIZE.width / 2 ? [55, 10, 20] : null) });
    const found = soughtIn(shot) as ChartFound;
    expect(worst(found, shot)).toBeLessThan(0.05);
    const hidden = found.patches.flatMap(({ centrePx }, k) =>
      centrePx[0] < SIZE.width / 2 - 25 ? [k] : [],
    );
    expect(hidden.length).toBeGreaterThan(10);
    // One or two patches may happen to have the colour of what covers them.
    expect(hidden.filter((k) => !found.covered.includes(k)).length).toBeLessThan(3);
    const answer = chartColours(shot.picture, found.patches, found.covered);
    if ('why' in answer) throw new Error(answer.why);
    expect(answer.leftOut.map(({ patch }) => patch)).toEqual(
      expect.arrayContaining([...found.covered]),
    );
    // Measured 0.05: what is left corrects as well as a whole chart.
    expect(answer.fit.mean).toBeLessThan(0.5);
  });

  it('is found where part of it is beyond the rim, and says which patches are', () => {
    const shot = shotOf(7, 5, 8, { shift: 230 });
    const found = soughtIn(shot) as ChartFound;
    expect(worst(found, shot)).toBeLessThan(0.05);
    const answer = chartColours(shot.picture, found.patches, found.covered);
    if ('why' in answer) throw new Error(answer.why);
    const outside = found.patches.flatMap(({ centrePx }, k) =>
      centrePx[0] > SIZE.width ? [k] : [],
    );
    expect(outside.length).toBeGreaterThan(3);
    for (const patch of outside)
      expect(answer.leftOut).toContainEqual({
        patch,
        why: 'it does not lie wholly in the picture',
      });
    expect(answer.fit.mean).toBeLessThan(0.5);
  });

  it('is refused in a mirrored picture', () => {
    const { grid, picture } = shotOf(8, 4, 6);
    const { width, height, samples } = picture;
    const mirrored = samples.map((_, i) => {
      const [x, c] = [Math.floor(i / 3) % width, i % 3];
      return samples[i + 3 * (width - 1 - 2 * x) + c - (i % 3)] as number;
    });
    const found = soughtIn({ grid, picture: pictureOf(width, height, mirrored) } as Shot);
    expect(found).toEqual({ why: expect.stringContaining('mirrored') });
  });

  it('is not found in another chart, nor where there is none', () => {
    const other = { ...shotOf(9, 4, 6), grid: shotOf(10, 4, 6).grid };
    expect(soughtIn(other)).toEqual({ why: expect.stringContaining('colours') });
    const none = shotOf(11, 4, 6, { over: () => [60, 0, 0] });
    expect(soughtIn(none)).toEqual({ why: expect.stringContaining('No grid') });
  });

  it('whose half turn looks like itself is not told which way it lies', () => {
    // The same rows forwards and backwards, so that a half turn looks as the chart does.
    const one = shotOf(12, 4, 6);
    const labs = one.grid.labs.map((lab, k) => (k < 12 ? lab : one.grid.labs[23 - k]));
    const alike = { ...one.grid, labs: labs as typeof one.grid.labs };
    const lot = chance(12);
    const picture = photographedGrid(alike, one.laid, inventedShot(lot, SIZE), lot);
    expect(soughtIn({ ...one, grid: alike, picture })).toEqual({
      why: expect.stringContaining('more than one way'),
    });
  });

  it('of a known size gives the scale', () => {
    const shot = shotOf(13, 4, 6);
    // A step of 10 mm; from rim to rim of the patches a bar less.
    const sizeMm = [60 - 10 * shot.grid.barShare, 40 - 10 * shot.grid.barShare] as const;
    const { pxPerMm } = soughtIn(shot, sizeMm) as ChartFound;
    const [[ax, ay], , [cx, cy]] = shot.laid.corners;
    const diagonal = Math.hypot(cx - ax, cy - ay) / Math.hypot(60, 40);
    // The rim of a patch is known to a pixel of the reduced picture: measured 0.987, allowed 5 %.
    expect(Math.abs((pxPerMm as number) / diagonal - 1)).toBeLessThan(0.05);
  });

  it('has two rows and columns', () => {
    const { picture, grid } = shotOf(14, 2, 5);
    const one = { columns: 1, labs: grid.labs, sizeMm: null };
    expect(() => findChart(picture, one)).toThrow(RangeError);
  });
});

type Shot = ReturnType<typeof shotOf>;
