import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { join, posix, win32 } from 'node:path';

/** What decides where the data of a user lie. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

/**
 * Where this user's dossiers are kept: `$XDG_DATA_HOME/printlore` (XDG Base Directory
 * Specification 0.8: only where it is absolute) or `~/.local/share/printlore`,
 * `~/Library/Application Support/Printlore` on macOS, `%APPDATA%\Printlore` on Windows.
 */
export function usualDataFolder(
  { platform, env, home }: Surroundings = {
    platform: process.platform,
    env: process.env,
    home: homedir(),
  },
): string {
  if (platform === 'win32') {
    return win32.join(env.APPDATA || win32.join(home, 'AppData', 'Roaming'), 'Printlore');
  }
  if (platform === 'darwin') {
    return posix.join(home, 'Library', 'Application Support', 'Printlore');
  }
  const xdg = env.XDG_DATA_HOME;
  const base = xdg && posix.isAbsolute(xdg) ? xdg : posix.join(home, '.local', 'share');
  return posix.join(base, 'printlore');
}

/** A folder that can be written, and what the collector has to know where it is not the usual one. */
export interface DataFolder {
  readonly folder: string;
  readonly notice?: string;
}

/** Makes the data folder; where that cannot be, a temporary one in its place, and says so. */
export async function makeDataFolder(wanted: string): Promise<DataFolder> {
  try {
    await mkdir(wanted, { recursive: true });
    const probe = join(wanted, `.writable-${process.pid}`);
    await writeFile(probe, '');
    await rm(probe);
    return { folder: wanted };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const folder = await mkdtemp(join(tmpdir(), 'printlore-'));
    const notice = `${wanted} cannot be written (${why}). New dossiers are kept in ${folder}, which may be emptied when the computer starts again: copy what you want to keep.`;
    return { folder, notice };
  }
}
