import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** Folder of the repository. */
export const ROOT = join(import.meta.dirname, '..', '..');

const MADE = new Set(['.git', 'node_modules', 'dist', 'coverage', 'test-output', '.printlore']);

/** Every file below a folder of the repository but those that are made, by path with `/`. */
export function filesBelow(folder = ''): readonly string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    if (MADE.has(entry.name)) return [];
    const path = join(ROOT, folder, entry.name);
    const name = relative(ROOT, path).split(sep).join('/');
    return entry.isDirectory() ? filesBelow(name) : [name];
  });
}

/** The text of a file of the repository. */
export function textOf(name: string): string {
  return readFileSync(join(ROOT, name), 'utf8');
}

/** The documents that people read: Markdown outside the demo and the fixtures. */
export function documents(): readonly string[] {
  return filesBelow().filter(
    (name) =>
      name.endsWith('.md') && !name.includes('fixtures/') && !name.startsWith('demo/dossier'),
  );
}
