import { join } from 'node:path';
import { rectified } from '../../bench/index.ts';
import type { Account, StillPicture, ToldPicture } from '../../chronicle/index.ts';
import { isSafeName } from '../../dossier/index.ts';
import { decodePicture, shownSamples } from '../../host/index.ts';
import { cardOn, sizeOf } from '../card-on.ts';
import type { Told } from '../told.ts';

/** Pixels a millimetre of a card on stills, and widest picture. */
const FINENESS = 12;
const WIDEST = 1200;

/**
 * One picture a printing, its first front with rights, laid straight where its outline is found; a
 * picture that cannot be read is named and left out. What a camera wrote beside the pixels is left
 * out.
 */
export async function stillPictures(
  folder: string,
  account: Account,
  wanted: ReadonlySet<string>,
  told: Told,
): Promise<ReadonlyMap<string, StillPicture>> {
  const found = new Map<string, StillPicture>();
  for (const { id, pictures } of account.printings) {
    const picture = wanted.has(id) ? pictures.find(({ side }) => side !== 'back') : undefined;
    if (picture === undefined || !isSafeName(picture.file)) continue;
    try {
      found.set(id, await stillPicture(folder, picture, account));
    } catch (error) {
      told.leaves(`${picture.file} is left out: ${(error as Error).message}`);
    }
  }
  return found;
}

async function stillPicture(
  folder: string,
  { file, rights }: ToldPicture,
  account: Account,
): Promise<StillPicture> {
  const picture = await decodePicture(join(folder, file));
  const sizeMm = sizeOf(account);
  const map = sizeMm ? cardOn(picture, sizeMm) : undefined;
  const shown = map ? rectified(picture, map, FINENESS, 0) : picture;
  const bytes = await shownSamples(shown, WIDEST);
  const width = Math.min(WIDEST, shown.width);
  return {
    href: `data:image/jpeg;base64,${Buffer.from(bytes).toString('base64')}`,
    width,
    height: (shown.height * width) / shown.width,
    toEdges: map !== undefined,
    rights,
  };
}
