import {
  type Identified,
  type NextLook,
  type Seen,
  sayTrait,
  sayValue,
} from '../../catalogue/index.ts';
import { type Row, tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { counted, percent } from './words.ts';

/** What a report on a copy needs besides the answer. */
export interface Around {
  readonly seen: Seen;
  /** The day that the answer holds for; empty where the dossier has none. */
  readonly day: string;
  readonly called: (printing: string) => string;
  readonly width: number;
}

/** Candidates below it are counted and not listed. */
const SHOWN = 0.001;
const LOOKS_SHOWN = 5;

/** What a copy may be and where to look next, for reading. */
export function identifiedReport(found: Identified, around: Around): string {
  const { seen, day, width } = around;
  const read = counted(seen.readings.length, 'reading');
  const head = `Which printing is it? By ${read}${day === '' ? '' : `, as of ${day}`}\n\n`;
  return [
    head,
    candidatesTable(found, around),
    `\n${paragraph(sureness(found, around), width)}`,
    ...found.alike.map(
      ([one, other]) =>
        `${paragraph(`${around.called(one)} and ${around.called(other)} cannot be told apart by the traits that are known.`, width)}`,
    ),
    ...found.unused.map(({ trait, value }) =>
      paragraph(
        `“${trait}: ${sayValue(value)}” says nothing: no printing has a value of it that could be compared.`,
        width,
      ),
    ),
    nextTable(found, width),
  ].join('');
}

function paragraph(text: string, width: number): string {
  return `${wrapped(text, width).join('\n')}\n`;
}

function candidatesTable({ candidates, unlisted }: Identified, { called }: Around): string {
  const shown = candidates.filter(({ p }) => p >= SHOWN);
  const rows: Row[] = [
    ...shown.map(({ id, kind, p }) => [percent(p), called(id), kind]),
    [percent(unlisted), 'none of these', 'not in the dossier'],
  ];
  const left = candidates.length - shown.length;
  if (left > 0) rows.push(`${counted(left, 'other')} below 0.1 % each`);
  return tableOf([{ head: 'p', align: 'right' }, { head: 'it is' }, { head: 'kind' }], rows, 100);
}

/** The two explanations that fit best, and how much better one does. */
function sureness({ candidates }: Identified, around: Around): string {
  const [first, second] = candidates;
  if (!first || !second) return 'The dossier has one printing alone: nothing could be compared.';
  const times = first.p / Math.max(second.p, 1e-12);
  const how = times >= 1000 ? 'more than 1,000' : times.toFixed(times < 10 ? 1 : 0);
  return (
    `Two explanations fit best: ${around.called(first.id)}, and ${around.called(second.id)}. ` +
    `The first is ${how} times as probable as the second, by the readings and by how many of each are about. ` +
    'This is no verdict on the copy.'
  );
}

function nextTable({ next }: Identified, width: number): string {
  if (next.length === 0) return '\nNo further trait in the dossier would tell more.\n';
  const columns = [
    { head: 'bits', align: 'right' },
    { head: 'per effort', align: 'right' },
    { head: 'trait' },
    { head: 'by' },
    { head: 'where' },
  ] as const;
  const rows = next.slice(0, LOOKS_SHOWN).flatMap((look): readonly Row[] => {
    const { gain_bits, gain_per_effort, trait, sees, caution } = look;
    const what = sayTrait(trait);
    const cells = [gain_bits.toFixed(3), gain_per_effort.toFixed(3), what, sees, place(look)];
    return caution === '' ? [cells] : [cells, caution];
  });
  const [best] = next;
  const ask = best ? `\n${paragraph(askFor(best), width)}` : '';
  return `\nWhere to look next\n\n${tableOf(columns, rows, width)}${ask}`;
}

function place({ region, side }: NextLook): string {
  const box = boxOf(region);
  return box ? `${side}, ${box}` : side;
}

/** `x0 y0 x1 y1` in words; empty where it is not told. */
function boxOf(region: string): string {
  const numbers = region.match(/\d+(\.\d+)?/g) ?? [];
  if (numbers.length !== 4) return '';
  const [x0, y0, x1, y1] = numbers;
  return `${x0} to ${x1} mm from the left, ${y0} to ${y1} mm from the top`;
}

function askFor(look: NextLook): string {
  const box = boxOf(look.region);
  const part = box === '' ? `the ${look.side}` : `the ${look.side}, sharp from ${box}`;
  return `Of a seller, ask for a picture of ${part}: it would show “${sayTrait(look.trait)}”.`;
}
