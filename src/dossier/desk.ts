import type { Counted, Limit, Meaning, Setting, Side } from '../bench/index.ts';
import { settingOf } from '../bench/index.ts';
import type { DeadlineRow } from '../market/index.ts';
import { rowsOf } from './rows-of.ts';
import type { Dossier } from './types.ts';

/** A row of `desk/copies.csv`. */
export interface CopyRow {
  readonly id: string;
  readonly printing: string;
  readonly status: string;
  readonly parcel: string;
  readonly bought: string;
  readonly service: string;
  /** The seller's words, title and text. */
  readonly listing: string;
}

/** The copies of a dossier. */
export function copiesOf(dossier: Dossier): readonly CopyRow[] {
  return rowsOf(dossier, 'desk/copies.csv', (cell) => ({
    id: cell('id'),
    printing: cell('printing'),
    status: cell('status'),
    parcel: cell('parcel'),
    bought: cell('bought'),
    service: cell('service'),
    listing: [cell('described_as'), cell('listing')].filter(Boolean).join('\n'),
  }));
}

/** The deadlines of a dossier. */
export function deadlinesOf(dossier: Dossier): readonly DeadlineRow[] {
  return rowsOf(dossier, 'desk/deadlines.csv', (cell) => ({
    copy: cell('copy'),
    parcel: cell('parcel'),
    against: cell('against'),
    startsFrom: cell('starts_from'),
    startsOn: cell('starts_on'),
    days: Number.parseInt(cell('days'), 10),
    counts: cell('counts') === 'working' ? 'working' : 'calendar',
    done: cell('done'),
  }));
}

/** What condition words mean to the collector. */
export function conditionWordsOf(dossier: Dossier): readonly Meaning[] {
  return rowsOf(dossier, 'desk/words.csv', (cell) => ({
    words: cell('words'),
    side: (cell('side') || null) as Side | null,
    measure: cell('measure') as Meaning['measure'],
    atMost: cell('at_most') === '' ? null : Number(cell('at_most')),
  }));
}

/** What the grade of a copy rests on: its service, else the one that counted most; null without any. */
export function gradeSettingOf(
  dossier: Dossier,
  copy: Pick<CopyRow, 'service' | 'printing'>,
): Setting | null {
  const services = rowsOf(dossier, 'services.csv', (cell) => ({
    service: cell('id'),
    grades: cell('grades').split('|').filter(Boolean),
  }));
  const population = rowsOf(
    dossier,
    'population.csv',
    (cell): Counted => ({
      service: cell('service'),
      asOf: cell('as_of'),
      label: cell('label'),
      printing: cell('printing'),
      grade: cell('grade'),
      count: Number(cell('count')),
    }),
  );
  const counted = (service: string) =>
    population.reduce((sum, row) => (row.service === service ? sum + row.count : sum), 0);
  const chosen =
    services.find(({ service }) => service === copy.service) ??
    [...services].sort((a, b) => counted(b.service) - counted(a.service))[0];
  if (!chosen || chosen.grades.length < 2) return null;
  const { service } = chosen;
  const printings = copy.printing.split('|').map((id) => id.trim());
  const own = <T extends { readonly service: string }>(rows: readonly T[]) =>
    rows.filter((row) => row.service === service);
  const outcomes = own(
    rowsOf(dossier, 'desk/batches.csv', (cell) => ({
      service: cell('service'),
      grade: cell('grade'),
    })),
  ).map(({ grade }) => grade);
  const limits = own(
    rowsOf(dossier, 'desk/thresholds.csv', (cell): Limit & { readonly service: string } => ({
      service: cell('service'),
      grade: cell('grade'),
      side: cell('side') as Side,
      measure: cell('measure') as Limit['measure'],
      atMost: Number(cell('at_most')),
    })),
  );
  return settingOf(chosen, printings, population, outcomes, limits);
}
