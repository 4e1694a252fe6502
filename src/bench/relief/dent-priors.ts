import { SHAPE, SHAPE_SIZE } from './dent-shape.ts';
import type { Lighting } from './lighting.ts';

// Priors: Judgement, no source. Any profile from cap to Gaussian, level floors too; dents up to about 1.5 times as
// long as wide; a card that is locally flat to half a degree; lamps' strength known to 3 %.
const PRIOR = {
  logPower: { mean: Math.log(2.3), sd: 0.5 },
  logFlat: { mean: 0, sd: 0.25 },
  stretch: 0.2,
  tilt: 0.01,
  strength: 0.03,
  logExponent: 0.3,
} as const;

/** What is known of an unknown before the pictures: its number, mean and standard error. */
export interface Prior {
  readonly at: number;
  readonly mean: number;
  readonly sd: number;
}

/** Priors of the dent, the lamps' strengths and the gloss. */
export function priorsOf({ gloss }: Lighting, lamps: number): readonly Prior[] {
  const first = SHAPE_SIZE + lamps;
  return [
    { at: SHAPE.logPower, ...PRIOR.logPower },
    { at: SHAPE.logFlat, ...PRIOR.logFlat },
    ...[SHAPE.stretchX, SHAPE.stretchXY].map((at) => ({ at, mean: 0, sd: PRIOR.stretch })),
    ...[SHAPE.tiltX, SHAPE.tiltY].map((at) => ({ at, mean: 0, sd: PRIOR.tilt })),
    ...Array.from({ length: lamps }, (_, k) => ({
      at: SHAPE_SIZE + k,
      mean: 0,
      sd: PRIOR.strength,
    })),
    { at: first, mean: gloss.strength, sd: gloss.sd },
    { at: first + 1, mean: Math.log(gloss.exponent), sd: PRIOR.logExponent },
  ];
}

const between = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);

/** Of a power of exactly 1, a cap, only depth over width squared is seen, and a fit would tell neither. */
const LEAST_POWER = 1.15;

/** Brings unknowns back within what can be, in place. */
export function confine(theta: Float64Array, start: Float64Array, lamps: number): void {
  const limit = (at: number, low: number, high: number) => {
    theta[at] = between(theta[at] as number, low, high);
  };
  const width = Math.exp(start[SHAPE.logWidth] as number);
  for (const at of [SHAPE.x, SHAPE.y])
    limit(at, (start[at] as number) - width, (start[at] as number) + width);
  limit(SHAPE.logWidth, Math.log(0.12), Math.log(3 * width));
  limit(SHAPE.logPower, Math.log(LEAST_POWER), Math.log(9));
  limit(SHAPE.logFlat, 0, Math.log(3));
  for (const at of [SHAPE.stretchX, SHAPE.stretchXY]) limit(at, -0.8, 0.8);
  limit(SHAPE_SIZE + lamps, 0, 1);
  limit(SHAPE_SIZE + lamps + 1, Math.log(1.5), Math.log(150));
}
