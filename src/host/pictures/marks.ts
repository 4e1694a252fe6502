import exifr from 'exifr';
import type { PictureMark } from '../../chronicle/index.ts';

type Mark = Omit<PictureMark, 'file'>;

/** Fields of EXIF 2.32 and IPTC that tell where, with what and by whom a picture was taken. */
const FIELDS: readonly (readonly [what: Mark['what'], tags: readonly string[]])[] = [
  ['location', ['GPSLatitude', 'GPSLongitude', 'GPSDestLatitude', 'GPSDestLongitude']],
  ['location', ['City', 'Sublocation', 'Location', 'Country', 'State']],
  ['serial number', ['SerialNumber', 'LensSerialNumber', 'InternalSerialNumber', 'ImageUniqueID']],
  ['name', ['Artist', 'OwnerName', 'CameraOwnerName', 'Byline', 'Creator', 'Contact', 'XPAuthor']],
];

/**
 * Fields in a picture's metadata (EXIF, IPTC, XMP) that tell where, with what or by whom it was
 * taken; none where the file has no metadata, or none that can be read.
 */
export async function marksOf(path: string): Promise<readonly Mark[]> {
  const told = await metadataOf(path);
  return FIELDS.flatMap(([what, tags]) =>
    tags.flatMap((tag) => {
      const value = wordsOf(told[tag]);
      return value === '' ? [] : [{ what, tag, value }];
    }),
  );
}

async function metadataOf(path: string): Promise<Readonly<Record<string, unknown>>> {
  try {
    return (await exifr.parse(path, { tiff: true, gps: true, iptc: true, xmp: true })) ?? {};
  } catch {
    // A file without metadata, or whose metadata are broken, tells nobody anything.
    return {};
  }
}

function wordsOf(value: unknown): string {
  if (value === undefined || value === null) return '';
  return (Array.isArray(value) ? value.join(' ') : String(value)).trim();
}
