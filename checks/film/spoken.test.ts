import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sayAloud } from '../../src/chronicle/index.ts';

type Said = Readonly<Record<string, string>>;
const fixture = (name: string) =>
  JSON.parse(readFileSync(new URL(`../fixtures/film/${name}`, import.meta.url), 'utf8'));

/** Numbers in words by Unicode CLDR (ICU 72.1), `checks/makers/spoken/cldr.py`. */
const cldr: Readonly<Record<'en' | 'pt' | 'ko', Readonly<Record<string, Said>>>> =
  fixture('numbers.json');

/** Numbers from 1000 to 2099 are counts with a mark between their groups, and years without. */
function count(n: string, mark = ','): string {
  return n.replace(/\B(?=(\d{3})+$)/g, mark);
}

/** What is said otherwise than the witness says it, as rows that can be read. */
function differing(
  said: Said,
  language: string,
  written: (n: string) => string = (n) => n,
  expected: (words: string) => string = (words) => words,
): readonly string[] {
  expect(Object.keys(said).length).toBeGreaterThan(5);
  return Object.entries(said).flatMap(([n, words]) => {
    const ours = sayAloud(written(n), language);
    return ours === expected(words) ? [] : [`${written(n)}: ${ours}, not ${expected(words)}`];
  });
}

describe('numbers in words agree with Unicode CLDR', () => {
  it('in English', () => {
    const unpaused = (words: string) => words.replaceAll(',', '');
    expect(differing(cldr.en.cardinal!, 'en', count, unpaused)).toEqual([]);
    expect(differing(cldr.en.decimal!, 'en')).toEqual([]);
    const suffix = (n: string) =>
      `${n}${/1\d$/.test(n) ? 'th' : (['th', 'st', 'nd', 'rd'][Number(n) % 10] ?? 'th')}`;
    expect(differing(cldr.en.ordinal!, 'en', suffix, unpaused)).toEqual([]);
  });

  it('in English for years, but for “and” in 2001 to 2009, as British English says them', () => {
    const and = (words: string) => words.replace(/^(two thousand) (?=\w)/, '$1 and ');
    expect(differing(cldr.en.year!, 'en', undefined, and)).toEqual([]);
    expect(sayAloud('2009', 'en')).toBe(cldr.en.cardinal!['2003']!.replace('three', 'nine'));
  });

  it('in Portuguese, of both genders', () => {
    const dotted = (n: string) => count(n, '.');
    expect(differing(cldr.pt.masculine!, 'pt', dotted)).toEqual([]);
    const cards = (words: string) => `${words} cartas`;
    expect(differing(cldr.pt.feminine!, 'pt-BR', (n) => cards(dotted(n)), cards)).toEqual([]);
    expect(differing(cldr.pt.ordinal_masculine!, 'pt', (n) => `${n}º`)).toEqual([]);
    expect(differing(cldr.pt.ordinal_feminine!, 'pt', (n) => `${n}ª`)).toEqual([]);
    expect(differing(cldr.pt.decimal!, 'pt', (n) => n.replace('.', ','))).toEqual([]);
  });

  it('in Korean, both ways of counting', () => {
    expect(differing(cldr.ko.cardinal!, 'ko', count)).toEqual([]);
    const sheets = (words: string) => `${words} 장`;
    expect(differing(cldr.ko.count!, 'ko', (n) => `${n}장`, sheets)).toEqual([]);
    expect(differing(cldr.ko.ordinal!, 'ko', (n) => `${n}번째`)).toEqual([]);
    expect(differing(cldr.ko.decimal!, 'ko')).toEqual([]);
  });
});

/** Katakana with long vowels as bars, as the witness writes pronunciations. */
function asHeard(kana: string): string {
  return kana
    .replace(/[ぁ-ん]/g, (letter) => String.fromCharCode(letter.charCodeAt(0) + 0x60))
    .replace(/([オコソトノホモヨロゴゾドボポョウクスツヌフムユルグズブプュ])ウ/g, '$1ー')
    .replace(/トオ/g, 'トー')
    .replace(/([エケセテネヘメレゲゼデベペ])イ/g, '$1ー');
}

describe('Japanese as it is read', () => {
  /** Pronunciations by the text analysis of Open JTalk, `checks/makers/spoken/japanese.py`. */
  const heard: Said = fixture('japanese.json');

  /** About a point the witness draws out に and ご, which is melody and no other word. */
  it('agrees with Open JTalk on numbers, counters, years, months, days and shares', () => {
    const differ = Object.entries(heard).flatMap(([text, witness]) => {
      const written = /^\d+$/.test(text) ? count(text) : text;
      const ours = asHeard(sayAloud(written, 'ja'));
      const pronounced = /\./.test(text) ? witness.replace(/([ニゴ])ー/g, '$1') : witness;
      return ours === pronounced ? [] : [`${text}: ${ours}, not ${witness}`];
    });
    expect(Object.keys(heard).length).toBeGreaterThan(250);
    expect(differ).toEqual([]);
  });
});

describe('what stands in a text is said', () => {
  it.each([
    [
      'en',
      'It most probably came out on 19 November 2003.',
      'It most probably came out on the nineteenth of November two thousand and three.',
    ],
    [
      'en',
      'It came out between 4 and 19 May 1995, or 28 Mar to 3 Apr 1996.',
      'It came out between the fourth and the nineteenth of May nineteen ninety-five, or the twenty-eighth of March to the third of April nineteen ninety-six.',
    ],
    ['en', 'no later than May 1995', 'no later than May nineteen ninety-five'],
    ['en', 'in the 1990s, about 1996', 'in the nineteen nineties, about nineteen ninety-six'],
    [
      'en',
      'As of 2026-06-30, 1,204 copies, 97 % of them (93.5–98 %).',
      'As of the thirtieth of June twenty twenty-six, one thousand two hundred and four copies, ninety-seven per cent of them (ninety-three point five to ninety-eight per cent).',
    ],
    ['en', 'number KS-31, A7 and 31', 'number K S thirty-one, A seven and thirty-one'],
    ['en', '0.31±0.01 mm', 'zero point three one plus or minus zero point zero one millimetres'],
    ['en', 'found in 1/4 of the boxes', 'found in one in four of the boxes'],
    ['en', 'the 1st of 3', 'the first of three'],
    ['en', '월간 1998년 1월호, number 3', '월간 천구백구십팔년 일월호, number three'],
    [
      'en',
      'probability > 0.99, about £1,250',
      'probability more than zero point nine nine, about one thousand two hundred and fifty pounds',
    ],
    [
      'pt',
      'probabilidade < 0,01, R$ 1.250',
      'probabilidade menos de zero vírgula zero um, mil duzentos e cinquenta reais',
    ],
    ['ko', '> 0.99, ₩96,000', '영점구구 초과, 구만 육천 원'],
    ['ja', '> 0.99, ￥300', 'れいてんきゅうきゅうを超える, さんびゃくえん'],
    [
      'pt-BR',
      'Saiu em 1º de maio de 1995, entre 4 e 19 de maio, 97 % de 1.204 cópias.',
      'Saiu em primeiro de maio de mil novecentos e noventa e cinco, entre quatro e dezenove de maio, noventa e sete por cento de mil duzentas e quatro cópias.',
    ],
    ['pt', '2 dias e 2 semanas', 'dois dias e duas semanas'],
    ['ja', '2026-06-30', 'にせんにじゅうろくねんろくがつさんじゅうにち'],
    ['ja', '1995年5月4日〜19日', 'せんきゅうひゃくきゅうじゅうごねんごがつよっかからじゅうくにち'],
    [
      'ko',
      '1996년 6월 4일에서 10월 19일, 23장, 97%',
      '천구백구십육년 유월 사일에서 시월 십구일, 스물세 장, 구십칠 퍼센트',
    ],
    ['fi', '19 copies', '19 copies'],
  ])('%s: %s', (language, text, said) => expect(sayAloud(text, language)).toBe(said));

  it('says foreign names by their readings', () => {
    const names = [{ written: '밀물종 토끼', said: 'milmuljong tokki' }];
    expect(sayAloud('밀물종 토끼, 2 copies', 'en', names)).toBe('milmuljong tokki, two copies');
  });

  it('leaves no digit unsaid', () => {
    const text = '1, 22, 1998, 2,003, 3rd, 4 May, 1.5 %, 1999-12-31, 12–15, X9';
    for (const language of ['en', 'pt', 'ja', 'ko']) {
      expect(sayAloud(text, language)).not.toMatch(/\d/);
    }
  });
});
