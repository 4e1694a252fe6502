import { type Chance, pick } from '../maths/index.ts';
import type { Order } from './cutset.ts';

/** The days that an event may have, ascending, and their weights. */
export interface Spread {
  readonly days: Int32Array;
  readonly weights: Float64Array;
}

/** The way through events whose facts form a forest. */
export interface Walk {
  /** Events from leaves to roots. */
  readonly up: readonly number[];
  /** For each event, the fact that ties it to its parent, or undefined for a root. */
  readonly tie: readonly (Order | undefined)[];
}

/** Weights gathered from the leaves, and what each event told its parent. */
export interface Gathered {
  readonly inward: readonly Float64Array[];
  readonly messages: readonly Float64Array[];
}

/** Columns cut from pieces of memory that are used again, since a sweep asks for very many. */
export class Room {
  private weights = new Float64Array(4096);
  private days = new Int32Array(4096);
  private takenWeights = 0;
  private takenDays = 0;

  /** Lets columns cut before be written over. */
  clear(): void {
    this.takenWeights = 0;
    this.takenDays = 0;
  }

  /** A column of weights, which holds what was there before. */
  cut(length: number): Float64Array {
    if (this.takenWeights + length > this.weights.length) {
      this.weights = new Float64Array(2 * (this.weights.length + length));
      this.takenWeights = 0;
    }
    this.takenWeights += length;
    return this.weights.subarray(this.takenWeights - length, this.takenWeights);
  }

  /** A column of whole numbers, which holds what was there before. */
  cutWhole(length: number): Int32Array {
    if (this.takenDays + length > this.days.length) {
      this.days = new Int32Array(2 * (this.days.length + length));
      this.takenDays = 0;
    }
    this.takenDays += length;
    return this.days.subarray(this.takenDays - length, this.takenDays);
  }

  /** A column with the same weights as another. */
  copy(column: Float64Array): Float64Array {
    const out = this.cut(column.length);
    out.set(column);
    return out;
  }
}

/** Lays out the way through events; facts that close a circle are not followed. */
export function walkForest(n: number, orders: readonly Order[]): Walk {
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

/** Messages from the leaves to the roots (`pearl:1988`). */
export function gather(events: readonly Spread[], { up, tie }: Walk, room: Room): Gathered {
  const inward = events.map(({ weights }) => room.copy(weights));
  const messages: Float64Array[] = new Array(events.length).fill(new Float64Array(0));
  for (const e of up) {
    const order = tie[e];
    if (!order) continue;
    const parent = order.earlier === e ? order.later : order.earlier;
    messages[e] = message(
      events[e]!.days,
      inward[e]!,
      events[parent]!.days,
      order,
      order.earlier === e,
      room,
    );
    multiply(inward[parent]!, messages[e]!);
  }
  return { inward, messages };
}

/** Each event's marginal, from the roots to the leaves, once the messages have come up. */
export function marginalsDown(
  events: readonly Spread[],
  { up, tie }: Walk,
  { inward, messages }: Gathered,
  room: Room,
): Float64Array[] {
  const marginals = inward.map((m) => room.copy(m));
  for (let i = up.length - 1; i >= 0; i--) {
    const e = up[i]!;
    const order = tie[e];
    if (order) {
      const parent = order.earlier === e ? order.later : order.earlier;
      const rest = divided(marginals[parent]!, messages[e]!, room);
      const { days } = events[parent]!;
      const fromEarlier = order.earlier === parent;
      multiply(marginals[e]!, message(days, rest, events[e]!.days, order, fromEarlier, room));
    }
    const scale = sum(marginals[e]!);
    if (scale > 0) for (let j = 0; j < marginals[e]!.length; j++) marginals[e]![j]! /= scale;
  }
  return marginals;
}

/**
 * For each day of `to`: the weight of the days of the sender that a fact allows beside it.
 *
 * @param earlier whether the sender is the earlier of the two
 */
function message(
  days: Int32Array,
  weights: Float64Array,
  to: Int32Array,
  { strict, sameDay = 1 }: Order,
  earlier: boolean,
  room: Room,
): Float64Array {
  const out = room.cut(to.length);
  const gap = strict ? 1 : 0;
  const more = strict ? 0 : sameDay - 1;
  let held = 0;
  if (earlier) {
    for (let j = 0, i = 0; j < to.length; j++) {
      while (i < days.length && days[i]! <= to[j]! - gap) held += weights[i++]!;
      out[j] = held;
      if (more !== 0 && days[i - 1] === to[j]) out[j]! += more * weights[i - 1]!;
    }
    return out;
  }
  for (let j = to.length - 1, i = days.length - 1; j >= 0; j--) {
    while (i >= 0 && days[i]! >= to[j]! + gap) held += weights[i--]!;
    out[j] = held;
    if (more !== 0 && days[i + 1] === to[j]) out[j]! += more * weights[i + 1]!;
  }
  return out;
}

/**
 * Draws one day for each event from their joint distribution under facts that form a forest.
 *
 * @returns for each event the index of its day, or undefined where the facts leave no day
 */
export function drawForest(
  events: readonly Spread[],
  { up, tie }: Walk,
  { inward }: Gathered,
  random: Chance,
): Int32Array | undefined {
  const drawn = new Int32Array(events.length);
  for (let i = up.length - 1; i >= 0; i--) {
    const e = up[i]!;
    const [from, to, same] = besideParent(events, e, tie[e], drawn);
    const weights = inward[e]!.subarray(from, to);
    const kept = weights[same - from];
    if (kept !== undefined) weights[same - from] = kept * (tie[e]?.sameDay ?? 1);
    const total = sum(weights);
    if (!(total > 0)) return undefined;
    drawn[e] = from + pick(random, weights, total);
    if (kept !== undefined) weights[same - from] = kept;
  }
  return drawn;
}

/** The part of an event's days that the fact towards its drawn parent allows, and the same day. */
function besideParent(
  events: readonly Spread[],
  e: number,
  order: Order | undefined,
  drawn: Int32Array,
): readonly [from: number, to: number, same: number] {
  const { days } = events[e]!;
  if (!order) return [0, days.length, -1];
  const earlier = order.earlier === e;
  const parent = earlier ? order.later : order.earlier;
  const day = events[parent]!.days[drawn[parent]!]!;
  const gap = order.strict ? 1 : 0;
  const place = firstFrom(days, day);
  const same = days[place] === day ? place : -1;
  return earlier
    ? [0, firstFrom(days, day - gap + 1), same]
    : [firstFrom(days, day + gap), days.length, same];
}

/** Index of the first day that is not before another. */
function firstFrom(days: Int32Array, day: number): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle]! < day) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The sum of weights. */
export function sum(values: Float64Array): number {
  let total = 0;
  for (let j = 0; j < values.length; j++) total += values[j]!;
  return total;
}

function multiply(out: Float64Array, by: Float64Array): void {
  for (let j = 0; j < out.length; j++) out[j]! *= by[j]!;
}

function divided(values: Float64Array, by: Float64Array, room: Room): Float64Array {
  const out = room.cut(values.length);
  for (let j = 0; j < out.length; j++) out[j] = by[j]! > 0 ? values[j]! / by[j]! : 0;
  return out;
}
