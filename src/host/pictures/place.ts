import exifr from 'exifr';
import sharp from 'sharp';

/** A picture that tells no place, and what became of its bytes. */
export interface Unplaced {
  readonly bytes: Uint8Array;
  /** `nothing`: there was no place in it; `notes`: its notes were cut out, the picture is as it was; `anew`: the picture was written anew, as PNG. */
  readonly changed: 'nothing' | 'notes' | 'anew';
}

/** Segments of JPEG that carry notes: EXIF and XMP, IPTC, comments. */
const NOTES = new Set([0xe1, 0xed, 0xfe]);
const START_OF_SCAN = 0xda;

/**
 * A picture without the place where it was taken. One whose notes (EXIF, XMP, IPTC) tell of none
 * stays to the byte. From a JPEG all notes but the turn are cut out, since makers hide places in
 * notes of their own; its picture is not touched. Others are written anew as PNG, upright.
 */
export async function withoutPlace(bytes: Uint8Array): Promise<Unplaced> {
  const told = await exifr
    .parse(bytes, { gps: true, xmp: true, iptc: true, makerNote: true, userComment: true })
    .catch(() => ({ unreadable: true }));
  if (!tellsMore(told)) return { bytes, changed: 'nothing' };
  if (bytes[0] === 0xff && bytes[1] === 0xd8)
    return { bytes: await cutOut(bytes), changed: 'notes' };
  const anew = await sharp(bytes).autoOrient().toColourspace('srgb').png().toBuffer();
  return { bytes: anew, changed: 'anew' };
}

/** Notes in which no place can be: sizes, the turn, the time. */
const HARMLESS = new Set(
  'ImageWidth ImageHeight BitDepth ColorType Compression Filter Interlace Orientation XResolution YResolution ResolutionUnit DateTimeOriginal CreateDate ModifyDate OffsetTime OffsetTimeOriginal OffsetTimeDigitized Make Model Software ColorSpace ExifImageWidth ExifImageHeight ExifVersion FlashpixVersion ComponentsConfiguration YCbCrPositioning'.split(
    ' ',
  ),
);

function tellsMore(told: object | undefined): boolean {
  return Object.keys(told ?? {}).some((key) => !HARMLESS.has(key));
}

/** The JPEG without its notes, its turn in a note of its own where it is not upright. */
async function cutOut(bytes: Uint8Array): Promise<Uint8Array> {
  const turn = (await exifr.orientation(bytes).catch(() => undefined)) ?? 1;
  const kept: Uint8Array[] = [bytes.subarray(0, 2), ...(turn === 1 ? [] : [turnNote(turn)])];
  let at = 2;
  while (bytes[at] === 0xff && bytes[at + 1] !== START_OF_SCAN) {
    const end = at + 2 + (bytes[at + 2] as number) * 256 + (bytes[at + 3] as number);
    if (!NOTES.has(bytes[at + 1] as number)) kept.push(bytes.subarray(at, end));
    at = end;
  }
  return Buffer.concat([...kept, bytes.subarray(at)]);
}

/** EXIF that holds the turn alone (big end first, one entry of the first directory). */
function turnNote(turn: number): Uint8Array {
  const head = [0xff, 0xe1, 0, 34, 0x45, 0x78, 0x69, 0x66, 0, 0, 0x4d, 0x4d, 0, 42, 0, 0, 0, 8];
  return Uint8Array.from([...head, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, turn, 0, 0, 0, 0, 0, 0]);
}

/** When the camera says that a picture was taken, as it writes it (`2026-06-18T20:10:00`); empty where it does not. */
export async function takenAt(bytes: Uint8Array): Promise<string> {
  const told = await exifr
    .parse(bytes, { pick: ['DateTimeOriginal', 'OffsetTimeOriginal'], reviveValues: false })
    .catch(() => undefined);
  const [day, time] = String(told?.DateTimeOriginal ?? '').split(' ');
  if (!/^\d{4}:\d\d:\d\d$/.test(day ?? '') || time === undefined) return '';
  return `${day?.replaceAll(':', '-')}T${time}${told?.OffsetTimeOriginal ?? ''}`;
}
