import type { Claim, Evidence } from '../../evidence/index.ts';
import { doubtedAmong } from '../apart.ts';
import { type Compiled, layOut } from '../compile.ts';
import type { Releases } from '../events.ts';
import { coverShares, DayCounts, filledShares, type Link } from '../links.ts';
import type { Statement } from '../statements.ts';
import { type EventSupport, SMALL_REACH, supportsOf } from '../support.ts';
import type { Survey } from '../survey.ts';
import { aroundOf, type HeldStatement, namesDay } from './around.ts';
import { type Gathered, gather } from './gather.ts';
import type { Kept } from './kept.ts';
import type { Moved } from './moved.ts';
import { Rows } from './rows.ts';

/** Releases laid out by themselves: some to be dated anew, and those about them, whose days are held. */
export interface Part {
  readonly compiled: Compiled;
  /** The evidence, with the claims that concern the releases to be dated anew and no others. */
  readonly evidence: Evidence;
  /** The number in the whole problem of each release. */
  readonly events: readonly number[];
  /** How many releases, the first ones, are dated anew. */
  readonly anew: number;
  /** The view in the whole problem of each view whose release is held; −1 for the others. */
  readonly views: Int32Array;
}

/**
 * Lays out the releases that a change touches. Undefined where a new claim lies outside the range of
 * days that the dossier was dated over, or where other printings may belong together now.
 */
export function layPart(kept: Kept, moved: Moved, touched: ReadonlySet<number>): Part | undefined {
  const whole = kept.fit.compiled;
  if (!moved.come.every(({ claim }) => isWithin(claim, whole.survey))) return undefined;
  const gathered = gather(kept, moved, touched);
  if (mayRegroup(kept, moved, touched, gathered)) return undefined;
  const local = new Places(touched);
  const fresh = gathered.statements.map(local.statement);
  const supports = supportsAnew(kept, touched, fresh, local);
  const rows = new Rows(kept, touched, gathered.statements, gathered.placeOf);
  const around = aroundOf(kept, touched, gathered.statements, rows, (e, day) =>
    supports[local.of(e)]!.points.has(day),
  );
  const held = around.held.map(({ index }) => local.statement(whole.statements[index]!));
  const statements = [...fresh, ...held];
  const links = [...around.links, ...around.held.map((one) => one.links)].map((list) =>
    list.map((link): Link => ({ ...link, event: local.of(link.event) })),
  );
  const survey: Survey = {
    ...whole.survey,
    eras: Uint8Array.from(local.events, (e) => whole.survey.eras[e]!),
    links,
    filled: filledShares(statements, countsNow(whole.survey, gathered)),
    covers: coversNow(kept, fresh, around.held),
  };
  const laid = layOut(
    gathered.evidence,
    releasesAt(whole.releases, local.events, touched.size),
    statements,
    survey,
    supportsOfAll(kept, supports, statements, local, touched.size),
  );
  const views = Int32Array.from(laid.problem.viewStatement, (i) =>
    i < fresh.length ? -1 : around.held[i - fresh.length]!.view,
  );
  const { evidence } = gathered;
  return { compiled: laid, evidence, events: local.events, anew: touched.size, views };
}

/** Numbers releases anew as they are met, those that are given first. */
class Places {
  readonly events: number[];
  private readonly places: Map<number, number>;

  constructor(events: Iterable<number>) {
    this.events = [...events];
    this.places = new Map(this.events.map((e, i) => [e, i]));
  }

  readonly of = (e: number): number => {
    const known = this.places.get(e);
    if (known !== undefined) return known;
    this.places.set(e, this.events.length);
    return this.events.push(e) - 1;
  };

  readonly statement = (statement: Statement): Statement => ({
    ...statement,
    events: statement.events.map(this.of),
  });
}

/** Whether the change may tell otherwise which printings of a release belong together. */
function mayRegroup(
  { fit, doubted, ids }: Kept,
  { come, gone }: Moved,
  touched: ReadonlySet<number>,
  { evidence }: Gathered,
): boolean {
  const changed = [...gone.map((c) => fit.evidence.claims[c]!), ...come.map(({ claim }) => claim)];
  if (changed.some(({ printings: [id, more] }) => id && !more && doubted.has(id))) return true;
  const groups = Array.from(touched, (e) => ids[e]!);
  const known = groups.filter(([id]) => id && !doubted.has(id));
  return doubtedAmong(known, evidence.claims).length > 0;
}

function isWithin({ date }: Claim, { first, last }: Survey): boolean {
  if (!date) return true;
  const days = date.ranges.flatMap((r) => [r.first, r.last]).filter(Number.isFinite);
  return days.every((day) => day >= first && day <= last);
}

/** The releases of a part, with the sequence facts among the first `anew` of them. */
function releasesAt(whole: Releases, events: readonly number[], anew: number): Releases {
  const places = new Map(events.slice(0, anew).map((e, i) => [e, i]));
  const among = (orders: readonly (readonly [number, number])[]) =>
    orders.flatMap(([a, b]) => {
      const [i, j] = [places.get(a), places.get(b)];
      return i === undefined || j === undefined ? [] : [[i, j] as const];
    });
  const eventOf = new Int32Array(whole.eventOf.length).fill(-1);
  events.forEach((e, i) => {
    for (const member of whole.events[e]!.members) eventOf[member] = i;
  });
  return {
    ...whole,
    events: events.map((e) => whole.events[e]!),
    eventOf,
    orders: among(whole.orders),
    weakOrders: among(whole.weakOrders),
  };
}

/** Where the days of releases to be dated anew may lie. */
function supportsAnew(
  { fit: { compiled } }: Kept,
  touched: ReadonlySet<number>,
  fresh: readonly Statement[],
  local: Places,
): EventSupport[] {
  const { problem, survey } = compiled;
  const among = (e: number) =>
    touched.has(e) ? survey.siblings[e]!.filter((o) => touched.has(o)).map(local.of) : [];
  const siblings = local.events.map(among);
  const releases = releasesAt(compiled.releases, local.events, touched.size);
  const supports = supportsOf(fresh, { ...survey, siblings }, releases);
  if (survey.reach < SMALL_REACH) return supports;
  for (const e of touched) {
    const { product } = compiled.releases.events[e]!;
    for (const h of compiled.releases.eventsOfProduct.get(product) ?? []) {
      if (touched.has(h) || !survey.siblings[h]!.includes(e)) continue;
      for (let v = problem.viewStart[h]!; v < problem.viewStart[h + 1]!; v++)
        if (namesDay(problem, v)) supports[local.of(e)]!.points.add(problem.viewLo[v]!);
    }
  }
  return supports;
}

function supportAt(points: readonly number[]): EventSupport {
  return { points: new Set(points), near: [], cuts: new Set(), named: [] };
}

/** A release that is held has no days but those of the snapshots; one without statements needs none. */
function supportsOfAll(
  { fit: { tally } }: Kept,
  anew: readonly EventSupport[],
  statements: readonly Statement[],
  local: Places,
  nAnew: number,
): EventSupport[] {
  const stated = new Set(statements.flatMap(({ events }) => events));
  return local.events.map((whole, e) => {
    if (e < nAnew) return anew[e]!;
    if (!stated.has(e)) return supportAt([]);
    return supportAt(tally.snapshots.map(({ day }) => day[whole]!));
  });
}

function countsNow({ counts }: Survey, { old, statements }: Gathered): DayCounts {
  const now = new DayCounts(counts);
  for (const statement of old) now.add(statement, -1);
  for (const statement of statements) now.add(statement, 1);
  return now;
}

/** Covers of releases that are held are not laid out: what they are worth to a statement is known. */
function coversNow(
  { fit: { compiled } }: Kept,
  fresh: readonly Statement[],
  held: readonly HeldStatement[],
): Float32Array {
  const { viewCover } = compiled.problem;
  return Float32Array.of(...coverShares(fresh), ...held.map(({ view }) => viewCover[view]!));
}
