import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import {
  type Account,
  fileNameOf,
  type StillPicture,
  type ToldPicture,
} from '../../chronicle/index.ts';
import { isSafeName } from '../../dossier/index.ts';
import { PICTURE_MAKERS, sha512 } from '../../host/index.ts';
import { sizeOf } from '../card-on.ts';
import type { Making } from '../pictures.ts';

/**
 * One picture a printing, its first front with rights, laid straight where its outline is found, and
 * put on the shelf as `pictures/ID.jpg`; a picture that cannot be read is named and left out. What a
 * camera wrote beside the pixels is left out.
 */
export async function stillPictures(
  folder: string,
  account: Account,
  wanted: ReadonlySet<string>,
  making: Making,
): Promise<ReadonlyMap<string, StillPicture>> {
  const shown = account.printings.flatMap(({ id, pictures }) => {
    const picture = wanted.has(id) ? pictures.find(({ side }) => side !== 'back') : undefined;
    return picture !== undefined && isSafeName(picture.file) ? [{ id, picture }] : [];
  });
  const made = await making.hands.all(shown, ({ id, picture }) =>
    stillPicture(folder, id, picture, account, making).catch((error: Error) => error),
  );
  const found = new Map<string, StillPicture>();
  for (const [i, { id, picture }] of shown.entries()) {
    const one = made[i];
    if (one instanceof Error) making.told.leaves(`${picture.file} is left out: ${one.message}`);
    else if (one !== undefined) found.set(id, one);
  }
  return found;
}

async function stillPicture(
  folder: string,
  id: string,
  { file: name, rights }: ToldPicture,
  account: Account,
  { maker, hands, shelf }: Making,
): Promise<StillPicture> {
  const file = join(folder, name);
  const sizeMm = sizeOf(account);
  const laid = `pictures/${fileNameOf(id)}.jpg`;
  const key = sha512(JSON.stringify([laid, sha512(await readFile(file)), sizeMm, PICTURE_MAKERS]));
  const size = await maker.put(key, async () => {
    const { bytes, ...told } = await hands.make('still', { file, sizeMm });
    return { files: new Map([[laid, bytes]]), told };
  });
  const href = `data:image/jpeg;base64,${Buffer.from(await shelf.read(laid)).toString('base64')}`;
  return { ...size, href, rights };
}
