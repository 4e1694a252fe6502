import sharp from 'sharp';
import type { Picture } from '../../bench/index.ts';

/** A picture as JPEG in sRGB, for showing. */
export async function jpegOf({ width, height, samples }: Picture): Promise<Uint8Array> {
  const raw = { width, height, channels: 3 } as const;
  return sharp(samples, { raw }).toColourspace('srgb').jpeg({ quality: 85 }).toBuffer();
}
