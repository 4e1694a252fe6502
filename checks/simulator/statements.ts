import type { EdtfDate } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import type { Covered } from './coverage.ts';
import { PRECISIONS, type Precision, written } from './dates.ts';
import { grouped } from './groups.ts';
import { mistaken, type Surroundings, slipped } from './mistakes.ts';
import { type Derivation, type Habits, MISTAKES, type Release } from './types.ts';
import type { World } from './world.ts';

/** One row that states when a printing went on sale. */
export interface Row {
  readonly source: Habits;
  readonly release: Release;
  readonly printing: string;
  readonly date: EdtfDate;
  readonly how: string;
  readonly pen: boolean;
}

/** What a source says of a release before it writes its rows. */
interface Statement {
  readonly day: number;
  readonly precision: Precision;
  readonly mark: '' | '~' | '?';
  readonly how: string;
}

/** A source's written row together with what it was made of, for those who copy it. */
interface Kept extends Row {
  readonly day: number;
  readonly precision: Precision;
}

/** Chance of being right at a release, by the source's own rates. */
export function rightChance(
  source: Habits,
  release: Release,
  world: Pick<World, 'first' | 'last'>,
): number {
  const when = (release.day - world.first) / (world.last - world.first + 1) - 0.5;
  const away = release.market === source.home ? 0 : source.abroad;
  return 1 / (1 + Math.exp(-(source.accuracy - away + source.drift * when)));
}

/** All on-sale rows, source by source in order of publication. */
export function stateAll(chance: Chance, world: World, covered: readonly Covered[]): Row[] {
  const around = surroundings(world.releases);
  const kept = new Map<string, Kept>();
  const rows: Row[] = [];
  for (const { source, runs, derivations } of covered) {
    const fullness = chance.between(0.4, 1);
    const expands = chance.yes(0.1);
    for (const run of runs) {
      const from = derivations.find((one) => one.products.includes(run.product));
      for (const release of run.releases) {
        const own = state(chance, world, source, release, around(release));
        const copies = from !== undefined && chance.yes(from.rate);
        const known = world.fame;
        const rowsOf = release.printings.filter((id) => chance.yes(fullness * known.get(id)!));
        const least = [...release.printings].sort((a, b) => known.get(b)! - known.get(a)!)[0]!;
        for (const printing of rowsOf.length > 0 ? rowsOf : [least]) {
          const said = copies ? copied(kept, from, release, printing, own, expands) : own;
          const row = writeRow(chance, source, release, printing, said);
          kept.set(`${source.id} ${printing}`, row);
          rows.push(row);
        }
      }
    }
  }
  return rows;
}

/** Siblings of a release, and the rows above and below it in a table by market and day. */
export function surroundings(releases: readonly Release[]): (release: Release) => Surroundings {
  const byProduct = grouped(releases, (release) => release.product);
  const next = new Map<Release, Release[]>();
  for (const table of grouped(releases, (release) => release.market).values()) {
    const sorted = [...table].sort((a, b) => a.day - b.day);
    sorted.forEach((release, i) => {
      next.set(
        release,
        [sorted[i - 1], sorted[i + 1]].filter((one) => one !== undefined),
      );
    });
  }
  return (release) => ({
    siblings: byProduct.get(release.product)!.filter((one) => one.day !== release.day),
    neighbours: next.get(release)!,
  });
}

function state(
  chance: Chance,
  world: World,
  source: Habits,
  release: Release,
  around: Surroundings,
): Statement {
  const mark = chance.yes(source.approximate) ? '~' : chance.yes(source.uncertain) ? '?' : '';
  const drawn = PRECISIONS[chance.weighted(source.precision)]!;
  const fine = drawn === 'day' || drawn === 'interval';
  const precision = release.coarse && fine ? (chance.yes(0.75) ? 'month' : 'year') : drawn;
  const moved = chance.yes(source.lagShare);
  if (!moved && chance.yes(rightChance(source, release, world))) {
    return { day: release.day, precision, mark, how: 'right' };
  }
  const how = moved ? 'other-moment' : MISTAKES[chance.weighted(source.mistakes)]!;
  const day = mistaken(chance, how, release, source, around);
  return { day, precision, mark, how: day === release.day ? 'right' : how };
}

/** What a source writes when it takes a row from another, in its own way of writing. */
function copied(
  kept: ReadonlyMap<string, Kept>,
  from: Derivation,
  release: Release,
  printing: string,
  own: Statement,
  expands: boolean,
): Statement {
  const ids = [printing, ...release.printings];
  const source = ids.map((id) => kept.get(`${from.from} ${id}`)).find((row) => row !== undefined);
  if (source === undefined) return own;
  const finer = PRECISIONS.indexOf(own.precision) < PRECISIONS.indexOf(source.precision);
  const first = source.precision === 'month' && expands && own.precision === 'day';
  const day = first ? source.date.ranges[0]!.first : source.day;
  const precision = first ? 'day' : finer ? source.precision : own.precision;
  return { day, precision, mark: own.mark, how: 'copied' };
}

function writeRow(
  chance: Chance,
  source: Habits,
  release: Release,
  printing: string,
  said: Statement,
): Kept {
  const pen = chance.yes(source.pen);
  const day = pen ? slipped(chance, said.day) : said.day;
  const [before, after] = [chance.whole(0, 6), chance.whole(0, 6)];
  const date = written(day, said.precision, said.mark, before, after);
  const changed = date.text !== written(said.day, said.precision, said.mark, before, after).text;
  return {
    source,
    release,
    printing,
    date,
    how: said.how,
    pen: changed,
    day,
    precision: said.precision,
  };
}
