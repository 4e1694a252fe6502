import type { CutOptions, Wish } from '../../src/host/index.ts';

/** Texts in several scripts, with the fonts that are cut to them. */
export const TEXTS: readonly {
  readonly name: string;
  readonly text: string;
  readonly wish: Wish;
  readonly options: CutOptions;
}[] = [
  {
    name: 'plain',
    text: 'Tidebell Hare, between 3 and 9 June 1998 (0.97) – “first”',
    wish: { family: 'newsreader', weight: 500 },
    options: { format: 'ttf' },
  },
  {
    name: 'mixed',
    text: 'Lebre do Sino · Łąka · 밀물종 토끼 · 潮鐘うさぎ',
    wish: { family: 'archivo', weight: 650 },
    options: { format: 'ttf', language: 'ja' },
  },
  {
    name: 'page',
    text: 'Lebre do Sino · 밀물종 토끼 · 潮鐘',
    wish: { family: 'archivo', weight: 400 },
    options: { format: 'woff2', language: 'ko' },
  },
  {
    name: 'italic',
    text: 'as it says',
    wish: { family: 'newsreader', weight: 400, italic: true },
    options: { format: 'ttf' },
  },
];
