import { claimsOf, type Statement } from './statement.ts';

const archive = claimsOf('qm-archive', '2026-02-11');
const press = claimsOf('qm-press', '2025-09-30');

/**
 * The publisher's own pages. For Brazil they give the Monday on which the printer in Santos sent the
 * boxes out, nine days before the shops had them; two Korean days are those of London.
 */
export const ARCHIVE: readonly Statement[] = [
  archive('fi-supplement', 'on-sale', '1994-03', 'right', {
    at: 'page “Finland”, line 1',
    quote: 'Comic supplement (Savukuikka), March 1994',
  }),
  archive('gb-first|gb-second', 'on-sale', '1994-10-07', 'right', {
    at: 'page “United Kingdom”, line 1',
    quote: 'Starter Box, 60 cards. 7 October 1994',
    note: 'The page does not tell the two waves apart.',
  }),
  archive('@caixa-inicial', 'on-sale', '1995-08-07', 'other-moment', {
    at: 'page “Brazil”, line 1',
    quote: 'Caixa Inicial. 7 August 1995',
  }),
  archive('br-second', 'on-sale', '1996-06-03', 'other-moment', {
    at: 'page “Brazil”, line 2',
    quote: 'Caixa Inicial, reprint. 3 June 1996',
  }),
  archive('br-mosaic', 'on-sale', '2001-11-05', 'other-moment', {
    at: 'page “Brazil”, line 5',
    quote: 'Caixa Verão. 5 November 2001',
  }),
  archive('kr-starter', 'on-sale', '1996-02-07', 'next-day', {
    at: 'page “Korea”, line 1',
    quote: 'Ipmun Sangja (Starter). 7 February 1996',
  }),
  archive('kr-monthly', 'on-sale', '1997-11-20', 'right', {
    at: 'page “Korea”, line 4',
    quote: 'Magazine premium, Jan. number. 20 November 1997',
  }),
  archive('kr-road', 'on-sale', '2007-06-13', 'next-day', {
    at: 'page “Korea”, line 9',
    quote: 'Road Box. 13 June 2007',
  }),
  archive('pl-box', 'on-sale', '1999-01-05', 'right', {
    at: 'page “Poland”, line 1',
    quote: 'Pudełko startowe. 5 January 1999',
  }),
  archive('@annual-2000', 'on-sale', '1999-10-15', 'right', {
    at: 'page “United Kingdom”, line 11',
    quote: 'The Ninefen Annual 2000. 15 October 1999',
  }),
  archive('@gift-tin-1999', 'on-sale', '1999-11-19', 'right', {
    at: 'page “United Kingdom”, line 12',
    quote: 'Winter Gift Tin. 19 November 1999',
  }),
  archive('fi-tin', 'on-sale', '2002-05-03', 'right', {
    at: 'page “Finland”, line 3',
    quote: 'Tin, 3 May 2002',
  }),
  archive('br-foil', 'finish', 'foil', 'fact', {
    at: 'page “Brazil”, line 1',
    quote: 'one card in eight in silver foil',
  }),
  archive('pl-box', 'number', 'P31', 'fact', { at: 'page “Poland”, card list' }),
];

/** Plans, as the trade was told of them. */
export const PRESS: readonly Statement[] = [
  press('gb-first', 'announced', '1994-09-16', 'lead', {
    at: 'letter 3, second paragraph',
    stated: '1994-07-01',
    quote: 'The Starter Box will be with you on Friday 16th September.',
  }),
  press('gb-first', 'print-run', '40000', 'fact', {
    at: 'letter 3, last line',
    stated: '1994-07-01',
    quote: 'a first run of forty thousand boxes',
  }),
  press('@caixa-inicial', 'announced', '1995-07', 'lead', {
    at: 'letter 9',
    stated: '1995-04',
    quote: 'Brazil follows in July.',
  }),
  press('kr-starter', 'announced', '1996-01-25', 'lead', {
    at: 'letter 11',
    stated: '1995-11-20',
    quote: 'Korea, 25 January, with our partners in Seoul',
  }),
  press('pl-box', 'announced', '1998-12', 'lead', {
    at: 'letter 22',
    stated: '1998-09',
    quote: 'in time for Christmas in Poland',
  }),
  press('@annual-2000', 'announced', '1999-10-15', 'right', {
    at: 'letter 25',
    stated: '1999-06-28',
    quote: 'Annual: publication day 15 October, not before.',
  }),
  press('kr-road', 'announced', '2007-05-31', 'lead', {
    at: 'letter 41',
    stated: '2007-03-12',
    quote: 'Road Box, Korea 31 May; Poland to follow.',
  }),
  press('pl-road', 'announced', '2007-08-30', 'lead', {
    at: 'letter 42',
    stated: '2007-07-02',
    quote: 'The Polish sheets are late; we now say 30 August.',
  }),
];
