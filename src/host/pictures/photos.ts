import { readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** A picture in the folder of a copy, told by its name. */
export interface CopyPhoto {
  readonly name: string;
  readonly side: 'front' | 'back';
  /** `still`: the face as it is; `raking`: a low lamp; `lamp`: one of several lamps in turn. */
  readonly light: 'still' | 'raking' | 'lamp';
  /** Number of the lamp, from 1; null for the others. */
  readonly lamp: number | null;
}

const NAME =
  /^(front|back)(?:\.(raking|light-(\d{1,2})))?\.(?:jpe?g|png|webp|tiff?|avif|heic|heif)$/i;

/** What a picture of a copy shows by its name, as `front.light-2.jpg`; undefined for other names. */
export function photoNamed(name: string): CopyPhoto | undefined {
  const [, side, light, lamp] = NAME.exec(name) ?? [];
  if (!side) return undefined;
  return {
    name,
    side: side.toLowerCase() as CopyPhoto['side'],
    light: lamp ? 'lamp' : light ? 'raking' : 'still',
    lamp: lamp ? Number(lamp) : null,
  };
}

/** The seller's own picture of a copy, `listing.jpg` or the like in its folder; undefined where there is none. */
export async function listingOf(dossier: string, copy: string): Promise<string | undefined> {
  const names = await namesIn(join(dossier, 'desk', 'photos', copy));
  return names.find((name) => /^listing\.(?:jpe?g|png|webp|tiff?|avif|heic|heif)$/i.test(name));
}

/** Another examination of a copy: its pictures, in a folder of their own within the copy's. */
export interface OtherExamination {
  /** Name of that folder, as `sent-in`. */
  readonly name: string;
  readonly photos: readonly CopyPhoto[];
}

/** Other examinations of a copy, by the names of their folders; those without a picture of a face are none. */
export async function examinationsOf(
  dossier: string,
  copy: string,
): Promise<readonly OtherExamination[]> {
  const entries = await entriesIn(join(dossier, 'desk', 'photos', copy));
  const folders = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
  const all = await Promise.all(
    folders
      .sort()
      .map(async (name) => ({ name, photos: await photosOf(dossier, join(copy, name)) })),
  );
  return all.filter(({ photos }) => photos.some(({ light }) => light === 'still'));
}

async function namesIn(folder: string): Promise<readonly string[]> {
  const entries = await entriesIn(folder);
  return entries.flatMap((entry) => (entry.isFile() ? [entry.name] : []));
}

async function entriesIn(folder: string) {
  return await readdir(folder, { withFileTypes: true }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw error;
  });
}

/** The pictures of a copy in `desk/photos/COPY`, faces first, lamps in turn; none where there is no folder. */
export async function photosOf(dossier: string, copy: string): Promise<readonly CopyPhoto[]> {
  const names = await namesIn(join(dossier, 'desk', 'photos', copy));
  const found = names.flatMap((name) => photoNamed(name) ?? []);
  const rank = ({ side, light, lamp }: CopyPhoto) =>
    ['still', 'raking', 'lamp'].indexOf(light) * 1000 + (side === 'back' ? 500 : 0) + (lamp ?? 0);
  return found.sort((a, b) => rank(a) - rank(b) || (a.name < b.name ? -1 : 1));
}
