import { claimsOf, type Statement } from './statement.ts';

const plumb = claimsOf('plumb-label', '2026-07-02');
const ostrel = claimsOf('ostrel-label', '2026-07-03');

/** Two services that take their years from one checklist, so that they err together. */
export const LABELS: readonly Statement[] = [
  plumb('fi-supplement', 'label-year', '1994', 'right', { at: 'label' }),
  plumb('gb-first|gb-second', 'label-year', '1994', 'right', {
    at: 'label',
    quote: '1994 NINEFEN STARTER TIDEBELL HARE 31',
    note: 'One label for both waves.',
  }),
  plumb('br-plain', 'label-year', '1995', 'right', { at: 'label' }),
  plumb('br-foil', 'label-year', '1995', 'right', { at: 'label' }),
  plumb('kr-starter', 'label-year', '1996', 'right', { at: 'label' }),
  plumb('kr-monthly', 'label-year', '1998', 'cover-year', {
    at: 'label',
    quote: '1998 NINEFEN KOREAN JUSAWIGOL TIDEBELL HARE HOLO',
  }),
  plumb('pl-box', 'label-year', '1998', 'copied', {
    at: 'label',
    quote: '1998 NINEFEN POLISH STARTER TIDEBELL HARE P31',
  }),
  plumb('gb-annual', 'label-year', '2000', 'cover-year', {
    at: 'label',
    quote: '2000 NINEFEN ANNUAL TIDEBELL HARE A7 FOIL',
  }),
  plumb('fi-tin', 'label-year', '2002', 'right', { at: 'label' }),
  plumb('kr-road-foil', 'label-year', '2007', 'right', { at: 'label' }),
  plumb('br-foil', 'finish', 'foil', 'fact', { at: 'label' }),
  ostrel('gb-first', 'label-year', '1994', 'right', { at: 'label' }),
  ostrel('br-second', 'label-year', '1995', 'sibling', {
    at: 'label',
    quote: 'NINEFEN · CAIXA INICIAL · 1995 · 31',
    note: 'The first wave’s year.',
  }),
  ostrel('kr-monthly', 'label-year', '1998', 'cover-year', {
    at: 'label',
    quote: 'NINEFEN · JUSAWIGOL 1/98 · 1998',
  }),
  ostrel('pl-box', 'label-year', '1998', 'copied', { at: 'label' }),
  ostrel('gb-annual', 'label-year', '2000', 'cover-year', { at: 'label' }),
  ostrel('br-foil', 'finish', 'holofoil', 'wrong', {
    at: 'label',
    quote: 'NINEFEN · CAIXA INICIAL · HOLO',
  }),
];
