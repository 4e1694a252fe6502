import { sayDay } from '../../evidence/index.ts';
import { digitsOf } from '../../market/index.ts';
import type { Block, Words } from '../paper/types.ts';
import { small } from './blocks.ts';
import type { PacketEvent, PacketGround, PacketOptions } from './types.ts';

/** What happened, in order, without names that are not ticked. */
export function eventBlocks(
  ground: PacketGround,
  { ticks, most }: PacketOptions,
): readonly Block[] {
  const events = [...ground.events].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  if (events.length === 0) return [];
  const left = events.length - most;
  const rows = events
    .slice(-most)
    .map((event) =>
      [
        event.at.replace('T', ' '),
        event.what,
        partOf(event, ground, ticks.has('seller')),
        ...(ticks.has('costs') ? [event.amount] : []),
        ...(ticks.has('notes') ? [event.note] : []),
      ].map((text): Words => [{ text }]),
    );
  return [
    { is: 'heading', level: 2, text: 'What happened, in order' },
    {
      is: 'table',
      columns: [
        { head: 'When', share: null },
        { head: 'What', share: 1 },
        { head: 'With', share: 1 },
        ...(ticks.has('costs') ? [{ head: 'Amount', share: 1 }] : []),
        ...(ticks.has('notes') ? [{ head: 'Note', share: 3 }] : []),
      ],
      rows,
    },
    ...(left > 0 ? [small(`${left} earlier events are not listed.`)] : []),
  ];
}

/** The part that somebody played in place of a name, unless names are ticked. */
function partOf(event: PacketEvent, { seller, venue }: PacketGround, named: boolean): string {
  if (named || event.with === '') return event.with;
  if (event.with === seller) return 'the seller';
  if (event.with === venue) return 'the venue';
  return event.with === 'carrier' ? 'the carrier' : 'another';
}

/** Deadlines that run, at their earliest reading. */
export function deadlineBlocks({ clock }: PacketGround): readonly Block[] {
  const rows = clock.open.map(({ against, startsFrom, startsOn, days, counts, last }) =>
    [against, `${days} ${counts} days from ${startsFrom} on ${startsOn}`, sayDay(last)].map(
      (text): Words => [{ text }],
    ),
  );
  if (rows.length === 0) return [];
  return [
    { is: 'heading', level: 2, text: 'Deadlines, at their earliest reading' },
    {
      is: 'table',
      columns: [
        { head: 'Against', share: 1 },
        { head: 'What started it', share: 3 },
        { head: 'Last day', share: 1 },
      ],
      rows,
    },
  ];
}

/** What the copy cost until it lay on the desk. */
export function costBlocks({ landed }: PacketGround, { ticks }: PacketOptions): readonly Block[] {
  if (!ticks.has('costs') || landed === null) return [];
  const heading: Block = { is: 'heading', level: 2, text: 'What it cost' };
  if ('why' in landed) return [heading, small(`The cost cannot be told: ${landed.why}.`)];
  const { currency } = landed.total;
  const lines = landed.lines.filter(({ share }) => share.minor !== 0);
  return [
    heading,
    {
      is: 'table',
      columns: [
        { head: 'For', share: 1 },
        { head: currency, share: 1, align: 'right' },
        { head: 'How it came about', share: 3 },
      ],
      rows: [
        ...lines.map(({ name, share, how }) => [name, digitsOf(share), how]),
        ['together', digitsOf(landed.total), ''],
      ].map((row) => row.map((text): Words => [{ text }])),
    },
    ...(landed.assumed.length > 0
      ? [small(`Taken for granted: ${landed.assumed.join('; ')}.`)]
      : []),
  ];
}
