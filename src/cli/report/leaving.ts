import type { Leaving } from '../../chronicle/index.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { counted } from './words.ts';

const COLUMNS = [
  { head: 'file' },
  { head: 'row', align: 'right' },
  { head: 'column' },
  { head: 'what' },
  { head: 'found' },
] as const;

/** What leaves, then what stays, each with where it stands and why. */
export function leavingReport(found: readonly Leaving[], width: number): readonly string[] {
  const [leave, stay] = [true, false].map((so) => found.filter(({ leaves }) => leaves === so));
  return [
    part('Leaves', leave ?? [], width),
    '\n',
    part('Stays', stay ?? [], width),
    `\n${wrapped(NOTE, width).join('\n')}\n`,
  ];
}

const NOTE =
  'Names that the dossier does not know as such, and words within pictures, are not found: read the texts and look at the pictures once more before you publish.';

function part(head: string, found: readonly Leaving[], width: number): string {
  const title = `${head}: ${counted(found.length, 'thing')}\n`;
  if (found.length === 0) return title;
  const whys = [...new Set(found.map(({ why }) => why))];
  const rows = whys.flatMap((why) => [
    ...found
      .filter((one) => one.why === why)
      .map((one) => [one.file, `${one.row ?? ''}`, one.column ?? '', one.what, one.found]),
    why,
  ]);
  return title + tableOf(COLUMNS, rows, width);
}
