import {
  identificationKey,
  identify as identifyCopy,
  type Reading,
  readValue,
} from '../../catalogue/index.ts';
import { type Dossier, knownOf, newestDay, readerOf, seenOf } from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { calledIn } from '../report/called.ts';
import { identifiedReport } from '../report/identified.ts';
import { keyReport } from '../report/key.ts';
import { keyPage } from '../report/key-page.ts';
import type { Terminal } from '../terminal.ts';
import { writeAsked } from '../written.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `identify` was called with. */
export interface IdentifyOptions {
  readonly copy?: string;
  readonly saw?: readonly string[];
  readonly on?: string;
  readonly key?: boolean;
  readonly out?: string;
  readonly json?: boolean;
}

/** Names the printing that a copy is of, from what the desk holds of it or from what is told. */
export async function identify(
  folder: string,
  options: IdentifyOptions,
  terminal: Terminal,
): Promise<0> {
  const { copy, saw = [], on, json = false } = options;
  if (options.key) return await writeKey(folder, options, terminal);
  if (options.out !== undefined) throw new WrongCall('--out takes the page of --key.');
  if (copy === undefined && saw.length === 0)
    throw new WrongCall('A copy of the desk is wanted with --copy, or what was seen with --saw.');
  const told = saw.map(readingIn);
  const dossier = await dossierIn(folder);
  const row = copy === undefined ? null : copyIn(dossier, copy);
  const day = dayOf(dossier, on);
  const known = knownOf(dossier, day, row?.('service') !== undefined && row('service') !== '');
  const read = readerOf(dossier, known);
  const kept = copy === undefined ? { readings: [], named: [] } : seenOf(dossier, copy, read);
  const others = copiesIn(dossier).filter((id) => id !== copy);
  const seen = { ...kept, readings: [...kept.readings, ...told] };
  const found = identifyCopy(
    { ...known, others: others.map((id) => seenOf(dossier, id, read)) },
    seen,
  );
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

/** The key to all printings of a dossier, as text, as JSON, or as a page of A4 in a file. */
async function writeKey(
  folder: string,
  { copy, saw, on, json = false, out }: IdentifyOptions,
  terminal: Terminal,
): Promise<0> {
  if (copy !== undefined || saw !== undefined)
    throw new WrongCall('--key leads to all printings: it takes neither --copy nor --saw.');
  const dossier = await dossierIn(folder);
  const day = dayOf(dossier, on);
  const key = identificationKey(knownOf(dossier, day, false));
  const called = calledIn(dossier.evidence).printing;
  const around = { title: dossier.manifest.title, day, called };
  if (out !== undefined) {
    await writeAsked(out, keyPage(key, around));
    terminal.say(`Written: ${out}\n`);
  }
  if (json) await writeJson({ ...key, as_of: day }, terminal);
  else if (out === undefined) await terminal.write(keyReport(key, around, terminal.width));
  return 0;
}

/** The day that an answer holds for; empty where the dossier has none. */
function dayOf(dossier: Dossier, on: string | undefined): string {
  const newest = newestDay(dossier);
  return on ?? (newest === null ? '' : isoOf(newest));
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
