import type { DossierPrices } from '../../dossier/index.ts';
import type { Decision, Desk, DeskDecisions, Prices } from '../../market/index.ts';
import type { Shown } from '../session.ts';

/** A desk on a day with the prices that hold then. */
export interface Priced {
  readonly shown: Shown;
  readonly found: DossierPrices;
  readonly desk: Desk;
  readonly prices: Prices;
}

/** Everything that was decided on a desk. */
export interface Decided extends DeskDecisions {
  readonly desk: Desk;
  readonly decisions: readonly Decision[];
}
