import { existsSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { anchorsIn, linksIn } from './markdown.ts';
import { documents, ROOT, textOf } from './repository.ts';

/** Why a relative link leads nowhere; nothing where it leads somewhere. */
function broken(document: string, target: string): string | undefined {
  if (/^(https?:|mailto:)/.test(target)) return undefined;
  const [path = '', anchor] = target.split('#');
  const file = path === '' ? document : normalize(join(dirname(document), path));
  if (file.startsWith('..')) return 'leads out of the repository';
  if (!existsSync(join(ROOT, file))) return `no file ${file}`;
  if (anchor === undefined || !file.endsWith('.md')) return undefined;
  return anchorsIn(textOf(file)).includes(anchor) ? undefined : `no heading #${anchor} in ${file}`;
}

describe('links of the documents', () => {
  it.each(documents())('%s', (document) => {
    const dead = linksIn(textOf(document)).flatMap(({ target, line }) => {
      const why = broken(document, target);
      return why === undefined ? [] : [`line ${line}: ${target}: ${why}`];
    });
    expect(dead).toEqual([]);
  });

  it('finds a dead link and a dead anchor', () => {
    expect(broken('README.md', 'docs/guide/nowhere.md')).toBe('no file docs/guide/nowhere.md');
    expect(broken('README.md', '#nowhere')).toBe('no heading #nowhere in README.md');
    expect(broken('README.md', '#two-commands')).toBeUndefined();
    expect(broken('README.md', '../x.md')).toBe('leads out of the repository');
  });

  it('makes anchors as code hosts do, and reads no links in code', () => {
    expect(anchorsIn('# `a b` c.csv\n## A [b](c.md)\n## A b\n```\n# no\n```')).toEqual([
      'a-b-ccsv',
      'a-b',
      'a-b-1',
    ]);
    expect(linksIn('`[a](b)` [c](d.md#e)\n```\n[f](g)\n```\n<img src="h.png">')).toEqual([
      { target: 'd.md#e', line: 1 },
      { target: 'h.png', line: 5 },
    ]);
  });
});
