import type { ToldPrinting } from '../account/types.ts';
import type { Block, Paper, PaperSize, Run, Words } from '../paper/types.ts';
import { headOf } from '../words/head.ts';
import { whenShort } from '../words/when.ts';
import type { DocumentGround, Writer } from './types.ts';
import { holdsFor, writerFor } from './writer.ts';

/** How a paper may be set so that it takes one page: columns, and size of the type from 0 to 1. */
export interface Fit {
  readonly columns: number;
  readonly scale: number;
}

/** From roomy to as dense as can be read on paper (6 point); the last is taken where none fits. */
export const FITS: readonly [Fit, ...Fit[]] = [
  { columns: 1, scale: 1.1 },
  { columns: 1, scale: 0.9 },
  { columns: 2, scale: 0.9 },
  { columns: 2, scale: 0.75 },
  { columns: 3, scale: 0.64 },
];

/** A box to tick for each printing, in the order of release. */
export function checklistPaper(
  ground: Omit<DocumentGround, 'pictures'>,
  { columns, scale }: Fit,
  size: PaperSize = 'a4',
): Paper {
  const writer = writerFor({ ...ground, pictures: new Map() });
  const { account, phrases, own, called } = writer;
  const title = own.checklist(account.subject.title);
  const items = account.printings.map(
    (printing): Words => [
      { text: called(printing.id) },
      ...(columns === 1 ? [detailOf(printing, writer)] : []),
      { text: whenShort(printing.release, phrases), style: 'aside' },
    ],
  );
  const list: Block = { is: 'list', boxes: true, items };
  return {
    title,
    subtitle: [own.checklistNote, ...holdsFor(writer)].join(' · '),
    language: phrases.language,
    size,
    contents: null,
    asOf: account.asOf,
    foot: title,
    scale,
    blocks: [{ is: 'columns', count: columns, blocks: [list] }],
  };
}

function detailOf(printing: ToldPrinting, writer: Writer): Run {
  return { text: `  ${headOf(printing, writer).detail}`, style: 'code' };
}
