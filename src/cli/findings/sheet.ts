import { cardMapOf, cardPointOf, type FaceAnswer, type PointMm } from '../../bench/index.ts';
import { borderLines, sizeLines } from './dimensions.ts';
import { numberedMarks } from './marks.ts';
import { CYAN, INK, PAPER, path, text } from './strokes.ts';

/** Room around the card for dimension lines and numbers, in millimetres. */
const ROOM = 28;

/** Millimetres of ground that are shown around the card. */
export const GROUND_MM = 2;

/**
 * One face of a copy drawn to scale as SVG: the card seen straight down, its outline in black,
 * measurements in cyan outside the card, marks more likely there than not numbered in magenta.
 * @param card the rectified card with `GROUND_MM` around it, as a data address
 * @returns null where no millimetres are known
 */
export function findingsSheet(face: FaceAnswer, card: string, title: string): string | null {
  const { outline, size } = face;
  if (!outline?.sizeMm || !size) return null;
  const [width, height] = outline.sizeMm;
  const sheet = [-ROOM, -ROOM, width + 2 * ROOM, height + 2 * ROOM];
  const image = `<image x="${-GROUND_MM}" y="${-GROUND_MM}" width="${width + 2 * GROUND_MM}" height="${height + 2 * GROUND_MM}" preserveAspectRatio="none" href="${card}"/>`;
  const corners: readonly PointMm[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const parts = [
    `<rect x="${sheet[0]}" y="${sheet[1]}" width="${sheet[2]}" height="${sheet[3]}" fill="${PAPER}"/>`,
    image,
    path(corners, INK, true),
    ...frameParts(face),
    ...sizeLines(size, outline.sizeMm),
    ...borderLines(face, outline.sizeMm),
    ...numberedMarks(face.defects, outline.sizeMm),
    text([-ROOM + 2, -ROOM + 5], title, INK, 'start'),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${sheet.join(' ')}" width="${sheet[2]}mm" height="${sheet[3]}mm" font-family="sans-serif" font-size="2.6">\n${parts.join('\n')}\n</svg>\n`;
}

/** The printed frame where it was found. */
function frameParts({ outline, frame }: FaceAnswer): readonly string[] {
  if (!outline?.sizeMm || !frame) return [];
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  return [
    path(
      frame.corners.map((corner) => cardPointOf(map, corner)),
      CYAN,
      true,
    ),
  ];
}
