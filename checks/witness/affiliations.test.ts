// Dong, Berti-Équille & Srivastava 2009, PVLDB 2(1), table 1: five sources on the affiliations of five
// researchers; the fourth and fifth copy the third, so that counting votes is wrong three times. The
// table is from memory, the chances of dependence were computed from the formula in the fixture.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dependence, type Evidence, weighFacts } from '../../src/evidence/index.ts';

interface Affiliations {
  readonly sources: readonly string[];
  readonly claims: Readonly<Record<string, readonly string[]>>;
  readonly published_truth: Readonly<Record<string, string>>;
  readonly majority_vote: Readonly<Record<string, string>>;
  readonly pairwise_dependence_given_truth: {
    readonly parameters: { readonly n_false_values: number };
    readonly pairs: Readonly<Record<string, Pair>>;
  };
}
interface Pair {
  readonly same_true: number;
  readonly same_false: number;
  readonly different: number;
  readonly P_dependent: number;
}

const file = new URL('../fixtures/truth/affiliations.json', import.meta.url);
const table = (JSON.parse(readFileSync(file, 'utf8')) as { dong_2009: Affiliations }).dong_2009;
const people = Object.keys(table.claims);

/** The table as claims on a property of "printings"; what the property is plays no part. */
const evidence: Evidence = {
  printings: people.map((id) => ({ id })),
  products: [],
  contents: [],
  orders: [],
  sources: table.sources.map((id) => ({ id, kind: 'checklist', cites: [] })),
  claims: people.flatMap((person, i) =>
    table.claims[person]!.map((value, s) => ({
      row: 2 + 5 * i + s,
      printings: [person],
      source: table.sources[s]!,
      property: 'rarity',
      value,
    })),
  ),
};

function best(p: number): Record<string, string> {
  const copies = ['S4', 'S5'].map((id) => ({ id, accuracy: null, derives: [{ from: 'S3', p }] }));
  return Object.fromEntries(
    weighFacts(evidence, copies).map(({ printing, values }) => [printing, values[0]!.value]),
  );
}

describe('the affiliation example', () => {
  it.each(Object.entries(table.pairwise_dependence_given_truth.pairs))(
    'gives %s the chance of the formula that one copies the other',
    (_, pair) => {
      const falseValues = table.pairwise_dependence_given_truth.parameters.n_false_values;
      const fact = (same: boolean, right: number) => ({ same, right, falseValues });
      const facts = [
        ...Array.from({ length: pair.same_true }, () => fact(true, 1)),
        ...Array.from({ length: pair.same_false }, () => fact(true, 0)),
        ...Array.from({ length: pair.different }, () => fact(false, 0)),
      ];
      const chance = dependence(facts, { errorRate: 0.2, copyRate: 0.8, prior: 0.2 });
      // The fixture has 8 decimals: measured 3.8e-9, allowed 1e-8.
      expect(Math.abs(chance - pair.P_dependent)).toBeLessThan(1e-8);
    },
  );

  it('finds all five once the copying is known, and three more than counting does', () => {
    expect(best(0.9)).toEqual(table.published_truth);
    const wrong = people.filter((id) => table.majority_vote[id] !== table.published_truth[id]);
    expect(wrong).toHaveLength(3);
  });

  it('finds them by a suspicion of 0.4 that the shared values bear out', () => {
    expect(best(0.4)).toEqual(table.published_truth);
  });

  it('follows the three where nothing is suspected: five facts are too few to tell', () => {
    expect(best(0)).toEqual(table.majority_vote);
  });
});
