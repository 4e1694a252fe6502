import { describe, expect, it } from 'vitest';
import { DOCUMENTS, TABLES } from '../../src/dossier/index.ts';
import { fencesIn } from './markdown.ts';
import { documents, ROOT, textOf } from './repository.ts';
import { speak } from './spoken.ts';

const guide = documents().filter((name) => name.startsWith('docs/guide/'));

/** Columns of each table and keys of each settings file, as the dossier's schema has them. */
function schemaColumns(): readonly (readonly [file: string, column: string])[] {
  const tables = TABLES.flatMap(({ file, columns }) =>
    [...columns.keys()].map((column) => [file, column] as const),
  );
  const documents = DOCUMENTS.flatMap(({ file, keys }) =>
    [...keys.keys()].map((key) => [file, key] as const),
  );
  return [...tables, ...documents];
}

describe('the guide names', () => {
  it('every file and column of the dossier', () => {
    const columns = schemaColumns();
    const text = textOf('docs/guide/dossier.md');
    const missing = columns.filter(([file, column]) => {
      const named = new RegExp(`\`([^\`]*[\\s,|])?${column}([\\s,|][^\`]*)?\``);
      return !text.includes(`\`${file}\``) || !named.test(text);
    });
    expect(columns.length).toBeGreaterThan(150);
    expect(missing).toEqual([]);
  });

  it('every screen of the page', () => {
    const screens = [...textOf('src/web/app/screens.ts').matchAll(/\['\/[^']*', '([^']+)'\]/g)].map(
      (match) => match[1] ?? '',
    );
    const page = textOf('docs/guide/page.md');
    expect(screens).toContain('Chronology');
    expect(screens.filter((screen) => !page.includes(screen))).toEqual([]);
  });

  it('every page of itself in its index', () => {
    const index = textOf('docs/guide/index.md');
    const pages = guide.map((name) => name.slice('docs/guide/'.length));
    expect(pages.filter((page) => page !== 'index.md' && !index.includes(`](${page})`))).toEqual(
      [],
    );
  });
});

describe('examples of the documents run', () => {
  const lines = documents().flatMap((name) =>
    fencesIn(textOf(name))
      .filter(({ language }) => language === 'sh')
      .flatMap((fence) => fence.lines)
      .filter((line) => line.startsWith('printlore ')),
  );

  it('there are some', () => expect(lines.length).toBeGreaterThan(5));

  it.each([...new Set(lines)])('%s', { timeout: 120_000 }, async (line) => {
    const before = process.cwd();
    process.chdir(ROOT);
    const said = await speak(...line.split(' ').slice(1)).finally(() => process.chdir(before));
    expect(said.err).toBe('');
    expect(said.exit).toBe(0);
    expect(said.out.length).toBeGreaterThan(0);
  });
});
