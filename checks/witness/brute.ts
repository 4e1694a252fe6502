import { weekdayOf } from '../../src/evidence/index.ts';
import { seeded } from '../simulator/chance.ts';
import {
  bin,
  byReading,
  copied,
  type Drawn,
  drawPrior,
  NOISE,
  ROW_SHIFT,
  SIBLING,
  weekdays,
} from './brute-model.ts';

/** A day that a source, by number, states of event 0 or 1. */
export interface Stated {
  readonly source: number;
  readonly event: 0 | 1;
  readonly value: number;
}

export interface Case {
  readonly sources: number;
  readonly onSale: readonly Stated[];
  readonly seenBy: readonly Stated[];
  readonly first: number;
  readonly last: number;
  /** Whether the two releases are of one product, so that either may be given the other's day. */
  readonly oneProduct: boolean;
}

/** Days of one event that no statement tells apart. */
interface Kind {
  readonly days: number[];
  /** How many of them are a Monday, Tuesday … */
  readonly week: number[];
  /** Place among the values of the other event, or −1. */
  readonly special: number;
  /** For each statement of the event, readings and their probabilities, by turns. */
  readonly readings: readonly (readonly number[])[];
  readonly noise: readonly number[];
  readonly seen: readonly number[];
}

export interface Posterior {
  /** For each event: days asked for, with probability and its standard error. */
  readonly p: readonly (readonly { day: number; p: number; error: number }[])[];
  /** Probability that a source derives from another, by `source from`. */
  readonly derives: ReadonlyMap<string, number>;
  /** Draws that the weighted ones are worth (Kish). */
  readonly worth: number;
}

/** Parents of every source, −1 for none, and how many runs (source, product) are copied, or not. */
interface Tree {
  readonly parents: readonly number[];
  readonly prior: number;
  readonly copied: number;
  readonly plain: number;
}

/** Trees that come to the same: which statement each may be taken from, −1 where from none. */
interface Descent {
  readonly from: readonly number[];
  readonly trees: Tree[];
}

/**
 * Posterior days of two releases of one product or of two in one market, by drawing rates, histograms
 * and copying from their prior and weighting each draw by its likelihood, which is summed over every
 * pair of days and every descent of the sources.
 *
 * @param derivations false where no source is held to derive from another
 */
export function brute(
  one: Case,
  asked: readonly (readonly number[])[],
  draws: number,
  derivations: boolean,
): Posterior {
  const kinds = [0, 1].map((event) => kindsOf(one, event));
  const descents = descentsOf(one, derivations);
  const chance = seeded(7);
  const sum = asked.map((days) => days.map(() => ({ wf: 0, wwf: 0, wwff: 0 })));
  const parents = new Map<string, number>();
  let total = 0;
  let squares = 0;
  for (let n = 0; n < draws; n++) {
    const drawn = drawPrior(chance, one.sources);
    const found = asked.map((days) => days.map(() => 0));
    let weight = 0;
    for (const { from, trees } of descents) {
      const priors = trees.map(
        (t) => t.prior * drawn.runs ** t.copied * (1 - drawn.runs) ** t.plain,
      );
      const prior = priors.reduce((a, b) => a + b, 0);
      const likely = pairs(one, kinds, drawn, from, asked, found, prior);
      weight += prior * likely;
      trees.forEach((tree, t) => {
        tree.parents.forEach((q, s) => {
          const key = `${s} ${q}`;
          if (q >= 0) parents.set(key, (parents.get(key) ?? 0) + priors[t]! * likely);
        });
      });
    }
    total += weight;
    squares += weight * weight;
    found.forEach((row, e) => {
      row.forEach((f, j) => {
        const cell = sum[e]![j]!;
        cell.wf += f;
        cell.wwf += weight * f;
        cell.wwff += f * f;
      });
    });
  }
  const p = sum.map((row, e) =>
    row.map(({ wf, wwf, wwff }, j) => {
      const p = wf / total;
      const error = Math.sqrt(Math.max(0, wwff - 2 * p * wwf + p * p * squares)) / total;
      return { day: asked[e]![j]!, p, error };
    }),
  );
  const derives = new Map([...parents].map(([key, w]) => [key, w / total]));
  return { p, derives, worth: (total * total) / squares };
}

function kindsOf({ onSale, seenBy, first, last }: Case, event: number): Kind[] {
  const own = onSale.filter((c) => c.event === event);
  const seen = seenBy.filter((c) => c.event === event);
  const others = onSale.filter((c) => c.event !== event).map((c) => c.value);
  const kinds = new Map<string, Kind>();
  for (let day = first; day <= last; day++) {
    const made: Kind = {
      days: [],
      week: [0, 0, 0, 0, 0, 0, 0],
      special: others.indexOf(day),
      readings: own.map((c) => byReading(c.value, day).flatMap((p, r) => (p > 0 ? [r, p] : []))),
      noise: own.map((c) => bin(c.value - day)),
      seen: seen.map((c) => bin(c.value - day)),
    };
    const key = JSON.stringify(made);
    const kind = kinds.get(key) ?? made;
    kinds.set(key, kind);
    kind.days.push(day);
    kind.week[weekdayOf(day) - 1]!++;
  }
  return [...kinds.values()];
}

/** Adds to `found` and returns the likelihood of a draw and a descent, over all pairs of days. */
function pairs(
  one: Case,
  kinds: readonly (readonly Kind[])[],
  drawn: Drawn,
  from: readonly number[],
  asked: readonly (readonly number[])[],
  found: number[][],
  prior: number,
): number {
  // Weight of each kind of days of an event, for each special day of the other event and for none.
  const values = [0, 1].map((e) => one.onSale.filter((c) => c.event === e).map((c) => c.value));
  const weights = [0, 1].map((e) => {
    const specials = [-1, ...new Set(values[e]!.map((v) => values[e]!.indexOf(v)))];
    return new Map(
      specials.map((special) => [
        special,
        kinds[e]!.map((kind) => likelihood(one, e, kind, special, drawn, from, values[e]!)),
      ]),
    );
  });
  // Sum over the other event's days, by its weekday and special day.
  const sums = [0, 1].map((e) => {
    const all = new Map<string, number[]>();
    for (const [special, row] of weights[e]!) {
      row.forEach((w, i) => {
        const kind = kinds[e]![i]!;
        const key = `${special} ${kind.special}`;
        const week = all.get(key) ?? [0, 0, 0, 0, 0, 0, 0];
        all.set(key, week);
        kind.week.forEach((n, day) => {
          week[day]! += w * n;
        });
      });
    }
    return all;
  });
  let total = 0;
  kinds[0]!.forEach((kind, i) => {
    kind.week.forEach((n, day) => {
      if (n > 0) total += n * massAt(0, kind, i, day, weights, sums);
    });
  });
  for (const e of [0, 1]) {
    kinds[e]!.forEach((kind, i) => {
      asked[e]!.forEach((day, j) => {
        if (!kind.days.includes(day)) return;
        found[e]![j]! += prior * massAt(e, kind, i, weekdayOf(day) - 1, weights, sums);
      });
    });
  }
  return total;
}

const PAIRS = Array.from({ length: 49 }, (_, k) => weekdays(Math.floor(k / 7), k % 7));

/** Weight of one day of a kind together with every day of the other event. */
function massAt(
  e: number,
  kind: Kind,
  i: number,
  weekday: number,
  weights: readonly ReadonlyMap<number, number[]>[],
  sums: readonly ReadonlyMap<string, readonly number[]>[],
): number {
  let mass = 0;
  for (const [special, row] of weights[e]!) {
    const others = sums[1 - e]!.get(`${kind.special} ${special}`);
    others?.forEach((other, w) => {
      mass += row[i]! * other * PAIRS[weekday * 7 + w]!;
    });
  }
  return mass;
}

/** Probability of all that is stated of an event on a day of a kind. */
function likelihood(
  { onSale, seenBy, oneProduct }: Case,
  e: number,
  kind: Kind,
  special: number,
  { shares, noise, seen, copying }: Drawn,
  from: readonly number[],
  values: readonly number[],
): number {
  let product = 1;
  let j = 0;
  onSale.forEach((stated, i) => {
    if (stated.event !== e) return;
    const theta = shares[stated.source]!;
    let plain = theta[NOISE]! * noise[kind.noise[j]!]!;
    const row = kind.readings[j]!;
    for (let r = 0; r < row.length; r += 2) plain += theta[row[r]!]! * row[r + 1]!;
    // The source's only other row is that on the other event.
    const neighbour = onSale.some((c) => c.source === stated.source && c.event !== e);
    if (special >= 0 && values[special] === stated.value) {
      if (neighbour) plain += theta[ROW_SHIFT]! * 0.5;
      if (oneProduct) plain += theta[SIBLING]!;
    }
    const parent = from[i]!;
    product *=
      parent < 0
        ? plain
        : copying * copied(stated.value, onSale[parent]!.value) + (1 - copying) * plain;
    j++;
  });
  const sights = seenBy.filter((c) => c.event === e);
  sights.forEach((_, k) => {
    product *= seen[kind.seen[k]!]! + 1e-9;
  });
  return product;
}

/** Every way in which sources may descend from each other, with its prior, never in a circle. */
function descentsOf({ sources, onSale, oneProduct }: Case, derivations: boolean): Descent[] {
  const each = Array.from({ length: sources }, (_, s) => [
    -1,
    ...range(sources).filter((q) => q !== s),
  ]);
  const all = each.reduce<number[][]>(
    (lists, choice) => lists.flatMap((list) => choice.map((q) => [...list, q])),
    [[]],
  );
  const other = derivations ? 0.25 / Math.max(20, sources - 1) : 0;
  const trees = all.filter((parents) => parents.every((_, s) => !circles(parents, s)));
  const found = new Map<string, Descent>();
  for (const parents of trees) {
    const prior = parents.reduce((p, q) => p * (q < 0 ? 1 : other), 1);
    const models = onSale.map(({ source, event }) =>
      onSale.findIndex((c) => c.source === parents[source] && c.event === event),
    );
    const runOf = ({ source, event }: Stated) => (oneProduct ? `${source}` : `${source} ${event}`);
    const open = [...new Set(onSale.flatMap((c, i) => (models[i]! >= 0 ? [runOf(c)] : [])))];
    for (let mask = 0; mask < 2 ** open.length; mask++) {
      const taken = open.filter((_, k) => (mask >> k) & 1);
      const from = models.map((model, i) => (taken.includes(runOf(onSale[i]!)) ? model : -1));
      const descent = found.get(from.join()) ?? { from, trees: [] };
      found.set(from.join(), descent);
      const plain = open.length - taken.length;
      descent.trees.push({ parents, prior, copied: taken.length, plain });
    }
  }
  return [...found.values()];
}

const range = (n: number) => Array.from({ length: n }, (_, i) => i);

function circles(parents: readonly number[], s: number): boolean {
  for (let q = parents[s]!, n = 0; q >= 0; q = parents[q]!, n++)
    if (q === s || n > parents.length) return true;
  return false;
}
