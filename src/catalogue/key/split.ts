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
  /** The same as written in the dossier, `none` where it is absent. */
  readonly value: string;
  readonly items: readonly Item[];
}

/**
 * The leads that a trait divides some items into. Items whose value is not known go along every
 * lead, shared out as the others are; numbers whose tolerances overlap stay together. Fewer than
 * two leads: the trait divides nothing here.
 */
export function branchesOf(model: TraitModel, items: readonly Item[]): readonly Branch[] {
  const { values } = model.trait;
  const groups = new Map<string, { says: string; value: string; items: Item[] }>();
  const spans = spansOf(items.map(({ at }) => values[at]));
  const open: Item[] = [];
  for (const item of items) {
    const value = values[item.at];
    if (value === undefined) {
      open.push(item);
      continue;
    }
    const [key, written] = leadOf(value, model, spans);
    const says = sayWord(written, model);
    const group = groups.get(key) ?? { says, value: written, items: [] };
    group.items.push(item);
    groups.set(key, group);
  }
  if (groups.size < 2) return [];
  const known = weightOf(items) - weightOf(open);
  return [...groups.values()].map(({ items: own, ...lead }) => {
    const share = known > 0 ? weightOf(own) / known : 1 / groups.size;
    const shared = open.map(({ at, weight }) => ({ at, weight: weight * share }));
    return { ...lead, items: [...own, ...shared] };
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
): readonly [key: string, written: string] {
  if (value.is !== 'number') return [String(stateOf(value, model.channel)), sayValue(value)];
  const at = spans.findIndex(([from, to]) => value.value >= from && value.value <= to);
  const [from, to] = spans[at] as Span;
  const middle: NumberValue = { ...value, value: (from + to) / 2, tolerance: (to - from) / 2 };
  return [`span ${at}`, sayValue(middle)];
}

/** A language or a market by its English name. */
function sayWord(written: string, { trait: { name } }: TraitModel): string {
  const type = name === 'language' ? 'language' : name === 'market' ? 'region' : null;
  return type === null || written === 'none' ? written : nameOfCode(written, type);
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
