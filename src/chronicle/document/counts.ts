import type { ToldPrinting } from '../account/types.ts';
import type { Block } from '../paper/types.ts';
import { countCells, priceCells } from '../site/cells.ts';
import { countSentences } from '../words/count-sentences.ts';
import { columnsOf, headed, note, said } from './blocks.ts';
import type { Writer } from './types.ts';

/** What the services have counted, each with its day and interval, and what can turn up. */
export function countBlocks(printing: ToldPrinting, writer: Writer): readonly Block[] {
  const { id, counts } = printing;
  if (counts.length === 0) return [];
  const { words, service } = writer;
  const { heads } = words;
  const extant = countSentences(printing, writer).filter(({ figure }) => figure === `extant.${id}`);
  return [
    headed(words.graded),
    {
      is: 'table',
      columns: columnsOf(
        [heads.service, 3],
        [heads.copies, 4, 'figures'],
        [heads.top, 4, 'figures'],
        [heads.day, 3],
      ),
      rows: counts.map((count) => {
        const { graded, best, day } = countCells(count, writer);
        return [service(count.service), graded, best, day].map(said);
      }),
    },
    ...extant.map(({ text }): Block => ({ is: 'words', words: said(text) })),
    note(words.gradedNote),
  ];
}

/** What the next copy sold may fetch, where the collector wants that shown. */
export function priceBlocks({ prices }: ToldPrinting, writer: Writer): readonly Block[] {
  if (prices.length === 0) return [];
  const { words } = writer;
  const { heads } = words;
  return [
    headed(words.prices),
    {
      is: 'table',
      columns: columnsOf(
        [heads.grade, 3],
        [heads.price, 2, 'figures'],
        [heads.eightOfTen, 4],
        [heads.sales, 1, 'figures'],
      ),
      rows: prices.map((price) => {
        const { what, next, interval, sales } = priceCells(price, writer);
        return [what, next, interval, sales].map(said);
      }),
    },
    note(words.pricesNote),
  ];
}
