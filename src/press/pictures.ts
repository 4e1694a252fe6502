import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { SizeMm } from '../bench/index.ts';
import {
  type Account,
  faceOf,
  fileNameOf,
  type PointedPlace,
  placesOn,
  type SitePicture,
  type ToldPrinting,
} from '../chronicle/index.ts';
import { PICTURE_MAKERS, PictureFault, publishedPicture, sha512 } from '../host/index.ts';
import { sizeOf } from './card-on.ts';
import type { Maker } from './made.ts';
import { marksOn } from './pointed.ts';
import type { Files, Told } from './told.ts';

/** Widths in pixels at which pictures are published. */
const WIDTHS = [320, 960];

/** The pictures of a site by their names in the dossier. One that is none is named and left out. */
export async function sitePictures(
  maker: Maker,
  folder: string,
  account: Account,
  told: Told,
): Promise<ReadonlyMap<string, SitePicture>> {
  const made = new Map<string, SitePicture>();
  const shown = [...account.printings, ...account.counterfeits].flatMap(shownOf);
  const sizeMm = sizeOf(account);
  for (const [i, one] of shown.entries()) {
    const { file } = one;
    told.begins(`Picture ${i + 1} of ${shown.length}`, 0.5 + (0.3 * i) / shown.length);
    try {
      made.set(file, await sitePicture(maker, join(folder, file), one, sizeMm));
    } catch (error) {
      if (!(error instanceof PictureFault)) throw error;
      told.leaves(`${error.message} It is left out.`);
    }
  }
  return made;
}

interface Shown {
  readonly file: string;
  readonly stem: string;
  /** Places that are pointed at: on the first picture of a face. */
  readonly places: readonly PointedPlace[];
}

function shownOf({
  id,
  pictures,
  traits,
}: Pick<ToldPrinting, 'id' | 'pictures' | 'traits'>): Shown[] {
  const faces = new Set<string>();
  return pictures.map((picture, i) => {
    const face = faceOf(picture);
    const places = faces.has(face) ? [] : placesOn(traits, face);
    faces.add(face);
    return { file: picture.file, stem: `${fileNameOf(id)}-${i + 1}`, places };
  });
}

async function sitePicture(
  maker: Maker,
  file: string,
  { stem, places }: Shown,
  sizeMm: SizeMm | null,
): Promise<SitePicture> {
  const source = await readFile(file).then(sha512, () => 'none');
  const boxes = places.map(({ boxMm }) => boxMm);
  const key = sha512(JSON.stringify([stem, WIDTHS, PICTURE_MAKERS, source, boxes, sizeMm]));
  return await maker.put(key, async () => {
    const files: Files = new Map();
    const made = await publishedPicture(file, WIDTHS);
    for (const { width, webp, jpg } of made) {
      files.set(`pictures/${stem}-${width}.webp`, webp);
      files.set(`pictures/${stem}-${width}.jpg`, jpg);
    }
    const sizes = made.map(({ width, height }) => ({ width, height }));
    const pointed = sizeMm !== null && places.length > 0;
    const marks = pointed ? await marksOn(file, sizeMm, places) : undefined;
    return { files, told: { stem, sizes, marks } };
  });
}
