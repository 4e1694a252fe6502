/** An event that falls on one of some days: weight `weights[k]` on day `first + k`. */
export interface Event {
  readonly first: number;
  readonly weights: readonly number[];
}

/** Event `earlier` comes before event `later`, both by place; on the same day only if not strict. */
export interface Order {
  readonly earlier: number;
  readonly later: number;
  readonly strict: boolean;
  /** Where not strict, the weight of one day for both; 1 if left out. */
  readonly sameDay?: number;
}

/** What going through every combination of days gives. */
export interface Enumerated {
  /** For each event the probability of each of its days. */
  readonly weights: number[][];
  /** Combinations of days that fit the orders. */
  readonly admissible: number;
  /** Probability that independent events fit the orders. */
  readonly fit: number;
}

/** Marginals of events under orders, by going through every combination of days that fits. */
export function enumerateSequence(events: readonly Event[], orders: readonly Order[]): Enumerated {
  const weights = events.map((event) => event.weights.map(() => 0));
  const days = events.map(() => 0);
  let admissible = 0;
  let total = 0;
  const visit = (i: number, weight: number): void => {
    if (weight === 0) return;
    if (i === events.length) {
      admissible += 1;
      total += weight;
      events.forEach(({ first }, e) => {
        weights[e]![days[e]! - first]! += weight;
      });
      return;
    }
    const { first, weights: own } = events[i]!;
    own.forEach((w, k) => {
      days[i] = first + k;
      if (!orders.every((order) => fits(order, days, i))) return;
      visit(i + 1, weight * w * sharing(orders, days, i));
    });
  };
  visit(0, 1);
  const all = events.reduce((product, e) => product * e.weights.reduce((a, b) => a + b, 0), 1);
  return { weights: weights.map((row) => row.map((w) => w / total)), admissible, fit: total / all };
}

/** Weight of the days that the event placed last shares with others that are tied to it. */
function sharing(orders: readonly Order[], days: readonly number[], last: number): number {
  return orders.reduce((weight, { earlier, later, strict, sameDay = 1 }) => {
    const tied = Math.max(earlier, later) === last && !strict;
    return tied && days[earlier] === days[later] ? weight * sameDay : weight;
  }, 1);
}

/** An order holds, or one of its events has no day yet. */
function fits({ earlier, later, strict }: Order, days: readonly number[], last: number): boolean {
  if (earlier > last || later > last) return true;
  const gap = days[later]! - days[earlier]!;
  return strict ? gap > 0 : gap >= 0;
}

/** Mean, standard deviation, mode and quantiles (smallest day that holds at least `p`) of days. */
export function summary({ first, weights }: Event): Record<string, number> {
  const mean = weights.reduce((sum, w, k) => sum + w * (first + k), 0);
  const variance = weights.reduce((sum, w, k) => sum + w * (first + k - mean) ** 2, 0);
  const quantile = (p: number) => {
    let sum = 0;
    let k = -1;
    // 1e-12: a cumulative sum that is the level but for rounding counts as having reached it.
    while (sum < p - 1e-12 && k + 1 < weights.length) {
      k += 1;
      sum += weights[k]!;
    }
    return first + k;
  };
  return {
    mean,
    sd: Math.sqrt(variance),
    median: quantile(0.5),
    q025: quantile(0.025),
    q975: quantile(0.975),
    mode: first + weights.indexOf(Math.max(...weights)),
  };
}
