import type { Advice, Decision, DecisionGround, HeldCopy, Option } from './types.ts';
import { lowPrice, lowPriceOver } from './worth.ts';

/** One way out of holding a copy, open now. */
export interface Way {
  readonly way: Advice | 'sell';
  /** Null but where it is sent in. */
  readonly service: string | null;
  readonly tier: string | null;
  /** Expected, in the desk's currency. */
  readonly worth: number;
  /** Holds what it comes to with probability 0.8, grades and odd sales included; both ends alike where sure. */
  readonly interval80: readonly [number, number];
}

/**
 * The ways that are open to a copy side by side, each with what it is expected to be worth and an
 * interval. What is sent in is taken at its share of a batch's postage; upcharges are not in it.
 */
export function waysOf(
  decision: Decision,
  copy: HeldCopy,
  prices: DecisionGround['prices'],
): readonly Way[] {
  const { keep, complain, sell } = decision;
  const { printings, service, grade } = copy;
  const [low, high] = [0.1, 0.9].map((chance) =>
    lowPrice(prices, printings, service, grade, chance),
  );
  const way = (name: Way['way'], worth: number | null, times: number, plus: number): Way[] =>
    worth === null || low === undefined || high === undefined
      ? []
      : [{ ...NOWHERE, way: name, worth, interval80: [low * times + plus, high * times + plus] }];
  const sure: Way[] =
    decision.return === null
      ? []
      : [
          {
            ...NOWHERE,
            way: 'return',
            worth: decision.return,
            interval80: [decision.return, decision.return],
          },
        ];
  return [
    ...way('keep', keep, 1, 0),
    ...sure,
    ...way('complain', complain, 1, (complain ?? 0) - (keep ?? 0)),
    ...way('sell', sell, 1 - (copy.sellingFeeRate ?? 0), 0),
    ...decision.options.flatMap((option) => submitting(option, keep ?? 0, copy, prices)),
  ];
}

const NOWHERE = { service: null, tier: null } as const;

function submitting(
  option: Option,
  keep: number,
  { printings }: HeldCopy,
  prices: DecisionGround['prices'],
): Way[] {
  const { service, tier, outcomes, expectedGain, postageShare } = option;
  const graded = outcomes.reduce((sum, { p, price }) => sum + p * price, 0);
  const worth = keep + expectedGain - postageShare;
  const [low, high] = [0.1, 0.9].map((chance) =>
    lowPriceOver(prices, printings, service, outcomes, chance),
  );
  if (low === undefined || high === undefined) return [];
  const costs = graded - worth;
  return [{ way: 'submit', service, tier, worth, interval80: [low - costs, high - costs] }];
}
