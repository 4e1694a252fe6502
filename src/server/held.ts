import type { DossierAnswer } from '../contract/index.ts';
import type { Dossier } from '../dossier/index.ts';

/** States of a copy that lies on the collector's desk or is on its way there or out for grading. */
const HOLDING = new Set(['bought', 'arrived', 'kept', 'disputed', 'submitted']);

type Held = DossierAnswer['held'];

/**
 * How many copies the collector holds, by printing, and nothing else of the desk. A copy of one of
 * several printings, not known which, counts under `perhaps` for each; ids that were given up and
 * wholes are read as what they stand for.
 */
export function heldOnWire({ tables, forwards, evidence }: Dossier): Held {
  const copies = tables.get('desk/copies.csv');
  if (!copies) return [];
  const alternatives = alternativesIn({ tables, forwards, evidence });
  const held = new Map(evidence.printings.map(({ id }) => [id, { copies: 0, perhaps: 0 }]));
  for (const row of copies.rows()) {
    if (!HOLDING.has(copies.value(row, 'status'))) continue;
    const ids = alternatives(copies.value(row, 'printing'));
    for (const id of ids) {
      const count = held.get(id);
      if (count) count[ids.size === 1 ? 'copies' : 'perhaps'] += 1;
    }
  }
  return [...held]
    .filter(([, { copies, perhaps }]) => copies + perhaps > 0)
    .map(([printing, counts]) => ({ printing, ...counts }));
}

/** Reads a cell that names printings: `a|b`, given-up ids and wholes become printings of their own. */
function alternativesIn({
  tables,
  forwards,
  evidence,
}: Pick<Dossier, 'tables' | 'forwards' | 'evidence'>) {
  const rows = tables.get('printings.csv');
  const stands = (id: string) => forwards.get(id) ?? id;
  const whole = new Map<string, string>();
  for (const row of rows?.rows() ?? []) {
    const part = rows?.value(row, 'part_of') ?? '';
    if (part !== '' && part !== 'none') whole.set(rows?.value(row, 'id') ?? '', stands(part));
  }
  const within = (id: string, of: string) => {
    const seen = new Set<string>();
    for (let at: string | undefined = id; at !== undefined && !seen.has(at); at = whole.get(at)) {
      if (at === of) return true;
      seen.add(at);
    }
    return false;
  };
  return (cell: string): ReadonlySet<string> => {
    const named = cell.split('|').map((id) => stands(id.trim()));
    const ids = evidence.printings.map(({ id }) => id);
    return new Set(named.flatMap((of) => ids.filter((id) => within(id, of))));
  };
}
