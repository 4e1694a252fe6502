import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import type { PacketPicture } from '../../chronicle/index.ts';
import type { Dossier } from '../../dossier/index.ts';
import { PictureFault, shownPicture, takenAt, withoutPlace } from '../../host/index.ts';

/** The pictures of a copy, ready to be packed. */
export interface PackedPictures {
  readonly pictures: readonly PacketPicture[];
  /** Bytes under `pictures/`, by name. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** Small ones for the page, by the names that `PacketPicture.shown` gives. */
  readonly shown: ReadonlyMap<string, Uint8Array>;
  /** Those that their owner marked to stay, by name. */
  readonly stay: readonly string[];
  /** What cannot be packed, and why, in sentences. */
  readonly faults: readonly string[];
}

const IMAGE = /\.(?:jpe?g|png|webp|tiff?|avif|heic|heif)$/i;
/** Width of a picture on the page, in pixels: 250 dots an inch at a quarter of its width. */
const SHOWN_PX = 420;

/** HEIC cannot be written anew. */
const NO_PLACE = 'a JPEG, PNG, WebP, TIFF or AVIF, or --with place';

interface Row {
  readonly file: string;
  readonly cell: (column: string) => string;
}

/**
 * Reads the pictures of a copy, those in its folder and those that the dossier names; one that is
 * marked to stay is left out. Where they were taken is taken out of them unless it is asked for.
 */
export async function packedPictures(
  folder: string,
  names: readonly string[],
  dossier: Dossier,
  copy: string,
  placed: boolean,
): Promise<PackedPictures> {
  const pictures: PacketPicture[] = [];
  const files = new Map<string, Uint8Array>();
  const shown = new Map<string, Uint8Array>();
  const stay: string[] = [];
  const faults: string[] = [];
  for (const { file, cell } of rowsFor(dossier, names, copy)) {
    if (cell('publish') === 'no') {
      stay.push(file);
      continue;
    }
    try {
      const packed = await packedPicture(join(folder, file), placed);
      const name = freeName(`${basename(file, extname(file))}${packed.ending}`, files);
      const small = `shown-${pictures.length + 1}.jpg`;
      files.set(name, packed.bytes);
      shown.set(small, await shownPicture(join(folder, file), SHOWN_PX, null));
      const { asTaken, asPacked, changed } = packed;
      pictures.push({
        ...{ name, asTaken, asPacked, changed, shown: small },
        role: cell('role') || 'picture of the copy',
        side: cell('side'),
        taken: cell('taken') || packed.taken,
        rights: cell('rights'),
        noted: cell('sha256'),
      });
    } catch (error) {
      if (!(error instanceof PictureFault)) throw error;
      faults.push(error.message);
    }
  }
  return { pictures, files, shown, stay, faults };
}

function rowsFor({ tables }: Dossier, names: readonly string[], copy: string): readonly Row[] {
  const table = tables.get('pictures.csv');
  const rows = table ? [...table.rows()] : [];
  const told = rows
    .filter((row) => table?.value(row, 'of') === copy)
    .map((row): Row => {
      const cell = (column: string) => table?.value(row, column) ?? '';
      return { file: cell('file'), cell };
    });
  const named = new Set(rows.map((row) => table?.value(row, 'file')));
  const others = names
    .filter((name) => name.startsWith(`desk/photos/${copy}/`) && IMAGE.test(name))
    .filter((name) => !named.has(name))
    .map((file): Row => ({ file, cell: () => '' }));
  return [...told, ...others].sort((a, b) => (a.file < b.file ? -1 : 1));
}

async function packedPicture(path: string, placed: boolean) {
  const taken = await readFile(path).catch((error: NodeJS.ErrnoException) => {
    throw new PictureFault(
      path,
      error.code === 'ENOENT' ? 'no such file' : error.message,
      'a picture',
    );
  });
  const { bytes, changed } = placed
    ? ({ bytes: taken, changed: 'nothing' } as const)
    : await withoutPlace(taken).catch((error: Error) => {
        throw new PictureFault(path, `notes that cannot be cut out (${error.message})`, NO_PLACE);
      });
  return {
    bytes,
    changed,
    taken: await takenAt(taken),
    asTaken: sha256(taken),
    asPacked: sha256(bytes),
    ending: changed === 'anew' ? '.png' : extname(path).toLowerCase(),
  };
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

function freeName(name: string, taken: ReadonlyMap<string, unknown>): string {
  const ending = extname(name);
  const stem = name.slice(0, name.length - ending.length);
  for (let n = 1; ; n++) {
    const free = n === 1 ? name : `${stem}-${n}${ending}`;
    if (!taken.has(free)) return free;
  }
}
