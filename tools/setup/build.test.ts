import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { stale } from './build.js';

let root: string;
const write = (name: string, text = 'x') => {
  const path = join(root, name);
  writeFileSync(path, text);
  utimesSync(path, 1e9, 1e9);
};
const staleNames = (page: boolean) => stale(root, { page }).map(({ part }) => part.name);
const build = () => {
  for (const { note, signature } of stale(root, { page: true })) writeFileSync(note, signature);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'printlore-build-'));
  for (const folder of ['dist', 'src/web', 'src/dating']) {
    mkdirSync(join(root, folder), { recursive: true });
  }
  for (const file of ['package-lock.json', 'tsconfig.json', 'tsconfig.build.json']) write(file);
  write('src/web/page.tsx');
  write('src/dating/engine.ts');
  write('src/dating/engine.test.ts');
});
afterEach(() => rmSync(root, { recursive: true }));

describe('stale', () => {
  it('is everything at first, without the page the code alone', () => {
    expect(staleNames(true)).toEqual(['code', 'page']);
    expect(staleNames(false)).toEqual(['code']);
  });

  it('is nothing once it is built', () => {
    build();
    expect(staleNames(true)).toEqual([]);
  });

  it.each([
    ['src/web/page.tsx', ['page']],
    ['src/dating/engine.ts', ['code', 'page']],
    ['src/dating/engine.test.ts', []],
    ['package-lock.json', ['code', 'page']],
  ])('a change of %s makes %j stale', (file, names) => {
    build();
    write(file, 'longer');
    expect(staleNames(true)).toEqual(names);
  });

  it('sees a change that keeps the size, by its time', () => {
    build();
    utimesSync(join(root, 'src/web/page.tsx'), 1e9, 1e9 + 5);
    expect(staleNames(true)).toEqual(['page']);
  });

  it('sees a file that was taken away', () => {
    build();
    rmSync(join(root, 'src/dating/engine.ts'));
    expect(staleNames(false)).toEqual(['code']);
  });
});
