import type { Problem, Voice } from '../../src/evidence/index.ts';

/**
 * The very posterior that `latentTruth` approximates, by going through every assignment of true
 * values and of who copied: rates of right and wrong words integrated over a beta prior for each
 * source, values over a Dirichlet prior for each group. For a handful of items only.
 *
 * @param prior pseudo-observations [right, wrong] of each source
 * @returns for each item the probability of each candidate, all other values last
 */
export function enumerateTruths(
  problem: Problem,
  prior: readonly (readonly [number, number])[],
): number[][] {
  const { items, vocabulary } = problem;
  const sums = items.map(({ candidates }) => new Array<number>(candidates.length + 1).fill(0));
  let total = 0;
  const truth = items.map(() => 0);
  const visit = (i: number): void => {
    if (i < items.length) {
      for (let value = 0; value < vocabulary[items[i]!.group]!; value++) {
        truth[i] = value;
        visit(i + 1);
      }
      return;
    }
    const weight = classWeight(problem, truth) * wordsWeight(problem, truth, prior);
    total += weight;
    items.forEach(({ candidates }, item) => {
      const at = candidates.indexOf(truth[item]!);
      sums[item]![at < 0 ? candidates.length : at]! += weight;
    });
  };
  visit(0);
  return sums.map((row) => row.map((sum) => sum / total));
}

/** Chance of the true values: drawn one after the other from a Pólya urn for each group. */
function classWeight(problem: Problem, truth: readonly number[]): number {
  const seen = problem.vocabulary.map((size) => new Array<number>(size).fill(0));
  let weight = 1;
  truth.forEach((value, i) => {
    const urn = seen[problem.items[i]!.group]!;
    const drawn = urn.reduce((a, b) => a + b, 0);
    weight *= (urn[value]! + problem.classPseudo) / (drawn + problem.classPseudo * urn.length);
    urn[value]! += 1;
  });
  return weight;
}

/** Chance of all words, summed over which of the derived ones were copied. */
function wordsWeight(
  problem: Problem,
  truth: readonly number[],
  prior: readonly (readonly [number, number])[],
): number {
  const visit = (v: number, right: number[], wrong: number[]): number => {
    const voice = problem.voices[v];
    if (voice === undefined) return 1;
    const alone = spoken(problem, voice, truth, right, wrong, prior);
    const isRight = truth[voice.item] === voice.value;
    const counts = isRight ? right : wrong;
    counts[voice.source]! += 1;
    const asOwn = alone * (1 - voice.derived) * visit(v + 1, right, wrong);
    counts[voice.source]! -= 1;
    return voice.copied > 0 ? asOwn + voice.copied * visit(v + 1, right, wrong) : asOwn;
  };
  const none = () => prior.map(() => 0);
  return visit(0, none(), none());
}

function spoken(
  problem: Problem,
  { source, item, value }: Voice,
  truth: readonly number[],
  right: readonly number[],
  wrong: readonly number[],
  prior: readonly (readonly [number, number])[],
): number {
  const [a, b] = prior[source]!;
  const all = a + b + right[source]! + wrong[source]!;
  if (truth[item] === value) return (a + right[source]!) / all;
  const others = problem.vocabulary[problem.items[item]!.group]! - 1;
  return (b + wrong[source]!) / all / others;
}
