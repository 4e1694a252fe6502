import { describe, expect, it } from 'vitest';
import { freshDossier } from './fresh.ts';
import { filesInMemory } from './in-memory.ts';
import { isSafeName } from './names.ts';
import { readDossier } from './read.ts';

describe('freshDossier', () => {
  it('begins a dossier that can be read', async () => {
    const files = freshDossier({
      title: 'Midnight Sun',
      language: 'fi',
      changes: [
        { file: 'printings.csv', op: 'add', after: { id: 'sol-fi', finish: 'foil' } },
        { file: 'orders.csv', op: 'add', after: { earlier: 'sol-fi', later: 'sol-br' } },
        { file: 'printings.csv', op: 'add', after: { id: 'sol-br', colour: 'red' } },
      ],
    });
    const { manifest, evidence, faults, tables } = await readDossier(
      filesInMemory(Object.fromEntries(files)),
    );
    expect(faults).toEqual([]);
    expect(manifest).toMatchObject({ title: 'Midnight Sun', language: 'fi', width_mm: null });
    expect(evidence.printings).toEqual([{ id: 'sol-fi', finish: 'foil' }, { id: 'sol-br' }]);
    expect(evidence.orders).toMatchObject([{ earlier: 'sol-fi', later: 'sol-br' }]);
    expect(tables.get('printings.csv')?.record(3)).toMatchObject({ colour: 'red' });
  });

  it('has the first tables with their headers and nothing in them', async () => {
    const files = freshDossier({ title: '' });
    expect([...files.keys()]).toEqual([
      'dossier.json',
      'printings.csv',
      'sources.csv',
      'claims.csv',
    ]);
    expect(new TextDecoder().decode(files.get('claims.csv'))).toBe(
      'printing,product,source,property,value,locator,quote,stated_on,read_on,note\n',
    );
    expect((await readDossier(filesInMemory(Object.fromEntries(files)))).faults).toEqual([]);
  });

  it('refuses to change what is not there', () => {
    const remove = { file: 'claims.csv', op: 'remove', before: {} } as const;
    expect(() => freshDossier({ title: '', changes: [remove] })).toThrow(TypeError);
  });
});

describe('isSafeName', () => {
  it.each(['printings.csv', 'desk/copies.csv', 'story/sol fi.md', 'pictures/꽃.jpg', '...'])(
    'takes %s',
    (name) => expect(isSafeName(name)).toBe(true),
  );

  it.each([
    '',
    '..',
    '../x',
    'a/../b',
    'a//b',
    './a',
    'a/',
    '/etc/x',
    'C:x',
    'C:\\x',
    'a\\..\\b',
    'a\u0000b',
    'a\nb',
  ])('refuses %j', (name) => expect(isSafeName(name)).toBe(false));
});
