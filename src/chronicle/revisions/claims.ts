import type { ClaimChange, FrozenClaim } from './types.ts';

/** Ways in which two claims are taken for one, the surest first. */
const SAME: readonly ((claim: FrozenClaim) => string)[] = [
  ({ source, property, about, locator, value }) =>
    JSON.stringify([source, property, about, locator, value]),
  ({ source, property, about, locator }) => JSON.stringify([source, property, about, locator]),
  ({ source, property, about, value }) => JSON.stringify([source, property, about, value]),
];
/** A claim less probable than this is taken for a slip. */
const SLIP = 0.5;

/**
 * What became of the claims. A claim with another value at the same place of the same source was
 * misread before; a source does not change what it printed.
 */
export function claimChanges(
  before: readonly FrozenClaim[],
  after: readonly FrozenClaim[],
): readonly ClaimChange[] {
  let [old, now] = [[...before], [...after]];
  const pairs: [FrozenClaim, FrozenClaim][] = [];
  for (const nameOf of SAME) {
    const open = new Map<string, FrozenClaim[]>();
    for (const claim of old) open.set(nameOf(claim), [...(open.get(nameOf(claim)) ?? []), claim]);
    now = now.filter((claim) => {
      const match = open.get(nameOf(claim))?.shift();
      if (match) pairs.push([match, claim]);
      return match === undefined;
    });
    old = [...open.values()].flat();
  }
  return [
    ...now.map((claim): ClaimChange => ({ what: 'new', before: null, after: claim })),
    ...old.map((claim): ClaimChange => ({ what: 'withdrawn', before: claim, after: null })),
    ...pairs.flatMap(([was, is]) => changeOf(was, is)),
  ];
}

function changeOf(before: FrozenClaim, after: FrozenClaim): ClaimChange[] {
  if (before.value !== after.value) return [{ what: 'misread', before, after }];
  if (before.locator !== after.locator) return [{ what: 'place', before, after }];
  if (before.pRight === null || after.pRight === null) return [];
  const [was, is] = [before.pRight < SLIP, after.pRight < SLIP];
  return was === is ? [] : [{ what: is ? 'slip' : 'no-slip', before, after }];
}
