import type { Claim } from '../../evidence/index.ts';

/**
 * A lasting name for each claim by its row: `SOURCE.PROPERTY.WHAT`, and a number where a source
 * says several things of one printing. It outlives rows that move and values that are mended.
 */
export function claimKeys(claims: readonly Claim[]): ReadonlyMap<number, string> {
  const used = new Map<string, number>();
  return new Map(
    claims.map((claim) => {
      const key = plainKey(claim);
      const n = (used.get(key) ?? 0) + 1;
      used.set(key, n);
      return [claim.row, n === 1 ? key : `${key}.${n}`];
    }),
  );
}

function plainKey({ source, property, printings, product }: Claim): string {
  const what = printings.length > 0 ? printings.join('-or-') : (product ?? 'unknown');
  return `${source || 'unnamed'}.${property}.${what}`;
}
