import type { Claim } from '../../evidence/index.ts';
import { type ClaimsChange, isClaim } from './compare.ts';

/** A claim, as it is now, where it stands among the claims there were. */
export interface Placed {
  readonly claim: Claim;
  /** Its number among the claims there were; for one that is new a number between two of those. */
  readonly at: number;
}

/** What became of the claims of a dossier in a change. */
export interface Moved {
  /** By how much the row of each claim there was has moved. */
  readonly rows: Int32Array;
  /** 1 for each claim there was that is gone. */
  readonly isGone: Uint8Array;
  readonly gone: readonly number[];
  /** Claims that are new. */
  readonly come: readonly Placed[];
}

/** Follows the claims of a dossier through a change. */
export function followed(nClaims: number, change: ClaimsChange): Moved {
  const rows = new Int32Array(nClaims);
  const isGone = new Uint8Array(nClaims).fill(1);
  const come: Placed[] = [];
  let last = -1;
  let between = 0;
  for (const piece of change) {
    if (isClaim(piece)) {
      between++;
      come.push({ claim: piece, at: last + between / (change.length + 1) });
      continue;
    }
    rows.fill(piece.rows, piece.from, piece.to);
    isGone.fill(0, piece.from, piece.to);
    last = piece.to - 1;
    between = 0;
  }
  const gone: number[] = [];
  for (let c = isGone.indexOf(1); c >= 0; c = isGone.indexOf(1, c + 1)) gone.push(c);
  return { rows, isGone, gone, come };
}
