import type { Stretch } from './band.ts';
import type { Edges } from './edges.ts';
import { poseOf } from './pose.ts';
import { apart, type Quad, SAME_PX, sideOf } from './quads.ts';
import type { Reduced } from './reduced.ts';
import { type SideGuess, sideGuesses } from './sides.ts';
import { roundness, tipAt } from './tips.ts';

/** A figure chosen among the edges that run side by side, with what spoke for it. */
export interface Choice {
  readonly corners: Float64Array;
  readonly score: number;
  readonly tips: readonly number[];
  readonly sides: readonly number[];
  readonly misfit: number;
}

const GUESSES_A_SIDE = 7;
/** Combinations of guesses whose shape is looked at, and choices kept, of each figure. */
const COMBINATIONS = 48;
const A_FIGURE = 6;
const REACH_MM = 9;
const LONG_MM = 88;
const COARSE_SD = 0.014;
const TIP_WEIGHT = 0.7;

/**
 * What a figure gains by being larger, by the logarithm of its area: frames lie within cards, and
 * nothing with round tips lies close about a card. Judgement, no source.
 */
const OUTWARD = 3;

/**
 * What a side loses by an edge along the whole of it further out, in each ranking: such a side may be
 * a frame's, or lie in a sleeve. Judgement, no source.
 */
const AGAINST_BEYOND = [0, 1.2] as const;

/** Choices made fine at most, of each ranking. */
const MOST_CHOICES = [5, 2] as const;

/** Millimetres within which a side face or a shadow lies outside of the card's own edge. */
const FACE_MM = 1.5;

interface Known {
  readonly aspect: number | null;
  readonly longMm: number | null;
}

/** The best ways to choose each side of a figure among the edges within 9 mm of it, by each ranking. */
function choicesNear(
  reduced: Reduced,
  edges: Edges,
  quad: Quad,
  { aspect, longMm }: Known,
): readonly (readonly Choice[])[] {
  const perMm = perMmOf(quad.corners, longMm);
  const guesses = [0, 1, 2, 3].map((i) =>
    sideGuesses(reduced, edges, stretchOf(quad.corners, i), {
      reach: REACH_MM * perMm,
      face: FACE_MM * perMm,
      count: GUESSES_A_SIDE,
    }),
  );
  if (guesses.some((of) => of.length === 0)) return AGAINST_BEYOND.map(() => []);
  const lines = guesses.map((of, i) => of.map((guess) => shifted(quad.corners, i, guess)));
  const tips = tipsOf(reduced, edges, lines, perMm);
  const half = Math.hypot(reduced.width, reduced.height) / 2;
  return AGAINST_BEYOND.map((against) =>
    bestCombinations(guesses, tips, acrossOf(quad.corners), against)
      .map((choice) => {
        const { misfit } = poseOf(
          choice.corners.map((v) => v / half),
          aspect,
          COARSE_SD,
        );
        return { ...choice, misfit, score: choice.score - Math.min(misfit, 40) / 8 };
      })
      .sort((a, b) => b.score - a.score)
      .slice(0, A_FIGURE),
  );
}

function bestCombinations(
  guesses: readonly (readonly SideGuess[])[],
  tips: Tips,
  across: readonly [number, number],
  against: number,
): readonly Choice[] {
  const found: Choice[] = [];
  eachCombination(guesses, tips, across, against, (score, a, b, c, d) => {
    if (found.length === COMBINATIONS) {
      const last = found[found.length - 1] as Choice;
      if (score <= last.score) return;
      found.pop();
    }
    const choice = choiceOf([a, b, c, d], score, guesses, tips);
    const at = found.findIndex((other) => other.score < score);
    found.splice(at < 0 ? found.length : at, 0, choice);
  });
  return found;
}

function choiceOf(
  pick: readonly number[],
  score: number,
  guesses: readonly (readonly SideGuess[])[],
  tips: Tips,
): Choice {
  const corners = new Float64Array(8);
  const round: number[] = [];
  for (let i = 0; i < 4; i++) {
    const at = cell(i, pick[i] as number, pick[(i + 1) % 4] as number);
    const j = (i + 1) % 4;
    corners[2 * j] = tips.x[at] as number;
    corners[2 * j + 1] = tips.y[at] as number;
    round[j] = tips.round[at] as number;
  }
  const sides = pick.map((of, i) => guesses[i]?.[of]?.evidence ?? 0);
  return { corners, score, tips: round, sides, misfit: 0 };
}

interface Tips {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly round: Float64Array;
}

function cell(side: number, own: number, next: number): number {
  return (side * GUESSES_A_SIDE + own) * GUESSES_A_SIDE + next;
}

/** Where each guess of a side meets each of the next, and how round that tip is. */
function tipsOf(
  reduced: Reduced,
  edges: Edges,
  lines: readonly (readonly Stretch[])[],
  perMm: number,
): Tips {
  const n = 4 * GUESSES_A_SIDE * GUESSES_A_SIDE;
  const tips = { x: new Float64Array(n), y: new Float64Array(n), round: new Float64Array(n) };
  for (let i = 0; i < 4; i++)
    lines[i]?.forEach((own, a) => {
      lines[(i + 1) % 4]?.forEach((next, b) => {
        const at = cell(i, a, b);
        const [x, y] = crossing(own, next);
        tips.x[at] = x;
        tips.y[at] = y;
        const tip = tipAt([x, y], [own[0], own[1]], [next[2], next[3]], perMm);
        tips.round[at] = roundness(reduced, edges, tip);
      });
    });
  return tips;
}

function eachCombination(
  guesses: readonly (readonly SideGuess[])[],
  tips: Tips,
  across: readonly [number, number],
  against: number,
  visit: (score: number, a: number, b: number, c: number, d: number) => void,
): void {
  const [n0, n1, n2, n3] = guesses.map((of) => of.length) as [number, number, number, number];
  const worth = guesses.map((of, i) =>
    of.map(
      ({ evidence, beyond, from, to }) =>
        Math.log(0.1 + evidence) -
        against * beyond +
        (OUTWARD * (from + to)) / 2 / (across[i % 2] as number),
    ),
  );
  const value = (i: number, a: number, b: number) =>
    (worth[i]?.[a] as number) + TIP_WEIGHT * (tips.round[cell(i, a, b)] as number);
  for (let a = 0; a < n0; a++)
    for (let b = 0; b < n1; b++) {
      const ab = value(0, a, b);
      for (let c = 0; c < n2; c++) {
        const abc = ab + value(1, b, c);
        for (let d = 0; d < n3; d++) visit(abc + value(2, c, d) + value(3, d, a), a, b, c, d);
      }
    }
}

/** Pixels from the first side to the third, and from the second to the fourth. */
function acrossOf(p: Float64Array): readonly [number, number] {
  return [(sideOf(p, 1) + sideOf(p, 3)) / 2, (sideOf(p, 0) + sideOf(p, 2)) / 2];
}

function perMmOf(p: Float64Array, longMm: number | null): number {
  const long = Math.max(sideOf(p, 0) + sideOf(p, 2), sideOf(p, 1) + sideOf(p, 3)) / 2;
  return long / (longMm ?? LONG_MM);
}

function stretchOf(p: Float64Array, i: number): Stretch {
  const j = ((i + 1) % 4) * 2;
  return [p[2 * i] as number, p[2 * i + 1] as number, p[j] as number, p[j + 1] as number];
}

function shifted(p: Float64Array, i: number, guess: SideGuess): Stretch {
  const [ax, ay, bx, by] = stretchOf(p, i);
  const length = Math.hypot(bx - ax, by - ay);
  const nx = (by - ay) / length;
  const ny = -(bx - ax) / length;
  return [ax + guess.from * nx, ay + guess.from * ny, bx + guess.to * nx, by + guess.to * ny];
}

function crossing([ax, ay, bx, by]: Stretch, [cx, cy, dx, dy]: Stretch): readonly [number, number] {
  const turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  const t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn;
  return [ax + t * (bx - ax), ay + t * (by - ay)];
}

/** A figure with the roundness of its four tips in its score. */
export function withTips(reduced: Reduced, edges: Edges, quad: Quad, longMm: number | null): Quad {
  const p = quad.corners;
  const perMm = perMmOf(p, longMm);
  let score = quad.score;
  for (let i = 0; i < 8; i += 2) {
    const next = (i + 2) % 8;
    const before = (i + 6) % 8;
    const tip = tipAt(
      [p[i] as number, p[i + 1] as number],
      [p[before] as number, p[before + 1] as number],
      [p[next] as number, p[next + 1] as number],
      perMm,
    );
    score += TIP_WEIGHT * roundness(reduced, edges, tip);
  }
  return { corners: p, score };
}

/** The choices near each of the figures, the best first, by each ranking. */
export function choicesOf(
  reduced: Reduced,
  edges: Edges,
  quads: readonly Quad[],
  known: Known,
): readonly (readonly Choice[])[] {
  const near = quads.map((quad) => choicesNear(reduced, edges, quad, known));
  return MOST_CHOICES.map((most, ranking) =>
    apart(
      near.flatMap((of) => of[ranking] as readonly Choice[]).sort((a, b) => b.score - a.score),
      SAME_PX,
      most,
    ),
  );
}
