import type { Fact } from '../../evidence/index.ts';
import type { PublishedClaims } from './release.ts';
import type { Dispute } from './types.ts';

/** The facts of each printing on which sources differ. */
export function disputesOf(
  facts: readonly Fact[],
  { byRow, keys }: PublishedClaims,
): ReadonlyMap<string, readonly Dispute[]> {
  const disputes = new Map<string, Dispute[]>();
  for (const { printing, property, values, disputed, why } of facts) {
    if (!disputed) continue;
    const told = values.map(({ value, p, claims }) => ({
      value,
      p,
      claims: claims.flatMap((row) => (byRow.has(row) ? (keys.get(row) ?? []) : [])),
    }));
    const one = { property, values: told, why };
    disputes.set(printing, [...(disputes.get(printing) ?? []), one]);
  }
  return disputes;
}
