import type { Chance } from './chance.ts';
import { grouped } from './groups.ts';
import type { Derivation, Habits, Release } from './types.ts';
import type { World } from './world.ts';

/** What one source has looked at: one product, in the markets that it covers. */
export interface Run {
  readonly product: string;
  readonly releases: readonly Release[];
}

export interface Covered {
  readonly source: Habits;
  readonly runs: readonly Run[];
  readonly derivations: readonly Derivation[];
}

/** Rates of copying in one dossier. */
interface Copying {
  readonly share: number;
  readonly second: number;
}

const COPYING_KINDS = ['checklist', 'forum', 'video', 'store-listing', 'book', 'other'];

/**
 * Which source covers which runs, in order of publication, until they have about `rows` rows; and
 * who derives which runs from whom. A derived source leans towards what its parent covers.
 */
export function cover(
  chance: Chance,
  world: World,
  sources: readonly Habits[],
  rows: number,
  share: number,
): Covered[] {
  const copying: Copying = { share, second: 0.2 };
  const byProduct = grouped(world.releases, (release) => release.product);
  const ordered = [...sources].sort((a, b) => a.published - b.published);
  const weights = ordered.map(() => 0.12 + chance.gamma(1));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const covered: Covered[] = [];
  let missing = 0;
  ordered.forEach((source, i) => {
    const parents = parentsOf(chance, source, covered, copying);
    const quota = (rows * weights[i]!) / total + missing;
    const wanted = interest(chance, world, parents, [...byProduct.keys()]);
    const runs = takeRuns(chance, world, source, wanted, byProduct, quota);
    missing = quota - rowsIn(world, runs);
    covered.push({ source, runs, derivations: derive(chance, source, runs, parents) });
  });
  return covered;
}

/** Rows that a release may be expected to give a source that states it. */
const expected = (world: World, release: Release) =>
  Math.max(
    1,
    release.printings.reduce((sum, id) => sum + 0.7 * world.fame.get(id)!, 0),
  );

const rowsIn = (world: World, runs: readonly Run[]) =>
  runs.reduce((sum, run) => sum + run.releases.reduce((n, r) => n + expected(world, r), 0), 0);

function parentsOf(
  chance: Chance,
  source: Habits,
  earlier: readonly Covered[],
  copying: Copying,
): Covered[] {
  const able = earlier.filter((one) => one.runs.length > 0);
  const likes = COPYING_KINDS.includes(source.kind) ? 1.4 : 0.4;
  if (able.length === 0 || !chance.yes(copying.share ** (1 / likes))) return [];
  const first = able[chance.weighted(able.map((one) => 1 + one.runs.length))]!;
  if (able.length < 3 || !chance.yes(copying.second)) return [first];
  const second = chance.pick(able);
  return second === first ? [first] : [first, second];
}

/** Products in the order in which a source takes them up. */
function interest(
  chance: Chance,
  world: World,
  parents: readonly Covered[],
  products: readonly string[],
): string[] {
  const taken = new Set(parents.flatMap((parent) => parent.runs.map((run) => run.product)));
  const span = world.last - world.first + 1;
  const era = chance.yes(0.5) ? chance.uniform() : undefined;
  const appeal = products.map((product) => {
    const when = (world.base.get(product)! - world.first) / span;
    const away = era === undefined ? 0 : Math.abs(when - era) * 2;
    return { product, at: chance.uniform() + away - (taken.has(product) ? 1 : 0) };
  });
  return appeal.sort((a, b) => a.at - b.at).map((one) => one.product);
}

function takeRuns(
  chance: Chance,
  world: World,
  source: Habits,
  products: readonly string[],
  byProduct: ReadonlyMap<string, readonly Release[]>,
  quota: number,
): Run[] {
  const breadth = chance.yes(0.35) ? 1 : chance.between(0.05, 1);
  const markets = new Map<string, boolean>([[source.home, true]]);
  const runs: Run[] = [];
  let rows = 0;
  for (const product of products) {
    if (rows >= quota) break;
    const releases = byProduct.get(product)!.filter((release) => {
      if (!markets.has(release.market)) markets.set(release.market, chance.yes(breadth));
      return markets.get(release.market) && chance.yes(0.93);
    });
    if (releases.length === 0) continue;
    runs.push({ product, releases });
    rows += rowsIn(world, [{ product, releases }]);
  }
  return runs;
}

function derive(
  chance: Chance,
  source: Habits,
  runs: readonly Run[],
  parents: readonly Covered[],
): Derivation[] {
  const taken = new Set<string>();
  return parents.flatMap((parent) => {
    const extent = chance.between(0.5, 1);
    const common = parent.runs
      .map((run) => run.product)
      .filter((p) => runs.some((run) => run.product === p));
    const products = common.filter((p) => !taken.has(p) && chance.yes(extent));
    for (const product of products) taken.add(product);
    if (products.length === 0) return [];
    const rate = chance.between(0.6, 0.98);
    return [{ source: source.id, from: parent.source.id, products, rate, cited: chance.yes(0.3) }];
  });
}
