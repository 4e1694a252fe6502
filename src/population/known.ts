import type { Evidence } from '../evidence/index.ts';
import type { Known } from './low.ts';
import type { Records, ServiceCount } from './types.ts';

/** What is known of each printing that tells few copies from few submissions, up to a day. */
export function knownOf(
  ids: readonly string[],
  services: readonly (readonly ServiceCount[])[],
  records: Records,
  evidence: Evidence,
  on: number,
): Known[] {
  const offered = new Map(ids.map((id) => [id, { raw: 0, graded: 0 }]));
  for (const { printing, day, raw, graded } of records.offers) {
    const sum = offered.get(printing);
    if (sum === undefined || day > on) continue;
    sum.raw += raw;
    sum.graded += graded;
  }
  const odds = new Map<string, number>();
  for (const { printing, odds: chance } of evidence.contents)
    if (chance !== undefined) odds.set(printing, Math.max(chance, odds.get(printing) ?? 0));
  const made = madeOf(evidence);
  return ids.map((id, at) => ({
    graded: (services[at] as readonly ServiceCount[]).reduce((sum, { total }) => sum + total, 0),
    offeredRaw: offered.get(id)?.raw ?? 0,
    offeredGraded: offered.get(id)?.graded ?? 0,
    odds: odds.get(id),
    made: made.get(id),
    price: records.prices.get(id),
  }));
}

/** Copies made by the print runs that are claimed: of the printing, or of its products by the odds. */
function madeOf({ claims, contents }: Evidence): Map<string, number> {
  const runs = claims.flatMap(({ property, value, printings, product }) => {
    const run = Number(value);
    const [printing, another] = printings;
    if (property !== 'print-run' || !(run > 0) || another !== undefined) return [];
    return [{ run, of: printing ?? product ?? '' }];
  });
  const run = new Map(runs.map((one) => [one.of, one.run]));
  const made = new Map<string, number>();
  for (const { product, printing, odds = 1 } of contents) {
    const boxes = run.get(product);
    if (boxes !== undefined) made.set(printing, (made.get(printing) ?? 0) + boxes * odds);
  }
  return new Map([...made, ...run]);
}
