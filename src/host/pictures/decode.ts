import { basename } from 'node:path';
import sharp, { type Metadata, type Sharp } from 'sharp';
import type { Picture } from '../../bench/index.ts';
import { statedDpi } from './dpi.ts';
import { PictureFault } from './fault.ts';
import { heicImage } from './heic.ts';
import { aKind, kindByName } from './kind.ts';
import { MOST_PIXELS, MOST_PIXELS_AT_FULL_SIZE } from './limits.ts';
import { type Opened, opened } from './opened.ts';

// Its cache goes by name, so that a picture taken again under the same name would be the old one.
sharp.cache(false);

/** A picture, and what became of the file on the way to it. */
export interface DecodedPicture extends Picture {
  /** Size of the upright picture as stored; larger than the picture's own where it was shrunk. */
  readonly stored: { readonly width: number; readonly height: number };
  /** What whoever took the picture should know, in sentences. */
  readonly notes: readonly string[];
}

/**
 * The picture in a file (JPEG, PNG, WebP, TIFF, AVIF or HEIC, told by content), turned upright,
 * carried into sRGB, opacity laid on white. 16 bits stay 16 bits. Of several pages the first. Over
 * 50 million pixels it is shrunk by a whole number while it is decoded.
 * @throws PictureFault where the file is no picture, broken, cut short, or over 200 million pixels.
 */
export async function decodePicture(file: string): Promise<DecodedPicture> {
  const found = await opened(file);
  const image =
    found.kind === 'HEIC'
      ? await heicImage(file, found.bytes)
      : sharp(file, { limitInputPixels: MOST_PIXELS, failOn: 'error' });
  const metadata = await image.metadata().catch((error: Error) => {
    throw broken(file, found, error);
  });
  demandLimits(file, found, metadata);
  const dpi = await statedDpi(file, found, metadata.exif);
  return samplesOf(file, found, image, metadata, dpi);
}

async function samplesOf(
  file: string,
  found: Opened,
  image: Sharp,
  metadata: Metadata,
  dpi: number | null,
): Promise<DecodedPicture> {
  const stored = metadata.autoOrient;
  const factor = Math.ceil(Math.sqrt((stored.width * stored.height) / MOST_PIXELS_AT_FULL_SIZE));
  const deep = metadata.depth === 'ushort';
  const upright = image.autoOrient().flatten({ background: 'white' });
  const sized =
    factor > 1
      ? upright.resize(Math.round(stored.width / factor), Math.round(stored.height / factor), {
          fit: 'fill',
        })
      : upright;
  // Of 16 bits, sharp converts no profile unless it is told which one is wanted.
  const toned =
    deep && metadata.hasProfile ? sized.withIccProfile('srgb', { attach: false }) : sized;
  const { data, info } = await toned
    .toColourspace(deep ? 'rgb16' : 'srgb')
    .raw({ depth: deep ? 'ushort' : 'uchar' })
    .toBuffer({ resolveWithObject: true })
    .catch((error: Error) => {
      throw broken(file, found, error);
    });
  const samples = deep
    ? new Uint16Array(data.buffer, data.byteOffset, data.length / 2)
    : new Uint8Array(data.buffer, data.byteOffset, data.length);
  const notes = notesOn(file, found, stored, factor);
  return {
    width: info.width,
    height: info.height,
    samples,
    dpi: dpi && dpi / factor,
    stored,
    notes,
  };
}

/** The header alone is believed no further than this. */
function demandLimits(file: string, { kind }: Opened, { width, height, depth }: Metadata): void {
  if (width * height > MOST_PIXELS)
    throw new PictureFault(
      file,
      `${aKind(kind)} of ${width} × ${height} pixels`,
      `at most ${MOST_PIXELS / 1e6} million pixels`,
    );
  if (depth !== 'uchar' && depth !== 'ushort')
    throw new PictureFault(
      file,
      `${aKind(kind)} with samples of type ${depth}`,
      '8 or 16 bits a sample',
    );
}

function broken(file: string, { kind }: Opened, error: Error): PictureFault {
  const why = error.message.trim().split('\n')[0] ?? '';
  if (/pixel limit/i.test(why))
    return new PictureFault(
      file,
      `${aKind(kind)} too large`,
      `at most ${MOST_PIXELS / 1e6} million pixels`,
    );
  return new PictureFault(
    file,
    `${aKind(kind)} that is broken or cut short (${why})`,
    'a whole one',
  );
}

function notesOn(
  file: string,
  { kind }: Opened,
  { width, height }: DecodedPicture['stored'],
  factor: number,
): readonly string[] {
  const name = basename(file);
  const promised = kindByName(file);
  const misnamed = promised !== undefined && promised !== kind;
  return [
    ...(misnamed
      ? [`${name} is named as ${aKind(promised)} and is ${aKind(kind)}; it was read as that.`]
      : []),
    ...(factor > 1
      ? [
          `${name} has ${width} × ${height} pixels and was measured at 1/${factor} of that size, to keep within memory.`,
        ]
      : []),
  ];
}
