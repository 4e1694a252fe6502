import { isoOf, sayDay } from '../../evidence/index.ts';
import type { Block, Paper } from '../paper/types.ts';
import { factTable, small } from './blocks.ts';
import { describedBlocks, faceBlocks } from './findings.ts';
import { costBlocks, deadlineBlocks, eventBlocks } from './happened.ts';
import { CHANGED, pictureBlocks } from './pictures.ts';
import type { PacketGround, PacketOptions, PacketPicture, Reader } from './types.ts';

/** What the pages are for, by their reader. */
const FOR: Readonly<Record<Reader, string>> = {
  seller: 'for the seller',
  carrier: 'for the carrier',
  buyer: 'for a buyer',
};

/** Stands on every packet. */
const CAUTION =
  'This is what was measured, seen and noted, and says nothing of anybody’s intent. The terms of the seller, the venue and the carrier and local law decide what follows from it. Measurements are of these pictures: what they could not show is not ruled out.';

/** The evidence on one copy as a paper: findings, words, events, deadlines, pictures with hashes. */
export function packetPaper(ground: PacketGround, options: PacketOptions): Paper {
  const on = ground.on === null ? '' : `, as of ${sayDay(ground.on)}`;
  return {
    title: `Evidence on one copy, ${ground.copy}`,
    subtitle: `${ground.subject}: ${ground.printings.join(' or ')} · ${FOR[options.reader]}${on}`,
    language: 'en',
    size: options.size,
    contents: null,
    asOf: ground.on === null ? null : isoOf(ground.on),
    foot: `Evidence on one copy · ${ground.copy}${on}`,
    scale: options.scale,
    blocks: [
      { is: 'words', as: 'caution', words: [{ text: CAUTION }] },
      { is: 'heading', level: 1, text: 'What is known' },
      factsOf(ground, options),
      ...describedBlocks(ground.listing, ground.described),
      ...eventBlocks(ground, options),
      ...deadlineBlocks(ground),
      ...costBlocks(ground, options),
      { is: 'heading', level: 1, text: 'Findings', breaks: true },
      ...ground.faces.flatMap((face) => faceBlocks(face, options)),
      ...(ground.faces.length === 0 ? [small('No picture of a face could be measured.')] : []),
      ...pictureBlocks(ground),
    ],
  };
}

function factsOf(ground: PacketGround, { ticks }: PacketOptions): Block {
  const ticked = (tick: Parameters<typeof ticks.has>[0], value: string) =>
    ticks.has(tick) ? value : '';
  return factTable([
    ['Copy', ground.copy],
    ['Held to be', ground.printings.join(' or ')],
    ['Bought', ground.bought],
    ['In a case of', ground.graded],
    ['Certificate', ticked('certificate', ground.certificate)],
    ['Seller', ticked('seller', ground.seller)],
    ['Venue', ticked('seller', ground.venue)],
    ['Purchase', ticked('purchase', ground.purchaseNo)],
    ['Tracking', ticked('purchase', ground.tracking)],
    ...ground.observations.map(({ trait, value, sees }): [string, string] => [
      `Seen: ${trait}`,
      sees === '' ? value : `${value} (${sees})`,
    ]),
  ]);
}

/** The pictures of a packet as a table (RFC 4180): names, times, hashes, what became of each. */
export function pictureTable(pictures: readonly PacketPicture[]): string {
  const head = ['file', 'role', 'side', 'taken', 'sha256_as_taken', 'sha256_here', 'changed'];
  const rows = pictures.map((one) => [
    `pictures/${one.name}`,
    one.role,
    one.side,
    one.taken,
    one.asTaken,
    one.asPacked,
    CHANGED[one.changed],
  ]);
  return [head, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
}

function quoted(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
