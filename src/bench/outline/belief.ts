import type { Choice } from './choice.ts';
import { cumulative } from './cumulative.ts';
import type { Fine } from './fine.ts';

/**
 * Weights of a logistic regression (`cox:1958`) of "every corner within 0.5 % of the card's width"
 * on what speaks for an outline, fitted by penalised likelihood to 804 hypotheses on 160 pictures
 * made for it: grounds, sleeves, hands, other cards, faint borders, tilt to 35°, blur.
 */
const WEIGHTS = {
  constant: -9.877,
  tips: 0.417,
  arcs: [1.657, 4.359, 1.884],
  held: 6.408,
  misfit: -2.013,
  coarseMisfit: -1.416,
  scatter: -2.843,
} as const;

/** The corners' stated error is taken so many times, and with a share of the blur: alternatives remain. Judgement, no source. */
const WIDER = 1.5;
const OF_BLUR = 0.3;

/** Share of a card's width within which each corner must lie. */
const WITHIN = 0.005;

/**
 * Probability that an outline is right: that its sides are the card's, from tips, sides and shape,
 * times that each corner then lies within 0.5 % of the width, from the corners' error and the blur.
 */
export function beliefOf(choice: Choice, fine: Fine, width: number): number {
  let most = 0;
  for (let i = 0; i < 8; i++) most = Math.max(most, fine.covariance[i * 10] as number);
  const sd = Math.hypot(WIDER * Math.sqrt(most), fine.blur > 1 ? OF_BLUR * fine.blur : 0);
  return sidesBelief(choice, fine, width) * (2 * cumulative((WITHIN * width) / sd) - 1);
}

function sidesBelief(choice: Choice, fine: Fine, width: number): number {
  const { arc, straight } = fine.arcs;
  const round = Array.from(
    arc,
    (share, i) => bounded(share, -0.5, 1) - bounded(straight[i] as number, 0, 1),
  ).sort((a, b) => a - b);
  const scatter = (100 * Math.max(...fine.scatter)) / width;
  let sum =
    WEIGHTS.constant +
    WEIGHTS.tips * choice.tips.reduce((all, tip) => all + tip, 0) +
    WEIGHTS.held * Math.min(...fine.held) +
    (WEIGHTS.misfit * Math.min(fine.misfit, 30)) / 10 +
    (WEIGHTS.coarseMisfit * Math.min(choice.misfit, 30)) / 10 +
    WEIGHTS.scatter * Math.min(scatter, 2);
  WEIGHTS.arcs.forEach((weight, i) => {
    sum += weight * (round[i] as number);
  });
  return 1 / (1 + Math.exp(-sum));
}

function bounded(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
