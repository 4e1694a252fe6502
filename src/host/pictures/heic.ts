import { readFile } from 'node:fs/promises';
import type { HeicImages, Pixels } from 'heic-decode';
import sharp, { type Sharp } from 'sharp';
import { heifHeaderOf } from './boxes.ts';
import { PictureFault } from './fault.ts';
import { MOST_BYTES_OF_HEIC, MOST_PIXELS_OF_HEIC } from './limits.ts';
import { tiffOf } from './profiled.ts';

/** Numbers of ITU-T H.273. */
const DISPLAY_P3 = 12;
const HDR = [16, 18];

/**
 * A HEIC picture as `sharp` would have read it, upright and with its colour profile. Its 8 bits are
 * all that the decoder gives, also of a picture with 10.
 * @throws PictureFault where it is broken, too large, or in a curve for HDR screens.
 */
export async function heicImage(file: string, bytes: number): Promise<Sharp> {
  if (bytes > MOST_BYTES_OF_HEIC) throw tooLarge(file, `${Math.round(bytes / 1e6)} MB`);
  const buffer = await readFile(file);
  const header = heifHeaderOf(buffer);
  if (header.pixels > MOST_PIXELS_OF_HEIC)
    throw tooLarge(file, `${Math.round(header.pixels / 1e6)} million pixels`);
  if (header.coded && HDR.includes(header.coded.transfer))
    throw new PictureFault(file, 'a picture for HDR screens', 'one in a usual curve, as JPEG');
  const { width, height, data } = await decoded(file, buffer);
  const samples = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
  const profile =
    header.profile ?? (header.coded?.primaries === DISPLAY_P3 ? await displayP3() : null);
  if (profile) return sharp(tiffOf(width, height, samples, profile));
  return sharp(samples, { raw: { width, height, channels: 4 } });
}

function tooLarge(file: string, found: string): PictureFault {
  const most = `at most ${MOST_PIXELS_OF_HEIC / 1e6} million pixels and ${MOST_BYTES_OF_HEIC / 1e6} MB of HEIC`;
  return new PictureFault(file, found, `${most}: save it as JPEG`);
}

let last: Promise<unknown> = Promise.resolve();

/** One picture at a time: its decoder holds all of it several times over, and speaks to the console. */
function decoded(file: string, buffer: Uint8Array): Promise<Pixels> {
  const turn = last.then(() => decodedAlone(file, buffer));
  last = turn.catch(() => undefined);
  return turn;
}

async function decodedAlone(file: string, buffer: Uint8Array): Promise<Pixels> {
  // Its megabytes are loaded where there is a HEIC, not at every start.
  const { default: heicDecode } = await import('heic-decode');
  const said: string[] = [];
  const { log } = console;
  console.log = (...words: readonly unknown[]) => said.push(...words.flatMap(messageOf));
  try {
    return await firstOf(await heicDecode.all({ buffer }));
  } catch (error) {
    const why = (said.at(-1) ?? (error as Error).message).trim();
    throw new PictureFault(file, `a HEIC that is broken or cut short (${why})`, 'a whole one');
  } finally {
    console.log = log;
  }
}

/** What a word said to the console says, where it is the decoder's own message. */
function messageOf(word: unknown): readonly string[] {
  if (typeof word === 'string') return [word];
  return word instanceof Object && 'message' in word ? [String(word.message)] : [];
}

async function firstOf(images: HeicImages): Promise<Pixels> {
  try {
    const [first] = images;
    if (!first || first.width * first.height > MOST_PIXELS_OF_HEIC)
      throw new RangeError('no picture of a size that is read');
    return await first.decode();
  } finally {
    images.dispose();
  }
}

async function displayP3(): Promise<Uint8Array> {
  const dot = { width: 1, height: 1, channels: 3, background: 'white' } as const;
  const png = await sharp({ create: dot }).withIccProfile('p3').png().toBuffer();
  return (await sharp(png).metadata()).icc as Uint8Array;
}
