import { describe, expect, it } from 'vitest';
import type { FaceAnswer } from '../../bench/index.ts';
import { decodePicture } from '../../host/index.ts';
import { printingOf } from './printing.ts';

const NONE = { cut: null, chart: null };
const cut = await decodePicture('demo/dossier/desk/photos/hare-1/cut.jpg');
const [right, bottom] = [cut.width - 1, cut.height - 1];
// Of a face only its outline and its trouble are asked; here the scan is all card.
const face = {
  outline: {
    corners: [
      [0, 0],
      [right, 0],
      [right, bottom],
      [0, bottom],
    ],
  },
  trouble: null,
} as unknown as FaceAnswer;

describe('the print process in an examination', () => {
  it('is told from a face that was scanned finely, without a piece beside it', async () => {
    const { process, colours, faults } = await printingOf(NONE, face, cut, 1200);
    expect(process?.process).toBe('halftone');
    expect(process?.screens.length).toBeGreaterThan(2);
    expect(colours).toBeNull();
    expect(faults).toEqual([]);
  });

  it('is not asked of a coarse scan, nor of a face whose outline is not sure', async () => {
    expect((await printingOf(NONE, face, cut, 600)).process).toBeNull();
    const lost = await printingOf(NONE, { ...face, trouble: 'unsure' } as FaceAnswer, cut, 1200);
    expect(lost).toEqual({ process: null, colours: null, faults: [] });
  });
});
