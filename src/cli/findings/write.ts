import { join } from 'node:path';
import { cardMapOf, type FaceAnswer, type Picture, rectified } from '../../bench/index.ts';
import { jpegOf } from '../../host/index.ts';
import { writeAsked } from '../written.ts';
import { findingsSheet, GROUND_MM } from './sheet.ts';

/** Pixels a millimetre that a drawing shows at most. */
const MOST_PX_PER_MM = 16;

/**
 * Draws what was found on a face into `FOLDER/NAME.svg`; answers its path, or null where there is
 * nothing to draw to scale.
 */
export async function writeFindings(
  folder: string,
  name: string,
  face: FaceAnswer,
  picture: Picture,
): Promise<string | null> {
  const sheet = await drawnFindings(name, face, picture);
  if (sheet === null) return null;
  const file = join(folder, `${name}.svg`);
  await writeAsked(file, sheet);
  return file;
}

/** What was found on a face as SVG, the card in it; null where there is nothing to draw to scale. */
export async function drawnFindings(
  name: string,
  face: FaceAnswer,
  picture: Picture,
): Promise<string | null> {
  const { outline } = face;
  if (!outline?.sizeMm) return null;
  const map = cardMapOf(outline.corners, outline.sizeMm, outline.lens);
  const [[ax, ay], [bx, by]] = outline.corners;
  const perMm = Math.min(MOST_PX_PER_MM, Math.hypot(bx - ax, by - ay) / outline.sizeMm[0]);
  const jpeg = await jpegOf(rectified(picture, map, perMm, GROUND_MM));
  const address = `data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}`;
  return findingsSheet(face, address, name);
}
