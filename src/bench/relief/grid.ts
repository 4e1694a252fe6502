import { type CardMap, pixelsPerMm } from '../geometry/card-map.ts';
import type { PointPx } from '../geometry/points.ts';
import { LUMINANCE, lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';

/** Square blocks of pixels over the part of a picture that shows a card. */
export interface Grid {
  /** Column and row of the first pixel of the first block. */
  readonly left: number;
  readonly top: number;
  /** Pixels on a block's side. */
  readonly block: number;
  readonly width: number;
  readonly height: number;
  /** Blocks on a millimetre of the card, on average. */
  readonly perMm: number;
}

/** Blocks a millimetre that suffice to see a dent of half a millimetre (Judgement, no source). */
const PER_MM = 4.2;

/** The blocks that cover a card, about four on a millimetre, within a picture of the given size. */
export function gridOver(
  map: CardMap,
  size: { readonly width: number; readonly height: number },
): Grid {
  const xs = map.corners.map(([x]) => x);
  const ys = map.corners.map(([, y]) => y);
  const scale = pixelsPerMm(map);
  const block = Math.max(1, Math.round(scale / PER_MM));
  const left = Math.max(0, Math.floor(Math.min(...xs)));
  const top = Math.max(0, Math.floor(Math.min(...ys)));
  const right = Math.min(size.width, Math.ceil(Math.max(...xs)) + 1);
  const bottom = Math.min(size.height, Math.ceil(Math.max(...ys)) + 1);
  return {
    left,
    top,
    block,
    width: Math.max(1, Math.floor((right - left) / block)),
    height: Math.max(1, Math.floor((bottom - top) / block)),
    perMm: scale / block,
  };
}

/** The pixel, with fractions, at the centre of a block. */
export function centreOf(grid: Grid, i: number, j: number): PointPx {
  return [grid.left + (i + 0.5) * grid.block - 0.5, grid.top + (j + 0.5) * grid.block - 0.5];
}

/** Mean luminance of each block in linear light, the picture taken as moved by so many pixels. */
export function lightOf(picture: Picture, grid: Grid, moved: PointPx = [0, 0]): Float32Array {
  const { block, width, height } = grid;
  const out = new Float32Array(width * height);
  for (const { whole, share } of wholeShifts(moved)) {
    const tables = LUMINANCE.map((weight) =>
      lightTable(picture).map((light) => (light * weight * share) / (block * block)),
    ) as [Float32Array, Float32Array, Float32Array];
    const left = grid.left + whole[0];
    const top = grid.top + whole[1];
    for (let row = 0; row < height * block; row++) {
      const y = Math.min(Math.max(top + row, 0), picture.height - 1);
      addRow(picture, tables, y, left, block, out, Math.floor(row / block) * width, width);
    }
  }
  return out;
}

/** The up to four whole shifts between which a shift lies, with their shares of a bilinear reading. */
export function wholeShifts([x, y]: PointPx): readonly {
  readonly whole: PointPx;
  readonly share: number;
}[] {
  const [left, top] = [Math.floor(x), Math.floor(y)];
  return [0, 1].flatMap((down) =>
    [0, 1].flatMap((right) => {
      const share = Math.abs(1 - right - (x - left)) * Math.abs(1 - down - (y - top));
      return share > 0 ? [{ whole: [left + right, top + down] as const, share }] : [];
    }),
  );
}

function addRow(
  { samples, width: columns }: Picture,
  [red, green, blue]: readonly [Float32Array, Float32Array, Float32Array],
  y: number,
  left: number,
  block: number,
  out: Float32Array,
  first: number,
  width: number,
): void {
  const start = Math.min(Math.max(left, 0), Math.max(columns - width * block, 0));
  let at = (y * columns + start) * 3;
  for (let i = 0; i < width; i++) {
    let sum = 0;
    for (let k = 0; k < block; k++, at += 3)
      sum +=
        (red[samples[at] as number] as number) +
        (green[samples[at + 1] as number] as number) +
        (blue[samples[at + 2] as number] as number);
    out[first + i] = (out[first + i] as number) + sum;
  }
}
