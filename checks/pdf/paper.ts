import type { Paper } from '../../src/chronicle/index.ts';

const words = (text: string) => [{ text }];

/** A paper with one of everything that a paper may hold. */
export const EVERYTHING: Paper = {
  title: 'Tidebell Hare 밀물종 토끼',
  subtitle: 'Every printing of it, as of 30 June 2026',
  language: 'en',
  size: 'a4',
  contents: 'Contents',
  asOf: '2026-06-30',
  foot: 'Tidebell Hare · an invented card',
  blocks: [
    { is: 'heading', level: 1, text: 'Chronology', key: 'chronology' },
    {
      is: 'words',
      as: 'lead',
      words: [{ text: 'Most probably ' }, { text: 'the first', style: 'marked' }],
    },
    {
      is: 'drawing',
      svg: '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="60"><rect x="20" y="20" width="120" height="12" fill="#0086b3"/><text x="150" y="31" font-family="Archivo" font-size="11">June 1998</text></svg>',
      alternative: 'A bar from May to June 1998',
      caption: words('A bar a printing.'),
    },
    { is: 'heading', level: 2, text: 'First monthly 潮鐘うさぎ', key: 'kr' },
    {
      is: 'words',
      words: [
        { text: 'See ' },
        { text: 'the source', to: 'https://example.org/a?b=1' },
        { text: ' and ' },
        { text: 'above', to: '#chronology' },
        { text: ', 🐇 \u202eback\u202c.' },
      ],
    },
    { is: 'words', as: 'quote', words: words('#import "x" $a$ *b* _c_ @d <e> \\') },
    { is: 'words', as: 'caution', words: words('The terms of the seller and local law decide.') },
    {
      is: 'words',
      as: 'small',
      words: [
        { text: 'slip', style: 'slip' },
        { text: ' ' },
        { text: 'code', style: 'code' },
        { text: ' strong', style: 'strong' },
        { text: ' so', style: 'emphasis' },
        { text: ' said', style: 'evidence' },
      ],
    },
    {
      is: 'table',
      columns: [
        { head: 'What', share: 2 },
        { head: 'Copies', share: null, align: 'right' },
      ],
      rows: [
        [words('First'), words('1,204')],
        [words('Second'), words('88')],
      ],
    },
    {
      is: 'columns',
      count: 2,
      blocks: [{ is: 'list', boxes: true, items: [words('bell ink'), words('width')] }],
    },
    { is: 'list', items: [words('one thing')] },
    { is: 'break' },
    {
      is: 'pictures',
      across: 2,
      pictures: [{ file: 'dot.png', alternative: 'A grey dot', caption: words('As taken.') }],
    },
  ],
};
