import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { cacheFor, isInstalled } from './install.js';

let root: string;
const write = (name: string, packages: object) =>
  writeFileSync(join(root, name), JSON.stringify({ packages }));
const lock = {
  '': { version: '1.0.0' },
  'node_modules/ink': { version: '2.0.0' },
  'node_modules/ink-for-another-system': { version: '2.0.0', optional: true },
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'printlore-install-'));
  write('package-lock.json', lock);
});
afterEach(() => rmSync(root, { recursive: true }));

describe('isInstalled', () => {
  it('misses everything in a fresh clone', () => {
    expect(isInstalled(root)).toBe(false);
  });

  it('misses what an installation that broke off half-way left', () => {
    mkdirSync(join(root, 'node_modules', 'ink'), { recursive: true });
    expect(isInstalled(root)).toBe(false);
  });

  it('believes the record of npm, but for packages of other systems', () => {
    mkdirSync(join(root, 'node_modules'));
    write('node_modules/.package-lock.json', { 'node_modules/ink': { version: '2.0.0' } });
    expect(isInstalled(root)).toBe(true);
  });

  it('does not believe a record of other versions', () => {
    mkdirSync(join(root, 'node_modules'));
    write('node_modules/.package-lock.json', { 'node_modules/ink': { version: '1.9.0' } });
    expect(isInstalled(root)).toBe(false);
  });

  it('misses what a changed lock file asks for', () => {
    mkdirSync(join(root, 'node_modules'));
    write('node_modules/.package-lock.json', { 'node_modules/ink': { version: '2.0.0' } });
    expect(isInstalled(root)).toBe(true);
    write('package-lock.json', { ...lock, 'node_modules/paper': { version: '1.0.0' } });
    expect(isInstalled(root)).toBe(false);
  });
});

describe('cacheFor', () => {
  it('takes the usual folder where it can be written', () => {
    const folder = join(root, 'cache');
    expect(cacheFor({ npm_config_cache: folder })).toEqual({ folder, temporary: false });
  });

  it('takes a temporary one where it cannot', () => {
    const file = join(root, 'a-file-in-its-place');
    writeFileSync(file, '');
    chmodSync(file, 0o444);
    const { folder, temporary } = cacheFor({ npm_config_cache: file });
    expect(temporary).toBe(true);
    rmSync(folder, { recursive: true });
  });
});
