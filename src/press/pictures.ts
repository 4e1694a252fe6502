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
import { PICTURE_MAKERS, sha512 } from '../host/index.ts';
import { sizeOf } from './card-on.ts';
import { type Hands, NoPicture } from './hands/hands.ts';
import type { Maker } from './made.ts';
import type { Files, Shelf, Told } from './told.ts';

/** Widths in pixels at which pictures are published. */
const WIDTHS = [320, 960];

/** What makes the files of a site or a kit, and where they stand. */
export interface Making {
  readonly shelf: Shelf;
  readonly maker: Maker;
  readonly hands: Hands;
  readonly told: Told;
}

/** The pictures of a site by their names in the dossier. One that is none is named and left out. */
export async function sitePictures(
  folder: string,
  account: Account,
  making: Making,
): Promise<ReadonlyMap<string, SitePicture>> {
  const { told, hands } = making;
  const shown = [...account.printings, ...account.counterfeits].flatMap(shownOf);
  const sizeMm = sizeOf(account);
  const made = await hands.all(shown, async (one, i) => {
    told.begins(`Picture ${i + 1} of ${shown.length}`, 0.5 + (0.3 * i) / shown.length);
    return await sitePicture(join(folder, one.file), one, sizeMm, making).catch(unlessNone);
  });
  const found = new Map<string, SitePicture>();
  for (const [i, picture] of made.entries()) {
    if (picture instanceof NoPicture) told.leaves(`${picture.message} It is left out.`);
    else found.set(shown[i]?.file ?? '', picture);
  }
  return found;
}

function unlessNone(error: unknown): NoPicture {
  if (error instanceof NoPicture) return error;
  throw error;
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
  file: string,
  { stem, places }: Shown,
  sizeMm: SizeMm | null,
  { maker, hands }: Making,
): Promise<SitePicture> {
  const source = await readFile(file).then(sha512, () => 'none');
  const boxes = places.map(({ boxMm }) => boxMm);
  const key = sha512(JSON.stringify([stem, WIDTHS, PICTURE_MAKERS, source, boxes, sizeMm]));
  return await maker.put(key, async () => {
    const files: Files = new Map();
    const { sizes, marks } = await hands.make('picture', { file, widths: WIDTHS, sizeMm, places });
    for (const { width, webp, jpg } of sizes) {
      files.set(`pictures/${stem}-${width}.webp`, webp);
      files.set(`pictures/${stem}-${width}.jpg`, jpg);
    }
    const told = { stem, sizes: sizes.map(({ width, height }) => ({ width, height })), marks };
    return { files, told };
  });
}
