import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type Exif } from 'sharp';
import { describe, expect, it } from 'vitest';
import { marksOf } from './marks.ts';

const folder = await mkdtemp(join(tmpdir(), 'marks-'));
const grey = { create: { width: 16, height: 16, channels: 3, background: '#888' } } as const;

/** A JPEG with EXIF that libvips wrote, another writer than the one that reads here. */
async function pictured(exif: Exif): Promise<string> {
  const path = join(folder, 'a.jpg');
  await sharp(grey).withExif(exif).jpeg().toFile(path);
  return path;
}

describe('marksOf', () => {
  it('tells where, with what and by whom a picture was taken', async () => {
    const path = await pictured({
      IFD0: { Artist: 'Quenby Marl', Software: 'a program' },
      IFD2: { BodySerialNumber: 'SN-0042', ExposureTime: '1/60' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '61/1 30/1 0/1',
        GPSLongitudeRef: 'E',
        GPSLongitude: '23/1 45/1 0/1',
      },
    });
    const found = (await marksOf(path)).map(({ what, tag, value }) => [what, tag, value]);
    expect(found).toContainEqual(['name', 'Artist', 'Quenby Marl']);
    expect(found).toContainEqual(['serial number', 'SerialNumber', 'SN-0042']);
    expect(found.filter(([what]) => what === 'location').map(([, tag]) => tag)).toEqual([
      'GPSLatitude',
      'GPSLongitude',
    ]);
    expect(found).toHaveLength(4);
  });

  it('tells nothing of a plain picture, and of what is no picture', async () => {
    const plain = join(folder, 'b.png');
    await sharp(grey).png().toFile(plain);
    const text = join(folder, 'c.jpg');
    await writeFile(text, 'no picture');
    expect(await marksOf(plain)).toEqual([]);
    expect(await marksOf(text)).toEqual([]);
  });
});
