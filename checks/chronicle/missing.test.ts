import { beforeAll, describe, expect, it } from 'vitest';
import { LACKS, type Lack, type Missing, missingIn } from '../../src/chronicle/index.ts';
import {
  accountGroundIn,
  leavingGroundIn,
  readDossier,
  storyFaultsIn,
} from '../../src/dossier/index.ts';
import { dayFrom } from '../../src/evidence/index.ts';
import { filesOf } from '../../src/host/index.ts';
import { DEMO } from './account.ts';

const FILES = {
  'printings.csv': 'id,language,market\npt-first,pt,BR\nfi-first,fi,FI\nko-first,ko,KR\n',
  'sources.csv':
    'id,title,kind,citation,url,accessed,publish\nlist,A list,checklist,"A list, 1999",https://list.example,,\npage,A page,forum,,https://page.example,2026-01-02,\nfriend,A friend,correspondence,,,,no\n',
  'claims.csv':
    'printing,source,property,value,locator\npt-first,list,on-sale,1996-05-03,line 3\nfi-first|ko-first,page,on-sale,1996-09,\npt-first,friend,on-sale,1996-05,\n',
  'pictures.csv':
    'file,of,role,rights,publish\na.jpg,pt-first,reference,own picture,\nb.jpg,fi-first,reference,,\nc.jpg,fi-first,reference,own picture,no\n',
  'corrections.csv':
    'id,received,says,about,answer,state\nc-1,2026-02,Too late.,pt-first,It was.,accepted\nc-2,2026-03,Too early.,pt-first,,open\n',
  'services.csv': 'id,grades\nostrel,9|10\n',
  'population.csv':
    'service,as_of,label,printing,grade,count\nostrel,2025-06-30,ONE,pt-first,9,1\nostrel,2026-03-31,ONE,pt-first,9,2\n',
  'sales.csv':
    'date,printing,kind,price,currency\n2025-12-01,pt-first,sold,3,EUR\n2026-05-01,fi-first,sold,4,EUR\n',
  'story/index.md': 'It begins.\n',
  'story/pt-first.md': 'One.\n\nAs [one](source:lost) says.\n',
};

const dossierOf = (files: Readonly<Record<string, string>>) =>
  readDossier({
    names: Object.keys(files),
    open: async function* (name) {
      yield new TextEncoder().encode(files[name]);
    },
  });

async function missing(files: Readonly<Record<string, string>>, today: string) {
  const dossier = await dossierOf(files);
  return missingIn({
    account: accountGroundIn(dossier, null),
    tables: leavingGroundIn(dossier, []).tables,
    links: storyFaultsIn(dossier),
    today: dayFrom(today),
  });
}

describe('what an account lacks', () => {
  let all: readonly Missing[];
  beforeAll(async () => {
    all = await missing(FILES, '2026-06-29');
  });
  const of = (lack: Lack) => all.filter((one) => one.lack === lack);

  it('is a link that leads nowhere, by line, and a correction without an answer', () => {
    expect(of('link')).toMatchObject([{ of: 'pt-first', file: 'story/pt-first.md', row: 3 }]);
    expect(of('link')[0]?.found).toContain('source:lost');
    expect(of('answer')).toMatchObject([{ of: 'c-2', row: 3, column: 'answer' }]);
  });

  it('is a picture, or the rights of one that is there', () => {
    expect(of('picture').map((one) => one.of)).toEqual(['ko-first']);
    expect(of('rights')).toMatchObject([
      { of: 'fi-first', found: 'b.jpg', row: 3, column: 'rights' },
    ]);
  });

  it('is a place, a citation or a day, of sources that do not stay at home', () => {
    expect(of('locator')).toMatchObject([
      { of: 'page', row: 3, column: 'locator', found: 'on-sale 1996-09 of fi-first or ko-first' },
    ]);
    expect(of('citation')).toMatchObject([{ of: 'page', row: 3, column: 'citation' }]);
    expect(of('read')).toMatchObject([{ of: 'list', row: 2, column: 'accessed' }]);
  });

  it('is a story of a printing', () => {
    expect(of('story').map((one) => one.of)).toEqual(['fi-first', 'ko-first']);
  });

  it('is a count or a price from the ninety-first day on', async () => {
    expect(of('count')).toEqual([]);
    expect(of('price').map((one) => one.of)).toEqual(['pt-first']);
    const later = await missing(FILES, '2026-06-30');
    const counts = later.filter(({ lack }) => lack === 'count');
    expect(counts).toMatchObject([
      { of: 'ostrel', found: 'newest report of 31 March 2026, 91 days ago' },
    ]);
  });

  it('stands in the order in which it is named', () => {
    const kinds = [...new Set(all.map(({ lack }) => lack))];
    expect(kinds).toEqual(Object.keys(LACKS).filter((lack) => kinds.includes(lack as Lack)));
    expect(kinds).toHaveLength(9);
  });

  it('is told of the demo as its files have it', async () => {
    const files = await filesOf(DEMO);
    const dossier = await readDossier(files);
    const found = missingIn({
      account: accountGroundIn(dossier, null),
      tables: leavingGroundIn(dossier, []).tables,
      links: storyFaultsIn(dossier),
      today: dayFrom('2026-06-30'),
    });
    const stories = found.filter(({ lack }) => lack === 'story').length;
    // Counted by hand: 18 rows, of which one was given up and one is a whole of two; two have a story.
    expect(stories).toBe(14);
    expect(found.some(({ lack }) => lack === 'count')).toBe(false);
  });
});
