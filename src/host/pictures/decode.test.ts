import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { type DecodedPicture, decodePicture } from './decode.ts';
import { PictureFault } from './fault.ts';
import { tiffOf } from './profiled.ts';

const folder = mkdtempSync(join(tmpdir(), 'printlore-pictures-'));
afterAll(() => rmSync(folder, { recursive: true }));

const heic = join(import.meta.dirname, '../../../checks/fixtures/bench/four-colours.heic');
const WIDTH = 96;
const HEIGHT = 64;
/** Those of `checks/makers/bench/heic/make.ts`: top left, top right, bottom left, bottom right. */
const COLOURS = [
  [180, 60, 60],
  [60, 160, 80],
  [60, 80, 180],
  [230, 230, 230],
] as const;
const TURNED = [COLOURS[2], COLOURS[0], COLOURS[3], COLOURS[1]];

/** JPEG and HEVC at high quality and profiles of 8 bits move a flat colour by at most 2 (measured). */
const NEAR = 2;

function fourColours(): Sharp {
  const samples = Buffer.alloc(WIDTH * HEIGHT * 3);
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++)
      samples.set(
        COLOURS[(x < WIDTH / 2 ? 0 : 1) + (y < HEIGHT / 2 ? 0 : 2)] ?? [],
        (y * WIDTH + x) * 3,
      );
  return sharp(samples, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } });
}

async function kept(name: string, image: Sharp | Uint8Array): Promise<string> {
  const file = join(folder, name);
  writeFileSync(file, 'toBuffer' in image ? await image.toBuffer() : image);
  return file;
}

/** The colour in the middle of each quarter, in 0 to 255. */
function quarters({ width, height, samples }: DecodedPicture): readonly (readonly number[])[] {
  const most = samples instanceof Uint16Array ? 257 : 1;
  return [0.25, 0.75].flatMap((down) =>
    [0.25, 0.75].map((across) => {
      const at = (Math.floor(down * height) * width + Math.floor(across * width)) * 3;
      return [...samples.subarray(at, at + 3)].map((sample) => sample / most);
    }),
  );
}

function expectColours(picture: DecodedPicture, colours: readonly (readonly number[])[]): void {
  const found = quarters(picture);
  const off = colours.flatMap((colour, i) => colour.map((c, k) => Math.abs(c - found[i]![k]!)));
  expect(Math.max(...off)).toBeLessThanOrEqual(NEAR);
}

const jpeg = () => fourColours().jpeg({ quality: 98, chromaSubsampling: '4:4:4' });

describe('every kind of picture is read in sRGB', () => {
  it.each<[string, () => Sharp]>([
    ['plain.jpg', jpeg],
    ['progressive.jpg', () => fourColours().jpeg({ quality: 98, progressive: true })],
    ['p3.jpg', () => jpeg().withIccProfile('p3')],
    ['plain.png', () => fourColours().png()],
    ['p3.png', () => fourColours().png().withIccProfile('p3')],
    ['plain.webp', () => fourColours().webp({ lossless: true })],
    ['plain.tif', () => fourColours().tiff({ compression: 'lzw' })],
    ['plain.avif', () => fourColours().avif({ quality: 95, chromaSubsampling: '4:4:4' })],
    ['name[page=1].jpg', jpeg],
  ])('%s', async (name, image) => {
    const picture = await decodePicture(await kept(name, image()));
    expect([picture.width, picture.height, picture.notes]).toEqual([WIDTH, HEIGHT, []]);
    expect(picture.samples).toBeInstanceOf(Uint8Array);
    expectColours(picture, COLOURS);
  });

  it('HEIC of an outside encoder, with its Display P3 profile', async () => {
    expectColours(await decodePicture(heic), COLOURS);
  });

  it('16 bits stay 16 bits, with a profile too', async () => {
    for (const image of [
      fourColours().toColourspace('rgb16').png(),
      fourColours().toColourspace('rgb16').withIccProfile('p3').png(),
    ]) {
      const picture = await decodePicture(await kept('deep.png', image));
      expect(picture.samples).toBeInstanceOf(Uint16Array);
      expectColours(picture, COLOURS);
    }
  });

  it('grey has three alike channels, also of 16 bits', async () => {
    for (const space of ['b-w', 'grey16']) {
      const grey = sharp(await fourColours().greyscale().png().toBuffer()).toColourspace(space);
      const [, , , white] = quarters(await decodePicture(await kept('grey.png', grey.png())));
      expect(white).toEqual([white?.[0], white?.[0], white?.[0]]);
      expect(Math.abs((white?.[0] ?? 0) - 230)).toBeLessThanOrEqual(NEAR);
    }
  });

  it('inks without a profile keep white and black apart', async () => {
    const cmyk = fourColours().toColourspace('cmyk').jpeg({ quality: 98 });
    const found = quarters(await decodePicture(await kept('cmyk.jpg', cmyk)));
    // The press profile that stands in for a missing one moves colours by up to 44 (measured).
    COLOURS.forEach((colour, i) => {
      colour.forEach((c, k) => {
        expect(Math.abs(c - found[i]![k]!)).toBeLessThan(50);
      });
    });
  });

  it('what is half clear is laid on white', async () => {
    const background = { r: 10, g: 20, b: 30, alpha: 0.5 };
    const half = sharp({ create: { width: 8, height: 8, channels: 4, background } }).png();
    const [found] = quarters(await decodePicture(await kept('half.png', half)));
    expect(found).toEqual([132, 137, 142]);
  });
});

describe('a picture stands upright', () => {
  it.each(['jpeg', 'png', 'webp', 'tiff', 'avif'] as const)('%s by its EXIF turn', async (kind) => {
    const best = kind === 'webp' ? { lossless: true } : { quality: 98 };
    const image = fourColours().toFormat(kind, best).withMetadata({ orientation: 6 });
    const picture = await decodePicture(await kept(`turned.${kind}`, image));
    expect([picture.width, picture.height]).toEqual([HEIGHT, WIDTH]);
    const off = quarters(picture).map((c, i) => Math.abs((c[1] ?? 0) - (TURNED[i]?.[1] ?? 0)));
    // Colour at half the resolution bleeds no further than the quarters' middles.
    expect(Math.max(...off)).toBeLessThanOrEqual(NEAR);
  });

  it('HEIC by the turn in its own properties', async () => {
    const bytes = readFileSync(heic);
    const at = bytes.indexOf('pixi');
    bytes.write('irot', at, 'latin1');
    bytes[at + 4] = 3;
    expectColours(await decodePicture(await kept('turned.heic', bytes)), TURNED);
  });
});

describe('dots an inch are believed', () => {
  const dpiOf = async (name: string, image: Sharp) =>
    (await decodePicture(await kept(name, image))).dpi;

  it.each<[string, () => Sharp]>([
    ['scan.jpg', jpeg],
    ['scan.png', () => fourColours().png()],
    ['scan.tif', () => fourColours().tiff()],
    ['scan.webp', () => fourColours().webp()],
    ['scan.avif', () => fourColours().avif()],
  ])('where the file states them: %s', async (name, image) => {
    expect(await dpiOf(name, image().withMetadata({ density: 600 }))).toBe(600);
    expect(await dpiOf(name, image())).toBeNull();
  });

  it.each([72, 96])('not where they are %d, as screens and telephones write', async (density) => {
    expect(await dpiOf('habit.jpg', jpeg().withMetadata({ density }))).toBeNull();
  });

  it('not where a camera took the picture', async () => {
    const scanner = { density: 300, exif: { IFD0: { Make: 'Invented' } } };
    expect(await dpiOf('scanner.jpg', jpeg().withMetadata(scanner))).toBe(300);
    const camera = { density: 300, exif: { IFD2: { FNumber: '18/10' } } };
    expect(await dpiOf('camera.jpg', jpeg().withMetadata(camera))).toBeNull();
  });
});

describe('a file that is no whole picture is refused by name, with what was found', () => {
  const says = async (file: string) =>
    decodePicture(file).then(
      () => 'read',
      (error: unknown) => {
        expect(error).toBeInstanceOf(PictureFault);
        expect((error as Error).message).toContain(file);
        return (error as Error).message;
      },
    );

  it.each<[string, string, RegExp]>([
    ['letter.jpg', 'Dear collector', /a text under the name of a JPEG; expected a picture \(JPEG/],
    ['empty.png', '', /an empty file/],
    ['film.gif', 'GIF89a\0\0', /found a GIF;/],
    ['film.mp4', '\0\0\0\u0014ftypisom\0\0\0\0mp42', /a film or another media file/],
    ['odd.webp', '\u0001\u0002\u0003', /bytes of no known picture under the name of a WebP/],
    ['drawing.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>', /found a text;/],
  ])('%s', async (name, bytes, found) => {
    expect(await says(await kept(name, Buffer.from(bytes, 'latin1')))).toMatch(found);
  });

  it('a missing file and a folder', async () => {
    expect(await says(join(folder, 'nowhere.jpg'))).toMatch(/no such file/);
    expect(await says(folder)).toMatch(/found a folder/);
  });

  const NOISE = Uint8Array.from({ length: 300 * 200 * 3 }, (_, i) => (i * i * 31) % 251);
  const noise = () => sharp(NOISE, { raw: { width: 300, height: 200, channels: 3 } });

  it.each<[string, () => Sharp]>([
    ['cut.jpg', () => noise().jpeg()],
    ['cut.png', () => noise().png()],
    ['cut.webp', () => noise().webp()],
    ['cut.tif', () => noise().tiff()],
    ['cut.avif', () => noise().avif()],
  ])('%s, cut short', async (name, image) => {
    const bytes = await image().toBuffer();
    for (const share of [0.95, 0.5]) {
      const cut = bytes.subarray(0, Math.floor(bytes.length * share));
      expect(await says(await kept(name, cut))).toMatch(/broken or cut short/);
    }
  });

  it('a TIFF whose directory stands before the samples that are cut short', async () => {
    const { icc } = await sharp(await jpeg().withIccProfile('p3').toBuffer()).metadata();
    const whole = tiffOf(300, 200, new Uint8Array(300 * 200 * 4), icc as Uint8Array);
    expect(await says(await kept('whole.tif', whole))).toBe('read');
    expect(await says(await kept('cut.tif', whole.subarray(0, 100_000)))).toMatch(/cut short/);
  });

  it.each([500, 1000])(
    'a HEIC cut after %d bytes, and the console stays silent',
    async (length) => {
      const said = vi.spyOn(console, 'log');
      const cut = readFileSync(heic).subarray(0, length);
      expect(await says(await kept('cut.heic', cut))).toMatch(
        /a HEIC that is broken or cut short \(Invalid input[^[]*\);/,
      );
      expect(said).not.toHaveBeenCalled();
      said.mockRestore();
    },
  );

  it.each<[string, () => Promise<Buffer>, string, number]>([
    ['huge.png', () => fourColours().png().toBuffer(), 'IHDR', 4],
    ['huge.avif', () => fourColours().avif().toBuffer(), 'ispe', 8],
    ['huge.heic', async () => readFileSync(heic), 'ispe', 8],
  ])('%s, huge by its header alone', async (name, bytesOf, mark, after) => {
    const bytes = await bytesOf();
    const at = bytes.indexOf(mark) + after;
    bytes.writeUInt32BE(60_000, at);
    bytes.writeUInt32BE(60_000, at + 4);
    expect(await says(await kept(name, bytes))).toMatch(/at most (200|64) million pixels/);
  });
});

it('a picture under another picture\u2019s name is read, and that is noted', async () => {
  const picture = await decodePicture(await kept('really-png.jpg', fourColours().png()));
  expect(picture.notes).toEqual([
    'really-png.jpg is named as a JPEG and is a PNG; it was read as that.',
  ]);
});

it('over 50 million pixels a picture is shrunk and says so', async () => {
  const background = { r: 90, g: 140, b: 60 };
  const large = sharp({ create: { width: 8000, height: 7000, channels: 3, background } });
  const image = large.jpeg().withMetadata({ density: 1200, orientation: 6 });
  const picture = await decodePicture(await kept('large.jpg', image));
  expect([picture.width, picture.height, picture.dpi]).toEqual([3500, 4000, 600]);
  expect(picture.stored).toEqual({ width: 7000, height: 8000 });
  expect(picture.notes[0]).toMatch(/7000 × 8000 pixels and was measured at 1\/2/);
});
