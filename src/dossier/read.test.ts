import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOf } from '../evidence/index.ts';
import { filesInMemory } from './in-memory.ts';
import { readDossier } from './read.ts';
import { cellText, rowText } from './row-scan.ts';

type Files = Readonly<Record<string, string | Uint8Array>>;
const read = (files: Files, pieceSize?: number) => readDossier(filesInMemory(files, pieceSize));
const messages = async (files: Files) => (await read(files)).faults.map((fault) => fault.message);

const SMALL = {
  'dossier.json': '{"format":1,"title":"Sun","subject":"sol","language":"fi","width_mm":63}',
  'printings.csv':
    'id,language,product,part_of,replaced_by\nsol,,,,\nsol-a,fi,box,sol,\nsol-b,fi,box,sol,\nsol-old,,,,sol-a\nsol-c,ko,other,,\n',
  'products.csv': 'id,title,colour\nbox,Box,red\nother,Other,\n',
  'contents.csv': 'printing,product,odds\nsol-c,other,1/4\nsol,box,1\n',
  'sources.csv': 'id,kind,cites\nlista,checklist,kirja|lehti\nkirja,,\nlehti,magazine,none\n',
  'claims.csv':
    'printing,product,source,property,value,note,read_on\nsol-old,,lista,on-sale,1996-03-04,,2024\nsol|sol-c,,kirja,finish,foil,"two\nlines",\n,box,lehti,cover-date,1996-04,,\nsol-c,,,on-sale,none,,\nsol-c,,lista,on-sale,,,\n',
  'orders.csv': 'later,earlier,reason\nsol-c,sol-old,seen\n',
  'weekdays.csv':
    'market,weekdays,from,to,source\nKR,Tuesday | friday,1999,2003-02,lista\n,friday,none,,\n',
  'story/index.md': '# Sun',
  'desk/desk.json': '{"currency":"EUR"}',
  'desk/examinations/k-1.json': '{"any":"thing"}',
  'notes.txt': 'kept',
} as const;

describe('readDossier', () => {
  it('reads a small dossier', async () => {
    const dossier = await read(SMALL);
    expect(dossier.faults).toEqual([]);
    expect(dossier.manifest).toEqual({
      format: 1,
      title: 'Sun',
      subject: 'sol',
      language: 'fi',
      width_mm: 63,
      height_mm: null,
    });
    const { evidence } = dossier;
    expect(evidence.printings).toEqual([
      { id: 'sol-a', language: 'fi', product: 'box', part_of: 'sol' },
      { id: 'sol-b', language: 'fi', product: 'box', part_of: 'sol' },
      { id: 'sol-c', language: 'ko', product: 'other' },
    ]);
    expect(evidence.products).toEqual([
      { id: 'box', title: 'Box' },
      { id: 'other', title: 'Other' },
    ]);
    expect(evidence.contents).toEqual([{ product: 'other', printing: 'sol-c', odds: 0.25 }]);
    expect(evidence.sources).toEqual([
      { id: 'lista', kind: 'checklist', cites: ['kirja', 'lehti'] },
      { id: 'kirja', kind: 'other', cites: [] },
      { id: 'lehti', kind: 'magazine', cites: [] },
      { id: '', title: 'no source named', kind: 'other', cites: [] },
    ]);
    expect(evidence.orders).toEqual([{ row: 2, earlier: 'sol-a', later: 'sol-c', reason: 'seen' }]);
    expect(evidence.weekdays).toEqual([
      {
        row: 2,
        market: 'KR',
        weekdays: [2, 5],
        first: dayOf(1999, 1, 1),
        last: dayOf(2003, 2, 28),
      },
      {
        row: 3,
        weekdays: [5],
        first: Number.NEGATIVE_INFINITY,
        last: Number.POSITIVE_INFINITY,
      },
    ]);
    expect(dossier.forwards).toEqual(new Map([['sol-old', 'sol-a']]));
    expect(dossier.texts).toEqual(new Map([['story/index.md', '# Sun']]));
    expect([...dossier.documents.keys()]).toEqual([
      'desk/desk.json',
      'desk/examinations/k-1.json',
      'dossier.json',
    ]);
  });

  it('follows what claims refer to', async () => {
    const { claims } = (await read(SMALL)).evidence;
    const day = dayOf(1996, 3, 4);
    expect(claims).toMatchObject([
      {
        row: 2,
        printings: ['sol-a'],
        source: 'lista',
        date: { form: 'day', ranges: [{ first: day, last: day }] },
        read_on: { form: 'year' },
      },
      { row: 3, printings: ['sol-a', 'sol-b', 'sol-c'], property: 'finish', note: 'two\nlines' },
      { row: 4, printings: [], product: 'box', property: 'cover-date', value: '1996-04' },
      { row: 5, printings: ['sol-c'], source: '', value: 'none' },
    ]);
    expect(claims.some((claim) => claim.value === 'none' && claim.date)).toBe(false);
  });

  it('keeps all columns of a table, and its rows as they stand', async () => {
    const { tables } = await read(SMALL);
    const products = tables.get('products.csv')!;
    expect(products.columns).toEqual(['id', 'title', 'colour']);
    expect([...products.rows()]).toEqual([2, 3]);
    expect(products.record(2)).toEqual({ id: 'box', title: 'Box', colour: 'red' });
    expect(products.cell(3, 'constructor')).toBe('');
    expect(() => products.cell(4, 'id')).toThrow(RangeError);
  });

  it('takes columns in any order, a byte-order mark, CRLF, and pieces of any size', async () => {
    const reversed = (text: string) =>
      `\ufeff${text
        .trim()
        .split('\n')
        .map((line) => line.split(',').reverse().join(','))
        .join('\r\n')}`;
    const printings = reversed(SMALL['printings.csv']);
    for (const size of [1, 7, 1000]) {
      const dossier = await read({ ...SMALL, 'printings.csv': printings }, size);
      expect(dossier.evidence).toEqual((await read(SMALL)).evidence);
    }
  });

  it('knows sources and products by their ids where their tables are not there', async () => {
    const { 'sources.csv': _, 'products.csv': __, ...rest } = SMALL;
    const { evidence, faults } = await read(rest);
    expect(faults).toEqual([]);
    expect(evidence.sources.map(({ id }) => id)).toEqual(['lista', 'kirja', 'lehti', '']);
    expect(evidence.products.map(({ id }) => id)).toEqual(['other', 'box']);
  });

  it('does not list what follows from a table that cannot be used', async () => {
    const found = await messages({ ...SMALL, 'printings.csv': '' });
    expect(found).toEqual([
      'printings.csv, row 1: found nothing, expected a header row. The file is left out.',
    ]);
  });

  it('lifts a manifest of format 0', async () => {
    const { manifest, faults } = await read({
      ...SMALL,
      'dossier.json': '{"name":"Sun","size":[63,88]}',
    });
    expect(faults).toEqual([]);
    expect(manifest).toMatchObject({ format: 1, title: 'Sun', width_mm: 63, height_mm: 88 });
  });

  it('lists names that lead out of the folder, and opens none of them', async () => {
    const found = await messages({ ...SMALL, '../claims.csv': 'x', 'desk/../../x.json': 'x' });
    expect(found).toEqual([
      '../claims.csv: found ../claims.csv, expected a name inside the folder. The file is left out.',
      'desk/../../x.json: found desk/../../x.json, expected a name inside the folder. The file is left out.',
    ]);
  });

  it('says which file cannot be read', async () => {
    const files = filesInMemory(SMALL);
    const broken = {
      names: files.names,
      async *open(name: string) {
        if (name === 'claims.csv') throw Object.assign(new Error('no'), { code: 'EACCES' });
        yield* files.open(name);
      },
    };
    const { faults } = await readDossier(broken);
    expect(faults[0]?.message).toBe(
      'claims.csv: found an error (EACCES), expected a file that can be read. The rest of the file is left out.',
    );
  });
});

describe('limits', () => {
  const MB = 2 ** 20;
  const letters = (size: number) => new Uint8Array(size).fill(97);

  it('does not decode 50 MB in one line', async () => {
    expect(await messages({ ...SMALL, 'printings.csv': letters(50 * MB) })).toEqual([
      'printings.csv, row 1: found a longer row, expected at most 1 MB in one row. The file is left out.',
    ]);
  });

  it('reads on behind a long line', async () => {
    const rows = `id\n${'b'.repeat(3 * MB)}\nsol\n"${'c'.repeat(2 * MB)}\nsol-b\n`;
    const { faults, evidence } = await read({ 'printings.csv': rows });
    expect(faults.map(({ row, found }) => [row, found])).toEqual([
      [2, 'a longer row'],
      [4, 'a longer row'],
    ]);
    expect(evidence.printings).toEqual([{ id: 'sol' }, { id: 'sol-b' }]);
  });

  it('reads on behind a quote that nothing closes', async () => {
    const rows = `id,art\nsol,"a\n${'sol-b,b\n'.repeat(300_000)}`;
    const { faults, evidence } = await read({ 'printings.csv': rows });
    expect(faults[0]).toMatchObject({ row: 2, found: 'a quote that nothing closes' });
    expect(evidence.printings).toEqual([{ id: 'sol-b', art: 'b' }]);
    // All rows but the first have one id: 10,000 of these faults are listed, the others counted.
    expect(faults).toHaveLength(10_001);
    expect(faults.at(-1)?.found).toBe('290000 more faults');
  });
});

describe('laws of reading', () => {
  it('finds in tables what was written, whatever it is', async () => {
    const text = fc
      .string({ unit: 'grapheme', maxLength: 12 })
      .map((cell) => cell.replace(/\r/g, ''));
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(text, text)), fc.boolean(), async (cells, crlf) => {
        const rows = cells.map(([art, wave], i) => [`p-${i}`, art, wave]);
        const lines = [['id', 'art', 'wave'], ...rows].map(rowText);
        const { tables } = await read({ 'printings.csv': lines.join(crlf ? '\r\n' : '\n') }, 5);
        const table = tables.get('printings.csv')!;
        const found = [...table.rows()].map((row) => Object.values(table.record(row)));
        expect(found).toEqual(rows);
      }),
    );
  });

  it('answers any bytes', async () => {
    const noise = fc.uint8Array({ maxLength: 60 });
    const files = ['printings.csv', 'claims.csv', 'dossier.json', 'desk/charges.json'] as const;
    await fc.assert(
      fc.asyncProperty(fc.tuple(noise, noise, noise, noise), async (contents) => {
        const dossier = Object.fromEntries(files.map((file, i) => [file, contents[i]!]));
        const { faults } = await read(dossier);
        expect(faults.every((fault) => fault.message.startsWith(fault.file))).toBe(true);
      }),
    );
  });

  it('lists a fault for every claim that it leaves out', async () => {
    const part = fc.constantFrom('sol-a', 'sol', 'sol-a|sol-c', 'nobody', '', '__proto__');
    const value = fc.constantFrom('1996-03-04', '1996', 'soon', '1996-02-30');
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(part, value)), async (rows) => {
        const lines = rows.map(([printing, date]) => `${cellText(printing)},lista,on-sale,${date}`);
        const claims = ['printing,source,property,value', ...lines].join('\n');
        const { evidence, faults } = await read({ ...SMALL, 'claims.csv': claims });
        const used = new Set(evidence.claims.map((claim) => claim.row));
        const listed = new Set(faults.map((fault) => fault.row));
        rows.forEach((_, i) => {
          expect(used.has(i + 2)).not.toBe(listed.has(i + 2));
        });
      }),
    );
  });
});
