import type { Picture } from '../bench/index.ts';
import { decodePicture, PictureFault } from '../host/index.ts';
import { WrongCall } from './wrong-call.ts';

/** A picture read from a file, and how long that took. */
export interface ReadPicture {
  readonly picture: Picture;
  /** Milliseconds. */
  readonly decode: number;
}

/** Reads a picture. Throws `WrongCall` where the file cannot be read as one. */
export async function pictureIn(file: string): Promise<ReadPicture> {
  const began = performance.now();
  const picture = await decodePicture(file).catch((error: unknown) => {
    throw error instanceof PictureFault ? new WrongCall(error.message) : error;
  });
  return { picture, decode: performance.now() - began };
}
