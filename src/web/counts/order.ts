import type { WirePrintingCount, WireServiceCount } from '../../contract/index.ts';

/** A printing at a service: one row of the top rates. */
export interface RateRow {
  readonly id: string;
  readonly count: WireServiceCount;
}

/** By what top rates can be sorted. */
export const ORDERS = [
  ['shrunk', 'shrunk rate, highest first'],
  ['raw', 'raw rate, highest first'],
  ['sure', 'lower end of the shrunk interval, highest first'],
  ['copies', 'graded copies, most first'],
  ['release', 'release, earliest first'],
] as const;

export type Order = (typeof ORDERS)[number][0];

const VALUE: Record<Exclude<Order, 'release'>, (count: WireServiceCount) => number> = {
  shrunk: ({ shrunk }) => shrunk,
  raw: ({ rate }) => rate ?? -1,
  sure: ({ shrunk95 }) => shrunk95[0],
  copies: ({ total }) => total,
};

/**
 * The printings that a service lists, sorted as the reader chose.
 *
 * @param lanes ids in order of release
 */
export function rateRows(
  printings: readonly WirePrintingCount[],
  service: string,
  order: Order,
  lanes: readonly string[],
): readonly RateRow[] {
  const place = new Map(lanes.map((id, at) => [id, at]));
  const rows = printings
    .flatMap(({ id, services }) =>
      services.filter((one) => one.service === service).map((count) => ({ id, count })),
    )
    .sort((a, b) => (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0));
  if (order === 'release') return rows;
  const value = VALUE[order];
  return rows.sort((a, b) => value(b.count) - value(a.count));
}
