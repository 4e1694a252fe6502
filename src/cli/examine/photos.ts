import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { reasonOf } from '../dossier.ts';
import { WrongCall } from '../wrong-call.ts';
import type { Extras } from './printing.ts';

/** The pictures of one copy in its folder. */
export interface Photos {
  readonly front: string;
  readonly back: string | null;
  readonly raking: readonly string[];
  /** Pictures of the front under a lamp that was moved, in their order. */
  readonly lamps: readonly string[];
  readonly extras: Extras;
  /** What says where the lamps stood. */
  readonly setup: string | null;
}

const ENDING = '\\.(?:jpe?g|png|webp|tiff?|avif|heic|heif)$';

/** Finds the pictures of a copy by their names. Throws `WrongCall` where there is no front. */
export async function photosIn(folder: string): Promise<Photos> {
  const names = await readdir(folder).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${folder} cannot be opened: ${reasonOf(error)}.`);
  });
  const called = (stem: string) =>
    names
      .filter((name) => new RegExp(`^${stem}${ENDING}`, 'i').test(name))
      .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
      .map((name) => join(folder, name));
  const raking = called('front\\.raking(?:-\\d+)?');
  const front = called('front')[0] ?? raking[0];
  const [chart] = called('chart');
  if (!front)
    throw new WrongCall(
      `${folder} holds no picture of a front: it must be called front.jpg or the like.`,
    );
  return {
    front,
    back: called('back')[0] ?? null,
    raking,
    lamps: called('front\\.light-\\d+'),
    extras: {
      cut: called('cut')[0] ?? null,
      chart:
        chart && names.includes('chart.json')
          ? { picture: chart, places: join(folder, 'chart.json') }
          : null,
    },
    setup: names.includes('setup.json') ? join(folder, 'setup.json') : null,
  };
}
