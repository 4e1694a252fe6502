import type { Shown } from '../../chronicle/index.ts';
import { leavingIn } from '../../press/index.ts';
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
