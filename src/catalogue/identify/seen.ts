import { type Look, lookKind } from './looks.ts';
import { type Marks, traitName } from './marks.ts';
import { type Outcome, outcomeOf, type TraitModel, traitModel } from './outcomes.ts';
import type { Reading, Trait } from './types.ts';
import type { Group, Part } from './weigh.ts';

/** What is known of one copy. */
export interface Seen {
  /** What was seen by its owner, said by its seller (`listing`) or printed on its slab (`label`). */
  readonly readings: readonly Reading[];
  /** The printings, one of which the desk calls it; empty: none is named. */
  readonly named: readonly string[];
}

/** The traits of a dossier with all that weighing needs, by name. */
export type Models = ReadonlyMap<string, TraitModel>;

/** Models of all traits. */
export function modelsOf(marks: Marks): Models {
  return new Map([...marks.traits].map(([name, trait]) => [name, traitModel(trait, marks)]));
}

/** Columns that tell the same thing: who takes one for another's takes the others for it too. */
const FAMILIES: readonly (readonly string[])[] = [
  ['language', 'printed_name', 'reading'],
  ['edition', 'wave', 'product', 'market', 'channel', 'printed_in'],
];

/** Chance that all readings of one group are of another printing. Judgement, no source. */
const SLIP = { listing: 0.1, label: 0.03, own: 0.01 } as const;
/** Chance that the desk calls a copy what it is not. Judgement, no source. */
const MISNAMED = 0.2;

/** The group that a reading of this trait by this look belongs to. */
export function groupOf(trait: Trait, look: Look): Pick<Group, 'key' | 'slip'> {
  if (look === 'listing' || look === 'label') return { key: look, slip: SLIP[look] };
  const family = FAMILIES.findIndex((names) => names.includes(trait.name));
  const place = trait.region === '' ? trait.name : `${look} ${trait.region}`;
  return { key: family >= 0 ? `family ${family}` : place, slip: SLIP.own };
}

/** The readings on a copy in groups, and those that say nothing of any listed trait. */
export function groupsOf(
  { readings, named }: Seen,
  models: Models,
  { hypotheses }: Marks,
): { readonly groups: readonly Group[]; readonly unused: readonly Reading[] } {
  const groups = new Map<string, Group & { parts: Part[] }>();
  const unused: Reading[] = [];
  for (const reading of readings) {
    const model = models.get(traitName(reading.trait));
    const outcome = model && outcomeOf(reading, model);
    if (!model || !outcome) {
      unused.push(reading);
      continue;
    }
    const look = reading.sees ?? model.trait.look;
    const { key, slip } = groupOf(model.trait, look);
    const group = groups.get(key) ?? { key, slip, parts: [] };
    group.parts.push({ outcome: scaled(outcome), misread: lookKind(look).misread });
    groups.set(key, group);
  }
  const ids = new Set(named);
  const right = Float64Array.from(hypotheses, ({ printing }) => (ids.has(printing) ? 1 : 0));
  const wrong = new Float64Array(right.length).fill(1 / Math.max(2, hypotheses.length - 1));
  const called = { outcome: { right, wrong }, misread: MISNAMED };
  const desk = right.includes(1) ? [{ key: 'desk', slip: 0, parts: [called] }] : [];
  return { groups: [...groups.values(), ...desk], unused };
}

/** The same to a factor, so that long texts do not fall below the smallest number. */
function scaled({ right, wrong }: Outcome): Outcome {
  const most = Math.max(...right, ...wrong);
  return { right: right.map((p) => p / most), wrong: wrong.map((p) => p / most) };
}
