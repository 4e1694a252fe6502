import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { identificationKey } from '../../src/catalogue/index.ts';
import {
  type Account,
  accountPaper,
  type Block,
  checklistPaper,
  type DocumentGround,
  FITS,
  fileNameOf,
  keyPaper,
  LANGUAGES,
  type Paper,
  siteOf,
  type ToldRevision,
} from '../../src/chronicle/index.ts';
import { type Dossier, knownOf } from '../../src/dossier/index.ts';
import { pdfOf } from '../../src/host/index.ts';
import { documentsOf, settled } from '../../src/press/index.ts';
import { CAN_READ, read } from '../pdf/witness.ts';
import { toldDemo } from './account.ts';

/** The revision that the documents say they are of. */
const REVISION: ToldRevision = {
  number: 3,
  day: '2026-07-03',
  sha512: '',
  madeWith: '',
  change: null,
};

let dossier: Dossier;
let account: Account;

beforeAll(async () => {
  ({ dossier, account } = await toldDemo());
}, 120_000);

const groundIn = (language: DocumentGround['language']): DocumentGround => ({
  account,
  language,
  revision: REVISION,
  pictures: new Map(
    [...account.printings, ...account.counterfeits].flatMap(({ pictures }) =>
      pictures.map(({ file }, i) => [file, `${i}.jpg`] as const),
    ),
  ),
});
const publishedKey = () =>
  identificationKey(knownOf(dossier, account.asOf ?? '', false), 'published');
const [FIT] = FITS;

/** The words of a block, run by run. */
function textsOf(block: Block): string[] {
  if (block.is === 'heading') return [block.text];
  if (block.is === 'words') return block.words.map(({ text }) => text);
  if (block.is === 'list') return block.items.flat().map(({ text }) => text);
  if (block.is === 'table')
    return [
      ...block.columns.map(({ head }) => head),
      ...block.rows.flat(2).map(({ text }) => text),
    ];
  if (block.is === 'pictures')
    return block.pictures.flatMap((one) => [
      one.alternative,
      ...one.caption.map(({ text }) => text),
    ]);
  if (block.is === 'columns') return block.blocks.flatMap(textsOf);
  if (block.is === 'drawing') return [block.alternative, ...block.caption.map(({ text }) => text)];
  if (block.is === 'lanes')
    return block.lanes.flatMap(({ name, when, doubt }) =>
      [...name, ...when, ...doubt].map(({ text }) => text),
    );
  return [];
}

/** What the page of a printing says on the site, from its heading on, without addresses. */
function textOfPage(page: string): string {
  const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };
  return page
    .slice(page.indexOf('<h1'), page.indexOf('</main>'))
    .replace(/<a class="address".*?<\/a>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(amp|lt|gt|quot);/g, (_, sign: string) => signs[sign] ?? '')
    .replace(/\s+/g, ' ');
}

/** The texts from the heading with that key to the next one of its level. */
function sectionOf({ blocks }: Paper, key: string): readonly string[] {
  const at = blocks.findIndex((block) => block.is === 'heading' && block.key === key);
  const rest = blocks.slice(at + 1);
  const end = rest.findIndex((block) => block.is === 'heading' && block.level <= 2);
  return rest.slice(0, end).flatMap(textsOf).map(bare).filter(Boolean);
}

/** Without the signs that stand around words on paper alone. */
function bare(text: string): string {
  return text.replace(/^[\s×“,.:()]+|[\s”,.:()]+$/gu, '').replace(/\s+/g, ' ');
}

const numbersIn = (text: string) => new Set(text.match(/\d+(?:[.,]\d+)*/g));
const allTexts = ({ blocks }: Paper) => blocks.flatMap(textsOf);

describe('the document', () => {
  it.each(LANGUAGES)('tells of each printing what its page on the site tells (%s)', (language) => {
    const paper = accountPaper(groundIn(language));
    const site = siteOf({
      account,
      languages: [language],
      pictures: new Map(),
      downloads: [],
      history: [],
    });
    for (const { id } of account.printings) {
      const page = textOfPage(site.get(`${language}/printings/${fileNameOf(id)}.html`) ?? '');
      const section = sectionOf(
        { ...paper, blocks: paper.blocks.filter(isNoPicture) },
        `printing-${id}`,
      );
      expect(
        section.filter((text) => !page.includes(text)),
        id,
      ).toEqual([]);
      const told = numbersIn(sectionOf(paper, `printing-${id}`).join(' '));
      expect(
        [...numbersIn(page)].filter((one) => !told.has(one)),
        id,
      ).toEqual([]);
    }
  });

  it('tells every figure of the account that is not of one printing, and no other', () => {
    const paper = accountPaper(groundIn('en'));
    const at = paper.blocks.findIndex(
      (block) => block.is === 'heading' && block.text === 'Sources',
    );
    const sources = paper.blocks[at + 1];
    if (sources?.is !== 'table') throw new RangeError('the sources are a table');
    const shares = account.figures.flatMap(({ name, value }) =>
      name.startsWith('accuracy.') && value.is === 'share'
        ? [`${Math.round(100 * value.share)}%`]
        : [],
    );
    const right = sources.rows.map((row) => row[3]?.[0]?.text ?? '').filter((text) => text !== '–');
    expect(right.map((text) => text.replace(/ .*/, ''))).toEqual(shares);
    expect(paper.front?.at(-1)).toBe(
      `${account.printings.length} printings · ${account.sources.length} sources · ${account.sources.reduce((sum, one) => sum + one.claims, 0)} claims`,
    );
  });

  it('keeps at home what is marked to stay, and everything of the desk', () => {
    const home = ['175±4', 'screen', 'glow', 'dull', 'ultraviolet'];
    const hidden = dossier.evidence.sources.flatMap(({ publish, title }) =>
      publish === 'no' ? [title] : [],
    );
    expect(hidden.length).toBeGreaterThan(0);
    for (const language of LANGUAGES) {
      const ground = groundIn(language);
      const papers = [
        accountPaper(ground),
        keyPaper(publishedKey(), ground, FIT),
        checklistPaper(ground, FIT),
      ];
      const text = papers.flatMap(allTexts).join('\n');
      for (const word of [...home, ...hidden, ...deskWords()])
        expect(text, word).not.toContain(word);
    }
  });

  it('names every picture with its rights, and leaves out what has none', () => {
    const rights = account.printings.flatMap(({ pictures }) => pictures.map((one) => one.rights));
    const blocks = accountPaper(groundIn('en')).blocks;
    const captions = blocks.flatMap((block) =>
      block.is === 'pictures'
        ? block.pictures.map(({ caption }) => caption.map(({ text }) => text).join(''))
        : [],
    );
    expect(captions).toHaveLength(rights.length);
    for (const [i, one] of rights.entries()) expect(captions[i]).toContain(one);
    const without = accountPaper({ ...groundIn('en'), pictures: new Map() }).blocks;
    expect(without.filter(({ is }) => is === 'pictures')).toEqual([]);
  });

  it('has a place for each of its links, and no two of one name', () => {
    for (const paper of [
      accountPaper(groundIn('ko')),
      keyPaper(publishedKey(), groundIn('ko'), FIT),
    ]) {
      const text = JSON.stringify(paper.blocks);
      const keys = [...text.matchAll(/"key":"([^"]*)"/g)].map(([, key]) => key);
      const links = [...text.matchAll(/"to":"#([^"]*)"/g)].map(([, to]) => to);
      expect(new Set(keys).size).toBe(keys.length);
      expect(links.length).toBeGreaterThan(5);
      expect(links.filter((to) => !keys.includes(to))).toEqual([]);
    }
  });
});

it('ticks every printing once, in the order of release', () => {
  const [columns] = checklistPaper(groundIn('en'), FIT).blocks;
  const list = columns?.is === 'columns' ? columns.blocks[0] : undefined;
  if (list?.is !== 'list') throw new RangeError('a checklist is a list');
  expect(list.boxes).toBe(true);
  expect(list.items.map((item) => item[0]?.text)).toEqual(
    account.printings.map(({ name }) => name.short),
  );
  const starts = list.items.map((item) =>
    Date.parse(item.at(-1)?.text.replace(/.* to /, '') ?? ''),
  );
  expect(starts.filter(Number.isNaN)).toEqual([]);
});

it('leads to every printing of the account, in the language of the paper', () => {
  const { blocks } = keyPaper(publishedKey(), groundIn('pt'), FIT);
  const text = blocks.flatMap(textsOf).join('\n');
  const checklist = checklistPaper(groundIn('pt'), FIT).blocks.flatMap(textsOf);
  expect(checklist.filter((_, i) => i % 3 === 0).filter((name) => !text.includes(name))).toEqual(
    [],
  );
  expect(text).toContain('coreano');
  expect(text).not.toContain('Korean');
});

describe.skipIf(!CAN_READ)('the documents read by others (need qpdf and poppler)', () => {
  const folder = mkdtempSync(join(tmpdir(), 'printlore-document-'));
  const ground = () => ({ ...groundIn('en'), pictures: new Map() });
  const file = (name: string) => join(folder, `${name}.pdf`);

  beforeAll(async () => {
    for (const one of documentsOf(ground(), publishedKey())) {
      const { bytes } = await settled(one, (paper) => pdfOf(paper));
      writeFileSync(join(folder, one.name.replace('en/', '')), bytes);
    }
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each(['account', 'key', 'checklist'])(
    'are whole, tagged and hold their fonts (%s)',
    (name) => {
      expect(read('qpdf', ['--check', file(name)])).toContain(
        'No syntax or stream encoding errors',
      );
      expect(read('pdfinfo', [file(name)])).toMatch(/^Tagged: +yes$/m);
      const [, , ...fonts] = read('pdffonts', [file(name)])
        .trim()
        .split('\n');
      expect(fonts.length).toBeGreaterThan(1);
      for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+.* yes yes yes +\d+ +\d+$/);
    },
  );

  it('has a bookmark for each heading, in order, and says what it says in that order', () => {
    const headings = accountPaper(ground()).blocks.flatMap((block) =>
      block.is === 'heading' ? [block.text] : [],
    );
    const outline = JSON.parse(read('qpdf', ['--json', '--json-key=outlines', file('account')]));
    expect(titlesOf(outline.outlines)).toEqual(headings);
    const text = read('pdftotext', [file('account'), '-']).replace(/\s+/g, ' ');
    let at = text.indexOf('The printings', text.indexOf('Cautions', text.indexOf('Cautions') + 1));
    for (const { name } of account.printings) {
      const found = text.indexOf(`${name.short} ${name.detail}`, at);
      expect(found, name.short).toBeGreaterThan(at);
      at = found;
    }
  });

  it('takes a page each for key and checklist, and numbers every page of the account', () => {
    for (const name of ['key', 'checklist'])
      expect(read('pdfinfo', [file(name)])).toMatch(/^Pages: +1$/m);
    const pages = read('pdftotext', [file('account'), '-'])
      .split('\f')
      .slice(0, -1);
    for (const [i, page] of pages.entries()) expect(page).toContain(`${i + 1} / ${pages.length}`);
  });
});

interface Bookmark {
  readonly title: string;
  readonly kids: readonly Bookmark[];
}

function titlesOf(bookmarks: readonly Bookmark[]): string[] {
  return bookmarks.flatMap(({ title, kids }) => [title, ...titlesOf(kids)]);
}

function isNoPicture({ is }: Block): boolean {
  return is !== 'pictures' && is !== 'drawing';
}

/** Cells of the desk that are told nowhere else: names, numbers, places, words of sellers. */
function deskWords(): string[] {
  const columns = [
    'seller',
    'venue',
    'purchase_no',
    'tracking',
    'certificate',
    'listing',
    'serial',
  ];
  const words = ['desk/copies.csv', 'desk/parcels.csv'].flatMap((file) => {
    const table = dossier.tables.get(file);
    return table
      ? [...table.rows()].flatMap((row) => columns.map((column) => table.value(row, column)))
      : [];
  });
  const long = words.filter((word) => word.length > 5);
  expect(long.length).toBeGreaterThan(5);
  return long;
}
