import type { DatedPrinting, Dating } from '../types.ts';
import type { Run } from './compare.ts';

/** What is different in a dating after some claims were changed and dated anew. */
export interface DatingChange
  extends Pick<Dating, 'order' | 'first' | 'sequences' | 'leads' | 'monte_carlo_error'> {
  /** The printings that were dated anew. */
  readonly printings: readonly DatedPrinting[];
  /** Rows of claims that have moved: those from `from` up to but not including `to`, by `rows`. */
  readonly rows: readonly Run[];
}

/**
 * A dating with a change made to it: what was not touched is the same object as before, save where
 * rows of its claims have moved. It is provisional, so its effort is `first`.
 */
export function withChange(dating: Dating, { printings, rows, ...rest }: DatingChange): Dating {
  const anew = new Map(printings.map((printing) => [printing.id, printing]));
  return {
    ...dating,
    ...rest,
    printings: dating.printings.map((p) => anew.get(p.id) ?? withRows(p, rows)),
    effort: 'first',
  };
}

function withRows(printing: DatedPrinting, rows: readonly Run[]): DatedPrinting {
  const moved = (row: number) => rows.find(({ from, to }) => from <= row && row < to)?.rows ?? 0;
  if (rows.length === 0 || printing.claims.every(({ row }) => moved(row) === 0)) return printing;
  const claims = printing.claims.map((claim) => ({ ...claim, row: claim.row + moved(claim.row) }));
  return { ...printing, claims };
}
