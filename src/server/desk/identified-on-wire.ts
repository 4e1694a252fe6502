import { type Identified, sayValue, type TraitChoice } from '../../catalogue/index.ts';
import type { IdentifyAnswer } from '../../contract/index.ts';
import type { Dossier } from '../../dossier/index.ts';

type Found = Pick<
  IdentifyAnswer,
  'candidates' | 'unlisted' | 'entropyBits' | 'alike' | 'next' | 'unused'
>;

/** What a copy may be and where to look next, as the page gets it. */
export function identifiedOnWire(found: Identified): Found {
  return {
    candidates: found.candidates.map((one) => ({ ...one })),
    unlisted: found.unlisted,
    entropyBits: found.entropy_bits,
    alike: found.alike.map(([one, other]) => [one, other]),
    next: found.next.map(({ gain_bits, gain_per_effort, ...look }) => ({
      ...look,
      gainBits: gain_bits,
      gainPerEffort: gain_per_effort,
    })),
    unused: found.unused.map(({ trait, value }) => ({ trait, value: sayValue(value) })),
  };
}

/** The traits that can be looked at, with what each may show. */
export function choicesOnWire(choices: readonly TraitChoice[]): IdentifyAnswer['traits'] {
  return choices.map(({ trait, sees, region, caution, measure, values }) => ({
    ...{ trait, sees, region, caution },
    side: /\bback\b/i.test(`${region} ${trait}`) ? 'back' : 'front',
    unit: measure,
    values: values.map(({ value, ids }) => ({ value: sayValue(value), ids: [...ids] })),
  }));
}

/** The known kinds of counterfeits and alterations, in the words of the dossier. */
export function kindsOf({ tables }: Dossier): IdentifyAnswer['kinds'] {
  const table = tables.get('counterfeits.csv');
  return [...(table?.rows() ?? [])].map((row) => {
    const { id = '', kind = '', note = '' } = table?.record(row) ?? {};
    return { id, kind, note };
  });
}
