import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import {
  type Account,
  type Cut,
  cuesOf,
  type Frozen,
  hurriedCues,
  listedIds,
  type Mark,
  movedFigures,
  plannedCut,
  READING_RATE,
  readMarks,
  retimedCut,
  type Script,
  scriptOf,
  type TellingOrder,
} from '../../chronicle/index.ts';
import { filmInto, SPOKEN } from '../../press/index.ts';
import { notWritten } from '../dossier.ts';
import { checkSpoken, frozenIn } from '../film/frozen.ts';
import type { FilmOptions } from '../film/options.ts';
import { writeSeen } from '../film/seen.ts';
import { accountIn, textIn } from '../film/told.ts';
import { toldOn } from '../progress.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/**
 * Makes the kit of a film from a dossier, or lists the spoken figures of an earlier one that no
 * longer hold. Faults are listed on standard error and answered by 1, as are figures that moved.
 */
export async function film(
  folder: string,
  options: FilmOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const { out, check, marks: marksFile, write = false, prices = false } = options;
  if (write && marksFile === undefined)
    throw new WrongCall('--write needs --marks: what was seen?');
  const frozen = check === undefined ? null : await frozenIn(check);
  if (frozen === null && out === undefined)
    throw new WrongCall(
      '--out with a folder for the kit is wanted, or --check with a film that was made.',
    );
  const marks = marksFile === undefined ? null : marksIn(marksFile, await textIn(marksFile));
  const told = await accountIn(folder, prices || saysPrices(frozen), terminal);
  if (frozen) return await checkSpoken(frozen, told.account, terminal);
  const kept = marks === null ? null : await keptIn(out!);
  const script = kept?.script ?? scriptOf(told.account, await wishOf(options, told.account));
  const cut = cutOf(script, marks);
  await makeKit(folder, told.account, cut, options, kept === null, terminal);
  const seen = (marks ?? []).filter((mark) => mark.is === 'seen');
  if (write) await writeSeen(folder, told.dossier, seen, options.recording ?? marksFile!, terminal);
  else if (seen.length > 0)
    terminal.say(`${counted(seen.length, 'note')} on copies; with --write they go to the desk.\n`);
  const moved = kept === null ? [] : movedFigures(kept, told.account);
  if (moved.length > 0)
    terminal.say(
      `${counted(moved.length, 'spoken figure')} moved since it was recorded; --check ${out} lists them.\n`,
    );
  return told.dossier.faults.length === 0 && moved.length === 0 ? 0 : 1;
}

async function makeKit(
  folder: string,
  account: Account,
  cut: Cut,
  { out = '', recording = null }: { readonly out?: string; readonly recording?: string | null },
  freezes: boolean,
  terminal: Terminal,
): Promise<void> {
  const told = toldOn(terminal);
  const files = await filmInto(out, folder, account, cut, { recording, freezes }, told).catch(
    notWritten(out),
  );
  told.end();
  const { script } = cut;
  const cues = cuesOf(cut);
  const pictures = files.filter((name) => name.endsWith('.png'));
  const minutes = (cut.length / 60).toFixed(1);
  await terminal.write(
    `${counted(script.scenes.length, 'scene')}, ${minutes} minutes at ${script.rate} words a minute, ${counted(cues.length, 'caption')}, ${counted(pictures.length, 'picture')} in ${out}.\n`,
  );
  const hurried = hurriedCues(cues, script.language);
  if (hurried.length > 0)
    terminal.say(
      `${counted(hurried.length, 'caption')} stand too short to be read at 180 words a minute, first ${hurried[0]?.id}.\n`,
    );
}

function saysPrices(frozen: Frozen | null): boolean {
  return frozen?.figures.some(({ name }) => name.startsWith('price.')) ?? false;
}

function marksIn(file: string, text: string): readonly Mark[] {
  const { marks, faults } = readMarks(text);
  const said = faults.map(
    ({ row, found, expected }) => `${file}, line ${row}: found “${found}”, expected ${expected}.`,
  );
  if (said.length > 0) throw new WrongCall(said.join('\n'));
  return marks;
}

/** What the folder's film said; null where none was made there. */
async function keptIn(out: string): Promise<Frozen | null> {
  const there = await stat(join(out, SPOKEN)).then(
    () => true,
    () => false,
  );
  return there ? await frozenIn(out) : null;
}

async function wishOf(
  { order = 'oldest', language, rate = READING_RATE }: FilmOptions,
  account: Account,
) {
  return { order: await orderOf(order, account), language: language ?? 'en', rate } as const;
}

async function orderOf(order: string, account: Account): Promise<TellingOrder> {
  if (order === 'oldest' || order === 'newest') return order;
  const { ids, unknown } = listedIds(await textIn(order), account);
  const said = unknown.map(
    ({ row, found }) => `${order}, line ${row}: found “${found}”, expected the id of a printing.`,
  );
  if (said.length > 0) throw new WrongCall(said.join('\n'));
  return ids;
}

function cutOf(script: Script, marks: readonly Mark[] | null): Cut {
  const planned = plannedCut(script);
  if (marks === null) return planned;
  try {
    return retimedCut(planned, marks);
  } catch (error) {
    throw new WrongCall(`${(error as Error).message}; the marks are of another film.`);
  }
}
