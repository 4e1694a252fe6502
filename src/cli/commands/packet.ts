import {
  leavesOf,
  type PacketGround,
  type PacketOptions,
  type PaperSize,
  packetPaper,
  pictureTable,
  READERS,
  TICKS,
} from '../../chronicle/index.ts';
import { type Dossier, packetGroundIn, readDossier } from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { bagOf, filledWith, type PdfMade, pdfOf, replaceFolder } from '../../host/index.ts';
import { filesIn, notWritten } from '../dossier.ts';
import { examined } from '../packet/examined.ts';
import { leavingReport } from '../packet/leaving.ts';
import { packedPictures } from '../packet/pictures.ts';
import { stepsOn } from '../progress.ts';
import { calledIn } from '../report/called.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `packet` was called with. */
export interface PacketCall {
  readonly out?: string;
  readonly for: string;
  /** Ticks, with commas between them. */
  readonly with: string;
  readonly paper: string;
  readonly list?: boolean;
}

const SIZES = ['a4', 'letter'] as const satisfies readonly PaperSize[];
/** A packet has four pages at most. */
const MOST_PAGES = 4;
/** Scale of the type and most rows of a table, tried in turn until the pages fit. */
const FITS = [
  [1, 12],
  [0.92, 12],
  [0.88, 8],
  [0.82, 5],
] as const;

/**
 * Packs the evidence on one copy: pages to read and a bag with its pictures. Says first what leaves
 * and what stays; with `list` it says only that. Writes nothing to the dossier.
 */
export async function packet(
  folder: string,
  copy: string,
  call: PacketCall,
  terminal: Terminal,
): Promise<0 | 1> {
  if ((call.out === undefined) !== (call.list === true))
    throw new WrongCall(
      'Name the folder of the packet with --out, or ask with --list what would leave.',
    );
  const files = await filesIn(folder);
  const dossier = await readDossier(files);
  const known = packetGroundIn(dossier, copy);
  if (known === undefined) throw new WrongCall(`There is no copy ${copy} in desk/copies.csv.`);
  const ticks = new Set(
    call.with === '' ? [] : call.with.split(',').map((one) => oneOf(TICKS, one)),
  );
  const options = { reader: oneOf(READERS, call.for), ticks, size: oneOf(SIZES, call.paper) };
  const packed = await packedPictures(folder, files.names, dossier, copy, ticks.has('place'));
  const bare = { ...known, ...packed, printings: printingsOf(dossier, copy) };
  const leaves = leavesOf({ ...bare, faces: [], described: null }, ticks);
  await terminal.write(leavingReport(leaves, packed.stay, terminal.width));
  for (const fault of packed.faults) terminal.say(`${fault} It is left out.\n`);
  if (call.out === undefined) return packed.faults.length === 0 ? 0 : 1;
  const steps = stepsOn(terminal);
  const { notes, ...found } = await examined(folder, copy, dossier, packed.stay, steps.say);
  steps.end();
  for (const note of notes) terminal.say(`${note}\n`);
  const ground: PacketGround = { ...bare, ...found };
  const paper = await fitted(ground, options, packed.shown);
  await writeBag(call.out, ground, paper, packed.files);
  await terminal.write(
    `Written to ${call.out}: data/packet.pdf, ${paper.pages} pages, and ${packed.files.size} pictures, sealed by SHA-512.\n`,
  );
  return packed.faults.length === 0 ? 0 : 1;
}

function oneOf<T extends string>(known: readonly T[], word: string): T {
  const found = known.find((one) => one === word.trim());
  if (found !== undefined) return found;
  throw new WrongCall(`One of ${known.join(', ')} is expected, found “${word}”.`);
}

function printingsOf({ evidence, tables }: Dossier, copy: string): readonly string[] {
  const table = tables.get('desk/copies.csv');
  const row = table && [...table.rows()].find((at) => table.value(at, 'id') === copy);
  const ids = row === undefined ? '' : (table?.value(row, 'printing') ?? '');
  const called = calledIn(evidence);
  return ids
    .split('|')
    .filter(Boolean)
    .map((id) => called.printing(id.trim()));
}

async function fitted(
  ground: PacketGround,
  options: Omit<PacketOptions, 'most' | 'scale'>,
  pictures: ReadonlyMap<string, Uint8Array>,
): Promise<PdfMade> {
  for (const [scale, most] of FITS) {
    const made = await pdfOf(packetPaper(ground, { ...options, scale, most }), pictures);
    if (made.pages <= MOST_PAGES) return made;
  }
  throw new WrongCall(
    `The evidence on ${ground.copy} does not fit ${MOST_PAGES} pages: mark pictures that are not needed with publish no.`,
  );
}

async function writeBag(
  out: string,
  ground: PacketGround,
  { bytes }: PdfMade,
  pictures: ReadonlyMap<string, Uint8Array>,
): Promise<void> {
  const payload = new Map<string, Uint8Array>([
    ['packet.pdf', bytes],
    ['pictures.csv', new TextEncoder().encode(pictureTable(ground.pictures))],
    ...[...pictures].map(([name, file]) => [`pictures/${name}`, file] as const),
  ]);
  const told = [
    ['Bag-Software-Agent', 'Printlore'],
    ['External-Identifier', ground.copy],
    [
      'External-Description',
      `Evidence on one copy: ${ground.subject}, ${ground.printings.join(' or ')}`,
    ],
    ...(ground.on === null ? [] : [['Bagging-Date', isoOf(ground.on)] as const]),
  ] as const;
  await replaceFolder(out, filledWith(bagOf(payload, told))).catch(notWritten(out));
}
