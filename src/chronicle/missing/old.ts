import { sayDay } from '../../evidence/index.ts';
import type { Missing, MissingGround } from './types.ts';
import { OLD_AFTER } from './why.ts';

/** Services whose newest report is older than `OLD_AFTER` days. */
export function oldCounts({ account, today }: MissingGround): Missing[] {
  const newest = new Map<string, number>();
  for (const { service, day } of account.records.reports)
    newest.set(service, Math.max(day, newest.get(service) ?? day));
  return old(newest, today).map(([of, found]) => ({
    ...{ lack: 'count', of, file: 'population.csv', row: null, column: null },
    found: `newest report of ${found}`,
  }));
}

/** Printings of which sales are known, and none of the last `OLD_AFTER` days. */
export function oldPrices({ account, today }: MissingGround): Missing[] {
  const newest = new Map<string, number>();
  for (const { printings, day } of account.prices?.ground.sales ?? [])
    for (const id of printings) newest.set(id, Math.max(day, newest.get(id) ?? day));
  return old(newest, today).map(([of, found]) => ({
    ...{ lack: 'price', of, file: 'sales.csv', row: null, column: null },
    found: `last known sale of ${found}`,
  }));
}

/** Those whose day is too long ago, the oldest first, with the day and how long ago it was. */
function old(days: ReadonlyMap<string, number>, today: number): (readonly [string, string])[] {
  return [...days]
    .filter(([, day]) => today - day > OLD_AFTER)
    .sort(([, a], [, b]) => a - b)
    .map(([id, day]) => [id, `${sayDay(day)}, ${today - day} days ago`]);
}
