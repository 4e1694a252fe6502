import type { Edges } from './edges.ts';
import { type Line, type Run, runOf, shareOf } from './lines.ts';

/** Four corners clockwise as seen, x0, y0, … y3, from a reduced picture's centre; and their standing. */
export interface Quad {
  readonly corners: Float64Array;
  readonly score: number;
}

/** Bounds of what is looked for. Judgement, no source. */
const LEAST_SIDE = 36;
const WIDEST_CONVERGENCE = Math.cos((24 * Math.PI) / 180);
const LEAST_CROSSING = Math.sin((52 * Math.PI) / 180);
const MOST_TAPER = Math.exp(0.45);
const BEYOND_RIM = 0.04;
const AGAINST_EXTENSION = 0.5;

interface Grid {
  readonly lines: readonly Line[];
  readonly runs: readonly Run[];
  /** Where line i meets line j: pixels along i; x and y. */
  readonly along: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** 1 where they meet in the picture or a little beyond its rim. */
  readonly within: Uint8Array;
}

/** Quadrilaterals of lines that stand out and have about the aspect of a card, the best first. */
export function quadsOf(
  edges: Edges,
  lines: readonly Line[],
  aspect: number | null,
  count: number,
): readonly Quad[] {
  const grid = crossingsOf(edges, lines);
  const pairs = pairsOf(lines);
  const best = new Best(count * 4);
  for (let p = 0; p < pairs.length; p++)
    for (let q = p + 1; q < pairs.length; q++)
      tryQuad(grid, pairs[p] as Pair, pairs[q] as Pair, aspect, best);
  return apart(best.sorted(), SAME_PX, count);
}

type Pair = readonly [number, number];

function pairsOf(lines: readonly Line[]): readonly Pair[] {
  const pairs: Pair[] = [];
  lines.forEach((a, i) => {
    for (let j = i + 1; j < lines.length; j++) {
      const b = lines[j] as Line;
      const cosine = a.nx * b.nx + a.ny * b.ny;
      if (Math.abs(cosine) < WIDEST_CONVERGENCE) continue;
      if (Math.abs(a.c - Math.sign(cosine) * b.c) > LEAST_SIDE / 2) pairs.push([i, j]);
    }
  });
  return pairs;
}

function crossingsOf(edges: Edges, lines: readonly Line[]): Grid {
  const n = lines.length;
  const halfX = edges.width * (0.5 + BEYOND_RIM);
  const halfY = edges.height * (0.5 + BEYOND_RIM);
  const within = new Uint8Array(n * n);
  const along = new Float64Array(n * n);
  const x = new Float64Array(n * n);
  const y = new Float64Array(n * n);
  lines.forEach((a, i) => {
    lines.forEach((b, j) => {
      const turn = a.nx * b.ny - a.ny * b.nx;
      const at = i * n + j;
      x[at] = (a.c * b.ny - b.c * a.ny) / turn;
      y[at] = (a.nx * b.c - b.nx * a.c) / turn;
      along[at] = a.nx * (y[at] as number) - a.ny * (x[at] as number);
      const isWithin = Math.abs(x[at] as number) < halfX && Math.abs(y[at] as number) < halfY;
      within[at] = isWithin ? 1 : 0;
    });
  });
  const runs = lines.map((line) => runOf(edges, line));
  return { lines, runs, along, x, y, within };
}

const corners = new Float64Array(8);

function tryQuad(grid: Grid, [a, b]: Pair, [c, d]: Pair, aspect: number | null, best: Best): void {
  const n = grid.lines.length;
  const { within } = grid;
  if (!within[a * n + c] || !within[c * n + b] || !within[b * n + d] || !within[d * n + a]) return;
  if (!cross(grid.lines[a] as Line, grid.lines[c] as Line)) return;
  putCorner(grid, 0, a * n + c);
  putCorner(grid, 1, c * n + b);
  putCorner(grid, 2, b * n + d);
  putCorner(grid, 3, d * n + a);
  const shape = shapeOf(corners, aspect);
  if (shape === null) return;
  const one = shape + sideScore(grid, a, c, d);
  if (one + 3 * MOST_OF_SIDE <= best.least) return;
  const two = one + sideScore(grid, b, c, d);
  if (two + 2 * MOST_OF_SIDE <= best.least) return;
  best.take(two + sideScore(grid, c, a, b) + sideScore(grid, d, a, b), corners);
}

function cross(a: Line, b: Line): boolean {
  return Math.abs(a.nx * b.ny - a.ny * b.nx) >= LEAST_CROSSING;
}

function putCorner({ x, y }: Grid, i: number, at: number): void {
  corners[2 * i] = x[at] as number;
  corners[2 * i + 1] = y[at] as number;
}

/** No side scores more, however whole it is: a figure that cannot reach the best is left at once. */
const MOST_OF_SIDE = Math.log(1.2);

/** Support of the stretch of line i between lines j and k, less what runs on beyond them. */
function sideScore({ lines, runs, along }: Grid, i: number, j: number, k: number): number {
  const run = runs[i] as Run;
  const from = along[i * lines.length + j] as number;
  const to = along[i * lines.length + k] as number;
  const end = (to - from) * 0.06;
  const inside = shareOf(run, from + end, to - end);
  const beyond = shareOf(run, from - 0.3 * end, from - 3 * end);
  const after = shareOf(run, to + 0.3 * end, to + 3 * end);
  return Math.log(0.1 + inside) - AGAINST_EXTENSION * (beyond + after) * inside;
}

/** Standing of a figure's shape; null where it is crossed, too small or no card's. */
function shapeOf(p: Float64Array, aspect: number | null): number | null {
  let positive = 0;
  for (let i = 0; i < 4; i++) if (turnAt(p, i) > 0) positive++;
  if (positive !== 0 && positive !== 4) return null;
  const s0 = sideOf(p, 0);
  const s1 = sideOf(p, 1);
  const s2 = sideOf(p, 2);
  const s3 = sideOf(p, 3);
  if (Math.min(s0, s1, s2, s3) < LEAST_SIDE) return null;
  if (!isLike(s0, s2) || !isLike(s1, s3)) return null;
  const ratio = (s0 + s2) / (s1 + s3);
  const narrow = Math.min(ratio, 1 / ratio);
  const off = Math.log(narrow / (aspect ? Math.min(aspect, 1 / aspect) : 0.7));
  if (Math.abs(off) > 0.42) return null;
  const size = Math.log((s0 + s2) * (s1 + s3));
  return 0.25 * size - (off / 0.22) ** 2 / 2;
}

/** Whether two opposite sides are so nearly of one length as tilt leaves them. */
function isLike(a: number, b: number): boolean {
  return Math.max(a, b) <= MOST_TAPER * Math.min(a, b);
}

/** Length of the side from corner i to the next. */
export function sideOf(p: Float64Array, i: number): number {
  const j = (i + 1) % 4;
  const x = (p[2 * j] as number) - (p[2 * i] as number);
  const y = (p[2 * j + 1] as number) - (p[2 * i + 1] as number);
  return Math.sqrt(x * x + y * y);
}

function turnAt(p: Float64Array, i: number): number {
  const j = ((i + 1) % 4) * 2;
  const k = ((i + 2) % 4) * 2;
  const x = p[j] as number;
  const y = p[j + 1] as number;
  return (
    (x - (p[2 * i] as number)) * ((p[k + 1] as number) - y) -
    (y - (p[2 * i + 1] as number)) * ((p[k] as number) - x)
  );
}

/** The figures with the highest scores, without sorting every one that comes. */
class Best {
  readonly #room: number;
  #kept: Quad[] = [];
  /** A figure with no more than this is not among them. */
  least = Number.NEGATIVE_INFINITY;

  constructor(room: number) {
    this.#room = room;
  }

  take(score: number, corners: Float64Array): void {
    if (score <= this.least) return;
    this.#kept.push({ score, corners: clockwise(corners) });
    if (this.#kept.length < 2 * this.#room) return;
    this.#kept = this.sorted().slice(0, this.#room);
    this.least = (this.#kept[this.#room - 1] as Quad).score;
  }

  sorted(): Quad[] {
    return this.#kept.sort((a, b) => b.score - a.score);
  }
}

function clockwise(p: Float64Array): Float64Array {
  if (turnAt(p, 0) > 0) return p.slice();
  return Float64Array.of(0, 1, 6, 7, 4, 5, 2, 3).map((i) => p[i] as number);
}

/** Figures that lie more than so many pixels from every better one, the best first, at most `most`. */
export function apart<T extends { readonly corners: Float64Array }>(
  figures: readonly T[],
  pixels: number,
  most = figures.length,
): readonly T[] {
  const kept: T[] = [];
  for (const figure of figures) {
    if (kept.length === most) break;
    if (kept.every((other) => distance(figure.corners, other.corners) > pixels)) kept.push(figure);
  }
  return kept;
}

/** Figures of the reduced picture within so many of its pixels of a better one are that one. */
export const SAME_PX = 3;

/** The largest distance between corners, whichever the first is. */
export function distance(p: Float64Array, q: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 8; turn += 2) {
    let most = 0;
    for (let i = 0; i < 8; i += 2) {
      const j = (i + turn) % 8;
      const x = (p[i] as number) - (q[j] as number);
      const y = (p[i + 1] as number) - (q[j + 1] as number);
      most = Math.max(most, x * x + y * y);
    }
    least = Math.min(least, most);
  }
  return Math.sqrt(least);
}

/** Area within four corners. */
export function areaOf(p: Float64Array): number {
  let twice = 0;
  for (let i = 0; i < 8; i += 2) {
    const j = (i + 2) % 8;
    twice += (p[i] as number) * (p[j + 1] as number) - (p[j] as number) * (p[i + 1] as number);
  }
  return Math.abs(twice) / 2;
}

/** Whether one of the sides of the first figure has the whole second figure beyond it. */
export function lieApart(p: Float64Array, q: Float64Array): boolean {
  for (let i = 0; i < 4; i++) {
    const j = ((i + 1) % 4) * 2;
    const [x, y] = [p[2 * i] as number, p[2 * i + 1] as number];
    const [dx, dy] = [(p[j] as number) - x, (p[j + 1] as number) - y];
    const beyond = (k: number) => dx * ((q[k + 1] as number) - y) - dy * ((q[k] as number) - x) < 0;
    if (beyond(0) && beyond(2) && beyond(4) && beyond(6)) return true;
  }
  return false;
}
