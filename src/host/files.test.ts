import {
  chmod,
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rm,
  stat,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { filesOf, replaceFile } from './files.ts';

let home: string;
let folder: string;

beforeEach(async () => {
  home = await mkdtemp(join(tmpdir(), 'printlore-files-'));
  folder = join(home, 'dossier');
  await mkdir(join(folder, 'desk'), { recursive: true });
  await writeFile(join(home, 'secret.txt'), 'secret');
  await writeFile(join(folder, 'printings.csv'), 'id\n');
  await writeFile(join(folder, 'desk', 'copies.csv'), 'id,printing\n');
});

afterEach(async () => {
  await rm(home, { recursive: true });
});

async function textOf(pieces: AsyncIterable<Uint8Array>): Promise<string> {
  const held: Uint8Array[] = [];
  for await (const piece of pieces) held.push(piece);
  return Buffer.concat(held).toString();
}

describe('filesOf', () => {
  it('lists the files of a folder by their names within it', async () => {
    const files = await filesOf(folder);
    expect(files.names).toEqual(['desk/copies.csv', 'printings.csv']);
    expect(await textOf(files.open('desk/copies.csv'))).toBe('id,printing\n');
  });

  it('passes over links, hidden files and the journal', async () => {
    await symlink(join(home, 'secret.txt'), join(folder, 'claims.csv'));
    await symlink(home, join(folder, 'story'));
    await mkdir(join(folder, '.printlore'));
    await writeFile(join(folder, '.printlore', 'journal.sqlite'), '');
    await writeFile(join(folder, '.hidden.csv'), '');
    expect((await filesOf(folder)).names).toEqual(['desk/copies.csv', 'printings.csv']);
  });

  it.each(['../secret.txt', 'desk/../../secret.txt', 'claims.csv', '__proto__', '/etc/hostname'])(
    'does not open %s',
    async (name) => {
      const files = await filesOf(folder);
      expect(() => files.open(name)).toThrow(RangeError);
    },
  );

  it('does not follow a link put in the place of a file or folder since', async () => {
    const files = await filesOf(folder);
    await rm(join(folder, 'printings.csv'));
    await symlink(join(home, 'secret.txt'), join(folder, 'printings.csv'));
    await rm(join(folder, 'desk'), { recursive: true });
    await writeFile(join(home, 'copies.csv'), 'secret');
    await symlink(home, join(folder, 'desk'));
    await expect(textOf(files.open('printings.csv'))).rejects.toThrow(RangeError);
    await expect(textOf(files.open('desk/copies.csv'))).rejects.toThrow(RangeError);
  });

  it('opens a folder that is itself reached by a link', async () => {
    await symlink(folder, join(home, 'link'));
    const files = await filesOf(join(home, 'link'));
    expect(await textOf(files.open('printings.csv'))).toBe('id\n');
  });

  it('says that a folder is not there', async () => {
    await expect(filesOf(join(home, 'nowhere'))).rejects.toThrow('ENOENT');
  });
});

describe('replaceFile', () => {
  const bytes = new TextEncoder().encode('id\nsol-fi\n');

  it('puts new bytes in the place of the old, and leaves nothing beside them', async () => {
    const path = join(folder, 'printings.csv');
    await chmod(path, 0o640);
    await replaceFile(path, bytes);
    expect(await readFile(path, 'utf8')).toBe('id\nsol-fi\n');
    expect((await stat(path)).mode & 0o777).toBe(0o640);
    expect((await readdir(folder)).sort()).toEqual(['desk', 'printings.csv']);
  });

  it('makes a file and its folder', async () => {
    await replaceFile(join(folder, 'story', 'index.md'), bytes);
    expect((await filesOf(folder)).names).toContain('story/index.md');
  });

  it('refuses a link and a folder', async () => {
    await symlink(join(home, 'secret.txt'), join(folder, 'claims.csv'));
    await expect(replaceFile(join(folder, 'claims.csv'), bytes)).rejects.toThrow(RangeError);
    await expect(replaceFile(join(folder, 'desk'), bytes)).rejects.toThrow(RangeError);
    expect(await readFile(join(home, 'secret.txt'), 'utf8')).toBe('secret');
  });

  it('keeps one whole state when many write at once', async () => {
    const path = join(folder, 'printings.csv');
    const states = ['a', 'b', 'c', 'd'].map((letter) => letter.repeat(200_000));
    await Promise.all(states.map((state) => replaceFile(path, new TextEncoder().encode(state))));
    expect(states).toContain(await readFile(path, 'utf8'));
  });
});
