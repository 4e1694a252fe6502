import { within } from './amounts.ts';
import type { Amount, Limit, Scale } from './types.ts';

/**
 * How well each grade, worst to best, explains what was measured, if that grade were the best which
 * this measure alone allows: the probability that the amount lies between this grade's limit and
 * the next one's. Where the pictures might have missed a fault, as much or less may be allowed.
 */
export function capLikelihood(amount: Amount, scale: Scale, limits: readonly Limit[]): number[] {
  const allowed = allowedBy(amount, scale, limits);
  return allowed.map((p, g) => {
    const band = p - (allowed[g + 1] ?? 0);
    return amount.shown * band + (1 - amount.shown) * p;
  });
}

/** The probability that each grade's limit, and those of the grades below it, allow the amount. */
export function allowedBy(amount: Amount, scale: Scale, limits: readonly Limit[]): number[] {
  const own = limits.filter(
    ({ side, measure }) => side === amount.side && measure === amount.measure,
  );
  const most = new Map(own.map(({ grade, atMost }) => [grade, atMost]));
  let last = 1;
  return scale.grades.map((grade, g) => {
    const atMost = most.get(grade);
    // Whatever is wrong with a card, the lowest grade takes it.
    if (g > 0 && atMost !== undefined) last = Math.min(last, within(amount.parts, atMost));
    return last;
  });
}
