import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
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
import { type Draft, replaceFolder } from '../../host/index.ts';
import { withHands } from '../hands/hands.ts';
import { MADE, makerInto } from '../made.ts';
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
 * Puts the kit of a film in the place of the one in a folder, as a whole or not at all. What else
 * lies in the folder stays, and what an earlier film said is kept beside it under another name. A
 * picture that cannot be read is named and left out; what was made of the same is taken over.
 *
 * @param folder of the dossier, where the pictures are
 * @returns the names of the kit's files
 */
export async function filmInto(
  out: string,
  folder: string,
  account: Account,
  cut: Cut,
  { recording, freezes }: KitOptions,
  told: Told,
): Promise<readonly string[]> {
  const fill = async (draft: Draft) => {
    const maker = await makerInto(draft, out);
    const stills = await withHands((hands) =>
      stillsInto(folder, account, cut.script, { shelf: draft, maker, hands, told }),
    );
    const files: Files = kitTexts(account, cut, recording, stills);
    if (freezes) files.set(SPOKEN, json(frozenOf(cut.script, account)));
    files.set(MADE, maker.notes());
    for (const [name, content] of files) await draft.write(name, content);
    await keepSpoken(out, draft, files.get(SPOKEN));
    return [...maker.sizes.keys(), ...files.keys()];
  };
  return await replaceFolder(out, fill, 'keep');
}

function kitTexts(
  account: Account,
  cut: Cut,
  recording: string | null,
  stills: readonly string[],
): Files {
  const { script } = cut;
  const cues = cuesOf(cut);
  const files: Files = new Map();
  for (const frame of ['wide', 'tall'] as const) {
    const timeline = timelineOf({ cut, recording, tracks: laidOver(cut, stills, frame) });
    files.set(`edit-${frame}.otio`, json(timeline));
  }
  files.set('read.html', readingPage(script));
  files.set('captions.vtt', webvttOf(cues));
  files.set('captions.srt', srtOf(cues));
  files.set('chapters.vtt', chapterFile(chaptersOf(cut)));
  return files.set('description.txt', descriptionOf(cut, account));
}

/** Keeps what the earlier film said under the first name that is free, where another is said now. */
async function keepSpoken(
  out: string,
  draft: Draft,
  next: Uint8Array | string | undefined,
): Promise<void> {
  const before = await textAt(join(out, SPOKEN));
  if (before === null || next === undefined || before === next) return;
  for (let n = 1; ; n++) {
    const name = `spoken-${n}.json`;
    if ((await textAt(join(out, name))) === null) return await draft.write(name, before);
  }
}

/** The text of a file; null where there is none. */
async function textAt(file: string): Promise<string | null> {
  return await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return null;
    throw error;
  });
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}
