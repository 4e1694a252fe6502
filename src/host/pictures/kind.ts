import { extname } from 'node:path';

/** The kinds of picture that are read. */
export const KINDS = ['JPEG', 'PNG', 'WebP', 'TIFF', 'AVIF', 'HEIC'] as const;

/** A kind of picture that is read. */
export type Kind = (typeof KINDS)[number];

/** What the first bytes of a file show: a kind of picture that is read, or what else it is. */
export type Sniffed = { readonly kind: Kind } | { readonly other: string };

const MAGIC: readonly (readonly [at: number, bytes: string, Sniffed])[] = [
  [0, '\xFF\xD8\xFF', { kind: 'JPEG' }],
  [0, '\x89PNG\r\n\x1A\n', { kind: 'PNG' }],
  [8, 'WEBP', { kind: 'WebP' }],
  [8, 'CR\x02', { other: 'a camera raw picture' }],
  [0, 'II*\0', { kind: 'TIFF' }],
  [0, 'MM\0*', { kind: 'TIFF' }],
  [0, 'II+\0', { kind: 'TIFF' }],
  [0, 'MM\0+', { kind: 'TIFF' }],
  [0, 'GIF8', { other: 'a GIF' }],
  [0, 'BM', { other: 'a BMP' }],
  [0, '%PDF', { other: 'a PDF' }],
  [0, '8BPS', { other: 'a layered PSD picture' }],
  [0, 'PK\x03\x04', { other: 'a ZIP archive' }],
  [0, '\xFF\x0A', { other: 'a JPEG XL' }],
  [4, 'JXL ', { other: 'a JPEG XL' }],
  [4, 'jP  ', { other: 'a JPEG 2000' }],
];

/** Tells what a file is by its first bytes, its name left aside (signatures of the formats' own standards). */
export function sniffed(head: Uint8Array): Sniffed {
  const latin = Buffer.from(head).toString('latin1');
  if (latin.startsWith('ftyp', 4)) return ofBrands(latin, head);
  const known = MAGIC.find(([at, bytes]) => latin.startsWith(bytes, at));
  if (known) return known[2];
  return { other: isText(head) ? 'a text' : 'bytes of no known picture' };
}

/** The media file formats of ISO/IEC 14496-12 say in their first box which brands can read them. */
function ofBrands(latin: string, head: Uint8Array): Sniffed {
  const size = new DataView(head.buffer, head.byteOffset).getUint32(0);
  const brands = [latin.slice(8, 12)];
  for (let at = 16; at + 4 <= Math.min(size, latin.length); at += 4)
    brands.push(latin.slice(at, at + 4));
  if (brands.some((brand) => brand === 'avif' || brand === 'avis')) return { kind: 'AVIF' };
  if (brands.some((brand) => /^he(ic|ix|im|is|vc|vx)$/.test(brand))) return { kind: 'HEIC' };
  return { other: 'a film or another media file' };
}

function isText(head: Uint8Array): boolean {
  return head.every((byte) => byte >= 32 || (byte >= 9 && byte <= 13) || byte === 27);
}

const NAMES: Readonly<Record<string, Kind>> = {
  '.jpg': 'JPEG',
  '.jpeg': 'JPEG',
  '.png': 'PNG',
  '.webp': 'WebP',
  '.tif': 'TIFF',
  '.tiff': 'TIFF',
  '.avif': 'AVIF',
  '.heic': 'HEIC',
  '.heif': 'HEIC',
};

/** The kind of picture that a file's name promises; undefined where it promises none. */
export function kindByName(file: string): Kind | undefined {
  return NAMES[extname(file).toLowerCase()];
}

/** A kind with its article. */
export function aKind(kind: Kind): string {
  return `${kind === 'AVIF' ? 'an' : 'a'} ${kind}`;
}
