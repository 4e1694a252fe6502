import type { Block, Paper, PaperSize } from '../paper/types.ts';
import { certaintySteps } from '../words/certainty.ts';
import { tellCount, tellP } from '../words/numbers.ts';
import { caution, note } from './blocks.ts';
import { chronologyBlock } from './chronology.ts';
import { printingBlocks } from './printing.ts';
import { correctionBlocks, sourceBlocks } from './sources.ts';
import { storyBlocks } from './story.ts';
import type { DocumentGround, Writer } from './types.ts';
import { holdsFor, writerFor } from './writer.ts';

/**
 * The whole account as a paper: what the site tells, in its words and figures, with a title page
 * and contents.
 */
export function accountPaper(ground: DocumentGround, size: PaperSize = 'a4'): Paper {
  const writer = writerFor(ground);
  const { account, words, own, phrases } = writer;
  const { title } = account.subject;
  return {
    title,
    subtitle: own.subtitle,
    front: [...holdsFor(writer), countsOf(writer)],
    language: phrases.language,
    size,
    contents: own.contents,
    asOf: account.asOf,
    foot: [title, ...holdsFor(writer)].join(' · '),
    blocks: [
      { is: 'heading', level: 1, text: words.overview },
      ...(account.story === null ? [] : storyBlocks(account.story, title, writer)),
      chronologyBlock(writer),
      note(words.chronologyNote),
      ...cautionBlocks(writer),
      { is: 'heading', level: 1, text: own.printings, breaks: true },
      ...account.printings.flatMap((printing) => printingBlocks(printing, writer)),
      ...sourceBlocks(writer),
      ...correctionBlocks(writer),
    ],
  };
}

/** How many printings, sources and claims there are. */
function countsOf({ account, phrases }: Writer): string {
  const { printings, sources } = account;
  const claims = sources.reduce((sum, one) => sum + one.claims, 0);
  return (
    [
      ['printings', printings.length],
      ['sources', sources.length],
      ['claims', claims],
    ] as const
  )
    .map(([unit, count]) => phrases.units[unit](tellCount(phrases, count), count === 1))
    .join(' · ');
}

/** What is to be kept in mind with every page: words for certainty, and what not to read into it. */
function cautionBlocks(writer: Writer): readonly Block[] {
  const { words, own } = writer;
  return [
    note(`${own.certainty}: ${certaintyWords(writer)}.`),
    { is: 'heading', level: 1, text: own.cautions },
    ...[words.touchNote, words.unauthorisedNote, words.gradedNote].map(caution),
  ];
}

function certaintyWords({ phrases, own }: Writer): string {
  return certaintySteps()
    .map(({ word, least, below }) => {
      const p = least > 0 ? own.atLeast(tellP(phrases, least)) : own.less(tellP(phrases, below));
      return `${phrases.certainty[word]} ${p}`;
    })
    .join('; ');
}
