import type { Release, ToldPrinting } from '../account/types.ts';
import type { Block } from '../paper/types.ts';
import { dayBars } from '../site/days-figure.ts';
import { headOf } from '../words/head.ts';
import { releaseFactsOf } from '../words/sentences.ts';
import { said } from './blocks.ts';
import { countBlocks, priceBlocks } from './counts.ts';
import { disputeBlocks, evidenceBlocks } from './evidence.ts';
import { pictureBlocks } from './pictures.ts';
import { storyBlocks } from './story.ts';
import { kindBlocks, traitBlocks } from './traits.ts';
import type { Writer } from './types.ts';

/** The section of one printing, in the order in which its page on the site has it. */
export function printingBlocks(printing: ToldPrinting, writer: Writer): readonly Block[] {
  const { id, release, story, pictures } = printing;
  const name = writer.called(id);
  const [first, ...facts] = releaseFactsOf(printing, writer).map(({ text }) => said(text));
  return [
    { is: 'heading', level: 2, text: name, key: `printing-${id}` },
    { is: 'words', as: 'detail', words: said(headOf(printing, writer).detail) },
    ...(first ? [{ is: 'words', as: 'lead', words: first } as const] : []),
    ...(facts.length > 0 ? [{ is: 'list', items: facts } as const] : []),
    ...daysBlocks(release, writer),
    ...(story === null ? [] : storyBlocks(story, '', writer)),
    ...pictureBlocks(pictures, name, writer),
    ...traitBlocks(printing, writer),
    ...kindBlocks(printing, writer),
    ...evidenceBlocks(release.claims, writer),
    ...disputeBlocks(printing.disputes, writer),
    ...countBlocks(printing, writer),
    ...priceBlocks(printing, writer),
  ];
}

/** The probability of each day as a drawing, where there is doubt. */
function daysBlocks(release: Release, writer: Writer): readonly Block[] {
  const bars = dayBars(release, writer);
  if (bars === null) return [];
  const rects = bars.rects.map(
    ({ x, y, width, height }) => `<rect x="${x}" y="${y}" width="${width}" height="${height}"/>`,
  );
  const { days } = writer.words;
  const ends = writer.phrases.vague.run(bars.from, bars.to);
  return [
    {
      is: 'drawing',
      svg: `<svg xmlns="http://www.w3.org/2000/svg" width="640" height="98" viewBox="0 0 640 98" fill="#141617">${rects.join('')}<path d="M0 97H640" stroke="#8b9093"/></svg>`,
      width: 110,
      alternative: bars.alternative,
      caption: said(`${days}: ${ends}`),
    },
  ];
}
