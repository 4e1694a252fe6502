import { claimsOf, type Statement } from './statement.ts';

const savukuikka = claimsOf('savukuikka', '2025-10-18');
const jusawigol = claimsOf('jusawigol', '2026-03-02');

/** A Finnish fortnightly: the day on its cover is three weeks after the kiosks had it. */
export const SAVUKUIKKA: readonly Statement[] = [
  savukuikka('@savukuikka-1994-05', 'cover-date', '1994-03-24', 'lead', {
    at: 'cover',
    quote: '24.3.1994',
  }),
  savukuikka('@savukuikka-1994-06', 'cover-date', '1994-04-07', 'lead', {
    at: 'cover',
    quote: '7.4.1994',
  }),
  savukuikka('@savukuikka-1994-07', 'cover-date', '1994-04-21', 'lead', {
    at: 'cover',
    quote: '21.4.1994',
  }),
  savukuikka('@savukuikka-1994-08', 'cover-date', '1994-05-05', 'lead', {
    at: 'cover',
    quote: '5.5.1994',
  }),
  savukuikka('@savukuikka-1994-06', 'announced', '1994-03-17', 'right', {
    at: '5/1994, p. 2',
    quote: 'Seuraava numero ilmestyy torstaina 17.3.',
    stated: '1994-03-03',
  }),
  savukuikka('@savukuikka-1994-07', 'announced', '1994-03-31', 'right', {
    at: '6/1994, p. 2',
    stated: '1994-03-17',
    quote: 'Savukuikka 7 ilmestyy torstaina 31.3. Mukana Ninefen-kortti!',
  }),
  savukuikka('@savukuikka-1994-08', 'announced', '1994-04-14', 'right', {
    at: '7/1994, p. 2',
    quote: 'Seuraava numero ilmestyy 14.4.',
    stated: '1994-03-31',
  }),
  savukuikka('fi-tin', 'on-sale', '2002-05~', 'right', {
    at: '9/2002, p. 31',
    quote: 'Ninefen-peltirasia kaupoissa heti vapun jälkeen',
    stated: '2002-04',
  }),
];

/** A Korean monthly: on sale some six weeks before the month on its cover begins. */
export const JUSAWIGOL: readonly Statement[] = [
  jusawigol('kr-starter', 'on-sale', '1996-02', 'right', {
    at: '1996년 3월호, 88쪽',
    quote: '나인펜 입문 상자, 2월 발매!',
    stated: '1996-01',
  }),
  jusawigol('@jusawigol-1997-11', 'cover-date', '1997-11', 'lead', {
    at: '표지',
    quote: '1997년 11월호',
  }),
  jusawigol('@jusawigol-1997-12', 'cover-date', '1997-12', 'lead', {
    at: '표지',
    quote: '1997년 12월호',
  }),
  jusawigol('@jusawigol-1998-01', 'cover-date', '1998-01', 'lead', {
    at: '표지',
    quote: '1998년 1월호 특별 부록: 홀로그램 카드 ‘밀물종 토끼’',
  }),
  jusawigol('@jusawigol-1998-02', 'cover-date', '1998-02', 'lead', {
    at: '표지',
    quote: '1998년 2월호',
  }),
  jusawigol('@jusawigol-1998-03', 'cover-date', '1998-03', 'lead', {
    at: '표지',
    quote: '1998년 3월호',
  }),
  jusawigol('@jusawigol-1997-12', 'announced', '1997-10-23', 'right', {
    at: '1997년 11월호, 4쪽',
    quote: '12월호는 10월 23일에 발매됩니다.',
    stated: '1997-09-18',
  }),
  jusawigol('@jusawigol-1998-02', 'announced', '1997-12-18', 'right', {
    at: '1998년 1월호, 4쪽',
    quote: '다음 호는 12월 18일에 발매됩니다.',
    stated: '1997-11-20',
  }),
  jusawigol('@jusawigol-1998-03', 'announced', '1998-01-22', 'right', {
    at: '1998년 2월호, 4쪽',
    quote: '3월호 발매일: 1월 22일',
    stated: '1997-12-18',
    note: 'The page that would announce the January number is torn out of the December number seen.',
  }),
  jusawigol('kr-monthly', 'finish', 'holofoil', 'fact', {
    at: '1998년 1월호, 표지',
    quote: '홀로그램 카드',
  }),
];
