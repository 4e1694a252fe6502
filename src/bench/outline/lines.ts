import { type Edges, eachRidge, supportAt } from './edges.ts';

/** A straight line in a reduced picture: nx · x + ny · y = c, with the origin at its centre. */
export interface Line {
  readonly nx: number;
  readonly ny: number;
  readonly c: number;
}

const ANGLES = 180;

/** Bins of angle to each side of an edge's own normal that it votes for, by how near they are. */
const SPREAD = [1, 0.8, 0.4] as const;

/** So many peaks of the votes are looked at for each line that is kept. */
const PEAKS_A_LINE = 5;

/** Support along a line above which its unbroken stretch grows. Judgement, no source. */
const UNBROKEN = 0.45;

/**
 * Lines that hold the longest unbroken edges, at most `count`, the longest first: peaks of the votes
 * that each edge casts along its own gradient (`duda:1972`), weighed by their best stretch, so that
 * the many short marks of a cloth or a page do not outvote the side of a card.
 */
export function linesOf(edges: Edges, count: number): readonly Line[] {
  const radius = Math.ceil(Math.hypot(edges.width, edges.height) / 2) + 2;
  const bins = 2 * radius + 1;
  const votes = votesOf(edges, radius, bins);
  return peaksOf(votes, bins, count * PEAKS_A_LINE)
    .map((at) => {
      const angle = ((Math.floor(at / bins) + 0.5) / ANGLES) * Math.PI;
      const line = { nx: Math.cos(angle), ny: Math.sin(angle), c: (at % bins) - radius };
      return { line, stretch: longestStretch(runOf(edges, line)) };
    })
    .sort((a, b) => b.stretch - a.stretch)
    .slice(0, count)
    .map(({ line }) => line);
}

/** The largest sum of support over any one stretch, each pixel less what an unbroken edge must have. */
function longestStretch({ sums }: Run): number {
  let best = 0;
  let here = 0;
  for (let i = 1; i < sums.length; i++) {
    here = Math.max(0, here + (sums[i] as number) - (sums[i - 1] as number) - UNBROKEN);
    if (here > best) best = here;
  }
  return best;
}

function votesOf(edges: Edges, radius: number, bins: number): Float32Array {
  const votes = new Float32Array(ANGLES * bins);
  const cosines = Float64Array.from({ length: ANGLES }, (_, k) =>
    Math.cos(((k + 0.5) / ANGLES) * Math.PI),
  );
  const sines = Float64Array.from({ length: ANGLES }, (_, k) =>
    Math.sin(((k + 0.5) / ANGLES) * Math.PI),
  );
  const cx = (edges.width - 1) / 2;
  const cy = (edges.height - 1) / 2;
  eachRidge(edges, (x, y, i) => {
    const weight = edges.weight[i] as number;
    const angle = Math.atan2(edges.ny[i] as number, edges.nx[i] as number);
    const own = Math.floor((angle / Math.PI) * ANGLES);
    for (let off = -2; off <= 2; off++) {
      const k = (own + off + 2 * ANGLES) % ANGLES;
      const c = (x - cx) * (cosines[k] as number) + (y - cy) * (sines[k] as number) + radius;
      const low = Math.floor(c) | 0;
      const share = c - low;
      const vote = weight * (SPREAD[Math.abs(off)] as number);
      const at = k * bins + low;
      votes[at] = (votes[at] as number) + vote * (1 - share);
      votes[at + 1] = (votes[at + 1] as number) + vote * share;
    }
  });
  return votes;
}

/** The highest bins that no higher one lies near, by falling height. */
function peaksOf(votes: Float32Array, bins: number, count: number): readonly number[] {
  const tops: number[] = [];
  for (let k = 0; k < ANGLES; k++)
    for (let c = 3; c < bins - 3; c++) {
      const at = k * bins + c;
      if ((votes[at] as number) > 4 && isTop(votes, bins, k, c)) tops.push(at);
    }
  tops.sort((a, b) => (votes[b] as number) - (votes[a] as number) || a - b);
  return tops.slice(0, count);
}

function isTop(votes: Float32Array, bins: number, k: number, c: number): boolean {
  const own = votes[k * bins + c] as number;
  for (let dk = -2; dk <= 2; dk++) {
    const turned = k + dk < 0 || k + dk >= ANGLES;
    const row = ((k + dk + ANGLES) % ANGLES) * bins;
    const middle = turned ? bins - 1 - c : c;
    for (let dc = -2; dc <= 2; dc++) {
      const other = votes[row + middle + dc] as number;
      if (other > own || (other === own && (dk < 0 || (dk === 0 && dc < 0)))) return false;
    }
  }
  return true;
}

/** The line through the edges within two pixels of a line, by weighted squares across it. */
export function settledLine(edges: Edges, line: Line): Line {
  const { nx, ny } = line;
  const radius = Math.ceil(Math.hypot(edges.width, edges.height) / 2);
  const cx = (edges.width - 1) / 2;
  const cy = (edges.height - 1) / 2;
  let w = 0;
  let wt = 0;
  let wtt = 0;
  let wu = 0;
  let wtu = 0;
  for (let t = -radius; t <= radius; t++)
    for (let u = -3; u <= 3; u++) {
      const x = Math.round(cx + (line.c + u) * nx - t * ny) | 0;
      const y = Math.round(cy + (line.c + u) * ny + t * nx) | 0;
      if (x < 1 || y < 1 || x >= edges.width - 1 || y >= edges.height - 1) continue;
      const i = y * edges.width + x;
      const along = (edges.nx[i] as number) * nx + (edges.ny[i] as number) * ny;
      const fourth = along * along * along * along;
      const weight = (edges.weight[i] as number) * fourth * fourth;
      const ownT = (y - cy) * nx - (x - cx) * ny;
      const ownU = (x - cx) * nx + (y - cy) * ny - line.c;
      w += weight;
      wt += weight * ownT;
      wtt += weight * ownT * ownT;
      wu += weight * ownU;
      wtu += weight * ownT * ownU;
    }
  const spread = w * wtt - wt * wt;
  if (!(spread > 1e-6)) return line;
  const slope = (w * wtu - wt * wu) / spread;
  const shift = (wu - slope * wt) / w;
  const length = Math.hypot(1, slope);
  // The settled line is u = shift + slope · t, so that its normal leans against the run.
  return {
    nx: (nx + slope * ny) / length,
    ny: (ny - slope * nx) / length,
    c: (line.c + shift) / length,
  };
}

/** How much of a line is an edge, summed from its lower end, so that any stretch is a difference. */
export interface Run {
  /** Pixels from the foot of the line to its first entry. */
  readonly start: number;
  readonly sums: Float32Array;
}

/** The run of edges along a line, a value a pixel. */
export function runOf(edges: Edges, { nx, ny, c }: Line): Run {
  const radius = Math.ceil(Math.hypot(edges.width, edges.height) / 2) + 2;
  const sums = new Float32Array(2 * radius + 1);
  const x = (edges.width - 1) / 2 + c * nx;
  const y = (edges.height - 1) / 2 + c * ny;
  const [from, to] = spanOf(edges, [x, y], [-ny, nx]);
  for (let i = 1; i < sums.length; i++) {
    const t = i - radius;
    const isSeen = t >= from && t <= to;
    const support = isSeen ? supportAt(edges, x - t * ny, y + t * nx, nx, ny) : 0;
    sums[i] = (sums[i - 1] as number) + support;
  }
  return { start: -radius, sums };
}

/** First and last pixel along a line that lie in the picture or within two pixels of it. */
function spanOf(
  { width, height }: Edges,
  [x, y]: readonly [number, number],
  [dx, dy]: readonly [number, number],
): readonly [number, number] {
  const [left, right] = [(-2 - x) / dx, (width + 1 - x) / dx];
  const [top, bottom] = [(-2 - y) / dy, (height + 1 - y) / dy];
  return [
    Math.max(Math.min(left, right), Math.min(top, bottom)),
    Math.min(Math.max(left, right), Math.max(top, bottom)),
  ];
}

/** Mean support between two places of a line, 0 to 1; 0 for a stretch below a pixel. */
export function shareOf({ start, sums }: Run, from: number, to: number): number {
  const last = sums.length - 1;
  const a = Math.min(last, Math.max(0, Math.round(Math.min(from, to) - start)));
  const b = Math.min(last, Math.max(0, Math.round(Math.max(from, to) - start)));
  return b > a ? ((sums[b] as number) - (sums[a] as number)) / (b - a) : 0;
}
