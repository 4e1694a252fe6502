import type { Claim, Source } from '../../src/evidence/index.ts';
import { seeded } from './chance.ts';
import { cover } from './coverage.ts';
import { holds, written } from './dates.ts';
import { otherClaims } from './properties.ts';
import { simulateSoftware } from './software/index.ts';
import { makeSources } from './sources.ts';
import { type Row, stateAll } from './statements.ts';
import { temperOf } from './tempers.ts';
import type { ClaimTruth, Simulated, Wish } from './types.ts';
import { blurred, giftClaims } from './vague.ts';
import { makeWorld } from './world.ts';

/** How many sources a dossier of this size has when nothing else is wished. */
function usualSources(printings: number): number {
  if (printings <= 20) return 9;
  return Math.min(100, Math.round(20 + 22 * Math.log10(printings / 60) + printings / 400));
}

/**
 * A dossier with its truth, every rate drawn anew within wide ranges and all chance from the seed.
 * The number of claims is met as far as the sources' coverage allows. Throws RangeError for a
 * dossier without printings or claims.
 */
export function simulate(wish: Wish): Simulated {
  if (!(wish.printings >= 1) || !(wish.claims >= 1)) throw new RangeError('nothing to simulate');
  if (wish.style === 'software') return simulateSoftware(wish);
  const chance = seeded(wish.seed);
  const temper = temperOf(wish);
  const world = makeWorld(chance, wish.printings, temper);
  const count = wish.sources ?? usualSources(wish.printings);
  const habits = makeSources(chance, world, count, temper);
  const others = Math.round(wish.claims * chance.within(temper.others));
  const share = chance.within(temper.copying);
  const covered = cover(chance, world, habits, (wish.claims - others) * 1.1, share);
  const stated = stateAll(chance, world, covered);
  const rows = thinned(stated, wish.claims - others, (list) => chance.shuffle(list));
  const derivations = covered.flatMap((one) => one.derivations);
  const gifts = giftClaims(chance, world, habits);
  const made = otherClaims(chance, world, habits, wish.claims - rows.length - gifts.claims.length);
  const vague = blurred(chance, world, rows.map(onSale), chance.within(temper.vague));
  const claims = [...vague, ...gifts.claims, ...made.claims].map((claim, i) => ({
    ...claim,
    row: i + 2,
  }));
  const truths = [...rows.map(truthOf), ...gifts.truths, ...made.truths].map((one, i) => ({
    ...one,
    row: i + 2,
  }));
  const sources: Source[] = [...habits, ...made.services].map((one) => ({
    id: one.id,
    kind: one.kind,
    cites: derivations.filter((d) => d.source === one.id && d.cited).map((d) => d.from),
  }));
  return {
    evidence: {
      printings: world.printings,
      products: world.products,
      contents: world.contents,
      sources,
      claims,
      orders: made.orders,
    },
    truth: {
      days: new Map(world.releases.flatMap((r) => r.printings.map((id) => [id, r.day] as const))),
      releases: world.releases,
      claims: new Map(truths.map((one) => [one.row, one])),
      habits,
      derivations,
      weekdays: world.weekdays,
    },
  };
}

/** At most `most` rows, those that go being single rows anywhere. */
function thinned(rows: readonly Row[], most: number, shuffle: (list: number[]) => number[]): Row[] {
  const kept = new Set(shuffle(rows.map((_, i) => i)).slice(0, most));
  return rows.filter((_, i) => kept.has(i));
}

function onSale(row: Row): Omit<Claim, 'row'> {
  const stated = { stated_on: written(row.source.published, 'year') };
  return {
    printings: [row.printing],
    source: row.source.id,
    property: 'on-sale',
    value: row.date.text,
    date: row.date,
    ...(row.source.published % 2 === 0 && stated),
  };
}

function truthOf(row: Row): Omit<ClaimTruth, 'row'> {
  return { how: row.how, pen: row.pen, right: holds(row.date, row.release.day) };
}
