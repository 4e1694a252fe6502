import { straightened } from '../geometry/lens.ts';
import { covarianceOf } from './covariance.ts';
import { centreOf, type Figure, figureOfSides } from './figure.ts';
import { inverseOfSymmetric, timesVector } from './normal-equations.ts';
import { KEPT, STRIPS, type Strips } from './strips.ts';

/** A figure fitted to the edges of its strips. */
export interface Fit {
  readonly figure: Figure;
  /** Covariance of x0, y0, … y3 in pixels and k1, 9 × 9 by rows, without floors. */
  readonly covariance: Float64Array;
}

/** What is asked of a fit. */
export interface FitTerms {
  /** Where each side is expected in a strip: pixels outward at its middle, and slope. */
  readonly expected: readonly { readonly off: number; readonly slope: number }[];
  /** Pixels off the expected place, or off the fit in later rounds, at which an edge counts half. */
  readonly scales: readonly number[];
  /** Standard deviation of k1 before anything is seen; 0 keeps it as it is. */
  readonly bowSd: number;
  /** Floor of the standard error of a side's place, in pixels. */
  readonly floor: number;
}

const PARAMETERS = 9;

/** Weight that keeps a bow as it is, and the strongest bow that is believed. */
const FIXED = 1e30;
const MOST_BOW = 0.15;

/** Usual scatter of edges, in pixels, against which the prior of the bow is weighed. */
const USUAL_SCATTER = 0.5;

/** Below so many edges a side is not seen, and its scatter is taken as this many pixels. */
const FEWEST = 4;
const UNSEEN_SCATTER = 3;

/**
 * One joint fit of four lines and the bow of the lens to the nearest edge of each strip, by squares
 * weighted by Cauchy's rule (`holland:1977`), round after round with the nearest edge taken anew.
 */
export function fitFigure(strips: Strips, start: Figure, terms: FitTerms): Fit {
  let figure = start;
  let guess = offsetsOf(strips, terms.expected);
  let state: State | null = null;
  for (const scale of terms.scales) {
    state = round(strips, figure, guess, scale, terms);
    figure = state.figure;
    guess = offsetsOfFigure(strips, figure);
  }
  if (!state) throw new RangeError('A fit needs at least one round.');
  const covariance = covarianceOf(state.normal, state.scatter, figure, terms.floor);
  return { figure, covariance };
}

interface State {
  readonly figure: Figure;
  readonly normal: Float64Array;
  /** Of each side's edges, in pixels. */
  readonly scatter: Float64Array;
}

/** Where a side is expected in every strip, from its place at the middle and its slope. */
function offsetsOf(strips: Strips, expected: FitTerms['expected']): Float64Array {
  return strips.x.map((_, at) => {
    const { off, slope } = expected[Math.floor(at / STRIPS)] as { off: number; slope: number };
    return off + slope * (((at % STRIPS) + 0.5) / STRIPS - 0.5);
  });
}

/** Where the sides of a figure pass through every strip. */
function offsetsOfFigure(strips: Strips, figure: Figure): Float64Array {
  const cosines = figure.angle.map(Math.cos);
  const sines = figure.angle.map(Math.sin);
  const { cx, cy, unit } = centreOf(figure.lens);
  return strips.x.map((x, at) => {
    const y = strips.y[at] as number;
    const nx = strips.nx[at] as number;
    const ny = strips.ny[at] as number;
    const side = Math.floor(at / STRIPS);
    let off = 0;
    for (let step = 0; step < 2; step++) {
      const [u, v] = straightened(figure.lens, [x + off * nx, y + off * ny]);
      const across = (cosines[side] as number) * (u - cx) + (sines[side] as number) * (v - cy);
      off -= across - (figure.c[side] as number) * unit;
    }
    return off;
  });
}

function round(
  strips: Strips,
  figure: Figure,
  guess: Float64Array,
  scale: number,
  terms: FitTerms,
): State {
  const { lens } = figure;
  const { unit } = centreOf(lens);
  const sums = { normal: new Float64Array(PARAMETERS ** 2), right: new Float64Array(PARAMETERS) };
  const { normal, right } = sums;
  const scatter = new Float64Array(4);
  const usual = usualOf(strips);
  for (let side = 0; side < 4; side++) {
    const edges = nearest(strips, guess, side, scale, usual[side] as number);
    addEdges(sums, strips, figure, side, edges);
    scatter[side] = scatterOf(edges, guess);
  }
  if (terms.bowSd > 0) {
    const prior = (USUAL_SCATTER / unit / terms.bowSd) ** 2;
    normal[80] = (normal[80] as number) + prior;
    right[8] = (right[8] as number) - lens.k1 * prior;
  } else keepBow(sums);
  for (let i = 0; i < 8; i++) normal[i * 10] = (normal[i * 10] as number) + 1e-9;
  const step = timesVector(inverseOfSymmetric(normal, PARAMETERS), right);
  const angle = figure.angle.map((v, i) => v + (step[i] as number));
  const c = figure.c.map((v, i) => v + (step[4 + i] as number));
  const k1 = Math.min(MOST_BOW, Math.max(-MOST_BOW, lens.k1 + (step[8] as number)));
  return { figure: figureOfSides(angle, c, { ...lens, k1 }), normal, scatter };
}

/** Takes the bow out of the normal equations, so that it stays as it is. */
function keepBow({ normal, right }: Sums): void {
  for (let i = 0; i < PARAMETERS; i++) {
    normal[8 * PARAMETERS + i] = 0;
    normal[i * PARAMETERS + 8] = 0;
  }
  normal[80] = FIXED;
  right[8] = 0;
}

interface Sums {
  readonly normal: Float64Array;
  readonly right: Float64Array;
}

interface Edge {
  readonly at: number;
  readonly off: number;
  readonly weight: number;
}

const row = new Float64Array(PARAMETERS);

/** Adds what the edges of a side say of it and of the bow to the normal equations. */
function addEdges(
  sums: Sums,
  strips: Strips,
  figure: Figure,
  side: number,
  edges: readonly Edge[],
): void {
  const { cx, cy, unit } = centreOf(figure.lens);
  const cosine = Math.cos(figure.angle[side] as number);
  const sine = Math.sin(figure.angle[side] as number);
  row.fill(0);
  for (const { at, off, weight } of edges) {
    const x = ((strips.x[at] as number) + off * (strips.nx[at] as number) - cx) / unit;
    const y = ((strips.y[at] as number) + off * (strips.ny[at] as number) - cy) / unit;
    const square = x * x + y * y;
    const stretch = 1 + figure.lens.k1 * square;
    const across = cosine * x + sine * y;
    row[side] = (cosine * y - sine * x) * stretch;
    row[4 + side] = -1;
    row[8] = across * square;
    addRow(sums, (figure.c[side] as number) - across * stretch, weight);
  }
}

function addRow({ normal, right }: Sums, residual: number, weight: number): void {
  for (let i = 0; i < PARAMETERS; i++) {
    const wi = weight * (row[i] as number);
    if (wi === 0) continue;
    right[i] = (right[i] as number) + wi * residual;
    for (let j = 0; j < PARAMETERS; j++)
      normal[i * PARAMETERS + j] = (normal[i * PARAMETERS + j] as number) + wi * (row[j] as number);
  }
}

/** Scatter of the edges of a side in pixels, made larger where neighbouring strips err together. */
function scatterOf(edges: readonly Edge[], guess: Float64Array): number {
  let weights = 0;
  let squares = 0;
  let products = 0;
  let before: Edge | null = null;
  let last = 0;
  for (const edge of edges) {
    const off = edge.off - (guess[edge.at] as number);
    weights += edge.weight;
    squares += edge.weight * off * off;
    if (before?.at === edge.at - 1) products += edge.weight * off * last;
    before = edge;
    last = off;
  }
  if (weights < FEWEST) return UNSEEN_SCATTER;
  const together = Math.min(0.9, Math.max(0, products / (squares + 1e-12)));
  return Math.sqrt((squares / (weights - 2)) * ((1 + together) / (1 - together)));
}

/** The edge of each strip that best joins steepness with nearness to the guess. */
function nearest(
  strips: Strips,
  guess: Float64Array,
  side: number,
  scale: number,
  usual: number,
): readonly Edge[] {
  const edges: Edge[] = [];
  for (let at = side * STRIPS; at < (side + 1) * STRIPS; at++) {
    let best = -1;
    let most = 1 / 17;
    for (let k = at * KEPT; k < (at + 1) * KEPT; k++) {
      const far = ((strips.off[k] as number) - (guess[at] as number)) / scale;
      const steep = (strips.steep[k] as number) ** 2;
      const weight = steep / (steep + usual) / (1 + far * far);
      if (weight > most) {
        most = weight;
        best = k;
      }
    }
    if (best >= 0) edges.push({ at, off: strips.off[best] as number, weight: most });
  }
  return edges;
}

/** A quarter of the median square of the steepest edge of each strip, side by side. */
function usualOf(strips: Strips): readonly number[] {
  return [0, 1, 2, 3].map((side) => {
    const steepest = Array.from(
      { length: STRIPS },
      (_, s) => strips.steep[(side * STRIPS + s) * KEPT] as number,
    ).sort((a, b) => a - b);
    return (steepest[STRIPS >> 1] as number) ** 2 / 4 + 1e-12;
  });
}
