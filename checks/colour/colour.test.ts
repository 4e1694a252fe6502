import { describe, expect, it } from 'vitest';
import {
  type ChartAnswer,
  chartColours,
  ciede2000,
  differenceFrom,
  type Lab,
  type Measured,
  pictureOf,
} from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';
import { inventedShot, type Photographed, photographed, type Shot } from './chart.ts';

function shotOf(seed: number, fixed: Partial<Shot> = {}): Photographed {
  const lot = chance(seed);
  return photographed(inventedShot(lot, fixed), lot);
}

const chartOf = ({ patches }: Photographed) =>
  patches.map(({ lab, known, centre, size }) => ({
    lab: known ? lab : null,
    centrePx: centre,
    sizePx: size,
  }));

const answerOf = (shot: Photographed) => chartColours(shot.picture, chartOf(shot)) as ChartAnswer;

/** A shot with a part of the picture painted over in one grey. */
function covered(shot: Photographed, x1: number, y1: number, grey: number): Photographed {
  const { width, height } = shot.picture;
  const samples = Uint8Array.from(shot.picture.samples);
  for (let y = 0; y < y1; y++) samples.fill(grey, y * width * 3, (y * width + x1) * 3);
  return { ...shot, picture: pictureOf(width, height, samples) };
}

const quantile = (values: readonly number[], share: number) =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] as number;

describe('a picture with an invented chart', () => {
  const shots = [21, 22, 23, 24].map((seed) => shotOf(seed));
  const tests = shots.flatMap((shot) => {
    const answer = answerOf(shot);
    return shot.patches.flatMap(({ lab, known }, i) =>
      known ? [] : [{ lab, measured: answer.patches[i] as Measured, fit: answer.fit }],
    );
  });

  it('tells the colours of other patches', () => {
    // Other cameras, curves and lamps without JPEG: measured 0.1 and 0.3; allowed what is asked of
    // pictures, 0.5 and 1.2.
    const off = tests.map(({ lab, measured }) => ciede2000(measured.lab, lab));
    expect(quantile(off, 0.5)).toBeLessThan(0.5);
    expect(quantile(off, 0.95)).toBeLessThan(1.2);
  });

  it('states how far it may be off', () => {
    const held = tests.flatMap(({ lab, measured }) =>
      lab.map(
        (value, i) =>
          Math.abs((measured.lab[i] as number) - value) < 1.96 * (measured.sd[i] as number),
      ),
    );
    // 120 values on ten patches a shot that share their correction: 90 % at least.
    expect(held.filter(Boolean).length / held.length).toBeGreaterThan(0.9);
  });

  it('says how well the chart fits by patches that were not fitted', () => {
    for (const { fit } of tests) {
      expect(fit.mean).toBeGreaterThan(0);
      expect(fit.max).toBeLessThan(4);
    }
  });
});

describe('laws', () => {
  it('a mirrored picture with mirrored places gives the same colours', () => {
    const shot = shotOf(31);
    const { width, height, samples } = shot.picture;
    const mirrored = new Uint8Array(samples.length);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++)
        for (let c = 0; c < 3; c++)
          mirrored[(y * width + width - 1 - x) * 3 + c] = samples[
            (y * width + x) * 3 + c
          ] as number;
    const turned = answerOf({
      picture: pictureOf(width, height, mirrored),
      patches: shot.patches.map((patch) => ({
        ...patch,
        centre: [width - 1 - patch.centre[0], patch.centre[1]] as const,
      })),
    });
    answerOf(shot).patches.forEach((one, i) => {
      // The same fit by other roundings: measured 1e-4, allowed 0.01.
      expect(ciede2000((one as Measured).lab, (turned.patches[i] as Measured).lab)).toBeLessThan(
        0.01,
      );
    });
  });

  it('four times the noise widens what is stated', () => {
    const sdOf = (noise: number) =>
      quantile(
        answerOf(shotOf(32, { noise })).patches.flatMap((one) => [...(one as Measured).sd]),
        0.5,
      );
    expect(sdOf(8)).toBeGreaterThan(sdOf(2));
  });

  it('a difference from itself is nothing but chance, and a wide one is wide', () => {
    const measured: Measured = { lab: [50, 20, 10], sd: [0.3, 0.5, 0.5] };
    const none = differenceFrom(measured, measured.lab);
    expect(none.dE00).toBe(0);
    expect(none.byChance).toBeGreaterThan(0.3);
    const other: Lab = [60, 20, 10];
    const wide = differenceFrom(measured, other);
    expect(wide.dE00).toBeCloseTo(ciede2000(measured.lab, other), 12);
    // Of a difference in L alone the doubt is that of L, weighed as the difference is.
    expect(wide.sd).toBeCloseTo((0.3 * wide.dE00) / 10, 1);
  });
});

describe('a chart that is not whole', () => {
  it('names the patches left out and measures all the same', () => {
    const shot = shotOf(41);
    const hidden = covered(shot, 430, 180, 120);
    const answer = answerOf(hidden);
    expect(answer.leftOut.map(({ patch }) => patch)).toEqual([0, 1]);
    const off = shot.patches.flatMap(({ lab, known }, i) =>
      known ? [] : [ciede2000((answer.patches[i] as Measured).lab, lab)],
    );
    expect(quantile(off, 0.5)).toBeLessThan(0.5);
  });

  it('is told by its other half where something of one colour lies over the first', () => {
    const shot = shotOf(44);
    const answer = answerOf(covered(shot, 800, 1000, 105));
    // Four columns of three rows lie beneath, and the edge runs through a fifth.
    const missing = [0, 1, 2, 3, 4].flatMap((column) => [column, column + 9, column + 18]);
    const known = answer.leftOut.map(({ patch }) => patch).filter((patch) => patch < 27);
    expect(known).toEqual(missing.sort((a, b) => a - b));
    expect(answer.leftOut[0]?.why).toContain('something lies over them');
    // Fitted with those that are covered it was 15; twelve patches are few, so that 2 are allowed.
    expect(answer.fit.mean).toBeLessThan(2);
  });

  it('is refused where its patches agree with no one lamp', () => {
    const shot = shotOf(45);
    const chart = chartOf(shot);
    const labs = chart.map(({ lab }) => lab).filter((lab) => lab !== null);
    // Another chart: each patch is told the colour of one seven places on.
    const other = chart.map((patch, k) =>
      patch.lab ? { ...patch, lab: labs[(k + 7) % labs.length] ?? null } : patch,
    );
    const answer = chartColours(shot.picture, other);
    expect(answer).toHaveProperty('why', expect.stringMatching(/it is another chart|can be used/));
  });

  it('says which are blown out and what to photograph again', () => {
    const blown = covered(shotOf(42), 1600, 380, 255);
    const answer = chartColours(blown.picture, chartOf(blown));
    expect(answer).toHaveProperty(
      'why',
      expect.stringContaining('photograph the whole chart again'),
    );
    expect(answer.leftOut).toHaveLength(27 - 9);
    expect(answer.leftOut[0]?.why).toBe('it is blown out');
  });

  it('leaves out a patch beyond the rim', () => {
    const shot = shotOf(43);
    const [first, ...rest] = chartOf(shot);
    const chart = [{ ...(first as (typeof rest)[number]), centrePx: [5, 5] as const }, ...rest];
    const answer = chartColours(shot.picture, chart) as ChartAnswer;
    expect(answer.leftOut).toEqual([{ patch: 0, why: 'it does not lie wholly in the picture' }]);
    expect(answer.patches[0]).toBeNull();
  });
});
