import type { NumberValue } from '../traits/value.ts';
import type { TraitModel } from './outcomes.ts';
import type { Models } from './seen.ts';
import { stateOf } from './word-channel.ts';

/** Whether a trait that a look can tell is known of both hypotheses and differs. */
export function tellsApart(model: TraitModel, one: number, other: number): boolean {
  const { trait, channel } = model;
  const [a, b] = [trait.values[one], trait.values[other]];
  if (!trait.seen || a === undefined || b === undefined) return false;
  if (a.is === 'number' && b.is === 'number') return !overlap(a, b);
  return stateOf(a, channel) !== stateOf(b, channel);
}

/** Numbers that careful measurements of both may show alike. */
function overlap(a: NumberValue, b: NumberValue): boolean {
  const reach = (a.tolerance ?? 0) + (b.tolerance ?? 0);
  return Math.abs(a.value - b.value) <= reach;
}

/** Pairs of hypotheses that no known trait tells apart. */
export function alikePairs(
  models: Models,
  among: readonly number[],
): (readonly [number, number])[] {
  return among.flatMap((one, i) =>
    among
      .slice(i + 1)
      .filter((other) => ![...models.values()].some((model) => tellsApart(model, one, other)))
      .map((other) => [one, other] as const),
  );
}
