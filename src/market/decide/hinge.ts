import type { Advice, Decision, HeldCopy, Option } from './types.ts';

type Decided = Omit<Decision, 'hingesOn' | 'because'>;

const percent = (p: number) => `${Math.round(100 * p)} %`;
const amount = (value: number, currency: string) =>
  `${value >= 100 ? Math.round(value) : value.toFixed(2)} ${currency}`;

const DOING: Readonly<Record<Advice, string>> = {
  keep: 'keeping',
  return: 'returning',
  complain: 'taking what was offered back',
  submit: 'submitting',
};

/** A price at which, or a chance at which, another way becomes the better one. */
export function hingeOf(decided: Decided, copy: HeldCopy, currency: string): string {
  const { keep, options } = decided;
  if (keep === null)
    return copy.status === 'returned' || copy.status === 'sold'
      ? 'nothing: it is gone'
      : 'a price that is not known';
  const others: [Advice, number][] = (
    [
      ['return', decided.return],
      ['complain', decided.complain],
    ] as const
  ).flatMap(([way, worth]) => (worth === null ? [] : [[way, worth]]));
  const [way, most] = others.reduce(
    (best, one) => (one[1] > best[1] ? one : best),
    ['keep' as Advice, keep],
  );
  const option = nearestOption(options);
  if (option !== null) {
    const at = switchPoint(option, keep, most - keep);
    if (at !== null) {
      const { chance, now } = at;
      return `submitting to ${option.service} (${option.tier}) is better than ${DOING[way]} if the chance of ${at.grade} is over ${percent(chance)}; now ${percent(now)}`;
    }
  }
  if (decided.return !== null)
    return `returning is better than keeping if it would fetch less than ${amount(decided.return, currency)}; now ${amount(keep, currency)}`;
  if (copy.status === 'offered')
    return decided.highestBid === null
      ? 'what it would cost landed'
      : `its price: the highest sensible bid is ${amount(decided.highestBid, currency)}`;
  if (options.length === 0) return 'nothing: keeping is the only way that is open';
  return 'no chance of the top grade would change it';
}

/** The tier that gains most, or loses least. */
function nearestOption(options: readonly Option[]): Option | null {
  return options.reduce<Option | null>((best, one) => {
    const net = one.expectedGain - one.postageShare;
    return best === null || net > best.expectedGain - best.postageShare ? one : best;
  }, null);
}

/**
 * The chance of the dearest grade at which an option's gain equals what another way gains, the other
 * grades keeping their shares among themselves; null where no chance does.
 */
export function switchPoint(
  option: Option,
  raw: number,
  needed: number,
): { readonly grade: string; readonly chance: number; readonly now: number } | null {
  const top = option.outcomes.reduce((best, one) => (one.price > best.price ? one : best));
  const graded = option.outcomes.reduce((sum, { p, price }) => sum + p * price, 0);
  const costs = graded - raw - option.expectedGain + option.postageShare;
  if (top.p >= 1) return null;
  const rest = (graded - top.p * top.price) / (1 - top.p);
  const chance = (needed + raw + costs - rest) / (top.price - rest);
  return chance > 0 && chance < 1 ? { grade: top.grade, chance, now: top.p } : null;
}
