import type { SourceKind } from '../../evidence/index.ts';
import type { Problem } from '../problem.ts';
import { COMMON, usualLogOdds } from '../rates.ts';
import { isOpen, N_READINGS, OTHER_MOMENT } from '../readings.ts';
import type { Snapshot } from '../snapshot.ts';

/** A cell of the rate table. */
export interface RateCell {
  readonly source: number;
  readonly market: string;
  readonly era: number;
}

/** The cells of the rate table of a whole dossier. */
interface RateCells extends Pick<Problem, 'rateSource' | 'rateEra'> {
  /** Name of each cell's market. */
  readonly markets: readonly string[];
}

/**
 * Shares of the readings for a source in a market and era in which it has said nothing so far: the
 * usual ones of its kind with the effects learned elsewhere, and none of its own where none is known.
 */
export function unseenShares(
  known: RateCells,
  kinds: readonly SourceKind[],
  { rates, lagOf }: Pick<Snapshot, 'rates' | 'lagOf'>,
  cell: RateCell,
): Float64Array {
  const logs = usualLogOdds(kinds[cell.source]!);
  rates.value.forEach((value, x) => {
    const c = rates.cells[rates.cellStart[x]!]!;
    if (!concerns(rates.level[x]!, c, known, kinds, cell)) return;
    const r = rates.reading[x]!;
    if (r !== COMMON) logs[r]! += value;
    else for (let q = 1; q < N_READINGS; q++) if (q !== OTHER_MOMENT) logs[q]! += value;
  });
  const lagged = lagOf[cell.source]! >= 0;
  const odds = logs.map((log, r) => (isOpen(r, lagged) ? Math.exp(log) : 0));
  const sum = odds.reduce((a, b) => a + b, 0);
  return odds.map((o) => o / sum);
}

/** Whether the effects of a level that a cell has are those of another cell too. */
function concerns(
  level: number,
  c: number,
  { rateSource, rateEra, markets }: RateCells,
  kinds: readonly SourceKind[],
  { source, market, era }: RateCell,
): boolean {
  const sameKind = kinds[rateSource[c]!] === kinds[source];
  switch (level) {
    case 0:
    case 1:
      return true;
    case 2:
    case 3:
      return sameKind;
    case 4:
      return sameKind && rateEra[c] === era;
    case 5:
    case 6:
      return rateSource[c] === source;
    default:
      return rateSource[c] === source && markets[c] === market;
  }
}
