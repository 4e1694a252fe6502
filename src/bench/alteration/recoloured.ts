import type { Finding } from '../compare/finding.ts';
import { type Belief, learned, log10Ratio, logNext, logT } from '../compare/likelihood-ratio.ts';
import type { RimColour } from '../wear/rim-colour.ts';
import { type Sign, signOf } from './sign.ts';

const BETWEEN = [
  'ink was laid over a worn edge',
  'the rim has the colour that it was printed with',
] as const;

/**
 * Logarithm of how far the rim's oddest stretch lies off the border's own colour, in CIELAB, where
 * nothing was laid on and where ink was. Judgement, no source.
 */
const PRINTED: Belief = { mean: Math.log(2.5), kappa: 1, nu: 3, sd: 0.4 };
const INKED: Belief = { mean: Math.log(9), kappa: 1, nu: 3, sd: 0.6 };
/** How much more uneven that stretch is, as a logarithm. Judgement, no source. */
const UNEVEN = { printed: 0.35, inked: 0.8 };

/**
 * Whether a worn edge was coloured over: a stretch of the rim that is off the border's own colour,
 * other than towards white, and of another texture. How a lamp shines back from it is not looked at.
 *
 * @param others rims of copies believed untouched; none: what is usual is a guess
 */
export function recolouredSign(rim: RimColour, others: readonly RimColour[]): Sign {
  const { centreMm, difference, usual, texture } = rim;
  const value = Math.log(difference + 0.1);
  const se = usual / (difference + 0.1);
  const printed = learned(
    PRINTED,
    others.map((other) => Math.log(other.difference + 0.1)),
  );
  const colour: Finding = {
    what: 'colour of the rim off the border’s own, CIELAB',
    whereMm: centreMm,
    difference,
    sd: usual,
    // A rim that is more even than most is not less printed for it.
    log10Lr: log10Ratio(
      logNext(INKED, Math.max(value, printed.mean), se),
      logNext(printed, Math.max(value, printed.mean), se),
    ),
  };
  const uneven: Finding = {
    what: 'texture of the rim there against the border, logarithm',
    whereMm: centreMm,
    difference: texture,
    sd: UNEVEN.printed,
    log10Lr: log10Ratio(logT(texture, 3, UNEVEN.inked), logT(texture, 3, UNEVEN.printed)),
  };
  // Whitening is uneven too: texture says something of a rim alone that is of another colour.
  return signOf('recoloured', colour.log10Lr > 0 ? [colour, uneven] : [colour], BETWEEN, [
    ...(others.length === 0
      ? ['How rims of this printing vary is a guess: no other copy was measured.']
      : []),
    'Dirt, a stain or a shadow at the edge looks alike; ink often shines otherwise under a low lamp.',
  ]);
}
