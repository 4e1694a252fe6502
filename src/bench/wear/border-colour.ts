import { quantileOf } from '../../maths/index.ts';
import type { BorderStrip } from './border-strip.ts';
import type { Ray } from './round-outline.ts';

const BLOCK_MM = 1;
const AROUND = 7;
/** Depths in which the border's colour is taken, mm. */
const BORDER_MM = [0.6, 1.4] as const;

/**
 * Colour of the border beside each ray, from a little inside the edge, as the median of the
 * surrounding 15 mm of sides: it follows the light's fall-off and leaves out worn stretches and tips.
 *
 * @param between depths in which it is taken, mm; below 0 for the ground outside the card
 */
export function borderColourOf(
  strip: BorderStrip,
  between: readonly [number, number] = BORDER_MM,
): readonly Float32Array[] {
  const starts = blockStartsOf(strip);
  const near = starts.map((_, i) => besideSides(strip, starts, i));
  return strip.values.map((light) => {
    const blocks = starts.map((start, i) =>
      blockMedianOf(strip, light, [start, starts[i + 1] ?? strip.rays.length], between),
    );
    const smooth = near.map((them) =>
      quantileOf(
        them.map((i) => blocks[i] as number),
        0.5,
      ),
    );
    return spreadOf(smooth, starts, strip.rays.length);
  });
}

/** The nearest blocks before and after one that lie beside sides: a tip may be worn all round. */
function besideSides({ rays }: BorderStrip, starts: readonly number[], at: number) {
  const beside = (i: number) => (rays[starts[i] as number] as Ray).part % 2 === 0;
  const found = beside(at) ? [at] : [];
  for (const way of [-1, 1]) {
    const most = found.length + AROUND;
    for (let k = 1; k < starts.length && found.length < most; k++) {
      const i = (at + way * k + starts.length) % starts.length;
      if (beside(i)) found.push(i);
    }
  }
  return found;
}

function blockStartsOf({ rays }: BorderStrip): readonly number[] {
  const starts = [0];
  let run = 0;
  rays.forEach(({ width }, column) => {
    run += width;
    if (run < BLOCK_MM) return;
    run = 0;
    starts.push(column + 1);
  });
  return starts.filter((start) => start < rays.length);
}

function blockMedianOf(
  { rows, firstMm, stepMm }: BorderStrip,
  light: Float32Array,
  [first, next]: readonly [number, number],
  [fromMm, toMm]: readonly [number, number],
): number {
  const values: number[] = [];
  const from = Math.round((fromMm - firstMm) / stepMm);
  const to = Math.round((toMm - firstMm) / stepMm);
  for (let column = first; column < next; column += 2) {
    for (let row = from; row <= to; row += 2) values.push(light[column * rows + row] as number);
  }
  return quantileOf(values, 0.5);
}

/** Straight lines between the middles of the blocks, round the card. */
function spreadOf(blocks: readonly number[], starts: readonly number[], length: number) {
  const middles = starts.map((start, i) => (start + (starts[i + 1] ?? length) - 1) / 2);
  const out = new Float32Array(length);
  let block = 0;
  for (let column = 0; column < length; column++) {
    while (block + 1 < middles.length && (middles[block + 1] as number) <= column) block++;
    const before = column < (middles[0] as number);
    const [i, j] = before ? [blocks.length - 1, 0] : [block, (block + 1) % blocks.length];
    const from = (middles[i] as number) - (before ? length : 0);
    const to = (middles[j] as number) + (j <= i && !before ? length : 0);
    const share = (column - from) / (to - from);
    out[column] = (1 - share) * (blocks[i] as number) + share * (blocks[j] as number);
  }
  return out;
}
