import sharp from 'sharp';
import { expect, it } from 'vitest';
import { pngOf } from './png.ts';

const drawing = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2">
<rect x="0" y="0" width="2" height="2" fill="#c4006a"/></svg>`;

it('draws to the pixel, see-through where nothing is drawn, and the same each time', async () => {
  const png = await pngOf(drawing, 8, []);
  const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
  expect([info.width, info.height, info.channels]).toEqual([8, 4, 4]);
  expect([...data.subarray(0, 4)]).toEqual([0xc4, 0x00, 0x6a, 255]);
  expect([...data.subarray(7 * 4, 8 * 4)]).toEqual([0, 0, 0, 0]);
  expect(Buffer.compare(png, await pngOf(drawing, 8, []))).toBe(0);
});

it('throws where the drawing is none', async () => {
  await expect(pngOf('words', 8, [])).rejects.toThrow();
});
