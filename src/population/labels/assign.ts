import { type Chance, chance } from '../../maths/index.ts';

/** A label under which a printing may be counted. */
export interface Candidate {
  readonly label: number;
  /** Log of the likelihood ratio that the label's words are this printing's. */
  readonly weight: number;
  /** Log of what else speaks for it: confirmations, copies looked at under the label. */
  readonly seen: number;
}

/** What is to be assigned, at one service. */
export interface Assigning {
  readonly labels: number;
  /** By printing. */
  readonly candidates: readonly (readonly Candidate[])[];
  /** Log of what else speaks for a printing not being listed: 0, or below where copies were seen. */
  readonly unlisted: Float64Array;
}

/** Which printings are counted where. */
export interface Assigned {
  /** By printing and candidate. */
  readonly p: readonly Float64Array[];
  /** By printing: not listed at all. */
  readonly unlisted: Float64Array;
  /** By label: of a printing that the dossier does not have. */
  readonly foreign: Float64Array;
}

/** How often printings share a label though their own words tell them apart. Judgement, no source. */
const STRANGERS = 0.03;
/** How much worse than the label's best printing another one may fit that is lumped with it. */
const LUMP_TEMPER = 0.35;

/** Rates of a service, learned: printings not listed, printings lumped, labels of other printings. */
interface Rates {
  unlisted: number;
  lumped: number;
  foreign: number;
}

/**
 * Draws which label each printing is counted under, again and again, and averages the conditional
 * probabilities (`sadinle:2017`, with lumps allowed). Each printing has one label or none; a label
 * has one printing, several, or one that the dossier does not have. How often each of these comes
 * about is drawn along.
 */
export function assigned(problem: Assigning, sweeps: number, seed: number): Assigned {
  const random = chance(seed);
  const state = new State(problem);
  const rates: Rates = { unlisted: 0.1, lumped: 0.1, foreign: 0.1 };
  const p = problem.candidates.map((list) => new Float64Array(list.length));
  const unlisted = new Float64Array(problem.candidates.length);
  const foreign = new Float64Array(problem.labels);
  const warming = Math.ceil(sweeps / 5);
  const kept = sweeps - warming;
  for (let sweep = 0; sweep < sweeps; sweep++) {
    const keep = sweep >= warming ? 1 / kept : 0;
    state.candidates.forEach((list, printing) => {
      const shares = state.conditional(printing, rates);
      list.forEach((_, i) => {
        (p[printing] as Float64Array)[i]! += keep * (shares[i] as number);
      });
      unlisted[printing]! += keep * (shares[list.length] as number);
      state.place(printing, drawn(shares, random));
    });
    if (keep > 0) state.addForeign(foreign, keep);
    state.drawRates(rates, random);
  }
  return { p, unlisted, foreign };
}

function drawn(shares: ArrayLike<number>, random: Chance): number {
  let left = random.uniform();
  for (let i = 0; i < shares.length - 1; i++) {
    left -= shares[i] as number;
    if (left < 0) return i;
  }
  return shares.length - 1;
}

/** Where every printing is at the moment. */
class State {
  readonly candidates: Assigning['candidates'];
  readonly #problem: Assigning;
  /** By printing: index of its candidate, the number of candidates where it is not listed. */
  readonly #at: Int32Array;
  /** By label: printings there, with the weight of each. */
  readonly #members: Map<number, number>[];
  readonly #shares: Float64Array;
  /** By printing: log of how many labels fit it about as well as the best; a lump is sought among them. */
  readonly #fitting: Float64Array;
  /** By printing: its kin, those that fit one label about as well; -1 where it has none. */
  readonly #kin: Int32Array;

  constructor(problem: Assigning) {
    this.#problem = problem;
    this.candidates = problem.candidates;
    this.#at = Int32Array.from(problem.candidates, (list) => list.length);
    this.#members = Array.from({ length: problem.labels }, () => new Map());
    this.#fitting = Float64Array.from(problem.candidates, (list) =>
      Math.log(Math.max(1, fitting(list).length)),
    );
    this.#kin = kinOf(problem.candidates);
    this.#shares = new Float64Array(2 + Math.max(0, ...problem.candidates.map((c) => c.length)));
  }

  /** Chances of each candidate and, last, of not being listed, all others staying where they are. */
  conditional(printing: number, rates: Rates): Float64Array {
    const list = this.candidates[printing] as readonly Candidate[];
    this.#take(printing);
    const shares = this.#shares.subarray(0, list.length + 1);
    const labels = this.#problem.labels;
    const listed = Math.log(1 - rates.unlisted);
    const lumped = (this.#kin[printing] as number) < 0 ? STRANGERS : rates.lumped;
    const own = listed + Math.log(1 - lumped) - Math.log(labels);
    const ours = Math.log((1 - rates.foreign) / rates.foreign);
    const joins = listed + Math.log(lumped) - 0.5 * (this.#fitting[printing] as number);
    let most = Math.log(rates.unlisted) + (this.#problem.unlisted[printing] as number);
    shares[list.length] = most;
    list.forEach(({ label, weight, seen }, i) => {
      const best = bestOf(this.#members[label] as Map<number, number>);
      const log = best === undefined ? own + ours + weight : joins + lumpWeight(weight, best);
      shares[i] = log + seen;
      most = Math.max(most, shares[i] as number);
    });
    let total = 0;
    for (let i = 0; i < shares.length; i++) {
      shares[i] = Math.exp((shares[i] as number) - most);
      total += shares[i] as number;
    }
    for (let i = 0; i < shares.length; i++) shares[i]! /= total;
    return shares;
  }

  #take(printing: number): void {
    const list = this.candidates[printing] as readonly Candidate[];
    const candidate = list[this.#at[printing] as number];
    if (candidate !== undefined)
      (this.#members[candidate.label] as Map<number, number>).delete(printing);
    this.#at[printing] = list.length;
  }

  place(printing: number, at: number): void {
    const candidate = (this.candidates[printing] as readonly Candidate[])[at];
    this.#at[printing] = at;
    if (candidate === undefined) return;
    (this.#members[candidate.label] as Map<number, number>).set(printing, candidate.weight);
  }

  addForeign(foreign: Float64Array, keep: number): void {
    this.#members.forEach((members, label) => {
      if (members.size === 0) foreign[label]! += keep;
    });
  }

  /** Draws the rates given where everything is, under priors of seven printings' worth. */
  drawRates(rates: Rates, random: Chance): void {
    let empty = 0;
    let joined = 0;
    let placed = 0;
    let withKin = 0;
    const kin = new Set<number>();
    for (const members of this.#members) {
      if (members.size === 0) empty += 1;
      placed += members.size;
      joined += Math.max(0, members.size - 1);
      for (const printing of members.keys()) {
        const group = this.#kin[printing] as number;
        if (group < 0) continue;
        withKin += 1;
        kin.add(group);
      }
    }
    const all = this.candidates.length;
    rates.unlisted = share(random, all - placed + 1.2, placed + 6);
    // The first of each group of kin has nobody to join.
    const apart = Math.max(0, withKin - kin.size - joined);
    rates.lumped = share(random, joined + 1.5, apart + 3);
    rates.foreign = share(random, empty + 1, this.#members.length - empty + 7);
  }
}

function share(random: Chance, a: number, b: number): number {
  const x = random.gamma(a);
  return Math.min(0.98, Math.max(0.002, x / (x + random.gamma(b))));
}

/** Groups of printings that one label's words fit about as well as any, by printing; -1 for those in none. */
function kinOf(candidates: Assigning['candidates']): Int32Array {
  const group = Int32Array.from(candidates, (_, printing) => printing);
  const root = (printing: number): number => {
    let at = printing;
    while (group[at] !== at) at = group[at] as number;
    return at;
  };
  const first = new Map<number, number>();
  candidates.forEach((list, printing) => {
    for (const { label, weight } of fitting(list)) {
      if (weight <= 0) continue;
      const other = first.get(label);
      if (other === undefined) first.set(label, printing);
      else group[root(printing)] = root(other);
    }
  });
  const sizes = new Map<number, number>();
  candidates.forEach((_, printing) => {
    sizes.set(root(printing), (sizes.get(root(printing)) ?? 0) + 1);
  });
  return Int32Array.from(candidates, (_, printing) =>
    (sizes.get(root(printing)) as number) > 1 ? root(printing) : -1,
  );
}

function bestOf(members: ReadonlyMap<number, number>): number | undefined {
  let best: number | undefined;
  for (const weight of members.values()) if (best === undefined || weight > best) best = weight;
  return best;
}

/** A printing that joins others: what it changes in how well the label's words are explained. */
function lumpWeight(weight: number, best: number): number {
  if (weight <= best) return LUMP_TEMPER * (weight - best);
  return (1 - LUMP_TEMPER) * (weight - best);
}

/** Labels that fit about as well as the best. */
function fitting(list: readonly Candidate[]): readonly Candidate[] {
  const best = list.reduce((most, { weight }) => Math.max(most, weight), Number.NEGATIVE_INFINITY);
  return list.filter(({ weight }) => weight > best - 3);
}
