import { seriesUpTo, tallyOf } from './newest.ts';
import type { Labelled, LabelMatch, Population, Records } from './types.ts';

/** From this probability of one printing on, and under the other for all others, a label is not in doubt. */
const SURE = 0.95;
const SLIGHT = 0.2;

function inDoubt(confirmed: Labelled['confirmed'], matches: readonly LabelMatch[]): boolean {
  if (confirmed === null || confirmed.length > 0) return false;
  return (matches[0]?.p ?? 0) < SURE || matches.filter(({ p }) => p >= SLIGHT).length > 1;
}

/** The labels of each service's newest report up to a day, with what each may stand for. */
export function labelledIn(records: Records, { matches }: Population, on: number): Labelled[] {
  const byLabel = new Map<string, LabelMatch[]>();
  for (const match of matches) {
    const key = `${match.service}\n${match.label}`;
    const list = byLabel.get(key);
    if (list === undefined) byLabel.set(key, [match]);
    else list.push(match);
  }
  return seriesUpTo(records, on).flatMap(({ service, newest }) =>
    newest.labels.map((label, at) => {
      const confirmed = newest.confirmed[at] as readonly string[] | null;
      const of = (byLabel.get(`${service.id}\n${label}`) ?? []).sort((a, b) => b.p - a.p);
      return {
        service: service.id,
        as_of: newest.asOf,
        label,
        total: tallyOf(newest, service, at).total,
        confirmed,
        matches: of,
        in_doubt: inDoubt(confirmed, of),
      };
    }),
  );
}
