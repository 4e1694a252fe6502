import sharp from 'sharp';
import type { Picture } from '../../bench/index.ts';

/**
 * The picture in a file, turned upright by its EXIF turn and carried into sRGB.
 * @throws Error where the file cannot be read as a picture.
 */
export async function decodePicture(file: string): Promise<Picture> {
  const image = sharp(file, { limitInputPixels: 200e6 })
    .rotate()
    .toColourspace('srgb')
    .removeAlpha();
  const { density } = await image.metadata();
  const { data, info } = await image.raw().toBuffer({ resolveWithObject: true });
  const samples = new Uint8Array(data.buffer, data.byteOffset, data.length);
  return { width: info.width, height: info.height, samples, dpi: density ?? null };
}
