import type { Charge } from './types.ts';

/**
 * The owner's entry for a parcel: of those that fit, the one that names the origin before one that
 * leaves it open, then the one that names the carrier, then the newest. Undefined where none fits.
 */
export function chargeFor(
  charges: readonly Charge[],
  { origin, shippedBy }: { readonly origin: string; readonly shippedBy: string },
): Charge | undefined {
  let best: Charge | undefined;
  let bestRank = '';
  for (const charge of charges) {
    if (charge.origin && charge.origin !== origin) continue;
    if (charge.carrier && charge.carrier !== shippedBy) continue;
    const named = Number(charge.origin !== '') + Number(charge.carrier !== '');
    const rank = `${named}${Number(charge.origin !== '')}${charge.validFrom}`;
    if (best === undefined || rank > bestRank) {
      best = charge;
      bestRank = rank;
    }
  }
  return best;
}
