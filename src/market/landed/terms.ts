import type { Day } from '../../evidence/index.ts';
import { type Exact, exactOf, ZERO } from '../money/exact.ts';
import type { ToDesk } from './exchange.ts';
import type { Charge } from './types.ts';

/** An entry of the owner's charges, ready to reckon with; amounts in the desk's currency. */
export interface Terms {
  readonly dutyRate: Exact;
  readonly taxRate: Exact;
  readonly taxBase: NonNullable<Charge['taxBase']>;
  readonly dutyFreeBelow: Exact;
  readonly taxFreeBelow: Exact;
  readonly handling: Exact;
  readonly paymentFeeRate: Exact;
  /** What the entry leaves open and is counted as nothing. */
  readonly assumed: readonly string[];
}

/** The terms that an entry states, its amounts turned into the desk's currency at the rate of a day. */
export function termsOf(
  charge: Charge,
  toDesk: ToDesk,
  day: Day | null,
): Terms | { readonly why: string } {
  const open: string[] = [];
  const entered = (name: string, text: string | null): string => {
    if (text === null) open.push(name);
    return text ?? '0';
  };
  let why: string | undefined;
  const amount = (text: string): Exact => {
    const changed = toDesk(text, charge.currency, day);
    if ('exact' in changed) return changed.exact;
    why = changed.why;
    return ZERO;
  };
  const terms = {
    dutyRate: exactOf(entered('duty_rate', charge.dutyRate)),
    taxRate: exactOf(entered('tax_rate', charge.taxRate)),
    taxBase: charge.taxBase ?? 'goods+shipping+duty',
    dutyFreeBelow: amount(charge.dutyFreeBelow ?? '0'),
    taxFreeBelow: amount(charge.taxFreeBelow ?? '0'),
    handling: amount(entered('handling_fee', charge.handlingFee)),
    paymentFeeRate: exactOf(entered('payment_fee_rate', charge.paymentFeeRate)),
  };
  if (why !== undefined) return { why };
  const assumed =
    open.length === 0
      ? []
      : [`desk/charges.json leaves ${open.join(', ')} open for this parcel, counted as nothing`];
  if (charge.taxBase === null && charge.taxRate !== null)
    assumed.push(
      'desk/charges.json names no tax_base for this parcel: goods, shipping and duty are taken',
    );
  return { ...terms, assumed };
}
