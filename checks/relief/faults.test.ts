import { describe, expect, it } from 'vitest';
import { type LampPicture, type Picture, pictureOf, reliefOf } from '../../src/bench/index.ts';
import { render } from './render.ts';
import { base, dents, LAMPS } from './scenes.ts';

const { pictures, map } = render({ ...base, dents });
const set: readonly LampPicture[] = pictures.map((picture, k) => ({
  picture,
  lampMm: LAMPS[k] ?? null,
  name: `light-${k + 1}.jpg`,
}));

/** A picture whose content lies so many whole pixels to the right and down. */
function moved({ width, height, samples }: Picture, right: number, down: number): Picture {
  const out = new Uint8Array(samples.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const fromX = Math.min(Math.max(x - right, 0), width - 1);
      const fromY = Math.min(Math.max(y - down, 0), height - 1);
      for (let c = 0; c < 3; c++)
        out[(y * width + x) * 3 + c] = samples[(fromY * width + fromX) * 3 + c] as number;
    }
  return pictureOf(width, height, out);
}

const withSecond = (picture: Picture) => set.map((one, k) => (k === 1 ? { ...one, picture } : one));
const second = pictures[1] as Picture;

describe('a set in which the card moved', () => {
  it('takes out a shift of a fifth of a millimetre', () => {
    const still = reliefOf(set, map, null);
    const { faults, defects } = reliefOf(withSecond(moved(second, 2, -1)), map, null);
    expect(faults).toEqual([]);
    expect(defects.filter(({ p }) => p > 0.5)).toHaveLength(dents.length);
    for (const dent of still.defects.filter(({ p }) => p > 0.5)) {
      const [x, y] = dent.centreMm;
      const same = defects.find(
        ({ centreMm }) => Math.hypot(centreMm[0] - x, centreMm[1] - y) < 0.05,
      );
      // The same light read a hundredth of a pixel apart: well within one standard error.
      expect(Math.abs((same?.depthMm ?? 0) - (dent.depthMm as number))).toBeLessThan(
        dent.sd.depthMm as number,
      );
    }
  });

  it.each([
    ['0.5 mm to the left', moved(second, -6, 0), /^light-2\.jpg shows the card 0\.50 mm from/],
    ['1.4 mm down', moved(second, 0, 17), /^light-2\.jpg shows the card 1\.4\d mm from/],
    [
      'turned by half a degree',
      render({ ...base, dents, turn: base.turn + 0.5, lamps: [LAMPS[1]] }).pictures[0] as Picture,
      /^light-2\.jpg shows the card turned by 0\.[56] degrees/, // the print's edges are not smoothed: measured 0.6
    ],
    [
      'another print',
      render({ ...base, print: (x, y) => base.print(24 - x, 30 - y), lamps: [LAMPS[1]] })
        .pictures[0] as Picture,
      /^light-2\.jpg does not show the print/,
    ],
  ])('names the picture and measures by the others: %s', (_, picture, words) => {
    const { faults, defects, lamps } = reliefOf(withSecond(picture), map, null);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(words);
    expect(lamps).toHaveLength(4);
    expect(defects.filter(({ p }) => p > 0.5).length).toBeGreaterThan(0);
  });
});

describe('a set of a dark, faint print under much noise', () => {
  const faint = (x: number, y: number) =>
    base.print(x, y).map((v) => 0.03 * (0.75 + v)) as unknown as ReturnType<typeof base.print>;

  it('says of no picture that the card moved or the print is another', () => {
    const noisy = render({ ...base, print: faint, noise: [0.004, 0.02] });
    const still = noisy.pictures.map((picture, k) => ({ picture, lampMm: LAMPS[k] ?? null }));
    expect(reliefOf(still, noisy.map, null).faults).toEqual([]);
  });
});

describe('a set in which the lamp did not move', () => {
  const again = (k: number, seed: number) =>
    render({ ...base, dents, lamps: [LAMPS[k] as (typeof LAMPS)[number]], seed })
      .pictures[0] as Picture;

  it('names both pictures and tells no depth by what is left', () => {
    const { faults, defects } = reliefOf(withSecond(again(0, 77)), map, null);
    expect(faults[0]).toContain('light-1.jpg and light-2.jpg are lit alike');
    expect(faults[1]).toContain('at least 4 pictures');
    expect(defects).toEqual([]);
  });

  it('names all pictures of one place in one sentence', () => {
    const still = [0, 1, 2, 3].map((k) => ({
      picture: again(0, 90 + k),
      lampMm: LAMPS[k] ?? null,
    }));
    const { faults } = reliefOf(still, map, null);
    expect(faults).toHaveLength(2);
    expect(faults[0]).toMatch(/^Picture 1, Picture 2, Picture 3 and Picture 4 are lit alike/);
    expect(faults[0]).toContain('Photograph all but one of them again');
    expect(faults[1]).toContain('found 0 that can be used');
  });

  it('takes a lamp that moved by five centimetres for one that moved', () => {
    const near = [LAMPS[0][0] - 10, LAMPS[0][1] + 50, LAMPS[0][2]] as const;
    const six = [
      ...set,
      { picture: render({ ...base, dents, lamps: [near] }).pictures[0] as Picture, lampMm: near },
    ];
    expect(reliefOf(six, map, null).faults).toEqual([]);
  });

  it('keeps one of two where nobody says that the lamp moved', () => {
    const six = [...set, { picture: again(0, 78), lampMm: LAMPS[0] }];
    const { faults, lamps } = reliefOf(six, map, null);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain('light-1.jpg and Picture 6 are lit alike');
    expect(lamps).toHaveLength(5);
  });
});
