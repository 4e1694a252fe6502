import type { Choice } from './choice.ts';
import { cumulative } from './cumulative.ts';
import type { Fine } from './fine.ts';

/**
 * Weights of a logistic regression (`cox:1958`) of "the sides are the card's", every corner within
 * 1.2 % of its width, on what speaks for an outline, fitted by penalised likelihood to the 1,250
 * hypotheses on 536 pictures made for it: grounds, sleeves, hands, holders, other cards, faint
 * borders, tilt to 35°, blur, small pictures, and some without a card.
 */
const WEIGHTS = {
  constant: -1.818,
  tips: 0.611,
  arcs: [1.605, 1.916, 1.856],
  misfit: -2.089,
  coarseMisfit: -2.906,
  rival: -2.124,
} as const;

/** The corners' stated error is taken so many times, and with a share of the blur: alternatives remain. Judgement, no source. */
const WIDER = 1.5;
const OF_BLUR = 0.3;

/** Share of a card's width within which each corner must lie. */
const WITHIN = 0.005;

/** Shares of the width from and to which another edge beside a side may be the card's instead. */
const RIVAL_FROM = 0.004;
const RIVAL_TO = 0.03;

/**
 * Probability that an outline is right: that its sides are the card's, from tips, shape and other
 * edges beside them, times that each corner then lies within 0.5 % of the width, from its error.
 */
export function beliefOf(choice: Choice, fine: Fine, width: number): number {
  const within = 2 * cumulative((WITHIN * width) / errorOf(fine)) - 1;
  return sidesBelief(choice, fine, width) * within;
}

function sidesBelief(choice: Choice, fine: Fine, width: number): number {
  const { arc, straight } = fine.arcs;
  const round = Array.from(
    arc,
    (share, i) => bounded(share, -0.5, 1) - bounded(straight[i] as number, 0, 1),
  ).sort((a, b) => a - b);
  let sum =
    WEIGHTS.constant +
    WEIGHTS.tips * choice.tips.reduce((all, tip) => all + tip, 0) +
    (WEIGHTS.misfit * Math.min(fine.misfit, 30)) / 10 +
    (WEIGHTS.coarseMisfit * Math.min(choice.misfit, 30)) / 10 +
    WEIGHTS.rival * strongestRival(fine, width);
  WEIGHTS.arcs.forEach((weight, i) => {
    sum += weight * (round[i] as number);
  });
  return 1 / (1 + Math.exp(-sum));
}

/** Pixels of the largest standard error of a corner's place, alternatives included. */
function errorOf({ covariance, blur }: Fine): number {
  let most = 0;
  for (let i = 0; i < 8; i++) most = Math.max(most, covariance[i * 10] as number);
  return Math.hypot(WIDER * Math.sqrt(most), blur > 1 ? OF_BLUR * blur : 0);
}

/** How much of a chosen edge's length and steepness the strongest edge beside one has, 0 to 1. */
function strongestRival({ tracks, chosen }: Fine, width: number): number {
  const of = tracks.flatMap((side, i) =>
    side.map(({ off, share, steep }) => {
      const own = chosen[i] as (typeof side)[number];
      const gap = Math.abs(off - own.off) / width;
      if (gap <= RIVAL_FROM || gap >= RIVAL_TO) return 0;
      return Math.min(1, share / own.share) * Math.min(1, steep / own.steep);
    }),
  );
  return Math.max(0, ...of);
}

/** Probability of one of several outlines of which only one can be right, beside the others' own. */
export function amongRivals(p: number, others: readonly number[]): number {
  const sum = others.reduce((all, other) => all + oddsOf(other), 1 + oddsOf(p));
  return oddsOf(p) / sum;
}

function oddsOf(p: number): number {
  return p / Math.max(1 - p, 1e-9);
}

function bounded(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
