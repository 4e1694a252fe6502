import type { Correction, ToldSource } from '../account/types.ts';
import type { Block, Run, Words } from '../paper/types.ts';
import { sourceCells } from '../site/cells.ts';
import { tellEdtf } from '../words/days.ts';
import { tellCount } from '../words/numbers.ts';
import { columnsOf, note, said } from './blocks.ts';
import type { Writer } from './types.ts';

/** The sources with their reliability, and the bibliography. */
export function sourceBlocks(writer: Writer): readonly Block[] {
  const { account, words, phrases } = writer;
  const { heads } = words;
  return [
    { is: 'heading', level: 1, text: words.sources, breaks: true },
    {
      is: 'table',
      columns: columnsOf(
        [heads.source, 6],
        [heads.kind, 4],
        [heads.claims, null, 'figures'],
        [words.reliability, 4],
        [heads.takenFrom, 5],
      ),
      rows: account.sources.map((told): readonly Words[] => {
        const { right, from } = sourceCells(told, writer);
        const claims = tellCount(phrases, told.claims);
        return [
          [{ text: told.title, key: `source-${told.id}` }],
          ...[words.sourceKinds[told.kind], claims, right, from].map(said),
        ];
      }),
    },
    note(words.reliabilityNote),
    ...(account.withheldClaims > 0 ? [note(words.withheld(account.withheldClaims))] : []),
    { is: 'heading', level: 1, text: words.bibliography },
    {
      is: 'list',
      items: [...account.sources].sort(byTitle).map((told) => entryOf(told, writer)),
    },
  ];
}

function byTitle(a: ToldSource, b: ToldSource): number {
  return a.title < b.title ? -1 : 1;
}

function entryOf(told: ToldSource, { words, phrases }: Writer): Words {
  const { citation, title, url, archived, accessed } = told;
  const read = accessed === null ? '' : `, ${words.accessed(tellEdtf(phrases, accessed))}`;
  const kept: readonly Run[] =
    archived === null ? [] : [{ text: ' (' }, address(archived, words.archived), { text: ')' }];
  return [
    { text: citation ?? title },
    ...(url === null ? [] : [{ text: '. ' }, address(url, url)]),
    { text: read },
    ...kept,
    { text: '.' },
  ];
}

/** An address that a reader can follow, else as text. */
function address(url: string, text: string): Run {
  return /^https?:\/\//i.test(url) ? { text, to: url } : { text };
}

/** What readers wrote in and what came of it, newest first. */
export function correctionBlocks(writer: Writer): readonly Block[] {
  const { account, words } = writer;
  return [
    { is: 'heading', level: 1, text: words.corrections },
    ...(account.corrections.length === 0 ? [note(words.none)] : []),
    ...account.corrections.flatMap((one) => correctionOf(one, writer)),
  ];
}

function correctionOf(one: Correction, writer: Writer): readonly Block[] {
  const { account, words, phrases, called } = writer;
  const about: Run = account.printings.some(({ id }) => id === one.about)
    ? { text: called(one.about), to: `#printing-${one.about}` }
    : { text: one.about };
  const received = one.received === '' ? '' : `${tellEdtf(phrases, one.received)} · `;
  const state = words.states[one.state] ?? one.state;
  const credit = one.credit === null ? '' : ` · ${one.credit}`;
  return [
    {
      is: 'words',
      words: [
        { text: received },
        about,
        { text: ' · ' },
        { text: state, style: 'strong' },
        { text: credit },
      ],
    },
    { is: 'words', as: 'quote', words: said(one.says) },
    ...(one.answer === ''
      ? []
      : [{ is: 'words', words: said(`${words.heads.answer}: ${one.answer}`) } as const]),
  ];
}
