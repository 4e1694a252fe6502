import { mkdir, rename, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import {
  type Account,
  type Cut,
  chapterFile,
  chaptersOf,
  cuesOf,
  descriptionOf,
  type Frozen,
  frozenOf,
  hurriedCues,
  laidOver,
  listedIds,
  type Mark,
  movedFigures,
  plannedCut,
  READING_RATE,
  readingPage,
  readMarks,
  retimedCut,
  type Script,
  scriptOf,
  srtOf,
  type TellingOrder,
  timelineOf,
  webvttOf,
} from '../../chronicle/index.ts';
import { replaceFile } from '../../host/index.ts';
import { reasonOf } from '../dossier.ts';
import { checkSpoken, frozenIn, SPOKEN } from '../film/frozen.ts';
import type { FilmOptions } from '../film/options.ts';
import { writeSeen } from '../film/seen.ts';
import { type Write, writeStills } from '../film/stills.ts';
import { accountIn, textIn } from '../film/told.ts';
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
  await writeKit(folder, told.account, cut, options, terminal, kept);
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

async function writeKit(
  folder: string,
  account: Account,
  cut: Cut,
  { out = '', recording = null }: { readonly out?: string; readonly recording?: string | null },
  terminal: Terminal,
  kept: Frozen | null,
): Promise<void> {
  const write = writerIn(out);
  const { script } = cut;
  const cues = cuesOf(cut);
  const pictures = await writeStills(folder, account, script, write, terminal);
  for (const frame of ['wide', 'tall'] as const) {
    const timeline = timelineOf({ cut, recording, tracks: laidOver(cut, pictures, frame) });
    await write(`edit-${frame}.otio`, `${JSON.stringify(timeline, null, 1)}\n`);
  }
  await write('read.html', readingPage(script));
  await write('captions.vtt', webvttOf(cues));
  await write('captions.srt', srtOf(cues));
  await write('chapters.vtt', chapterFile(chaptersOf(cut)));
  await write('description.txt', descriptionOf(cut, account));
  if (kept === null) await freeze(out, frozenOf(script, account), write);
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

/** Keeps what is said; what an earlier film said stays beside it under another name. */
async function freeze(out: string, frozen: Frozen, write: Write): Promise<void> {
  const text = `${JSON.stringify(frozen, null, 1)}\n`;
  const before = await textIn(join(out, SPOKEN)).catch(() => text);
  if (before !== text) {
    for (let n = 1; ; n++) {
      const name = join(out, `spoken-${n}.json`);
      if (
        await stat(name).then(
          () => true,
          () => false,
        )
      )
        continue;
      await rename(join(out, SPOKEN), name);
      break;
    }
  }
  await write(SPOKEN, text);
}

function writerIn(out: string): Write {
  return async (name, content) => {
    const file = join(out, name);
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    try {
      await mkdir(dirname(file), { recursive: true });
      await replaceFile(file, bytes);
    } catch (error) {
      throw new WrongCall(
        `${file} cannot be written: ${reasonOf(error as NodeJS.ErrnoException)}.`,
      );
    }
  };
}
