import { quantileOf } from '../../maths/index.ts';
import type { Three } from '../colour/spaces.ts';
import type { Defect } from '../defects.ts';
import { borderColourOf } from './border-colour.ts';
import type { BorderStrip } from './border-strip.ts';
import { extentAlong } from './place-extent.ts';

/** Ground whose colour is taken beside the card, mm from the ideal outline; nearer lies its shadow. */
const GROUND_MM = [-0.75, -0.45] as const;
/** Least difference of ground and border, as a share of the lighter, at which loss can show. Judgement, no source. */
const LEAST_CONTRAST = 0.3;
/** Shallower ones are an outline that is a little off, or blur. */
const LEAST_DEPTH_MM = 0.25;
const LEAST_LENGTH_MM = 0.5;
/** Longer ones are a wrong outline, or something that lies over the edge. Judgement, no source. */
const MOST_LENGTH_MM = 12;

/** Missing card, and the depth of the shallowest bite that would have shown; null where ground and border look alike. */
export interface LostCard {
  readonly defects: readonly Defect[];
  readonly detectionLimitMm: number | null;
}

/**
 * Places inside the ideal rounded outline where the ground is seen in place of the card: chips, torn
 * and clipped corners. Whitening is paper, and of another colour than the ground. Blind where the
 * ground has the border's colour, and where it is as pale as paper.
 *
 * @param white light of the card's white, red, green and blue
 */
export function lostCardOf(
  strip: BorderStrip,
  border: readonly Float32Array[],
  white: readonly number[],
): LostCard {
  const ground = borderColourOf(strip, GROUND_MM);
  const seen = strip.rays.map((_, column) => canShow(border, ground, white, column));
  const depths = strip.rays.map((_, column) =>
    seen[column] ? depthOf(strip, border, ground, column) : 0,
  );
  // Four tips together, as a clipped one is lost along most of its arc.
  const group = (part: number) => (part % 2 === 0 ? part : 1);
  const usual = [0, 1, 2, 4, 6].map((of) => [
    of,
    quantileOf(
      depths.filter((_, column) => group(strip.rays[column]?.part ?? 0) === of),
      0.5,
    ),
  ]);
  const usualBy = new Map(usual as [number, number][]);
  const over = depths.map(
    (depth, column) => depth - (usualBy.get(group(strip.rays[column]?.part ?? 0)) as number),
  );
  const shows = seen.filter(Boolean).length / seen.length > 0.5;
  return {
    defects: runsOf(over).flatMap(([first, last]) => defectOf(strip, depths, first, last)),
    detectionLimitMm: shows ? LEAST_LENGTH_MM : null,
  };
}

function canShow(
  border: readonly Float32Array[],
  ground: readonly Float32Array[],
  white: readonly number[],
  column: number,
): boolean {
  const apart = (a: readonly number[], b: readonly number[]) =>
    distance(a, b) / Math.max(Math.hypot(...a), Math.hypot(...b), 0.02);
  const [b, g] = [border, ground].map((light) => light.map((values) => values[column] as number));
  return (
    apart(b as number[], g as number[]) > LEAST_CONTRAST &&
    apart(g as number[], white) > LEAST_CONTRAST
  );
}

/** Depth down to which a column shows the ground and nothing else, mm. */
function depthOf(
  { values, rows, firstMm, stepMm }: BorderStrip,
  border: readonly Float32Array[],
  ground: readonly Float32Array[],
  column: number,
): number {
  const from = border.map((light) => light[column] as number) as unknown as Three;
  const way = ground.map(
    (light, k) => (light[column] as number) - (from[k] as number),
  ) as unknown as Three;
  const long = Math.hypot(...way);
  let row = Math.round((0.05 - firstMm) / stepMm);
  for (; row < rows; row++) {
    const at = column * rows + row;
    const red = (values[0][at] as number) - from[0];
    const green = (values[1][at] as number) - from[1];
    const blue = (values[2][at] as number) - from[2];
    const share = (red * way[0] + green * way[1] + blue * way[2]) / long ** 2;
    const rest =
      Math.hypot(red - share * way[0], green - share * way[1], blue - share * way[2]) / long;
    if (!(share > 0.5 && share < MOST_SHARE && rest < MOST_REST)) break;
  }
  return Math.max(0, firstMm + (row - 0.5) * stepMm);
}

/** A shadow in the bite may darken the ground by as much; other colours are no ground. Judgement, no source. */
const [MOST_SHARE, MOST_REST] = [1.8, 0.3];

function distance(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(...a.map((value, k) => value - (b[k] as number)));
}

/** First and last column of each run that is deep enough; one may run over the strip's end. */
function runsOf(over: readonly number[]): readonly (readonly [number, number])[] {
  const count = over.length;
  const deep = (k: number) => (over[k % count] as number) > LEAST_DEPTH_MM;
  const start = over.findIndex((_, k) => !deep(k));
  if (start < 0) return [];
  const runs: [number, number][] = [];
  for (let k = start; k < start + count; k++) {
    if (!deep(k)) continue;
    const run = runs.at(-1);
    if (run && run[1] >= k - 2) run[1] = k;
    else runs.push([k, k]);
  }
  return runs;
}

function defectOf(
  strip: BorderStrip,
  depths: readonly number[],
  first: number,
  last: number,
): readonly Defect[] {
  const within = Array.from(
    { length: last - first + 1 },
    (_, k) => depths[(first + k) % depths.length] as number,
  );
  const extent = extentAlong(strip, first, within);
  if (!extent || extent.lengthMm < LEAST_LENGTH_MM || extent.lengthMm > MOST_LENGTH_MM) return [];
  const deepest = Math.max(...within);
  const reachesEnd = deepest > strip.firstMm + (strip.rows - 2) * strip.stepMm;
  // Something that lies over the edge goes straight in; a bite has an end. Judgement, no source.
  const score = -0.4 + 1.6 * Math.log(extent.areaMm2 / 0.5) - (reachesEnd ? 3 : 0);
  return [
    {
      ...extent,
      wear: 'loss',
      p: 1 / (1 + Math.exp(-score)),
      sd: { centreMm: 0.1, areaMm2: 0.05 + 0.15 * extent.areaMm2, lengthMm: 0.3 },
      seenFrom: 'still',
    },
  ];
}
