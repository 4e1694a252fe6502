import { type FSWatcher, watch } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';

/** A watch over a folder that can be ended. */
export interface Watch {
  close(): void;
}

/** How long (ms) a folder must be quiet before it is looked at, and how often it is looked at anyway. */
export interface Pace {
  readonly quiet: number;
  readonly poll: number;
}

const PACE: Pace = { quiet: 250, poll: 3000 };

/**
 * Calls `changed` when files in the folder or in its subfolders of the given names were changed and
 * then left alone for a moment. The system's own word is taken where it gives one; since network
 * folders give none, times and sizes are compared every few seconds as well.
 */
export function watchFolder(
  folder: string,
  subfolders: readonly string[],
  changed: () => void,
  pace: Pace = PACE,
): Watch {
  const places = [folder, ...subfolders.map((name) => join(folder, name))];
  let seen: string | undefined;
  let timer: NodeJS.Timeout | undefined;
  const look = async () => {
    const now = await stampOf(places);
    if (seen !== undefined && now !== seen) soon();
    seen = now;
  };
  const settle = async () => {
    const before = seen;
    seen = await stampOf(places);
    if (before === seen) changed();
    else soon();
  };
  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(() => void settle(), pace.quiet).unref();
  };
  const polling = setInterval(() => void look(), pace.poll).unref();
  const watchers = places.flatMap((place) => watchPlace(place, () => void look()));
  void look();
  return {
    close: () => {
      clearTimeout(timer);
      clearInterval(polling);
      for (const watcher of watchers) watcher.close();
    },
  };
}

/** Where the system cannot watch a place, polling alone has to do. */
function watchPlace(place: string, tell: () => void): FSWatcher[] {
  try {
    const watcher = watch(place, { persistent: false }, tell);
    watcher.on('error', () => watcher.close());
    return [watcher];
  } catch (error) {
    if (error instanceof Error && 'code' in error) return [];
    throw error;
  }
}

/** Name, size and time of every file, as one text. */
async function stampOf(places: readonly string[]): Promise<string> {
  const lines: string[] = [];
  for (const place of places) {
    const names = await readdir(place).catch(() => [] as string[]);
    for (const name of names.sort()) {
      const found = await stat(join(place, name), { bigint: true }).catch(() => undefined);
      if (found?.isFile()) lines.push(`${name} ${found.size} ${found.mtimeNs} ${found.ino}`);
    }
  }
  return lines.join('\n');
}
