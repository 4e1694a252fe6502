import { populationOf } from '../../src/population/index.ts';
import type { Hardness } from './hardness.ts';
import { worldOf } from './world.ts';

/** What matching and rates reached over worlds of one kind. */
export interface Scores {
  readonly f1: number;
  readonly lumpF1: number;
  /** Largest gap between stated and found share over bins with at least 40 pairs. */
  readonly gap: number;
  readonly bins: readonly (readonly [stated: number, found: number, pairs: number])[];
  readonly covered: number;
  /** Squared error of shrunk rates against that of raw ones, for under ten and over forty copies. */
  readonly sparse: number;
  readonly dense: number;
  readonly totals: number;
}

/** Answers worlds and holds the answers against what was put in. */
export function scoresOf(size: number, hardness: Hardness, seeds: readonly number[]): Scores {
  const tally = new Tally();
  for (const seed of seeds) tally.add(worldOf(size, hardness, seed));
  return tally.scores();
}

class Tally {
  #right = 0;
  #said = 0;
  #true = 0;
  #lumps = { right: 0, said: 0, true: 0 };
  readonly #bins = Array.from({ length: 10 }, () => ({ stated: 0, found: 0, pairs: 0 }));
  #held = 0;
  #rates = 0;
  #split = 0;
  #splits = 0;
  readonly #errors = { sparse: [0, 0], dense: [0, 0] };

  add(world: ReturnType<typeof worldOf>): void {
    const { evidence, records, on, labels, counts } = world;
    const answer = populationOf(records, evidence, on);
    const said = new Map<string, number>();
    for (const { service, label, printing, p } of answer.matches) {
      const key = `${service}\n${label}`;
      const is = labels.get(key) ?? [];
      const right = printing === null ? is.length === 0 : is.includes(printing);
      const bin = this.#bins[Math.min(9, Math.floor(p * 10))] as {
        stated: number;
        found: number;
        pairs: number;
      };
      bin.stated += p;
      bin.found += right ? 1 : 0;
      bin.pairs += 1;
      if (p < 0.5 || printing === null) continue;
      this.#said += 1;
      if (right) this.#right += 1;
      said.set(key, (said.get(key) ?? 0) + 1);
    }
    for (const [key, is] of labels) {
      this.#true += is.length;
      const lump = is.length > 1;
      const found = (said.get(key) ?? 0) > 1;
      this.#lumps.true += lump ? 1 : 0;
      this.#lumps.said += found ? 1 : 0;
      this.#lumps.right += lump && found ? 1 : 0;
    }
    for (const { id, services } of answer.printings)
      for (const one of services) {
        const truth = counts.get(`${one.service}\n${id}`);
        if (truth === undefined) continue;
        this.#rate(one, truth);
      }
  }

  #rate(
    one: {
      total: number;
      total95: readonly [number, number];
      rate: number | null;
      shrunk: number;
      shrunk95: readonly [number, number];
      lumped_with: readonly string[];
    },
    truth: { total: number; rate: number },
  ): void {
    this.#rates += 1;
    if (one.shrunk95[0] <= truth.rate && truth.rate <= one.shrunk95[1]) this.#held += 1;
    if (one.lumped_with.length > 0) {
      this.#splits += 1;
      if (one.total95[0] <= truth.total && truth.total <= one.total95[1]) this.#split += 1;
      return;
    }
    if (one.rate === null) return;
    const part =
      one.total < 10 ? this.#errors.sparse : one.total > 40 ? this.#errors.dense : undefined;
    if (part === undefined) return;
    part[0]! += (one.shrunk - truth.rate) ** 2;
    part[1]! += (one.rate - truth.rate) ** 2;
  }

  scores(): Scores {
    const f1 = (right: number, said: number, is: number) => (2 * right) / (said + is || 1);
    const bins = this.#bins
      .filter(({ pairs }) => pairs >= 40)
      .map(({ stated, found, pairs }) => [stated / pairs, found / pairs, pairs] as const);
    const ratio = ([ours, raw]: readonly number[]) => (ours as number) / (raw as number);
    return {
      f1: f1(this.#right, this.#said, this.#true),
      lumpF1: f1(this.#lumps.right, this.#lumps.said, this.#lumps.true),
      gap: Math.max(0, ...bins.map(([stated, found]) => Math.abs(stated - found))),
      bins,
      covered: this.#held / this.#rates,
      sparse: ratio(this.#errors.sparse),
      dense: ratio(this.#errors.dense),
      totals: this.#split / this.#splits,
    };
  }
}
