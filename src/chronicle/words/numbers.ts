import type { Phrases } from './types.ts';

/** A probability: two decimals, never a 0 or 1 that no evidence can give. */
export function tellP({ locale }: Phrases, p: number): string {
  const two = decimals(locale, 2);
  if (p >= 0.995) return `> ${two.format(0.99)}`;
  return p < 0.005 ? `< ${two.format(0.01)}` : two.format(p);
}

/** A count; estimates are rounded to whole copies. */
export function tellCount({ locale }: Phrases, count: number): string {
  return decimals(locale, 0).format(Math.round(count));
}

/** A share in per cent, whole ones. */
export function tellShare({ locale }: Phrases, share: number): string {
  return new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 }).format(
    share,
  );
}

/** An estimated amount, in whole units from 100 on: pennies would promise too much. */
export function tellAmount({ locale }: Phrases, amount: number, currency: string): string {
  const least = amount >= 100 ? { maximumFractionDigits: 0 } : {};
  const style = { style: 'currency', currency, ...least } as const;
  return new Intl.NumberFormat(locale, style).format(amount);
}

function decimals(locale: string, digits: number): Intl.NumberFormat {
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
}
