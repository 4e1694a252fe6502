import type { PacketPart } from '../../chronicle/index.ts';
import { tableOf } from '../report/table.ts';

/** What leaves and what stays, with the tick that lets it out; pictures that are marked so stay for good. */
export function leavingReport(
  all: readonly PacketPart[],
  marked: readonly string[],
  width: number,
): string {
  const table = tableOf(
    [{ head: 'what' }, { head: 'found' }, { head: 'so' }],
    [
      ...all.map(({ what, found, tick, leaves }) => [
        what,
        found.replace(/\s+/g, ' '),
        leaves ? 'leaves' : `stays, unless --with ${tick}`,
      ]),
      ...marked.map((file) => ['picture', file, 'stays: pictures.csv says so']),
    ],
    width,
  );
  return `${table}\nLook at every picture before you send it: what it shows (an address on a label, a name) leaves with it.\n`;
}
