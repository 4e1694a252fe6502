import type { Dispute, ToldClaim } from '../account/types.ts';
import type { Block, Run, Words } from '../paper/types.ts';
import { claimSays, valueSays } from '../site/cells.ts';
import { tellP } from '../words/numbers.ts';
import { howItCame } from '../words/slip-sentences.ts';
import { columnsOf, headed, said } from './blocks.ts';
import type { Writer } from './types.ts';

/** What each source says of a printing, how probable that is, and how it came about. */
export function evidenceBlocks(claims: readonly ToldClaim[], writer: Writer): readonly Block[] {
  if (claims.length === 0) return [];
  const { evidence, heads } = writer.words;
  return [
    headed(evidence),
    {
      is: 'table',
      columns: columnsOf(
        [heads.source, 4],
        [heads.says, 5],
        [heads.where, 5],
        [heads.right, null, 'figures'],
        [heads.how, 5],
      ),
      rows: claims.map((claim) => claimRow(claim, writer)),
    },
  ];
}

function claimRow(claim: ToldClaim, { words, phrases, source }: Writer): readonly Words[] {
  const { locator, quote, slip } = claim;
  const quoted: readonly Run[] =
    quote === null ? [] : [{ text: `${locator === null ? '' : ' '}“${quote}”`, style: 'code' }];
  const cross: readonly Run[] = slip ? [{ text: `× ${words.slip} `, style: 'slip' }] : [];
  return [
    [{ text: source(claim.source), to: `#source-${claim.source}` }],
    said(claimSays(claim, phrases)),
    [{ text: locator ?? '' }, ...quoted],
    [{ text: tellP(phrases, claim.pRight), ...(slip ? { style: 'slip' } : {}) }],
    [...cross, { text: howItCame(claim, phrases) }],
  ];
}

/** Facts that are no dates, on which sources differ. */
export function disputeBlocks(
  disputes: readonly Dispute[],
  { words, phrases }: Writer,
): readonly Block[] {
  if (disputes.length === 0) return [];
  return [
    headed(words.disputes),
    {
      is: 'list',
      items: disputes.map(
        ({ property, values }): Words => [
          { text: `${phrases.properties[property] ?? property}: `, style: 'strong' },
          ...values.flatMap(
            ({ value, p }, i): Words => [
              ...(i === 0 ? [] : [{ text: ', ' }]),
              {
                text: `${valueSays(value, words)} (${words.heads.probability} ${tellP(phrases, p)})`,
              },
            ],
          ),
        ],
      ),
    },
  ];
}
