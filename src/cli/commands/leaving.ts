import { join } from 'node:path';
import { type Leaving, leavingOf, type PictureMark, type Shown } from '../../chronicle/index.ts';
import { type Dossier, isSafeName, leavingGroundIn } from '../../dossier/index.ts';
import { marksOf } from '../../host/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { leavingReport } from '../report/leaving.ts';
import type { Terminal } from '../terminal.ts';

/** Lists what a publication of a dossier holds that could harm, and what stays; writes nothing. */
export async function leaving(
  folder: string,
  { json = false, ...shown }: Shown & { readonly json?: boolean },
  terminal: Terminal,
): Promise<0> {
  const found = await leavingIn(folder, await dossierIn(folder), shown);
  if (json) await writeJson({ leaving: found }, terminal);
  else for (const part of leavingReport(found, terminal.width)) await terminal.write(part);
  return 0;
}

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
