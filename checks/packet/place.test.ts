import exifr from 'exifr';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { takenAt, withoutPlace } from '../../src/host/index.ts';

const grey = () => sharp({ create: { width: 24, height: 16, channels: 3, background: '#887' } });
const notes = {
  IFD0: { Artist: 'somebody' },
  IFD2: { DateTimeOriginal: '2026:06:18 20:10:00' },
  IFD3: {
    GPSLatitudeRef: 'N',
    GPSLatitude: '60/1 10/1 0/1',
    GPSLongitudeRef: 'E',
    GPSLongitude: '24/1 56/1 0/1',
  },
};
const pixels = (bytes: Uint8Array) => sharp(bytes).raw().toBuffer();

describe('a picture that tells where it was taken', () => {
  it('loses its notes as JPEG and keeps picture and turn', async () => {
    const placed = await grey()
      .withExif(notes)
      .withMetadata({ orientation: 6, exif: notes })
      .jpeg()
      .toBuffer();
    expect((await exifr.gps(placed))?.latitude).toBeCloseTo(60.1667, 3);
    const { bytes, changed } = await withoutPlace(placed);
    expect(changed).toBe('notes');
    expect(await exifr.gps(bytes)).toBeUndefined();
    expect(Buffer.from(bytes).includes('somebody')).toBe(false);
    expect((await sharp(bytes).metadata()).orientation).toBe(6);
    expect((await pixels(bytes)).equals(await pixels(placed))).toBe(true);
    expect(await takenAt(placed)).toBe('2026-06-18T20:10:00');
  });

  it('is written anew as PNG where it is another kind', async () => {
    const placed = await grey().withExif(notes).webp({ lossless: true }).toBuffer();
    const { bytes, changed } = await withoutPlace(placed);
    expect(changed).toBe('anew');
    expect((await sharp(bytes).metadata()).exif).toBeUndefined();
    expect((await pixels(bytes)).equals(await pixels(placed))).toBe(true);
  });

  it('stays to the byte where it tells of none', async () => {
    const plain = await grey().jpeg().toBuffer();
    expect(await withoutPlace(plain)).toEqual({ bytes: plain, changed: 'nothing' });
    expect(await takenAt(plain)).toBe('');
  });
});
