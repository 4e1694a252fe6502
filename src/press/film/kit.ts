import { mkdir, readFile, rename, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import {
  type Account,
  type Cut,
  chapterFile,
  chaptersOf,
  cuesOf,
  descriptionOf,
  frozenOf,
  laidOver,
  readingPage,
  srtOf,
  timelineOf,
  webvttOf,
} from '../../chronicle/index.ts';
import { replaceFile } from '../../host/index.ts';
import type { Files, Told } from '../told.ts';
import { stillsInto } from './stills.ts';

/** The file in which a film keeps what was said. */
export const SPOKEN = 'spoken.json';

/** How a kit is made. */
export interface KitOptions {
  /** The recording, as the edit names it; null where there is none yet. */
  readonly recording: string | null;
  /** What is said is frozen anew; not so once a film of it was recorded. */
  readonly freezes: boolean;
}

/**
 * All files of a film's kit. A picture that cannot be read is named and left out.
 *
 * @param folder of the dossier, where the pictures are
 */
export async function kitFiles(
  folder: string,
  account: Account,
  cut: Cut,
  { recording, freezes }: KitOptions,
  told: Told,
): Promise<Files> {
  const files: Files = new Map();
  const { script } = cut;
  const cues = cuesOf(cut);
  const pictures = await stillsInto(files, folder, account, script, told);
  for (const frame of ['wide', 'tall'] as const) {
    const timeline = timelineOf({ cut, recording, tracks: laidOver(cut, pictures, frame) });
    files.set(`edit-${frame}.otio`, json(timeline));
  }
  files.set('read.html', readingPage(script));
  files.set('captions.vtt', webvttOf(cues));
  files.set('captions.srt', srtOf(cues));
  files.set('chapters.vtt', chapterFile(chaptersOf(cut)));
  files.set('description.txt', descriptionOf(cut, account));
  if (freezes) files.set(SPOKEN, json(frozenOf(script, account)));
  return files;
}

/**
 * Puts the files of a kit into a folder, each as a whole; what else lies there stays, and what an
 * earlier film said is kept beside it under another name.
 */
export async function writeKit(out: string, files: Files): Promise<void> {
  for (const [name, content] of files) {
    const file = join(out, name);
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    if (name === SPOKEN) await setAside(out, bytes);
    await mkdir(dirname(file), { recursive: true });
    await replaceFile(file, bytes);
  }
}

async function setAside(out: string, next: Uint8Array): Promise<void> {
  const before = await readFile(join(out, SPOKEN)).catch(() => null);
  if (before === null || before.equals(next)) return;
  for (let n = 1; ; n++) {
    const name = join(out, `spoken-${n}.json`);
    if (await isThere(name)) continue;
    return await rename(join(out, SPOKEN), name);
  }
}

async function isThere(path: string): Promise<boolean> {
  return await stat(path).then(
    () => true,
    () => false,
  );
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}
