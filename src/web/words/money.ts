const GROUPED = new Intl.NumberFormat('en', {
  minimumFractionDigits: 2,
  maximumFractionDigits: 2,
});
const WHOLE = new Intl.NumberFormat('en', { maximumFractionDigits: 0 });

/** An estimate of an amount: to the hundredth below a thousand, whole above. */
export function sayAmount(value: number): string {
  const text = Math.abs(value) >= 1000 ? WHOLE.format(value) : GROUPED.format(value);
  return text.replace('-', '−');
}

/** The same with its currency, which stays beside it. */
export function sayMoney(value: number, currency: string): string {
  return `${sayAmount(value)}\u00a0${currency}`;
}

/** A share as a percentage: `31 %`. */
export function sayPercent(share: number): string {
  const text = share > 0 && share < 0.005 ? '< 1' : share < 1 && share >= 0.995 ? '> 99' : '';
  return `${text || Math.round(100 * share)}\u00a0%`;
}
