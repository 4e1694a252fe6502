import type { Row } from '../table.ts';

/** Who says what: twelve invented sources. */
export const SOURCES: readonly Row[] = [
  {
    id: 'qm-archive',
    title: 'Quenby Marl product archive',
    kind: 'publisher-database',
    citation: 'Quenby Marl, product archive, pages “Ninefen worldwide”',
    url: 'https://archive.quenbymarl.example/ninefen',
    accessed: '2026-02-11',
    archived: 'https://kept.example/2026/quenbymarl-ninefen',
    publish: 'yes',
  },
  {
    id: 'qm-press',
    title: 'Quenby Marl trade letters',
    kind: 'press-release',
    citation: 'Quenby Marl, letters to the trade, 1994–2007; photocopies from a shop’s binder',
    publish: 'yes',
  },
  {
    id: 'savukuikka',
    title: 'Savukuikka',
    kind: 'magazine',
    citation: 'Savukuikka, children’s comic fortnightly, Tampere; numbers 5–8/1994 and 9/2002',
    publish: 'yes',
  },
  {
    id: 'jusawigol',
    title: '월간 주사위골',
    kind: 'magazine',
    citation:
      '월간 주사위골 (“Dice Valley Monthly”), Seoul; March 1996 and November 1997 to March 1998',
    publish: 'yes',
  },
  {
    id: 'reedcutter',
    title: 'The Reedcutter Checklist',
    kind: 'checklist',
    citation: 'The Reedcutter Checklist of Ninefen cards, 4th ed., 2008',
    url: 'https://reedcutter.example/ninefen/hare',
    accessed: '2025-11-03',
    publish: 'yes',
  },
  {
    id: 'willowherb',
    title: 'Willowherb card index',
    kind: 'checklist',
    citation: 'Willowherb, index of cards by animal, page “Hares”, begun 2016',
    url: 'https://willowherb.example/index/hares',
    accessed: '2025-11-03',
    publish: 'yes',
  },
  {
    id: 'pocket-guide',
    title: 'The Fen in Your Pocket',
    kind: 'book',
    citation: 'The Fen in Your Pocket: a guide to Ninefen, Sallow Bank Press, 2009',
    cites: 'reedcutter',
    publish: 'yes',
  },
  {
    id: 'plumb-label',
    title: 'Plumb Assay labels',
    kind: 'grading-label',
    citation: 'Labels of Plumb Assay, as seen on slabs and in its population report',
    cites: 'reedcutter',
    service: 'plumb-assay',
    publish: 'yes',
  },
  {
    id: 'ostrel-label',
    title: 'Ostrel Bureau labels',
    kind: 'grading-label',
    citation: 'Labels of Ostrel Bureau, as seen on slabs',
    service: 'ostrel',
    publish: 'yes',
  },
  {
    id: 'fenboard',
    title: 'Fenboard',
    kind: 'forum',
    citation: 'Fenboard, threads on Ninefen, and the newsgroup that came before it',
    url: 'https://fenboard.example/t/hares',
    accessed: '2026-01-19',
    publish: 'yes',
  },
  {
    id: 'shop-notices',
    title: 'Shop notices and price lists',
    kind: 'store-listing',
    citation: 'A binder of lists, notices and kept pages of five shops, 1994–2007',
    publish: 'yes',
  },
  {
    id: 'in-hand',
    title: 'Cards, boxes and receipts in hand',
    kind: 'own-observation',
    citation: 'Seen and photographed by the keeper of this dossier',
    publish: 'no',
  },
];

/** Whom a source truly copied, the invented answer that dating is asked to find. */
export const DERIVES: Readonly<Record<string, string>> = {
  willowherb: 'reedcutter',
  'pocket-guide': 'reedcutter',
};
