import { sdOfValue } from '../identify/number-channel.ts';
import type { TraitModel } from '../identify/outcomes.ts';
import { stateOf } from '../identify/word-channel.ts';
import { nameOfCode } from '../names.ts';
import { type NumberValue, sayValue, type TraitValue } from '../traits/value.ts';

/** Something that a key leads to, with the share of copies that come here as it. */
export interface Item {
  /** Place among the hypotheses. */
  readonly at: number;
  readonly weight: number;
}

/** One lead of a couplet: what is seen, and what it may then be. */
export interface Branch {
  readonly says: string;
  readonly items: readonly Item[];
}

/**
 * The leads that a trait divides some items into. Items whose value is not known go along every
 * lead, shared out as the others are; numbers whose tolerances overlap stay together. Fewer than
 * two leads: the trait divides nothing here.
 */
export function branchesOf(model: TraitModel, items: readonly Item[]): readonly Branch[] {
  const { values } = model.trait;
  const groups = new Map<string, { says: string; items: Item[] }>();
  const spans = spansOf(items.map(({ at }) => values[at]));
  const open: Item[] = [];
  for (const item of items) {
    const value = values[item.at];
    if (value === undefined) {
      open.push(item);
      continue;
    }
    const [key, says] = leadOf(value, model, spans);
    const group = groups.get(key) ?? { says, items: [] };
    group.items.push(item);
    groups.set(key, group);
  }
  if (groups.size < 2) return [];
  const known = weightOf(items) - weightOf(open);
  return [...groups.values()].map(({ says, items: own }) => {
    const share = known > 0 ? weightOf(own) / known : 1 / groups.size;
    const shared = open.map(({ at, weight }) => ({ at, weight: weight * share }));
    return { says, items: [...own, ...shared] };
  });
}

/** All the weight of some items. */
export function weightOf(items: readonly Item[]): number {
  return items.reduce((sum, { weight }) => sum + weight, 0);
}

type Span = readonly [from: number, to: number];

function leadOf(
  value: TraitValue,
  model: TraitModel,
  spans: readonly Span[],
): readonly [key: string, says: string] {
  if (value.is !== 'number') return [String(stateOf(value, model.channel)), sayWord(value, model)];
  const at = spans.findIndex(([from, to]) => value.value >= from && value.value <= to);
  const [from, to] = spans[at] as Span;
  const middle: NumberValue = { ...value, value: (from + to) / 2, tolerance: (to - from) / 2 };
  return [`span ${at}`, sayValue(middle)];
}

/** A language or a market by its English name; what is absent as such. */
function sayWord(value: TraitValue, { trait: { name } }: TraitModel): string {
  if (value.is === 'none') return 'none';
  const type = name === 'language' ? 'language' : name === 'market' ? 'region' : null;
  return type === null ? sayValue(value) : nameOfCode(sayValue(value), type);
}

/** The reaches of numbers within their tolerances, those that overlap joined. */
function spansOf(values: readonly (TraitValue | undefined)[]): readonly Span[] {
  const reaches = values
    .flatMap((value): readonly Span[] => {
      if (value?.is !== 'number') return [];
      const reach = value.tolerance ?? 2 * sdOfValue(value);
      return [[value.value - reach, value.value + reach]];
    })
    .sort(([a], [b]) => a - b);
  const joined: Span[] = [];
  for (const [from, to] of reaches) {
    const last = joined.at(-1);
    if (last && from <= last[1]) joined[joined.length - 1] = [last[0], Math.max(last[1], to)];
    else joined.push([from, to]);
  }
  return joined;
}
