import type { CardMap } from '../geometry/card-map.ts';
import { lampFromBall } from './ball.ts';
import { type Candidate, candidatesOf } from './candidates.ts';
import { dentFit } from './dent-fit.ts';
import { SHAPE, SHAPE_SIZE } from './dent-shape.ts';
import { flatLight } from './flat-light.ts';
import { type Grid, gridOver, pixelsPerMm } from './grid.ts';
import { dentOf } from './judge.ts';
import type { Doubtful, Lighting } from './lighting.ts';
import { limitsOf } from './limits.ts';
import { responsesOf } from './matched.ts';
import { LEAST_PICTURES, type SameSet, sameSetOf, tooFew } from './same-set.ts';
import { samplesOf } from './samples.ts';
import { slopesOf } from './slopes.ts';
import type { Ball, LampPicture, LampUsed, Relief, ReliefDefect } from './types.ts';
import { type Placed, windowAt } from './window.ts';

/** Light from all sides where no shadow tells it: a darkened room's share (Judgement, no source). */
const AMBIENT: Doubtful = { value: 0.06, sd: 0.02 };
/** Blocks across a dent's half-depth width that a fit needs; more cost time and tell no more. */
const ACROSS = 10;

/**
 * Dents in a card from pictures by one camera straight above it under a lamp that was moved: slopes
 * by photometric stereo show where, and a bowl fitted to the light of all lamps says how wide and
 * how deep. `map` is of the first picture. Bad sets are answered with faults, not thrown.
 */
export function reliefOf(
  pictures: readonly LampPicture[],
  map: CardMap,
  ball: Ball | null,
): Relief {
  const lamps = lampsUsed(pictures, map, ball);
  const unfit = faultsOf(pictures, lamps);
  const first = pictures[0];
  if (!first || unfit.length > 0) return nothing(lamps, unfit);
  const grid = gridOver(map, first.picture);
  const set = sameSetOf(pictures, lamps, map, grid);
  if (set.placed.length < LEAST_PICTURES) return nothing(set.lamps, set.faults);
  return measured(set, map, grid);
}

function nothing(lamps: readonly LampUsed[], faults: readonly string[]): Relief {
  return { defects: [], lamps, limits: [], faults, slopes: null };
}

function measured({ placed, lights, lamps, faults }: SameSet, map: CardMap, grid: Grid): Relief {
  const samples = samplesOf(map, grid, lights);
  const lighting = flatLight(
    lamps.map(({ placeMm }) => placeMm),
    samples,
    AMBIENT,
    grid.block,
  );
  const slopes = slopesOf(map, grid, lights, lighting);
  const responses = responsesOf(slopes);
  const defects = candidatesOf(map, grid, responses)
    .map((candidate) => fitted(candidate, placed, map, lighting, lamps))
    .filter(({ p }) => p > 0.05);
  return { defects: apart(defects), lamps, limits: limitsOf(responses), faults, slopes };
}

function lampsUsed(
  pictures: readonly LampPicture[],
  map: CardMap,
  ball: Ball | null,
): readonly LampUsed[] {
  return pictures.flatMap(({ picture, lampMm }): readonly LampUsed[] => {
    if (lampMm) return [{ placeMm: lampMm, from: 'given', sdDeg: 0.3 }];
    if (!ball) return [];
    return [{ placeMm: lampFromBall(picture, map, ball), from: 'ball', sdDeg: 2 }];
  });
}

function faultsOf(pictures: readonly LampPicture[], lamps: readonly LampUsed[]): readonly string[] {
  const faults: string[] = [];
  const { width, height } = pictures[0]?.picture ?? { width: 0, height: 0 };
  if (pictures.length < LEAST_PICTURES) faults.push(tooFew(pictures.length));
  if (pictures.some(({ picture }) => picture.width !== width || picture.height !== height))
    faults.push(
      'The pictures differ in size: take all of them with the camera fixed and nothing cropped.',
    );
  if (lamps.length < pictures.length)
    faults.push(
      'Where the lamp stood is not known: give its places, or lay a matt ball beside the card.',
    );
  return faults;
}

function fitted(
  { centre, widthMm, depthMm }: Candidate,
  pictures: readonly Placed[],
  map: CardMap,
  lighting: Lighting,
  lamps: readonly LampUsed[],
): ReliefDefect {
  const [width, height] = map.sizeMm;
  const start = new Float64Array(SHAPE_SIZE);
  start[SHAPE.x] = centre[0] - width / 2;
  start[SHAPE.y] = centre[1] - height / 2;
  start[SHAPE.depth] = depthMm * 0.8;
  start[SHAPE.logWidth] = Math.log(widthMm);
  start[SHAPE.logPower] = Math.log(2.3);
  const block = Math.max(1, Math.round((widthMm * pixelsPerMm(map)) / ACROSS));
  const window = windowAt(pictures, map, lighting, centre, 1.6 * widthMm + 0.35, block);
  const fit = dentFit(window, lighting, start);
  return dentOf(fit, lighting, lamps, [width / 2, height / 2]);
}

/** Defects by falling probability, none within another's half-depth width. */
function apart(defects: readonly ReliefDefect[]): readonly ReliefDefect[] {
  const kept: ReliefDefect[] = [];
  for (const defect of [...defects].sort((a, b) => b.p - a.p)) {
    const [x, y] = defect.centreMm;
    if (
      kept.every(
        ({ centreMm, diameterMm }) => Math.hypot(centreMm[0] - x, centreMm[1] - y) > diameterMm,
      )
    )
      kept.push(defect);
  }
  return kept;
}
