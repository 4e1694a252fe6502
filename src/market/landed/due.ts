import { amountOf, type Money, moneyOf } from '../money/currencies.ts';
import { compared, type Exact, plus, times, ZERO } from '../money/exact.ts';
import type { Terms } from './terms.ts';
import type { LineName } from './types.ts';

/** A line of a whole parcel. */
export interface ParcelLine {
  readonly name: LineName;
  readonly money: Money;
  readonly how: string;
}

/**
 * Duty, tax, handling and payment fee of a parcel by the owner's terms, each rounded before the
 * next is reckoned from it.
 *
 * @param goods the prices in the parcel
 * @param carried shipping and insurance
 * @param abroad whether the parcel crosses a border; without, only the payment fee is due
 * @param taxPaid tax as billed, in the place of its estimate
 */
export function dueLines(
  goods: Money,
  carried: Money,
  terms: Terms,
  abroad: boolean,
  taxPaid: Money | null,
): readonly ParcelLine[] {
  const { currency } = goods;
  const value = amountOf(goods);
  const withShipping = plus(value, amountOf(carried));
  const round = (amount: Exact) => moneyOf(amount, currency);
  const none = abroad ? 'below the free amount' : 'none within the country';

  const dutiable = abroad && compared(value, terms.dutyFreeBelow) >= 0;
  const duty = round(dutiable ? times(terms.dutyRate, withShipping) : ZERO);
  const taxable = abroad && compared(value, terms.taxFreeBelow) >= 0;
  const bases: Record<Terms['taxBase'], Exact> = {
    goods: value,
    'goods+shipping': withShipping,
    'goods+shipping+duty': plus(withShipping, amountOf(duty)),
  };
  const tax = taxPaid ?? round(taxable ? times(terms.taxRate, bases[terms.taxBase]) : ZERO);
  const handled = abroad && duty.minor + tax.minor > 0;
  const percent = ({ over, under }: Exact) =>
    Number((100 * (Number(over) / Number(under))).toPrecision(9));
  const told = (rate: Exact, of: string) => `${percent(rate)} % of ${of}`;
  return [
    {
      name: 'duty',
      money: duty,
      how: dutiable ? told(terms.dutyRate, 'goods, shipping and insurance') : none,
    },
    {
      name: 'tax',
      money: tax,
      how: taxPaid ? 'as billed' : taxable ? told(terms.taxRate, terms.taxBase) : none,
    },
    {
      name: 'handling',
      money: round(handled ? terms.handling : ZERO),
      how: handled ? 'once a parcel' : 'none, since nothing is due',
    },
    {
      name: 'payment fee',
      money: round(times(terms.paymentFeeRate, withShipping)),
      how: told(terms.paymentFeeRate, 'goods, shipping and insurance'),
    },
  ];
}
