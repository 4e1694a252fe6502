import type { DateProperty, Evidence } from '../evidence/index.ts';
import type { ReleaseEvent, Releases } from './events.ts';
import type { Statement } from './statements.ts';
import type { Views } from './views.ts';

/** Dossiers whose evidence spans fewer days than this have one era. */
const ERA_SPAN = 6 * 365;
const ERAS = 3;

/** The era of each event, by the middle of what is said of it: thirds of the dossier's evidence. */
export function erasOf(statements: readonly Statement[], nEvents: number): Uint8Array {
  const days: number[][] = Array.from({ length: nEvents }, () => []);
  for (const { events, values, property } of statements) {
    if (property !== 'on-sale') continue;
    const { lo, hi } = values[0]!.spans[0]!;
    const day = Number.isFinite(lo) ? lo : hi;
    for (const e of events) days[e]!.push(day);
  }
  const middles = days.map((list) => list.sort((a, b) => a - b)[list.length >> 1] ?? Number.NaN);
  const known = middles.filter((d) => !Number.isNaN(d)).sort((a, b) => a - b);
  if (known.length < ERAS || known.at(-1)! - known[0]! < ERA_SPAN) return new Uint8Array(nEvents);
  const cuts = [known[Math.floor(known.length / 3)]!, known[Math.floor((2 * known.length) / 3)]!];
  return Uint8Array.from(middles, (d) =>
    Number.isNaN(d) || d < cuts[0]! ? 0 : d < cuts[1]! ? 1 : 2,
  );
}

/** Numbers the cells of the rate table: source × market × era, as far as they occur. */
export function ratesOf(
  statements: readonly Statement[],
  views: Views,
  releases: Pick<Releases, 'events'>,
  eras: Uint8Array,
) {
  const index = new Map<string, number>();
  const source: number[] = [];
  const market: number[] = [];
  const era: number[] = [];
  const markets = new Map<string, number>();
  const viewRate = new Int32Array(views.nViews).fill(-1);
  for (let v = 0; v < views.nViews; v++) {
    if (statements[views.viewStatement[v]!]!.property !== 'on-sale') continue;
    const e = views.viewEvent[v]!;
    const name = releases.events[e]!.market;
    if (!markets.has(name)) markets.set(name, markets.size);
    const key = `${views.viewSource[v]} ${markets.get(name)} ${eras[e]}`;
    let c = index.get(key);
    if (c === undefined) {
      c = index.size;
      index.set(key, c);
      source.push(views.viewSource[v]!);
      market.push(markets.get(name)!);
      era.push(eras[e]!);
    }
    viewRate[v] = c;
  }
  return {
    viewRate,
    nRates: index.size,
    rateSource: Int32Array.from(source),
    rateMarket: Int32Array.from(market),
    rateEra: Int32Array.from(era),
  };
}

/** Runs of one source over one product and property, in which derivation is judged as a whole. */
export function runsOf(
  statements: readonly Statement[],
  views: Views,
  releases: Pick<Releases, 'events'>,
) {
  const index = new Map<string, number>();
  const groups = new Map<string, number>();
  const members: number[][] = [];
  const source: number[] = [];
  const group: number[] = [];
  const viewRun = new Int32Array(views.nViews).fill(-1);
  statements.forEach((statement, i) => {
    if (statement.events.length !== 1 || !copyable(statement.property)) return;
    const event = releases.events[statement.events[0]!]!;
    const place = placeOf(statement, event);
    if (!groups.has(place)) groups.set(place, groups.size);
    const key = `${statement.source} ${place}`;
    let run = index.get(key);
    if (run === undefined) {
      run = index.size;
      index.set(key, run);
      members.push([]);
      source.push(statement.source);
      group.push(groups.get(place)!);
    }
    members[run]!.push(views.firstView[i]!);
    viewRun[views.firstView[i]!] = run;
  });
  const runStart = new Int32Array(members.length + 1);
  members.forEach((list, r) => {
    runStart[r + 1] = runStart[r]! + list.length;
  });
  return {
    nRuns: members.length,
    runSource: Int32Array.from(source),
    runGroup: Int32Array.from(group),
    runStart,
    runViews: Int32Array.from(members.flat()),
    viewRun,
  };
}

/** Where a statement stands for derivation: its property and its product, or else its market. */
export function placeOf(
  { property }: Pick<Statement, 'property'>,
  { product, market }: ReleaseEvent,
): string {
  return `${property} ${product || `market ${market}`}`;
}

function copyable(property: DateProperty): boolean {
  return property === 'on-sale' || property === 'label-year';
}

/** The histogram of each view: by property, and by periodical for the lead of covers. */
export function seriesHists(
  statements: readonly Statement[],
  views: Views,
  evidence: Pick<Evidence, 'products'>,
  releases: Pick<Releases, 'events'>,
  fixed: number,
  histOf: (property: DateProperty) => number,
) {
  const products = new Map(evidence.products.map((p) => [p.id, p]));
  const series = new Map<string, number>();
  const viewHist = new Int32Array(views.nViews);
  for (let v = 0; v < views.nViews; v++) {
    const { property } = statements[views.viewStatement[v]!]!;
    viewHist[v] = histOf(property);
    if (property !== 'cover-date') continue;
    const name = products.get(releases.events[views.viewEvent[v]!]!.product)?.series;
    if (!name) continue;
    if (!series.has(name)) series.set(name, series.size);
    viewHist[v] = fixed + series.get(name)!;
  }
  return { viewHist, nHists: fixed + series.size };
}
