import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import type { SeenOnFilm } from '../../chronicle/index.ts';
import { copiesOf, type Dossier } from '../../dossier/index.ts';
import { addRows } from '../added.ts';
import { keptExamination } from '../examine/keep.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { writeAsked } from '../written.ts';
import { WrongCall } from '../wrong-call.ts';

const EVENTS = 'desk/events.csv';

interface Examined {
  readonly marks?: readonly object[];
}

/**
 * Writes what was seen on film to the desk: a row of the events, and a mark of the copy's
 * examination whose place is the moment in the recording. What stands there already is not written
 * again. Throws `WrongCall`, and writes nothing, where a copy is not on the desk or what is kept of its
 * examination cannot be read.
 */
export async function writeSeen(
  folder: string,
  dossier: Dossier,
  seen: readonly SeenOnFilm[],
  recording: string,
  terminal: Terminal,
): Promise<void> {
  const copies = new Set(copiesOf(dossier).map(({ id }) => id));
  const strange = seen.find(({ copy }) => !copies.has(copy));
  if (strange)
    throw new WrongCall(`The marks name the copy ${strange.copy}, which is not on the desk.`);
  const fresh = seen.filter((one) => !isThere(dossier, one));
  // All that could be refused is read before anything is written.
  const kept = new Map<string, Examined>();
  for (const { copy } of fresh) kept.set(copy, await keptExamination(folder, copy));
  if (fresh.length > 0)
    await addRows(
      folder,
      EVENTS,
      fresh.map(({ clock, copy, note }) => ({
        at: clock,
        copy,
        what: 'seen on film',
        file: recording,
        note,
      })),
    );
  for (const [copy, before] of kept) {
    const mine = fresh.filter((one) => one.copy === copy);
    await addMarks(folder, copy, before, mine, recording);
  }
  terminal.say(`Written to ${EVENTS}: ${counted(fresh.length, 'row')}.\n`);
}

function isThere({ tables }: Dossier, { clock, copy, note }: SeenOnFilm): boolean {
  const table = tables.get(EVENTS);
  if (table === undefined) return false;
  for (const row of table.rows()) {
    const same = [
      ['at', clock],
      ['copy', copy],
      ['note', note],
    ] as const;
    if (same.every(([column, value]) => table.value(row, column) === value)) return true;
  }
  return false;
}

/** Marks beside those that are there, as W3C Web Annotations on a moment of the film (`w3c:annotation`). */
async function addMarks(
  folder: string,
  copy: string,
  before: Examined,
  seen: readonly SeenOnFilm[],
  recording: string,
): Promise<void> {
  const file = join(folder, 'desk', 'examinations', `${copy}.json`);
  const marks = seen.map(({ at, clock, note }) => ({
    '@context': 'http://www.w3.org/ns/anno.jsonld',
    id: `urn:uuid:${randomUUID()}`,
    type: 'Annotation',
    motivation: 'tagging',
    created: clock,
    body: [{ type: 'TextualBody', purpose: 'commenting', value: note }],
    target: {
      source: recording,
      selector: {
        type: 'FragmentSelector',
        conformsTo: 'http://www.w3.org/TR/media-frags/',
        value: `t=${at}`,
      },
    },
  }));
  await writeAsked(
    file,
    `${JSON.stringify({ ...before, marks: [...(before.marks ?? []), ...marks] }, null, 1)}\n`,
  );
}
