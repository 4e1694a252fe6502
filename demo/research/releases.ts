import type { Row } from '../table.ts';

/** The true release days of the invented world; `kr-january` is an id that was given up. */
export const RELEASES: Readonly<Record<string, string>> = {
  'fi-supplement': '1994-03-31',
  'gb-first': '1994-10-07',
  'gb-second': '1995-05-12',
  'br-plain': '1995-08-16',
  'br-foil': '1995-08-16',
  'br-second': '1996-06-12',
  'kr-starter': '1996-02-08',
  'kr-monthly': '1997-11-20',
  'pl-box': '1999-01-05',
  'gb-annual': '1999-10-15',
  'kr-club': '2000-04-20',
  'br-mosaic': '2001-11-14',
  'fi-tin': '2002-05-03',
  'kr-road-matte': '2007-06-14',
  'kr-road-foil': '2007-06-14',
  'pl-road': '2007-09-11',
};

/** Sequences that are certain for a stated reason. */
export const ORDERS: readonly Row[] = [
  {
    earlier: 'gb-first',
    later: 'gb-second',
    reason: 'The second wave corrects “tide’s bell” in line 3, a misprint of the first.',
  },
  {
    earlier: 'kr-monthly',
    later: 'kr-club',
    reason: 'The club letter calls its card “the January hare with our stamp”.',
  },
  {
    earlier: 'kr-club',
    later: 'kr-road-matte',
    reason: 'The leaflet in the road box pictures the club card as an earlier hare.',
  },
  {
    earlier: 'gb-second',
    later: 'br-plain',
    reason: 'The Brazilian plates were made from the corrected English text.',
  },
];
