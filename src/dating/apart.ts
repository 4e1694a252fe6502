import type { Claim, Evidence } from '../evidence/index.ts';
import { compile } from './compile.ts';
import { releasesOf } from './events.ts';
import { planFor, sample } from './run.ts';
import { type DayWeights, spreadDays } from './spread.ts';
import { averageCells } from './tally.ts';

/** Odds, before evidence, that a printing came on another day than those it should have come with. Judgement. */
const PRIOR_ODDS = 0.05;
/** Claims on a printing of its own that it takes to set it apart. */
const LEAST_CLAIMS = 2;
/** A short look, shorter where there is much to see: whether one day or two is a question of large odds. */
const LOOK = { begin: 0, chains: 1, warmUp: 12, keep: 12, sources: 2 };

/**
 * Printings that the evidence sets apart from the release that they should belong to, as parts of it:
 * those of one part share a day. Weighed are only printings of which sources name other days
 * throughout; each is dated by its own claims, and the two explanations are compared: one day for
 * both, or a day for each.
 *
 * @returns the part of each printing that is set apart, from 1; the others are part 0
 */
export function partsByEvidence(evidence: Evidence, seed: number): ReadonlyMap<string, number> {
  const doubted = doubtedGroups(evidence);
  const parts = new Map<string, number>();
  if (doubted.length === 0) return parts;
  const alone = new Map(doubted.flatMap((group) => group.map((id, n) => [id, n + 1] as const)));
  const part = partOf(evidence, alone);
  const { problem, releases } = compile(part, alone);
  const quick = planFor(problem, 'first');
  const plan = quick.chains === 1 ? quick : LOOK;
  const cells = averageCells(sample(part, problem, plan, seed).tally);
  const range = problem.last - problem.first + 1;
  for (const group of doubted) {
    const heads: DayWeights[] = [];
    for (const id of group) {
      const e = releases.eventOf[releases.printingIndex.get(id)!]!;
      const days = spreadDays(problem, e, cells, [1, 1, 1, 1, 1, 1, 1]);
      const same = heads.findIndex((head) => oneDay(head, days, range) > PRIOR_ODDS);
      if (same < 0) heads.push(days);
      const own = same < 0 ? heads.length - 1 : same;
      if (own > 0) parts.set(id, own);
    }
  }
  return parts;
}

/** The printings in doubt and what is said of them alone. */
function partOf(evidence: Evidence, doubted: ReadonlyMap<string, number>): Evidence {
  return {
    ...evidence,
    printings: evidence.printings.filter(({ id }) => doubted.has(id)),
    contents: [],
    claims: evidence.claims.filter(({ printings: [id, more] }) => id && !more && doubted.has(id)),
    orders: [],
  };
}

/** Bayes factor of one day for both against a day for each: the sum of p₁p₂ over the flat prior. */
function oneDay(a: DayWeights, b: DayWeights, range: number): number {
  const other = new Map(Array.from(b.days, (day, j) => [day, b.p[j]!]));
  let sum = 0;
  a.days.forEach((day, j) => {
    sum += a.p[j]! * (other.get(day) ?? 0);
  });
  return sum * range;
}

/** Members of a release of which sources name days of their own, and no day for both. */
function doubtedGroups(evidence: Evidence): string[][] {
  return doubtedAmong(grouped(evidence), evidence.claims).map(({ claimed }) => claimed);
}

/** Printings of each release, by the dossier's tables alone. */
export function grouped(evidence: Evidence): string[][] {
  return releasesOf(evidence).events.map(({ members }) =>
    members.map((i) => evidence.printings[i]!.id),
  );
}

/** A release of which some printings may have to be set apart. */
interface Doubted {
  readonly ids: readonly string[];
  /** Those that enough claims are on singly, most first. */
  readonly claimed: string[];
}

/**
 * The releases of which sources name days of their own for some printings, and no day for all.
 *
 * @param groups printings of each release
 * @param claims at least those on these printings
 */
export function doubtedAmong(
  groups: readonly (readonly string[])[],
  claims: readonly Claim[],
): Doubted[] {
  const named = new Map<string, number[]>();
  for (const { property, printings, date } of claims) {
    if (property !== 'on-sale' || printings.length !== 1) continue;
    const [range, more] = date?.ranges ?? [];
    if (!range || more || range.first !== range.last) continue;
    named.set(printings[0]!, [...(named.get(printings[0]!) ?? []), range.first]);
  }
  return groups.flatMap((ids) => {
    const claimed = ids
      .filter((id) => (named.get(id)?.length ?? 0) >= LEAST_CLAIMS)
      .sort((a, b) => named.get(b)!.length - named.get(a)!.length);
    const isApart = claimed.some(
      (id) => !named.get(id)!.some((day) => named.get(claimed[0]!)!.includes(day)),
    );
    return isApart ? [{ ids, claimed }] : [];
  });
}
