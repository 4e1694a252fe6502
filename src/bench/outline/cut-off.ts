import type { Edges } from './edges.ts';
import { type Line, type Run, runOf, shareOf } from './lines.ts';
import type { Reduced } from './reduced.ts';
import { roundness, tipAt } from './tips.ts';

/** Short side of a usual card, and its longest side over its shortest, with room for tilt. */
const MEAN_SIDE_MM = 74;
const LONGEST = 1.75;

/** Of the width that is seen at least so much length must be, lest every line along the rim count. */
const LEAST_SEEN = 0.2;
const LEAST_SIDE = 40;

/** Bounds of the angles between sides and rim. Judgement, no source. */
const PARALLEL = Math.cos((18 * Math.PI) / 180);
const CROSSING = Math.sin((60 * Math.PI) / 180);
const ACROSS_RIM = Math.sin((40 * Math.PI) / 180);

/** Each of the three sides must be an edge along so much of its length, both tips so round. */
const LEAST_SHARE = 0.6;
const LEAST_ROUND = 0.35;
const LEAST_BOTH = 1.2;

/** Near the rim a side that runs on over it is an edge still. */
const LEAST_AT_RIM = 0.45;

/** Beyond a tip a side may be an edge along so much of its prolongation. */
const MOST_BEYOND = 0.45;

type Place = readonly [x: number, y: number];

/**
 * Whether a card runs out of the picture: two sides that both leave it over one rim, joined by a
 * third with two round tips, and too short between rim and tips, or just long enough, for a card.
 */
export function isCutOff(reduced: Reduced, edges: Edges, lines: readonly Line[]): boolean {
  const runs = lines.map((line) => runOf(edges, line));
  for (const rim of rimsOf(edges))
    for (let i = 0; i < lines.length; i++)
      for (let j = i + 1; j < lines.length; j++)
        if (leavesTogether(lines[i] as Line, lines[j] as Line, rim, edges))
          for (let k = 0; k < lines.length; k++)
            if (k !== i && k !== j && isOpenFigure(reduced, edges, lines, runs, [i, j, k], rim))
              return true;
  return false;
}

/** The picture's four rims, a little within it, since edges end there. */
function rimsOf({ width, height }: Edges): readonly Line[] {
  const x = width / 2 - 4;
  const y = height / 2 - 4;
  return [
    { nx: 1, ny: 0, c: x },
    { nx: 1, ny: 0, c: -x },
    { nx: 0, ny: 1, c: y },
    { nx: 0, ny: 1, c: -y },
  ];
}

function leavesTogether(a: Line, b: Line, rim: Line, edges: Edges): boolean {
  if (Math.abs(a.nx * b.nx + a.ny * b.ny) < PARALLEL) return false;
  if (turn(a, rim) < ACROSS_RIM || turn(b, rim) < ACROSS_RIM) return false;
  const p = meeting(a, rim);
  const q = meeting(b, rim);
  return isWithin(p, edges) && isWithin(q, edges) && apart(p, q) > LEAST_SIDE;
}

function turn(a: Line, b: Line): number {
  return Math.abs(a.nx * b.ny - a.ny * b.nx);
}

function meeting(a: Line, b: Line): Place {
  const sine = a.nx * b.ny - a.ny * b.nx;
  return [(a.c * b.ny - b.c * a.ny) / sine, (a.nx * b.c - b.nx * a.c) / sine];
}

function apart(p: Place, q: Place): number {
  return Math.hypot(p[0] - q[0], p[1] - q[1]);
}

function isWithin([x, y]: Place, { width, height }: Edges): boolean {
  return Math.abs(x) < width / 2 && Math.abs(y) < height / 2;
}

/** Whether sides i and j, from the rim to side k, and k between them look like a card's. */
function isOpenFigure(
  reduced: Reduced,
  edges: Edges,
  lines: readonly Line[],
  runs: readonly Run[],
  [i, j, k]: readonly [number, number, number],
  rim: Line,
): boolean {
  const [a, b, c] = [lines[i] as Line, lines[j] as Line, lines[k] as Line];
  if (turn(a, c) < CROSSING || turn(b, c) < CROSSING) return false;
  const [p, q] = [meeting(a, c), meeting(b, c)];
  if (!isWithin(p, edges) || !isWithin(q, edges)) return false;
  const [u, v] = [meeting(a, rim), meeting(b, rim)];
  const wide = apart(p, q);
  const long = Math.max(apart(p, u), apart(q, v));
  const short = Math.min(apart(p, u), apart(q, v));
  if (wide < LEAST_SIDE || short < LEAST_SEEN * wide || long > LONGEST * wide) return false;
  if (!isSide(runs[i] as Run, a, u, p)) return false;
  if (!isSide(runs[j] as Run, b, v, q)) return false;
  if (!isSide(runs[k] as Run, c, p, q) || !isSide(runs[k] as Run, c, q, p)) return false;
  const perMm = wide / MEAN_SIDE_MM;
  const first = roundness(reduced, edges, tipAt(p, u, q, perMm));
  const second = roundness(reduced, edges, tipAt(q, v, p, perMm));
  return Math.min(first, second) > LEAST_ROUND && first + second > LEAST_BOTH;
}

/** Whether a line is an edge from one place to another and ends there. */
function isSide(run: Run, line: Line, from: Place, to: Place): boolean {
  const along = ([x, y]: Place) => line.nx * y - line.ny * x;
  const [a, b] = [along(from), along(to)];
  const end = (b - a) * 0.06;
  return (
    shareOf(run, a + end, b - end) > LEAST_SHARE &&
    shareOf(run, a, a + 4 * end) > LEAST_AT_RIM &&
    shareOf(run, b + 0.3 * end, b + 3 * end) < MOST_BEYOND
  );
}
