import type { Dating } from '../../dating/index.ts';
import type { Evidence } from '../../evidence/index.ts';
import { claimKeys } from '../account/claim-keys.ts';
import type { Figure } from '../figures/types.ts';

/** The figures `release.PRINTING` of an answer of dating, with the claims that each rests on. */
export function releaseFigures(
  evidence: Evidence,
  dating: Dating,
  asOf: string | null,
): readonly Figure[] {
  const keys = claimKeys(evidence.claims);
  return dating.printings.map(({ id, claims, ...dated }) => ({
    name: `release.${id}`,
    value: {
      is: 'release',
      best: dated.best,
      edtf: dated.edtf,
      p: dated.p_best,
      interval: dated.interval95,
      pInterval: dated.p_interval,
      state: dated.state,
    },
    unit: null,
    asOf,
    claims: claims.flatMap(({ row }) => keys.get(row) ?? []),
    printing: id,
  }));
}
