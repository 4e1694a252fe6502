import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeDataFolder, noteRecent, readRecent, usualDataFolder } from './index.ts';

describe('the data folder', () => {
  // XDG Base Directory Specification 0.8: a relative path is to be ignored as invalid.
  it.each([
    ['linux', { XDG_DATA_HOME: '/data' }, '/home/ada', '/data/printlore'],
    ['linux', { XDG_DATA_HOME: 'data' }, '/home/ada', '/home/ada/.local/share/printlore'],
    ['linux', {}, '/home/ada', '/home/ada/.local/share/printlore'],
    ['darwin', {}, '/Users/ada', '/Users/ada/Library/Application Support/Printlore'],
    ['win32', { APPDATA: 'C:\\Data' }, 'C:\\Users\\ada', 'C:\\Data\\Printlore'],
    ['win32', {}, 'C:\\Users\\ada', 'C:\\Users\\ada\\AppData\\Roaming\\Printlore'],
  ] as const)(
    'on %s with %o lies where that system keeps such things',
    (platform, env, home, at) => {
      expect(usualDataFolder({ platform, env, home })).toBe(at);
    },
  );

  it('is a temporary one, and says so, where the usual one cannot be written', async () => {
    const home = await mkdtemp(join(tmpdir(), 'printlore-home-'));
    expect(await makeDataFolder(join(home, 'a', 'b'))).toEqual({ folder: join(home, 'a', 'b') });
    expect(await readdir(join(home, 'a', 'b'))).toEqual([]);
    await writeFile(join(home, 'file'), '');
    const other = await makeDataFolder(join(home, 'file', 'printlore'));
    expect(other.folder).not.toContain(home);
    expect(other.notice).toContain(other.folder);
    await rm(home, { recursive: true });
    await rm(other.folder, { recursive: true });
  });
});

describe('the list of dossiers opened lately', () => {
  it('has the newest first, each once, and is begun anew where it is spoilt', async () => {
    const home = await mkdtemp(join(tmpdir(), 'printlore-recent-'));
    const file = join(home, 'deep', 'recent.json');
    expect(await readRecent(file)).toEqual([]);
    const entry = (folder: string, opened: string) => ({ folder, title: folder, opened });
    await noteRecent(file, entry('/a', '1'));
    await noteRecent(file, entry('/b', '2'));
    await noteRecent(file, entry('/a', '3'));
    expect(await readRecent(file)).toEqual([entry('/a', '3'), entry('/b', '2')]);
    await writeFile(file, '[{"folder": 3}, {"folder":');
    expect(await readRecent(file)).toEqual([]);
    await rm(home, { recursive: true });
  });
});
