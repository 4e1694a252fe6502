import { join } from 'node:path';
import { type Leaving, leavingOf, type PictureMark, type Shown } from '../chronicle/index.ts';
import { type Dossier, isSafeName, leavingGroundIn } from '../dossier/index.ts';
import { marksOf } from '../host/index.ts';

/** What leaves and what stays of a dossier that was read, with what its pictures' metadata tell. */
export async function leavingIn(
  folder: string,
  dossier: Dossier,
  shown: Shown,
): Promise<readonly Leaving[]> {
  const plain = leavingGroundIn(dossier, []);
  const files = leavingOf(plain, shown).flatMap(({ file, leaves, what, found }) =>
    file === 'pictures.csv' && leaves && what !== 'name' && isSafeName(found) ? [found] : [],
  );
  const marks: PictureMark[] = [];
  for (const file of files)
    for (const mark of await marksOf(join(folder, file))) marks.push({ file, ...mark });
  return leavingOf({ ...plain, marks }, shown);
}
