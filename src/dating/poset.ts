import { cutset, type Order } from './cutset.ts';
import { gather, marginalsDown, Room, type Spread, sum, walkForest } from './forest.ts';

/** An event's weights for the days from `first` on. */
export interface DatedEvent {
  readonly first: number;
  readonly weights: ArrayLike<number>;
}

/** Most combinations of days of the events that are fixed so that the rest is a forest. */
const MOST_CASES = 200_000;

/**
 * Exact marginal distributions of events under sequence facts, given each event's own weights:
 * messages along the facts where they form a forest (`pearl:1988`), and where they do not, with as
 * few events as needed fixed to each of their days in turn (cutset conditioning). Normalised to one.
 *
 * @throws RangeError if no days satisfy the facts, or if too many events would have to be fixed
 */
export function sequencePosterior(
  events: readonly DatedEvent[],
  orders: readonly Order[],
): { weights: number[][] } {
  const sums = events.map(({ weights }) => new Float64Array(weights.length));
  const cut = cutset(events.length, orders);
  const cases = cut.reduce((n, e) => n * events[e]!.weights.length, 1);
  if (cases > MOST_CASES) {
    throw new RangeError(
      `sequencePosterior would have to try ${cases} cases, at most ${MOST_CASES}`,
    );
  }
  const spreads = events.map(
    ({ first, weights }): Spread => ({
      days: Int32Array.from(weights, (_, j) => first + j),
      weights: Float64Array.from(weights),
    }),
  );
  const room = new Room();
  eachCase(spreads, cut, 0, (fixed) => {
    room.clear();
    const { marginals, total } = forestMarginals(fixed, orders, cut, room);
    if (total === 0) return;
    marginals.forEach((marginal, e) => {
      addTo(sums[e]!, marginal, total);
    });
  });
  const total = sums[0]?.reduce((a, b) => a + b, 0) ?? 1;
  if (!(total > 0)) throw new RangeError('sequencePosterior finds no days that satisfy the orders');
  return { weights: sums.map((sum) => Array.from(sum, (p) => p / total)) };
}

function addTo(out: Float64Array, values: Float64Array, times: number): void {
  for (let j = 0; j < out.length; j++) out[j]! += values[j]! * times;
}

/** Runs through every combination of days of the events in the cutset. */
function eachCase(
  events: readonly Spread[],
  cut: readonly number[],
  at: number,
  act: (events: readonly Spread[]) => void,
): void {
  const e = cut[at];
  if (e === undefined) {
    act(events);
    return;
  }
  const { days, weights } = events[e]!;
  for (let j = 0; j < weights.length; j++) {
    if (weights[j]! <= 0) continue;
    const only = new Float64Array(weights.length);
    only[j] = weights[j]!;
    const fixed = events.map((event, i) => (i === e ? { days, weights: only } : event));
    eachCase(fixed, cut, at + 1, act);
  }
}

/** Marginals where the facts, but for those at the fixed events, form a forest. */
function forestMarginals(
  events: readonly Spread[],
  orders: readonly Order[],
  fixed: readonly number[],
  room: Room,
) {
  const cut = events.map((event, e) =>
    fixed.includes(e) ? event : withFixed(events, orders, fixed, e),
  );
  const inner = orders.filter(
    ({ earlier, later }) => !fixed.includes(earlier) && !fixed.includes(later),
  );
  const walk = walkForest(events.length, inner);
  const gathered = gather(cut, walk, room);
  let total = 1;
  for (const e of walk.up) if (!walk.tie[e]) total *= sum(gathered.inward[e]!);
  for (const { earlier, later, strict, sameDay = 1 } of orders) {
    if (!fixed.includes(earlier) || !fixed.includes(later)) continue;
    const gap = dayOfOnly(events[later]!) - dayOfOnly(events[earlier]!);
    if (gap < 0 || (strict && gap === 0)) total = 0;
    else if (gap === 0) total *= sameDay;
  }
  return { marginals: marginalsDown(cut, walk, gathered, room), total };
}

function dayOfOnly({ days, weights }: Spread): number {
  for (let j = 0; j < weights.length; j++) if (weights[j]! > 0) return days[j]!;
  throw new RangeError('a fixed event has no day');
}

/** An event's weights, cut to what the facts leave beside events that are fixed to a day. */
function withFixed(
  events: readonly Spread[],
  orders: readonly Order[],
  fixed: readonly number[],
  e: number,
): Spread {
  const { days, weights } = events[e]!;
  const out = weights.slice();
  for (const { earlier, later, strict, sameDay = 1 } of orders) {
    const other = earlier === e ? later : later === e ? earlier : -1;
    if (!fixed.includes(other)) continue;
    const day = dayOfOnly(events[other]!);
    for (let j = 0; j < out.length; j++) {
      const gap = later === e ? days[j]! - day : day - days[j]!;
      if (gap < 0 || (strict && gap === 0)) out[j] = 0;
      else if (gap === 0) out[j]! *= sameDay;
    }
  }
  return { days, weights: out };
}
