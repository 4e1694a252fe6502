import type { ToldCounterfeit, ToldPrinting, ToldTrait } from '../account/types.ts';
import type { Block, Words } from '../paper/types.ts';
import { traitSays, valueSays } from '../site/cells.ts';
import { tellEdtf } from '../words/days.ts';
import { caution, columnsOf, headed, said } from './blocks.ts';
import { pictureBlocks } from './pictures.ts';
import type { Writer } from './types.ts';

/** The traits of a printing that may be published, and how it is told from those most like it. */
export function traitBlocks({ traits, told }: ToldPrinting, writer: Writer): readonly Block[] {
  const { words } = writer;
  return [
    ...(traits.length > 0 ? [headed(words.traits), traitTable(traits, writer)] : []),
    ...(told.length > 0 ? [headed(words.tell), apartTable(told, writer)] : []),
  ];
}

function traitTable(traits: readonly ToldTrait[], { words, phrases }: Writer): Block {
  const { trait, value, look } = words.heads;
  return {
    is: 'table',
    columns: columnsOf([trait, 3], [value, 5], [look, 2]),
    rows: traits.map((one) =>
      [
        traitSays(one.trait, phrases),
        valueSays(one.value, words),
        words.looks[one.sees ?? ''] ?? '',
      ].map(said),
    ),
  };
}

function apartTable(told: ToldPrinting['told'], { words, phrases, called }: Writer): Block {
  const { trait, here, there, look } = words.heads;
  const rows = told.flatMap(({ other, by }): (readonly Words[])[] => {
    const name = called(other);
    if (by.length === 0) return [[said(words.toldAlike(name))]];
    return [
      [[{ text: words.toldFrom(name), to: `#printing-${other}` }]],
      ...by.map((one) =>
        [
          traitSays(one.trait, phrases),
          valueSays(one.here, words),
          valueSays(one.there, words),
          words.looks[one.sees ?? ''] ?? '',
        ].map(said),
      ),
    ];
  });
  return { is: 'table', columns: columnsOf([trait, 3], [here, 3], [there, 3], [look, 2]), rows };
}

/** Known unauthorised or altered copies of a printing, with the traits that may be published. */
export function kindBlocks({ counterfeits }: ToldPrinting, writer: Writer): readonly Block[] {
  const { account, words } = writer;
  const kinds = account.counterfeits.filter(({ id }) => counterfeits.includes(id));
  if (kinds.length === 0) return [];
  return [
    headed(words.unauthorised),
    caution(words.unauthorisedNote),
    ...kinds.flatMap((kind) => kindOf(kind, writer)),
  ];
}

function kindOf(kind: ToldCounterfeit, writer: Writer): readonly Block[] {
  const { words, phrases } = writer;
  const { knownSince: since, note } = kind;
  const known =
    since === '' ? [] : [{ text: ', ' }, { text: words.knownSince(tellEdtf(phrases, since)) }];
  return [
    {
      is: 'words',
      words: [
        { text: words.kinds[kind.kind], style: 'strong' },
        ...known,
        { text: '. ' },
        { text: note },
      ],
    },
    ...(kind.traits.length > 0 ? [traitTable(kind.traits, writer)] : []),
    ...pictureBlocks(kind.pictures, words.kinds[kind.kind], writer),
  ];
}
