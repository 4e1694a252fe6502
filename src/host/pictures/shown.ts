import sharp, { type Sharp } from 'sharp';
import type { Picture } from '../../bench/index.ts';
import { heicImage } from './heic.ts';
import { MOST_PIXELS } from './limits.ts';
import { opened } from './opened.ts';

/** A part of an upright picture, in its pixels. */
export interface PartPx {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Widest picture that is made for showing. */
const WIDEST = 4096;

/**
 * A picture, or a part of it, as JPEG for showing, at most `width` pixels wide and never enlarged.
 * What the camera wrote beside the pixels (place, time, owner) is left out.
 * @throws PictureFault where the file cannot be read as a picture; RangeError where no part is left
 */
export async function shownPicture(
  file: string,
  width: number,
  part: PartPx | null,
): Promise<Uint8Array> {
  const { kind, bytes } = await opened(file);
  const image =
    kind === 'HEIC' ? await heicImage(file, bytes) : sharp(file, { limitInputPixels: MOST_PIXELS });
  const upright = image.autoOrient().flatten({ background: 'white' });
  const { autoOrient: size } = await image.metadata();
  const cut = part ? upright.extract(within(part, size)) : upright;
  return await jpeg(cut.toColourspace('srgb'), width);
}

/** A picture that was measured or made, as JPEG for showing. */
export async function shownSamples(
  { width, height, samples }: Picture,
  most: number,
): Promise<Uint8Array> {
  return await jpeg(sharp(samples, { raw: { width, height, channels: 3 } }), most);
}

async function jpeg(image: Sharp, width: number): Promise<Uint8Array> {
  const most = Math.min(WIDEST, Math.max(1, Math.round(width)));
  const sized = image.resize({ width: most, withoutEnlargement: true });
  return new Uint8Array(await sized.jpeg({ quality: 88, chromaSubsampling: '4:4:4' }).toBuffer());
}

function within(part: PartPx, size: { width: number; height: number }) {
  const left = Math.min(Math.max(0, Math.floor(part.x)), size.width - 1);
  const top = Math.min(Math.max(0, Math.floor(part.y)), size.height - 1);
  const width = Math.min(Math.ceil(part.width), size.width - left);
  const height = Math.min(Math.ceil(part.height), size.height - top);
  if (!(width >= 1 && height >= 1)) throw new RangeError('No part of the picture is left.');
  return { left, top, width, height };
}
