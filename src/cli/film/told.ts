import { readFile } from 'node:fs/promises';
import type { Account } from '../../chronicle/index.ts';
import type { Dossier } from '../../dossier/index.ts';
import { worked } from '../../press/index.ts';
import { dossierIn, reasonOf } from '../dossier.ts';
import { toldOn } from '../progress.ts';
import { faultsReport } from '../report/faults.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** The dossier in a folder and its account; its faults are said on standard error. */
export async function accountIn(
  folder: string,
  prices: boolean,
  terminal: Terminal,
): Promise<{ readonly dossier: Dossier; readonly account: Account }> {
  const dossier = await dossierIn(folder);
  if (dossier.faults.length > 0) terminal.say(faultsReport(dossier.faults, terminal.width));
  const told = toldOn(terminal);
  const { account } = worked(dossier, { prices }, told);
  told.end();
  return { dossier, account };
}

/** A text that was named. Throws `WrongCall` where it cannot be read. */
export async function textIn(file: string): Promise<string> {
  const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  if (bytes.includes(0)) throw new WrongCall(`${file} is not a text.`);
  return new TextDecoder().decode(bytes);
}
