import { quantileOf } from '../../maths/index.ts';
import type { Picture } from '../picture.ts';
import { densityTable } from './density.ts';
import type { Densities } from './inks.ts';

/** Pixels on the side of the squares whose mean density is taken, and from one to the next. */
const SQUARE = 16;
const STEP = 40;

/** Mean densities in red, green and blue over the lightest places, of squares spread over a print. */
export type OverPaper = readonly (readonly number[])[];

/** What lies on the paper: the squares' densities over those of the lightest fiftieth of them. */
export function overPaper(picture: Picture): OverPaper {
  const squares = squaresOf(picture);
  const lightest = [0, 1, 2].map((c) =>
    quantileOf(
      squares.map((square) => square[c] as number),
      0.02,
    ),
  );
  return squares.map((square) =>
    square.map((density, c) => Math.max(0, density - (lightest[c] as number))),
  );
}

/** Mean density on the paper, over the three channels. */
export function meanOf(over: OverPaper): number {
  return (
    over.reduce((sum, [r, g, b]) => sum + (r as number) + (g as number) + (b as number), 0) /
    (3 * over.length)
  );
}

/**
 * Share of the densities on the paper that are of another colour than one ink, 0 to 1. A press
 * screens all its inks; colours beside a single lattice were laid down without one.
 */
export function unscreenedShare(over: OverPaper, ink: Densities): number {
  let [all, left] = [1e-12, 0];
  for (const square of over) {
    const size = square.reduce((sum, density) => sum + density * density, 0);
    const along = square.reduce((sum, density, c) => sum + density * (ink[c] as number), 0);
    all += size;
    left += size - along * along;
  }
  return Math.sqrt(Math.max(0, left) / all);
}

function squaresOf({ width, height, samples }: Picture): readonly (readonly number[])[] {
  const table = densityTable({ samples });
  const squares: number[][] = [];
  for (let y = 0; y + SQUARE <= height; y += STEP)
    for (let x = 0; x + SQUARE <= width; x += STEP) {
      const sums = [0, 0, 0];
      for (let j = 0; j < SQUARE; j++)
        for (let i = 0, at = 3 * ((y + j) * width + x); i < 3 * SQUARE; i++, at++)
          sums[i % 3] = (sums[i % 3] as number) + (table[samples[at] as number] as number);
      squares.push(sums.map((sum) => sum / SQUARE ** 2));
    }
  return squares;
}
