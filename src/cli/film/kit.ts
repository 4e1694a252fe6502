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
  readingPage,
  srtOf,
  timelineOf,
  webvttOf,
} from '../../chronicle/index.ts';
import { replaceFile } from '../../host/index.ts';
import { reasonOf } from '../dossier.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';
import { SPOKEN } from './frozen.ts';
import { type Write, writeStills } from './stills.ts';
import { textIn } from './told.ts';

/** Writes all files of a kit; what was said is frozen where nothing was `kept` from before. */
export async function writeKit(
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
