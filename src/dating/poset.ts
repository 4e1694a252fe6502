import { type Chance, pick } from '../maths/index.ts';
import { cutset, type Order } from './cutset.ts';

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
  eachCase(events, cut, 0, (fixed) => {
    const { marginals, total } = forestMarginals(fixed, orders, cut);
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

function multiply(out: Float64Array, by: Float64Array): void {
  for (let j = 0; j < out.length; j++) out[j]! *= by[j]!;
}

/** Runs through every combination of days of the events in the cutset. */
function eachCase(
  events: readonly DatedEvent[],
  cut: readonly number[],
  at: number,
  act: (events: readonly DatedEvent[]) => void,
): void {
  const e = cut[at];
  if (e === undefined) {
    act(events);
    return;
  }
  const { first, weights } = events[e]!;
  for (let j = 0; j < weights.length; j++) {
    if (weights[j]! <= 0) continue;
    const fixed = { first: first + j, weights: [weights[j]!] };
    eachCase(
      events.map((event, i) => (i === e ? fixed : event)),
      cut,
      at + 1,
      (inner) => act(inner.map((event, i) => (i === e ? widen(fixed, events[e]!, j) : event))),
    );
  }
}

/** The event at its full length, with weight on one day only. */
function widen(fixed: DatedEvent, { first, weights }: DatedEvent, j: number): DatedEvent {
  const wide = new Float64Array(weights.length);
  wide[j] = fixed.weights[0]!;
  return { first, weights: wide };
}

interface Walk {
  /** Events from leaves to roots. */
  readonly up: readonly number[];
  /** For each event, the fact that ties it to its parent, or undefined for a root. */
  readonly tie: readonly (Order | undefined)[];
}

/** Marginals where the facts, but for those at the fixed events, form a forest. */
function forestMarginals(
  events: readonly DatedEvent[],
  orders: readonly Order[],
  fixed: readonly number[],
) {
  const cut = events.map((event, e) =>
    fixed.includes(e) ? event : withFixed(events, orders, fixed, e),
  );
  const inner = orders.filter(
    ({ earlier, later }) => !fixed.includes(earlier) && !fixed.includes(later),
  );
  const { up, tie } = walkForest(events.length, inner);
  const { inward, messages } = messagesUp(cut, up, tie);
  let total = 1;
  for (const e of up) if (!tie[e]) total *= sum(inward[e]!);
  for (const { earlier, later, strict } of orders) {
    if (!fixed.includes(earlier) || !fixed.includes(later)) continue;
    const gap = dayOfOnly(events[later]!) - dayOfOnly(events[earlier]!);
    if (gap < 0 || (strict && gap === 0)) total = 0;
  }
  return { marginals: marginalsDown(cut, { up, tie }, inward, messages), total };
}

/** Each event's marginal, from the roots to the leaves, once the messages have come up. */
function marginalsDown(
  events: readonly DatedEvent[],
  { up, tie }: Walk,
  inward: readonly Float64Array[],
  messages: readonly Float64Array[],
): Float64Array[] {
  const marginals = inward.map((m) => m.slice());
  for (let i = up.length - 1; i >= 0; i--) {
    const e = up[i]!;
    const order = tie[e];
    if (order) {
      const parent = order.earlier === e ? order.later : order.earlier;
      const rest = marginals[parent]!.map((p, j) =>
        messages[e]![j]! > 0 ? p / messages[e]![j]! : 0,
      );
      const down = message(
        events[parent]!.first,
        rest,
        events[e]!,
        order,
        order.earlier === parent,
      );
      multiply(marginals[e]!, down);
    }
    const scale = sum(marginals[e]!);
    if (scale > 0) for (let j = 0; j < marginals[e]!.length; j++) marginals[e]![j]! /= scale;
  }
  return marginals;
}

function sum(values: Float64Array): number {
  let total = 0;
  for (let j = 0; j < values.length; j++) total += values[j]!;
  return total;
}

function dayOfOnly({ first, weights }: DatedEvent): number {
  for (let j = 0; j < weights.length; j++) if (weights[j]! > 0) return first + j;
  throw new RangeError('a fixed event has no day');
}

/** An event's weights, cut to what the facts leave beside events that are fixed to a day. */
function withFixed(
  events: readonly DatedEvent[],
  orders: readonly Order[],
  fixed: readonly number[],
  e: number,
): DatedEvent {
  const { first, weights } = events[e]!;
  const out = Float64Array.from(weights);
  for (const { earlier, later, strict } of orders) {
    const other = earlier === e ? later : later === e ? earlier : -1;
    if (!fixed.includes(other)) continue;
    const day = dayOfOnly(events[other]!);
    for (let j = 0; j < out.length; j++) {
      const gap = later === e ? first + j - day : day - first - j;
      if (gap < 0 || (strict && gap === 0)) out[j] = 0;
    }
  }
  return { first, weights: out };
}

function walkForest(n: number, orders: readonly Order[]): Walk {
  const ties: Order[][] = Array.from({ length: n }, () => []);
  for (const order of orders) {
    ties[order.earlier]!.push(order);
    ties[order.later]!.push(order);
  }
  const tie: (Order | undefined)[] = new Array(n).fill(undefined);
  const down: number[] = [];
  const seen = new Uint8Array(n);
  for (let root = 0; root < n; root++) {
    if (seen[root]) continue;
    seen[root] = 1;
    const from = down.length;
    down.push(root);
    for (let i = from; i < down.length; i++) {
      for (const order of ties[down[i]!]!) {
        const other = order.earlier === down[i] ? order.later : order.earlier;
        if (seen[other]) continue;
        seen[other] = 1;
        tie[other] = order;
        down.push(other);
      }
    }
  }
  return { up: down.reverse(), tie };
}

function messagesUp(
  events: readonly DatedEvent[],
  up: readonly number[],
  tie: readonly (Order | undefined)[],
) {
  const inward = events.map(({ weights }) => Float64Array.from(weights));
  const messages: Float64Array[] = events.map(() => new Float64Array(0));
  for (const e of up) {
    const order = tie[e];
    if (!order) continue;
    const parent = order.earlier === e ? order.later : order.earlier;
    messages[e] = message(
      events[e]!.first,
      inward[e]!,
      events[parent]!,
      order,
      order.earlier === e,
    );
    multiply(inward[parent]!, messages[e]!);
  }
  return { inward, messages };
}

/**
 * For each day of `to`: the weight of the days of the sender that a fact allows beside it.
 *
 * @param earlier whether the sender is the earlier of the two
 */
function message(
  first: number,
  from: Float64Array,
  to: DatedEvent,
  { strict }: Order,
  earlier: boolean,
): Float64Array {
  const upTo = new Float64Array(from.length + 1);
  for (let j = 0; j < from.length; j++) upTo[j + 1] = upTo[j]! + from[j]!;
  const held = (n: number) => upTo[Math.min(from.length, Math.max(0, n))]!;
  const out = new Float64Array(to.weights.length);
  for (let j = 0; j < out.length; j++) {
    const day = to.first + j;
    if (earlier) out[j] = held(day - first + (strict ? 0 : 1));
    else out[j] = upTo[from.length]! - held(day - first + (strict ? 1 : 0));
  }
  return out;
}

/**
 * Draws one day for each event from their joint distribution under facts that form a forest, and
 * gives each one's marginal distribution, normalised.
 *
 * @param wanted whether the marginals are wanted; none are given otherwise
 * @returns undefined where the facts leave no day
 */
export function drawForest(
  events: readonly DatedEvent[],
  orders: readonly Order[],
  random: Chance,
  wanted: boolean,
): { days: Int32Array; marginals: Float64Array[] } | undefined {
  const { up, tie } = walkForest(events.length, orders);
  const { inward, messages } = messagesUp(events, up, tie);
  const days = new Int32Array(events.length);
  for (let i = up.length - 1; i >= 0; i--) {
    const e = up[i]!;
    const weights = besideParent(events[e]!.first, inward[e]!, e, tie[e], days);
    const total = sum(weights);
    if (!(total > 0)) return undefined;
    days[e] = events[e]!.first + pick(random, weights, total);
  }
  return { days, marginals: wanted ? marginalsDown(events, { up, tie }, inward, messages) : [] };
}

/** The weights of an event's days that the fact towards its drawn parent allows. */
function besideParent(
  first: number,
  inward: Float64Array,
  e: number,
  order: Order | undefined,
  days: Int32Array,
): Float64Array {
  if (!order) return inward;
  const parent = days[order.earlier === e ? order.later : order.earlier]!;
  return inward.map((w, j) => {
    const gap = order.earlier === e ? parent - first - j : first + j - parent;
    return gap < 0 || (order.strict && gap === 0) ? 0 : w;
  });
}
