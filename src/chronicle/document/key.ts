import {
  type Couplet,
  type IdentificationKey,
  type Lead,
  nameOfCode,
  sayTrait,
} from '../../catalogue/index.ts';
import type { Block, Paper, PaperSize, Words } from '../paper/types.ts';
import { traitSays, valueSays } from '../site/cells.ts';
import { tellShare } from '../words/numbers.ts';
import { caution, note } from './blocks.ts';
import type { Fit } from './checklist.ts';
import type { DocumentGround, Writer } from './types.ts';
import { holdsFor, writerFor } from './writer.ts';

/**
 * The key to all printings as a paper. It names what its key names: give it one without traits that
 * stay at home.
 */
export function keyPaper(
  key: IdentificationKey,
  ground: Omit<DocumentGround, 'pictures'>,
  { columns, scale }: Fit,
  size: PaperSize = 'a4',
): Paper {
  const writer = writerFor({ ...ground, pictures: new Map() });
  const { account, phrases, own } = writer;
  const title = own.key(account.subject.title);
  return {
    title,
    subtitle: holdsFor(writer).join(' · '),
    language: phrases.language,
    size,
    contents: null,
    asOf: account.asOf,
    foot: title,
    scale,
    blocks: [
      caution(own.keyNote),
      {
        is: 'columns',
        count: columns,
        blocks: key.couplets.flatMap((one) => coupletBlocks(one, writer)),
      },
      note(notesOf(key, writer)),
    ],
  };
}

function coupletBlocks(
  { number, from, trait, sees, leads }: Couplet,
  writer: Writer,
): readonly Block[] {
  const { words, phrases } = writer;
  const back: Words =
    from === null
      ? []
      : [{ text: ' (' }, { text: `${from}`, to: `#couplet-${from}` }, { text: ')' }];
  const called = traitSays(sayTrait(trait), phrases);
  const look = words.looks[sees] ?? sees;
  return [
    {
      is: 'words',
      as: 'head',
      words: [
        { text: `${number}`, key: `couplet-${number}` },
        ...back,
        { text: `  ${called}` },
        { text: `  ${look}`, style: 'code' },
      ],
    },
    { is: 'list', items: leads.map((lead) => leadWords(lead, trait, writer)) },
  ];
}

function leadWords(lead: Lead, trait: string, writer: Writer): Words {
  const { phrases, words } = writer;
  const seen = valueInWords(lead.value, trait, writer);
  const to: Words[number] =
    lead.to === null
      ? {
          text: phrases.list(
            lead.ids.map((id) => bearerName(id, writer)),
            'or',
          ),
        }
      : { text: `${lead.to}`, to: `#couplet-${lead.to}` };
  return [{ text: valueSays(seen, words) }, { ...to, style: 'aside' }];
}

/** A language or a market by its name in the language of the paper. */
function valueInWords(value: string, trait: string, { phrases }: Writer): string {
  const type = trait === 'language' ? 'language' : trait === 'market' ? 'region' : null;
  return type === null || value === 'none' ? value : nameOfCode(value, type, phrases.locale);
}

/** A printing by its name, a counterfeit or alteration by its kind and what it passes for. */
function bearerName(id: string, { account, words, own, phrases, called }: Writer): string {
  const kind = account.counterfeits.find((one) => one.id === id);
  if (kind === undefined) return called(id);
  return own.kindOf(words.kinds[kind.kind], phrases.list(kind.printings.map(called), 'or'));
}

function notesOf(key: IdentificationKey, writer: Writer): string {
  const { own, phrases } = writer;
  const looks = new Intl.NumberFormat(phrases.locale, { maximumFractionDigits: 1 });
  const groups = key.alike.map((ids) =>
    phrases.list(
      ids.map((id) => bearerName(id, writer)),
      'and',
    ),
  );
  return [
    own.keyEffort(looks.format(key.expected_looks)),
    ...(key.left_out >= 0.005 ? [own.keyLeftOut(tellShare(phrases, key.left_out))] : []),
    ...(groups.length > 0 ? [own.keyAlike(groups.join('; '))] : []),
  ].join(' ');
}
