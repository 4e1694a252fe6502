import { type CardMap, cardPointOf } from '../geometry/card-map.ts';
import type { PointMm, PointPx } from '../geometry/points.ts';
import { distanceTo, sectionOf } from './crease-fit.ts';
import { centreOf } from './grid.ts';
import { lineDefectOf } from './line-defect.ts';
import { DIRECTIONS, lineAnswerOf } from './line-filter.ts';
import { type Knot, trackedLine } from './line-track.ts';
import { type Field, halved, levelledField } from './slope-field.ts';
import type { Slopes } from './slopes.ts';
import type { ReliefDefect } from './types.ts';

/** Sections looked for, mm at half height, and the length of a straight piece, mm. */
const WIDTHS_MM = [0.45, 1.2] as const;
const PIECE_MM = 6;
/** Times the card's usual answer from which a place is looked at closely. */
const LOOK_AT = 7;
const MOST = 24;
/** A line is this many times longer than wide, and so long at least, mm: else it is a dent's wall. */
const SLENDER = 4;
const SHORTEST_MM = 5;
const STEADY = 0.45;
/** Lines so near the cut edge are its own wear, mm. */
const RIM_MM = 1.2;
/** Beside a line its own foot looks like lines of the other sign, mm. */
const APART_MM = 3;

/** A line that was followed, and what it is as a mark. */
interface Found {
  readonly knots: readonly Knot[];
  readonly defect: ReliefDefect;
}

/**
 * Creases and long grooves by their slopes: a matched filter for lines shows where, each is followed
 * as far as it keeps its height, and a Gaussian section fitted along it says how wide and how high.
 */
export function creasesOf(slopes: Slopes, map: CardMap): readonly ReliefDefect[] {
  const field = levelledField(slopes);
  const { perMm } = slopes.grid;
  const refused: PointPx[] = [];
  let lines: readonly Found[] = [];
  let looked = 0;
  for (const { at, angle, sigma, z } of peaksOf(field, perMm)) {
    if (lines.some(({ knots }) => distanceTo(knots, at) < APART_MM * perMm)) continue;
    if (refused.some(([x, y]) => Math.hypot(x - at[0], y - at[1]) < perMm)) continue;
    if (++looked > MOST) break;
    const way = [Math.cos(angle), Math.sin(angle)] as const;
    const knots = steadyPart(trackedLine(field, at, way, sigma, perMm));
    const lengthMm = lengthOf(knots) / perMm;
    const section = knots.length > 3 ? sectionOf(field, knots, perMm) : null;
    const points = knots.map((knot) =>
      cardPointOf(map, centreOf(slopes.grid, knot.at[0], knot.at[1])),
    );
    if (
      !section ||
      lengthMm < Math.max(SHORTEST_MM, SLENDER * section.width) ||
      insetOf(points, map) < RIM_MM
    )
      refused.push(at);
    else
      lines = withLine(lines, { knots, defect: lineDefectOf(points, section, lengthMm, z) }, perMm);
  }
  return lines.map(({ defect }) => defect);
}

/** The lines and one more; of those that run along each other the longer of the likely ones stays. */
function withLine(lines: readonly Found[], line: Found, perMm: number): readonly Found[] {
  const along = lines.filter((other) => runAlong(other.knots, line.knots, perMm));
  const weight = ({ defect: { p, lengthMm } }: Found) => Math.max(p, 0.01) * (lengthMm as number);
  if (along.some((other) => weight(other) >= weight(line))) return lines;
  return [...lines.filter((other) => !along.includes(other)), line];
}

function runAlong(a: readonly Knot[], b: readonly Knot[], perMm: number): boolean {
  const near = (one: readonly Knot[], other: readonly Knot[]) =>
    one.filter(({ at }) => distanceTo(other, at) < APART_MM * perMm).length > one.length / 2;
  return near(a, b) || near(b, a);
}

interface Peak {
  readonly at: PointPx;
  readonly angle: number;
  readonly sigma: number;
  readonly z: number;
}

/** The strongest places of all widths, strongest first; in blocks of the whole field. */
function peaksOf(field: Field, perMm: number): readonly Peak[] {
  const half = halved(field);
  return WIDTHS_MM.flatMap((widthMm) => {
    const sigma = Math.hypot((widthMm / 2.3548) * perMm, 0.29);
    const step = sigma > 1.6 ? 2 : 1;
    const answer = lineAnswerOf(
      step === 2 ? half : field,
      sigma / step,
      (PIECE_MM * perMm) / step / 2,
    );
    const peaks: Peak[] = [];
    const { width, height, z, direction } = answer;
    for (let y = 2; y < height - 2; y++)
      for (let x = 2; x < width - 2; x++) {
        const i = y * width + x;
        const here = Math.abs(z[i] as number);
        if (here < LOOK_AT) continue;
        if (Math.abs(z[i - 1] as number) > here || Math.abs(z[i + 1] as number) > here) continue;
        if (Math.abs(z[i - width] as number) > here || Math.abs(z[i + width] as number) > here)
          continue;
        peaks.push({
          at: [x * step + (step - 1) / 2, y * step + (step - 1) / 2],
          angle: ((direction[i] as number) * Math.PI) / DIRECTIONS,
          sigma,
          z: here,
        });
      }
    return peaks;
  }).sort((a, b) => b.z - a.z);
}

/**
 * The longest run of knots that keep half the height of the second highest: of a dent only its own
 * width remains, of a crease nearly all.
 */
function steadyPart(knots: readonly Knot[]): readonly Knot[] {
  const sizes = knots.map(({ height }) => Math.abs(height)).sort((a, b) => b - a);
  const least = STEADY * (sizes[1] ?? 0);
  let best: readonly Knot[] = [];
  let run: Knot[] = [];
  for (const knot of knots) {
    run = Math.abs(knot.height) >= least ? [...run, knot] : [];
    if (run.length > best.length) best = run;
  }
  return best;
}

/** How far inside the card's sides a line lies, on average. */
function insetOf(points: readonly PointMm[], { sizeMm: [width, height] }: CardMap): number {
  const insets = points.map(([x, y]) => Math.min(x, y, width - x, height - y));
  return insets.reduce((sum, inset) => sum + inset, 0) / insets.length;
}

function lengthOf(knots: readonly Knot[]): number {
  return knots
    .slice(1)
    .reduce(
      (sum, { at: [x, y] }, k) =>
        sum + Math.hypot(x - (knots[k] as Knot).at[0], y - (knots[k] as Knot).at[1]),
      0,
    );
}
