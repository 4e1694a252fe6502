import type { Evidence } from '../evidence/index.ts';
import type { Population } from './types.ts';

/** A claim that a dated block of certificates makes of a release. */
export interface BoundClaim {
  readonly printing: string;
  /** The source that stands for the service's labels; empty where `sources.csv` has none. */
  readonly source: string;
  readonly property: 'seen-by';
  readonly value: string;
  readonly locator: string;
}

/**
 * The claims that certificates in dated blocks make, one a printing, by the oldest block: it was out
 * by the last day of the block's period. Those that stand in the evidence already are left out.
 */
export function boundClaimsOf({ printings }: Population, evidence: Evidence): BoundClaim[] {
  return printings.flatMap(({ id, seen_by: bound }): BoundClaim[] => {
    if (bound === null) return [];
    const { day, service, certificate } = bound;
    const source = evidence.sources.find((one) => one.service === service)?.id ?? '';
    const stands = evidence.claims.some(
      (claim) =>
        claim.property === 'seen-by' &&
        claim.source === source &&
        claim.value === day &&
        claim.printings.length === 1 &&
        claim.printings[0] === id,
    );
    const locator = `certificate ${certificate}, in a block of numbers used until ${day}`;
    return stands ? [] : [{ printing: id, source, property: 'seen-by', value: day, locator }];
  });
}
