import type { Lens } from '../geometry/lens.ts';
import { distanceBetween, type PointPx, type SizeMm } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import { type Arcs, arcsOf } from './arcs.ts';
import { centreOf, type Figure, figureOf, figureOfSides } from './figure.ts';
import { type Fit, fitFigure } from './fit.ts';
import { poseOf } from './pose.ts';
import { sideOf } from './quads.ts';
import { settledFit } from './settle.ts';
import { cutStrips, type Strips } from './strips.ts';
import { type Track, tracksOf } from './tracks.ts';

/** What is known when a figure is made fine. */
export interface FineTerms {
  /** Pixels of the picture a millimetre of the card, about. */
  readonly perMm: number;
  /** Pixels by which the guess may be off. */
  readonly error: number;
  readonly scan: boolean;
  /** Width over height or height over width of the card; null where not known. */
  readonly aspect: number | null;
  readonly sizeMm: SizeMm | null;
}

/** Millimetres to each side of a guess in which the card's edge is chosen. */
const REACH_MM = 1;

/** Millimetres at the end of each side that a round tip may take. */
const TIP_MM = 4.2;

/** Floors of the standard error of a side, in millimetres: of a scan, and of a photograph. */
const FLOOR_MM = [0.005, 0.012] as const;

/** Widths of the Gaussian, in pixels, from sharp to blurred; a wider one must hold more to be taken. */
const SIGMAS = [1, 2.5, 5] as const;
const BLUR_GAIN = 0.25;

/** An edge this near to another, with less than this share of its steepness, is its trace. */
const TRACE_PX = 9;
const TRACE = 0.3;

const USUAL_ASPECT = 0.716;
/** Millimetres within which a side face or a shadow lies outside of the card's own edge. */
const FACE_MM = 0.7;
const AGAINST_OUTER = 1.5;
/** Error of cosine and aspect of a fitted figure, and of one whose bow is not yet fitted. */
const FINE_SD = 0.003;
const UNBENT_SD = 0.005;
/** Millimetres by which a card may differ from the size told, once scanned. */
const SIZE_SD_MM = 0.15;
const MOST_MISFIT = 24;

/** A figure made fine, with how its sides were chosen. */
export interface Fine extends Fit {
  readonly tracks: readonly (readonly Track[])[];
  readonly chosen: readonly Track[];
  /** Pixels over which the edges are looked at: 1 in a sharp picture. */
  readonly blur: number;
  readonly arcs: Arcs;
  /** Squares of the misfit to a card's shape over their variances. */
  readonly misfit: number;
}

/** The card's outline to a fraction of a pixel, from a guess of its corners, clockwise. */
export function fineOf(
  picture: Picture,
  corners: readonly PointPx[],
  lens: Lens,
  terms: FineTerms,
): Fine | null {
  const first = figureOf(corners, lens);
  const margin = marginsOf(first, terms.perMm);
  const reach = REACH_MM * terms.perMm + terms.error;
  const { rough, tracks, k1, sigma } = roughOf(picture, first, reach, margin, terms);
  const bent = figureOf(corners, { ...lens, k1 });
  const expected = ownEdges(tracks, bent, terms);
  if (!expected) return null;
  const floor = FLOOR_MM[terms.scan ? 0 : 1] * terms.perMm;
  const bowSd = terms.scan ? 0 : 0.02;
  const near = fitFigure(rough, bent, { expected, scales: [2, 1.5, 1, 1], bowSd, floor });
  const close = cutStrips(picture, near.figure, 4 + 3 * sigma, 0.7 * sigma, margin);
  const still = [0, 1, 2, 3].map(() => ({ off: 0, slope: 0 }));
  const steepest = fitFigure(close, near.figure, {
    expected: still,
    scales: [1, 0.6, 0.5, 0.5],
    bowSd,
    floor,
  });
  const fit = settledFit(picture, steepest, { perMm: terms.perMm, blur: sigma, margin });
  const arcs = arcsOf(picture, fit.figure, scalesOf(fit.figure, terms));
  const misfit = misfitOf(fit.figure, terms.aspect);
  return { ...fit, tracks, chosen: expected, blur: sigma, arcs, misfit };
}

/** Pixels a millimetre along each side; of a card of unknown size, as if it had the usual aspect. */
function scalesOf(figure: Figure, { perMm, aspect }: FineTerms): [number, number, number, number] {
  const lengths = figure.ideal.map((corner, i) =>
    distanceBetween(corner, figure.ideal[(i + 1) % 4] as PointPx),
  ) as [number, number, number, number];
  const [a, b, c, d] = lengths;
  const long = Math.max(a + c, b + d) / 2 / perMm;
  const short = long * (aspect ? Math.min(aspect, 1 / aspect) : USUAL_ASPECT);
  const lying = a + c > b + d;
  return lengths.map((length, i) => length / ((i % 2 === 0) === lying ? long : short)) as [
    number,
    number,
    number,
    number,
  ];
}

function misfitOf(figure: Figure, aspect: number | null): number {
  const { cx, cy, unit } = centreOf(figure.lens);
  const p = figure.ideal.flatMap(([x, y]) => [(x - cx) / unit, (y - cy) / unit]);
  return poseOf(Float64Array.from(p), aspect, FINE_SD).misfit;
}

function marginsOf(figure: Figure, perMm: number): [number, number, number, number] {
  return [0, 1, 2, 3].map((i) => {
    const [ax, ay] = figure.ideal[i] as PointPx;
    const [bx, by] = figure.ideal[(i + 1) % 4] as PointPx;
    return Math.min(0.2, (TIP_MM * perMm) / Math.hypot(bx - ax, by - ay));
  }) as [number, number, number, number];
}

/** Strips cut as sharp as the picture allows, with the edges that run along the sides. */
function roughOf(
  picture: Picture,
  figure: Figure,
  reach: number,
  margin: [number, number, number, number],
  terms: FineTerms,
) {
  let best = { held: -1 } as { held: number } & Rough;
  for (const sigma of SIGMAS) {
    const rough = cutStrips(picture, figure, reach + 3 * sigma, sigma, margin);
    const found = tracksOf(rough, figure, reach, Math.ceil(2 * terms.error), !terms.scan);
    const held = found.tracks.reduce((sum, of) => sum + Math.max(0, ...of.map((t) => t.share)), 0);
    if (held > best.held + BLUR_GAIN) best = { held, rough, sigma, ...found };
    if (held > 4 - BLUR_GAIN) break;
  }
  return best;
}

interface Rough {
  readonly rough: Strips;
  readonly sigma: number;
  readonly tracks: readonly (readonly Track[])[];
  readonly k1: number;
}

/**
 * One edge for each side, chosen together: held along the side, the innermost of those that are
 * (side face and shadow lie outside), near the guess, and with the others a card's shape.
 */
function ownEdges(
  tracks: readonly (readonly Track[])[],
  figure: Figure,
  terms: FineTerms,
): readonly Track[] | null {
  const sides = tracks.map((of) => graded(of, terms));
  let best: { score: number; pick: readonly Track[] } | null = null;
  const { unit, cx, cy } = centreOf(figure.lens);
  const [s0, s1, s2, s3] = sides as [Graded[], Graded[], Graded[], Graded[]];
  for (const a of s0)
    for (const b of s1)
      for (const c of s2)
        for (const d of s3) {
          const pick = [a, b, c, d];
          const p = shiftedFigure(figure, pick).ideal.flatMap(([x, y]) => [
            (x - cx) / unit,
            (y - cy) / unit,
          ]);
          const { misfit } = poseOf(Float64Array.from(p), terms.aspect, UNBENT_SD);
          const off = misfit + offSize(p, unit, terms);
          const score = a.score + b.score + c.score + d.score - Math.min(off, MOST_MISFIT) / 2;
          if (!best || score > best.score) best = { score, pick };
        }
  return best?.pick ?? null;
}

/** Squares of a scan's misfit to the size told, over their variances; 0 where that is not known. */
function offSize(p: readonly number[], unit: number, { sizeMm, scan, perMm }: FineTerms): number {
  if (!scan || !sizeMm) return 0;
  const side = (i: number) => sideOf(Float64Array.from(p), i) * unit;
  const one = (side(0) + side(2)) / 2 / perMm;
  const two = (side(1) + side(3)) / 2 / perMm;
  const short = (Math.min(one, two) - Math.min(...sizeMm)) / SIZE_SD_MM;
  const long = (Math.max(one, two) - Math.max(...sizeMm)) / SIZE_SD_MM;
  return short * short + long * long;
}

type Graded = Track & { readonly score: number };

function graded(tracks: readonly Track[], { error, perMm }: FineTerms): readonly Graded[] {
  const own = tracks.filter(
    (track) =>
      !tracks.some(
        (other) =>
          Math.abs(other.off - track.off) < TRACE_PX &&
          other.share > 0.7 * track.share &&
          other.steep * TRACE > track.steep,
      ),
  );
  return own
    .map((track) => {
      const inner = own.some(
        (other) =>
          other.off < track.off &&
          other.off > track.off - FACE_MM * perMm &&
          other.share > 0.75 * track.share &&
          other.steep > TRACE * track.steep,
      );
      const near = -((track.off / error) ** 2) / 8;
      return { ...track, score: 3 * Math.log(track.share) - (inner ? AGAINST_OUTER : 0) + near };
    })
    .sort((a, b) => b.score - a.score)
    .slice(0, 4);
}

function shiftedFigure(figure: Figure, pick: readonly Track[]): Figure {
  const { unit } = centreOf(figure.lens);
  const angle = figure.angle.slice();
  const c = figure.c.slice();
  pick.forEach(({ off, slope }, i) => {
    const [ax, ay] = figure.ideal[i] as PointPx;
    const [bx, by] = figure.ideal[(i + 1) % 4] as PointPx;
    const length = Math.hypot(bx - ax, by - ay);
    const old = angle[i] as number;
    const turned = old - Math.atan2(slope, length);
    angle[i] = turned;
    const { cx, cy } = centreOf(figure.lens);
    const x = (ax + bx) / 2 - cx + off * Math.cos(old);
    const y = (ay + by) / 2 - cy + off * Math.sin(old);
    c[i] = (Math.cos(turned) * x + Math.sin(turned) * y) / unit;
  });
  return figureOfSides(angle, c, figure.lens);
}
