import { claimsOf, type Statement } from './statement.ts';

const reedcutter = claimsOf('reedcutter', '2025-11-03', '2008');
const willowherb = claimsOf('willowherb', '2025-11-03', '2016');
const guide = claimsOf('pocket-guide', '2025-12-14', '2009');

/** The parent: careful about England and Brazil, and its slips are rare enough to recognise. */
export const REEDCUTTER: readonly Statement[] = [
  reedcutter('fi-supplement', 'on-sale', '1994-04-21', 'lead', {
    at: 'row 1',
    quote: 'FI supplement, 21 Apr 94',
    note: 'The day on the cover of the periodical.',
  }),
  reedcutter('gb-first', 'on-sale', '1994-10-07', 'right', { at: 'row 2', quote: '7 Oct 94' }),
  reedcutter('gb-second', 'on-sale', '1994-10-07', 'sibling', {
    at: 'row 3',
    quote: 'second wave, 7 Oct 94',
    note: 'The first wave’s day.',
  }),
  reedcutter('br-plain', 'on-sale', '1995-08-16', 'right', { at: 'row 4', quote: '16 Aug 95' }),
  reedcutter('br-foil', 'on-sale', '1995-08-16', 'right', { at: 'row 5', quote: '16 Aug 95' }),
  reedcutter('kr-starter', 'on-sale', '1996-02-01', 'first-of-month', {
    at: 'row 6',
    quote: '1 Feb 96',
  }),
  reedcutter('br-second', 'on-sale', '1996-02-01', 'row-shift', {
    at: 'row 7',
    quote: '1 Feb 96',
    note: 'Stands one line below the same day for Korea.',
  }),
  reedcutter('kr-monthly', 'on-sale', '1998-01-01', 'lead', {
    at: 'row 8',
    quote: '1 Jan 98',
    note: 'From the cover.',
  }),
  reedcutter('pl-box', 'on-sale', '1998-01-05', 'year-off', { at: 'row 9', quote: '5 Jan 98' }),
  reedcutter('gb-annual', 'on-sale', '1999-11-19', 'sibling', {
    at: 'row 10',
    quote: 'from the Winter Gift Tin, 19 Nov 99',
  }),
  reedcutter('br-mosaic', 'on-sale', '2001-11-14', 'right', { at: 'row 11', quote: '14 Nov 01' }),
  reedcutter('fi-tin', 'on-sale', '2002-03-05', 'swapped', { at: 'row 12', quote: '5 Mar 02' }),
  reedcutter('kr-road', 'on-sale', '2007-06-14', 'right', {
    at: 'row 13',
    quote: 'KR road box, two finishes, 14 Jun 07',
  }),
  reedcutter('br-foil', 'finish', 'foil', 'fact', { at: 'row 5' }),
  reedcutter('gb-annual', 'number', 'A7', 'fact', { at: 'row 10' }),
  reedcutter('pl-box', 'number', '31/P', 'wrong', { at: 'row 9' }),
];

/** Taken from the parent without a word, slips and all; what is new in it is new by mistake. */
export const WILLOWHERB: readonly Statement[] = [
  willowherb('fi-supplement', 'on-sale', '1994-04-21', 'copied', { at: 'card 1' }),
  willowherb('gb-first', 'on-sale', '1994-10-17', 'pen', {
    at: 'card 2',
    note: 'A slip of the pen in copying.',
  }),
  willowherb('gb-second', 'on-sale', '1994-10-07', 'copied', { at: 'card 3' }),
  willowherb('br-plain|br-foil', 'on-sale', '1995-08-16', 'copied', {
    at: 'card 4',
    quote: 'Brazil, first box',
    note: 'One entry for both finishes.',
  }),
  willowherb('kr-starter', 'on-sale', '1996-02-01', 'copied', { at: 'card 5' }),
  willowherb('br-second', 'on-sale', '1996-02-01', 'copied', { at: 'card 6' }),
  willowherb('kr-monthly', 'on-sale', '1998-01-01', 'copied', { at: 'card 7' }),
  willowherb('pl-box', 'on-sale', '1998-01-05', 'copied', { at: 'card 8' }),
  willowherb('gb-annual', 'on-sale', '1999-11-19', 'copied', { at: 'card 9' }),
  willowherb('br-mosaic', 'on-sale', '2001-11-14', 'copied', { at: 'card 10' }),
  willowherb('fi-tin', 'on-sale', '2002-03-05', 'copied', { at: 'card 11' }),
  willowherb('pl-road', 'on-sale', '2007-06-14', 'sibling', {
    at: 'card 12',
    note: 'The Korean day of the same box.',
  }),
  willowherb('kr-club', 'exists', 'no', 'wrong', {
    at: 'foot of the page',
    quote: 'The so-called club card is the monthly’s, rubber-stamped.',
  }),
  willowherb('pl-box', 'number', '31/P', 'wrong', { at: 'card 8' }),
];

/** A printed guide that names its parent, writes months, and fills one day in where it knows none. */
export const POCKET_GUIDE: readonly Statement[] = [
  guide('gb-first', 'on-sale', '1994-10', 'copied', { at: 'p. 12', quote: 'October 1994' }),
  guide('gb-second', 'on-sale', '1995-21', 'right', {
    at: 'p. 12',
    quote: 'A second wave, paler, came in the spring of 1995.',
  }),
  guide('kr-starter', 'on-sale', '1996-02', 'copied', { at: 'p. 40', quote: 'February 1996' }),
  guide('kr-monthly', 'on-sale', '1998-01', 'copied', { at: 'p. 41', quote: 'January 1998' }),
  guide('pl-box', 'on-sale', '1998-01', 'copied', { at: 'p. 47', quote: 'January 1998' }),
  guide('gb-annual', 'on-sale', '2000-01-01', 'filled-in', { at: 'p. 13', quote: '1.1.2000' }),
  guide('br-second', 'on-sale', '2000-01-01', 'filled-in', { at: 'p. 33', quote: '1.1.2000' }),
  guide('br-mosaic', 'on-sale', '2000-01-01', 'filled-in', { at: 'p. 34', quote: '1.1.2000' }),
  guide('kr-road', 'on-sale', '2007-06/2007-08', 'right', {
    at: 'p. 44',
    quote: 'summer 2007, June at the earliest',
  }),
  guide('kr-club', 'number', 'C-5', 'fact', {
    at: 'p. 42',
    quote: 'C-5, a club card, not seen by us',
  }),
];
