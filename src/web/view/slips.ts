import type { Book, DatedClaim } from './book.ts';

/** A claim that the evidence makes improbable, for the printing of which it is. */
export interface Slip {
  readonly printing: string;
  readonly best: string | null;
  readonly claim: DatedClaim;
}

/** All slips, the surest first; one claim on several printings of one event is named once. */
export function slipsOf(book: Book): readonly Slip[] {
  const seen = new Set<number>();
  const slips: Slip[] = [];
  for (const { id, best, claims } of book.dating?.printings ?? []) {
    for (const claim of claims) {
      if (!claim.slip || seen.has(claim.row)) continue;
      seen.add(claim.row);
      slips.push({ printing: id, best, claim });
    }
  }
  return slips.sort((a, b) => a.claim.p_right - b.claim.p_right);
}
