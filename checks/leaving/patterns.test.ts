import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { harmfulIn } from '../../src/chronicle/index.ts';

interface Witness {
  readonly telephones: readonly { readonly text: string; readonly found: readonly string[] }[];
  readonly emails: readonly { readonly text: string; readonly whole: boolean }[];
}

// What phonenumbers 8.12.57 and Python's parser of RFC 5322 find; see checks/makers/leaving.
const witness: Witness = JSON.parse(
  readFileSync(new URL('../fixtures/leaving/patterns.json', import.meta.url), 'utf8'),
);
const found = (what: string, text: string) =>
  harmfulIn(text).flatMap((one) => (one.what === what ? [one.text] : []));

describe('telephone numbers in a text', () => {
  it.each(witness.telephones)('$text', ({ text, found: expected }) => {
    const digits = (numbers: readonly string[]) => numbers.map((one) => one.replace(/\D/g, ''));
    expect(digits(found('telephone', text))).toEqual(digits(expected));
  });

  it('are found in groups that no plan names, after a word that says so', () => {
    expect(found('telephone', 'Puh. 044 123 4567, please')).toHaveLength(1);
    expect(found('telephone', '전화 010-1234-5678')).toHaveLength(1);
    expect(found('telephone', 'Fone: (11) 3123-4567')).toHaveLength(1);
  });
});

describe('e-mail addresses in a text', () => {
  it.each(witness.emails)('$text', ({ text, whole }) => {
    expect(found('e-mail', text).includes(text)).toBe(whole);
  });

  it('are found in sentences, brackets and in disguise', () => {
    expect(found('e-mail', 'Ask (marl@quenby.example), or him@fen.example.')).toEqual([
      'marl@quenby.example',
      'him@fen.example',
    ]);
    expect(found('e-mail', 'marl [at] quenby [dot] example')).toHaveLength(1);
  });

  it('are no handles, prices or hosts', () => {
    expect(
      found('e-mail', 'seen @fenboard, 3 @ 4.50 each, lot 8@auction, look at it (at home).'),
    ).toEqual([]);
  });
});

describe('addresses in a text', () => {
  it.each([
    '12 Elm Tree Road, Leeds',
    '12a Bell Street',
    'Glockenstraße 7',
    'Hämeenkatu 12 B',
    'Rua da Maré, 31',
    'ul. Dzwonkowa 4/6',
    '7 rue de la Cloche',
    'Leeds LS1 4DY',
    '〒530-0001',
    '梅田1丁目2番3号',
    '너울로 12, 너울섬',
  ])('%s', (text) => expect(found('address', text)).toHaveLength(1));

  it.each([
    'Starter Box, 60 cards. 7 October 1994',
    'page “Brazil”, line 1',
    '2007 NINEFEN KOREAN ROAD TIDEBELL HARE RB5',
    'A list of 23 December says the same; 4 Road sets.',
    'Ninefen Road 3 of 40 cards',
    'numbers 20–100',
    '2007년 3월 발매, 카드 12장',
    'Savukuikka 7/1994',
    'certificate 40697439, 33.50 EUR',
  ])('not %s', (text) => expect(found('address', text)).toEqual([]));
});
