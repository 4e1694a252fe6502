import sharp from 'sharp';
import type { DecodedPicture } from './decode.ts';

const QUALITY = { webp: 80, jpg: 82 };

/** By what pictures are made, with versions and qualities: the same bytes come of the same. */
export const PICTURE_MAKERS: readonly unknown[] = [QUALITY, sharp.versions];

/** A picture in one size, for readers: two kinds of file, nothing in them but the picture. */
export interface PublishedPicture {
  readonly width: number;
  readonly height: number;
  readonly webp: Uint8Array;
  readonly jpg: Uint8Array;
}

/**
 * A picture in several widths, ascending, never larger than it is. What its file says of place, time
 * and camera is not carried over.
 */
export async function publishedPicture(
  { width, height, samples }: DecodedPicture,
  widths: readonly number[],
): Promise<readonly PublishedPicture[]> {
  const wanted = [...new Set(widths.map((one) => Math.min(one, width)))].sort((a, b) => a - b);
  return Promise.all(
    wanted.map(async (wide) => {
      const high = Math.max(1, Math.round((height * wide) / width));
      const sized = await sharp(samples, { raw: { width, height, channels: 3 } })
        .resize(wide, high, { fit: 'fill' })
        .toColourspace('srgb')
        .raw()
        .toBuffer();
      const again = () => sharp(sized, { raw: { width: wide, height: high, channels: 3 } });
      const [webp, jpg] = await Promise.all([
        again().webp({ quality: QUALITY.webp }).toBuffer(),
        again().jpeg({ quality: QUALITY.jpg }).toBuffer(),
      ]);
      return { width: wide, height: high, webp, jpg };
    }),
  );
}
