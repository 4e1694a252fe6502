import { beforeAll, describe, expect, it } from 'vitest';
import {
  certaintyOf,
  factsOf,
  figureNamed,
  LANGUAGES,
  namesIn,
  phrasesOf,
  tellEdtf,
  tellFigureAsOf,
  tellingOf,
  tellP,
  tellRun,
} from '../../src/chronicle/index.ts';
import { sayEdtf } from '../../src/evidence/index.ts';
import { type Told, toldDemo } from './account.ts';

describe('days', () => {
  it.each([
    ['1994-10-07', '7 October 1994', '7 de outubro de 1994', '1994年10月7日', '1994년 10월 7일'],
    ['1994-10', 'October 1994', 'outubro de 1994', '1994年10月', '1994년 10월'],
    ['1994', '1994', '1994', '1994年', '1994년'],
    [
      '1995-05-05/1995-05-19',
      'between 5 and 19 May 1995',
      'entre 5 e 19 de maio de 1995',
      '1995年5月5日から19日までの間',
      '1995년 5월 5일에서 19일 사이',
    ],
    [
      '../1996-05',
      'until 31 May 1996',
      'até 31 de maio de 1996',
      '1996年5月31日まで',
      '1996년 5월 31일까지',
    ],
    [
      '1993-09~',
      'about September 1993',
      'por volta de setembro de 1993',
      '1993年9月ごろ',
      '1993년 9월쯤',
    ],
  ])('%s', (edtf, ...expected) => {
    expect(LANGUAGES.map((language) => tellEdtf(phrasesOf(language), edtf))).toEqual(expected);
  });

  it.each([
    '1994-10-07',
    '1996-03',
    '2001',
    '1993-09~',
    '1995-05-04/1995-05-19',
    '1995-12-20/1996-01-03',
    '1996-01/1996-03',
    '1996/1998',
    '[1996-03-04,1996-04-03]',
  ])('are said in English as the workbench says them: %s', (edtf) => {
    expect(tellEdtf(phrasesOf('en'), edtf)).toBe(sayEdtf(edtf));
  });

  it('run from one end to the other, what both share said once', () => {
    const runs = LANGUAGES.map((one) => tellRun(phrasesOf(one), '1994-04-20', '1994-05-03'));
    expect(runs).toEqual([
      '20 April to 3 May 1994',
      '20 de abril a 3 de maio de 1994',
      '1994年4月20日～5月3日',
      '1994년 4월 20일~5월 3일',
    ]);
  });
});

it('has a word for each step of the table of Mastrandrea and others 2010, and no certainty', () => {
  expect([1, 0.99, 0.98, 0.9, 0.89, 0.66, 0.65, 0.1].map(certaintyOf)).toEqual([
    'almost-certain',
    'almost-certain',
    'most-probable',
    'most-probable',
    'probable',
    'probable',
    'perhaps',
    'perhaps',
  ]);
  expect(LANGUAGES.map((one) => tellP(phrasesOf(one), 1))).toEqual([
    '> 0.99',
    '> 0,99',
    '> 0.99',
    '> 0.99',
  ]);
});

describe('facts of the demo', () => {
  let told: Told;
  beforeAll(async () => {
    told = await toldDemo();
  }, 120_000);

  const facts = (id: string, language: (typeof LANGUAGES)[number]) => {
    const { account } = told;
    const printing = account.printings.find((one) => one.id === id);
    if (printing === undefined) throw new RangeError(`no printing ${id}`);
    return factsOf(printing, tellingOf(account, phrasesOf(language)));
  };

  it('say the day with the word that its probability deserves', () => {
    expect(facts('kr-monthly', 'en')[0]?.text).toMatch(
      /^It was most probably first on sale on 20 November 1997 \(probability 0\.9\d\)\.$/,
    );
    expect(facts('kr-monthly', 'pt')[0]?.text).toMatch(/muito provavelmente em 20 de novembro/);
    expect(facts('kr-monthly', 'ja')[0]?.text).toMatch(/^発売日は十中八九1997年11月20日です/);
    expect(facts('kr-monthly', 'ko')[0]?.text).toMatch(/^발매일은 십중팔구 1997년 11월 20일입니다/);
    expect(facts('kr-club', 'en')[0]?.text).toMatch(
      /^No claim dates it; what else is known leaves between .* 1998 and .* 2007\.$/,
    );
  });

  it('name slabs that carry the year of the cover, and what may yet be right', () => {
    const said = facts('kr-monthly', 'en').map(({ text }) => text);
    expect(said).toContain(
      'Slabs of this printing carry 1998 (Plumb Assay labels), 1 year too late.',
    );
    expect(
      facts('kr-starter', 'en')
        .map(({ text }) => text)
        .join(' '),
    ).toMatch(/8 February 1996, which may yet be right \(probability 0\.4\d\)/);
  });

  it('stand under figures or claims of the account, in every language alike', () => {
    const { account } = told;
    const keys = new Set(
      account.printings.flatMap(({ release }) => release.claims.map(({ key }) => key)),
    );
    for (const { id } of account.printings) {
      const addresses = LANGUAGES.map((one) => facts(id, one).map(({ figure }) => figure));
      for (const one of addresses) expect(one).toEqual(addresses[0]);
      for (const name of addresses[0] ?? [])
        expect(keys.has(name) || figureNamed(account, name) !== undefined, name).toBe(true);
    }
  });

  it('leave no hole in any language, and no two printings with one name', () => {
    const { account } = told;
    for (const language of LANGUAGES) {
      const phrases = phrasesOf(language);
      const names = [...namesIn(account, phrases).values()].map(({ short }) => short);
      expect(new Set(names).size).toBe(names.length);
      const figures = account.figures.map((one) => tellFigureAsOf(one, account, phrases));
      const said = account.printings.flatMap(({ id }) =>
        facts(id, language).map(({ text }) => text),
      );
      for (const text of [...figures, ...said]) {
        expect(text).not.toMatch(/undefined|null|NaN|Infinity/);
        expect(text.trim()).not.toBe('');
      }
    }
  });

  it('tell figures with unit and day', () => {
    const { account } = told;
    const say = (name: string, language: (typeof LANGUAGES)[number]) => {
      const figure = figureNamed(account, name);
      return figure && tellFigureAsOf(figure, account, phrasesOf(language));
    };
    const name = 'population.fi-supplement.plumb-assay';
    expect(LANGUAGES.map((one) => say(name, one))).toEqual([
      '41 copies (as of 30 June 2026)',
      '41 exemplares (em 30 de junho de 2026)',
      '41枚（2026年6月30日現在）',
      '41장(2026년 6월 30일 기준)',
    ]);
  });
});
