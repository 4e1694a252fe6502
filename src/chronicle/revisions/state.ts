import type { Evidence } from '../../evidence/index.ts';
import { claimKeys } from '../account/claim-keys.ts';
import type { Figure } from '../figures/types.ts';
import { canonicalFiles, hashList, type Research } from './canonical.ts';
import type { FrozenClaim, Revision, State } from './types.ts';

/** What a state is made from. */
export interface StateGround {
  /** ISO 8601; a step has no clock. */
  readonly day: string;
  readonly madeWith: string;
  readonly research: Research;
  readonly evidence: Evidence;
  readonly figures: readonly Figure[];
  /** That the value holds, by row of `claims.csv`. */
  readonly pRight: ReadonlyMap<number, number>;
  /** SHA-512 of a text's UTF-8, in hexadecimal. */
  readonly sha512: (text: string) => string;
}

/** The state of a dossier as it stands. Equal contents give equal bytes, whatever order rows stand in. */
export function stateOf(ground: StateGround): State {
  const { day, madeWith, research, figures, sha512 } = ground;
  const hashes = [...canonicalFiles(research)].map(([name, text]) => [name, sha512(text)] as const);
  const files = Object.fromEntries(hashes);
  const sorted = [...figures].sort((a, b) => (a.name < b.name ? -1 : 1));
  return {
    format: 1,
    number: null,
    day,
    sha512: sha512(hashList(files)),
    files,
    madeWith,
    figures: sorted,
    claims: frozenClaims(ground),
  };
}

function frozenClaims({ evidence, pRight }: StateGround): FrozenClaim[] {
  const keys = claimKeys(evidence.claims);
  const home = new Set(
    evidence.sources.flatMap(({ id, publish }) => (publish === 'no' ? [id] : [])),
  );
  return evidence.claims
    .map((claim) => ({
      key: keys.get(claim.row) ?? '',
      source: claim.source,
      property: claim.property,
      about: claim.printings.length > 0 ? claim.printings.join('|') : (claim.product ?? ''),
      value: claim.value,
      locator: claim.locator ?? '',
      pRight: pRight.get(claim.row) ?? null,
      home: home.has(claim.source),
    }))
    .sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** The text of `revisions/NUMBER.json`: an entry of a list on each line, so that tools compare it by lines. */
export function revisionText(revision: Revision): string {
  const parts = Object.entries(revision).map(([key, value]) => {
    const entries = Array.isArray(value) ? value.map((one) => JSON.stringify(one)) : null;
    const text = entries === null ? JSON.stringify(value, null, 1) : `[\n${entries.join(',\n')}\n]`;
    return `${JSON.stringify(key)}: ${text}`;
  });
  return `{\n${parts.join(',\n')}\n}\n`;
}
