/** An exact number: a fraction whose denominator is above 0. Money is never reckoned in binary fractions. */
export interface Exact {
  readonly over: bigint;
  readonly under: bigint;
}

/** Nothing. */
export const ZERO: Exact = { over: 0n, under: 1n };

/**
 * The exact value of a decimal number as it is written (`12.50`, `-3`, `1e-7`), or of a number by
 * its shortest decimal form.
 *
 * @throws {RangeError} where it is no decimal number
 */
export function exactOf(text: string | number): Exact {
  const match = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/i.exec(String(text).trim());
  if (match === null) throw new RangeError(`${text} is no decimal number`);
  const [, sign = '', whole = '', fraction = '', power = '0'] = match;
  const scale = fraction.length - Number(power);
  const digits = BigInt(whole + fraction) * (sign ? -1n : 1n);
  return scale >= 0
    ? { over: digits, under: 10n ** BigInt(scale) }
    : { over: digits * 10n ** BigInt(-scale), under: 1n };
}

/** The sum. */
export function plus(a: Exact, b: Exact): Exact {
  return { over: a.over * b.under + b.over * a.under, under: a.under * b.under };
}

/** The product. */
export function times(a: Exact, b: Exact): Exact {
  return { over: a.over * b.over, under: a.under * b.under };
}

/**
 * The quotient.
 *
 * @throws {RangeError} where the divisor is 0
 */
export function dividedBy(a: Exact, b: Exact): Exact {
  if (b.over === 0n) throw new RangeError('nothing can be divided by 0');
  const sign = b.over < 0n ? -1n : 1n;
  return { over: a.over * b.under * sign, under: a.under * b.over * sign };
}

/** Below 0, 0 or above 0 as `a` is less than, equal to or more than `b`. */
export function compared(a: Exact, b: Exact): number {
  const difference = a.over * b.under - b.over * a.under;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}

/** The nearest whole number, halves away from zero (roundTiesToAway of `ieee:754`). */
export function roundedAway({ over, under }: Exact): bigint {
  const size = over < 0n ? -over : over;
  const whole = (2n * size + under) / (2n * under);
  return over < 0n ? -whole : whole;
}

/** The nearest binary number, for estimates only. */
export function nearest({ over, under }: Exact): number {
  const whole = over / under;
  return Number(whole) + Number(over - whole * under) / Number(under);
}
