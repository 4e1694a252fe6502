import {
  type DepthMap,
  type PointMm,
  type ReliefDefect,
  type SizeMm,
  shadedRelief,
} from '../../bench/index.ts';
import { jpegOf } from '../../host/index.ts';
import { numberedMarks } from './marks.ts';
import { CYAN, INK, PAPER, path, text } from './strokes.ts';

/** Room around the card for numbers and words, in millimetres. */
const ROOM = 14;
/** As maps of mountains are shaded: light from the upper left, aslant. */
const LAMP = [-400, -400, 320] as const;
/** Slopes are drawn so many times too steep, since relief of cards is shallow. */
const STEEPER = 4;

/**
 * A card's relief drawn to scale as SVG, shaded as if lit from the upper left, its marks numbered
 * in magenta as the table numbers them.
 */
export async function reliefSheet(
  depth: DepthMap,
  defects: readonly ReliefDefect[],
  [width, height]: SizeMm,
): Promise<string> {
  const jpeg = await jpegOf(shadedRelief(depth, LAMP, STEEPER));
  const address = `data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}`;
  const sheet = [-ROOM, -ROOM, width + 2 * ROOM, height + 2 * ROOM];
  const corners: readonly PointMm[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const parts = [
    `<rect x="${sheet[0]}" y="${sheet[1]}" width="${sheet[2]}" height="${sheet[3]}" fill="${PAPER}"/>`,
    `<image x="0" y="0" width="${depth.width * depth.stepMm}" height="${depth.height * depth.stepMm}" preserveAspectRatio="none" href="${address}"/>`,
    path(corners, INK, true),
    ...numberedMarks(defects, [width, height]),
    text([0, -4], `relief, ${STEEPER} times as steep, lit from the upper left`, CYAN, 'start'),
    text([0, height + 6], `depth known to ${usualDoubt(depth)} mm (95 %)`, CYAN, 'start'),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${sheet.join(' ')}" width="${sheet[2]}mm" height="${sheet[3]}mm" font-family="sans-serif" font-size="2.6">\n${parts.join('\n')}\n</svg>\n`;
}

function usualDoubt({ sdMm }: DepthMap): string {
  const known = sdMm.filter(Number.isFinite).sort();
  return `± ${(1.96 * (known[known.length >> 1] ?? 0)).toFixed(3)}`;
}
