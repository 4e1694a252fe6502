import exifr from 'exifr';
import type { Kind } from './kind.ts';
import type { Opened } from './opened.ts';

/** Below it a number is what screens and telephones write without meaning (72, 96), above it none. */
const LEAST = 100;
const MOST = 9600;
const MM_AN_INCH = 25.4;

interface Exif {
  readonly XResolution?: number;
  readonly YResolution?: number;
  readonly ResolutionUnit?: number | string;
  readonly ExposureTime?: number;
  readonly FNumber?: number;
  readonly FocalLength?: number;
}

/**
 * Dots an inch that a file truly states; null where it states none, where the two directions
 * differ, where the number is what screens and telephones write by habit (under 100), and where a
 * camera took the picture, since its scale depends on the distance.
 */
export async function statedDpi(
  file: string,
  { kind, head }: Pick<Opened, 'kind' | 'head'>,
  exif: Uint8Array | undefined,
): Promise<number | null> {
  const told = await exifOf(file, kind, exif);
  if (told.ExposureTime || told.FNumber || told.FocalLength) return null;
  return headerDpi(kind, head) ?? exifDpi(told);
}

function headerDpi(kind: Kind, head: Uint8Array): number | null {
  const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
  if (kind === 'JPEG') return jfifDpi(view);
  return kind === 'PNG' ? physDpi(view) : null;
}

/** The density in JFIF's segment (ISO/IEC 10918-5), which must come first; unit 0 is an aspect only. */
function jfifDpi(view: DataView): number | null {
  if (view.byteLength < 18 || view.getUint32(2) >>> 16 !== 0xffe0) return null;
  if (view.getUint32(6) !== 0x4a464946) return null;
  const inches = [0, 1, MM_AN_INCH / 10][view.getUint8(13)] ?? 0;
  return dpiOf(view.getUint16(14), view.getUint16(16), inches);
}

/** PNG's pHYs chunk (ISO/IEC 15948), in pixels a metre where its unit is 1. */
function physDpi(view: DataView): number | null {
  for (let at = 8; at + 12 <= view.byteLength; ) {
    const size = view.getUint32(at);
    const type = view.getUint32(at + 4);
    if (type === 0x49444154) return null;
    if (type === 0x70485973 && size === 9 && at + 17 <= view.byteLength)
      return dpiOf(
        view.getUint32(at + 8),
        view.getUint32(at + 12),
        view.getUint8(at + 16) === 1 ? MM_AN_INCH / 1000 : 0,
      );
    at += size + 12;
  }
  return null;
}

function exifDpi({ XResolution = 0, YResolution = 0, ResolutionUnit }: Exif): number | null {
  const inches = { inches: 1, 2: 1, cm: MM_AN_INCH / 10, 3: MM_AN_INCH / 10 }[`${ResolutionUnit}`];
  return dpiOf(XResolution, YResolution, inches ?? 0);
}

/** `inches`: inches in one unit inverted, so 1 for dots an inch and 2.54 for dots a centimetre; 0: none. */
function dpiOf(x: number, y: number, inches: number): number | null {
  const dpi = x * inches;
  if (!(Math.abs(x - y) <= 0.01 * x) || dpi < LEAST || dpi > MOST) return null;
  // Metres and centimetres hold no whole inches: 23,622 a metre is 599.9988.
  return Math.abs(dpi - Math.round(dpi)) < 0.02 ? Math.round(dpi) : dpi;
}

async function exifOf(file: string, kind: Kind, exif: Uint8Array | undefined): Promise<Exif> {
  const whole = kind === 'TIFF' || kind === 'HEIC';
  if (!whole && !exif) return {};
  const pick = [
    'XResolution',
    'YResolution',
    'ResolutionUnit',
    'ExposureTime',
    'FNumber',
    'FocalLength',
  ];
  try {
    return (await exifr.parse(whole ? file : withoutMark(exif as Uint8Array), { pick })) ?? {};
  } catch {
    // Broken EXIF takes nothing from the picture: no dpi is known then.
    return {};
  }
}

/** In JPEG and WebP "Exif" and two zeros stand before the directory. */
function withoutMark(exif: Uint8Array): Uint8Array {
  return exif[0] === 0x45 ? exif.subarray(6) : exif;
}
