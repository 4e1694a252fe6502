import { identify as identifyCopy, type Reading, readValue } from '../../catalogue/index.ts';
import { type Dossier, knownOf, newestDay, seenOf } from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { calledIn } from '../report/called.ts';
import { identifiedReport } from '../report/identified.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `identify` was called with. */
export interface IdentifyOptions {
  readonly copy?: string;
  readonly saw?: readonly string[];
  readonly on?: string;
  readonly json?: boolean;
}

/** Names the printing that a copy is of, from what the desk holds of it or from what is told. */
export async function identify(
  folder: string,
  options: IdentifyOptions,
  terminal: Terminal,
): Promise<0> {
  const { copy, saw = [], on, json = false } = options;
  if (copy === undefined && saw.length === 0)
    throw new WrongCall('A copy of the desk is wanted with --copy, or what was seen with --saw.');
  const told = saw.map(readingIn);
  const dossier = await dossierIn(folder);
  const row = copy === undefined ? null : copyIn(dossier, copy);
  const newest = newestDay(dossier);
  const day = on ?? (newest === null ? '' : isoOf(newest));
  const kept = copy === undefined ? { readings: [], named: [] } : seenOf(dossier, copy);
  const known = knownOf(dossier, day, row?.('service') !== undefined && row('service') !== '');
  const others = copiesIn(dossier).filter((id) => id !== copy);
  const seen = { ...kept, readings: [...kept.readings, ...told] };
  const found = identifyCopy({ ...known, others: others.map((id) => seenOf(dossier, id)) }, seen);
  if (json) await writeJson({ ...found, as_of: day }, terminal);
  else
    await terminal.write(
      identifiedReport(found, {
        seen,
        day,
        called: calledIn(dossier.evidence).printing,
        width: terminal.width,
      }),
    );
  return 0;
}

/** `trait=value`. */
function readingIn(text: string): Reading {
  const [trait = '', ...rest] = text.split('=');
  const value = readValue(rest.join('='));
  if (trait.trim() === '' || rest.length === 0)
    throw new WrongCall(`--saw ${text}: a trait and its value are expected, such as finish=foil.`);
  if (!value.ok) throw new WrongCall(`--saw ${text}: ${value.expected} is expected.`);
  return { trait: trait.trim(), value: value.value, sees: null, sd: null };
}

function copiesIn({ tables }: Dossier): string[] {
  const table = tables.get('desk/copies.csv');
  return table ? [...table.rows()].map((row) => table.value(row, 'id')) : [];
}

function copyIn({ tables }: Dossier, copy: string): (column: string) => string {
  const table = tables.get('desk/copies.csv');
  for (const row of table?.rows() ?? [])
    if (table?.value(row, 'id') === copy) return (column) => table.value(row, column);
  throw new WrongCall(`There is no copy ${copy} in desk/copies.csv.`);
}
