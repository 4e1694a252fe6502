import type { LineFeatures } from '../surface/line-features.ts';
import type { DentLikeness } from './dent-likeness.ts';
import type { LampSide } from './lamp-side.ts';
import { PX_PER_MM } from './relit-card.ts';

/** Copies have dents and folds more rarely than the pictures that the odds were learned from. Judgement, no source. */
const RARER = 0.5;

/**
 * Log odds that a place is a dent: logistic regression (`cox:1958`) on rendered pairs with dents,
 * folds, scratches and none; the method page says on which. A hollow's lobes lie along the lamp's direction, which counts
 * by how well that is known.
 */
export function dentOdds(dent: Omit<DentLikeness, 'centreMm' | 'widthMm'>, side: LampSide): number {
  const strength = Math.log(dent.strength);
  const around = Math.log(Math.min(dent.around, 20));
  const printed = Math.min(dent.printed, 1);
  const aligned = side.angle === null ? 0 : -Math.cos(dent.angle - side.angle);
  const { fit, goesOn } = dent;
  if (side.from === 'told')
    return (
      -26.3 +
      1.4 * strength +
      4.05 * around +
      6 * fit -
      1.5 * goesOn -
      1.1 * printed +
      10.6 * aligned -
      RARER
    );
  return (
    -19.5 +
    0.6 * strength +
    5.1 * around +
    7.8 * fit -
    1.4 * goesOn -
    0.75 * printed +
    1.65 * aligned -
    RARER
  );
}

/** Lines within this sine of an axis are more often frames, panels and the blocks of JPEG. */
const ALONG_AXIS = 0.06;

/** Log odds that a line is a fold, learned in the same way on the same pairs. */
export function creaseOdds(line: LineFeatures): number {
  const lengthMm = line.lengthPx / PX_PER_MM;
  return (
    -8.4 +
    5.65 * Math.log(line.strength) +
    1.3 * Math.log(Math.min(lengthMm, 20) / 5) -
    4.9 * Math.min(Math.sqrt(line.printed), 1) -
    (line.askew < ALONG_AXIS ? 4.1 : 0) -
    2.9 * Math.min(1, 10 * (1 - line.straight)) -
    2.6 * Math.log(Math.min(line.around, 6)) -
    RARER
  );
}
