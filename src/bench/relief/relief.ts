import type { CardMap } from '../geometry/card-map.ts';
import { lampFromBall } from './ball.ts';
import { candidatesOf } from './candidates.ts';
import { creasesOf } from './creases.ts';
import { fittedDent } from './fitted-dent.ts';
import { flatLight } from './flat-light.ts';
import { type Grid, gridOver } from './grid.ts';
import { dentOf } from './judge.ts';
import type { Doubtful } from './lighting.ts';
import { limitsOf } from './limits.ts';
import { liesOn } from './line-defect.ts';
import { responsesOf } from './matched.ts';
import { LEAST_PICTURES, type SameSet, sameSetOf, tooFew } from './same-set.ts';
import { samplesOf } from './samples.ts';
import { slopesOf } from './slopes.ts';
import type { Ball, LampPicture, LampUsed, Relief, ReliefDefect } from './types.ts';

/** Light from all sides where no shadow tells it: a darkened room's share (Judgement, no source). */
const AMBIENT: Doubtful = { value: 0.06, sd: 0.02 };

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
  const lines = creasesOf(slopes, map);
  const dents = candidatesOf(map, grid, responses)
    .filter(({ centre }) => !lines.some((line) => line.p > 0.5 && liesOn(line, centre)))
    .map((candidate) =>
      dentOf(fittedDent(candidate, placed, map, lighting), lighting, lamps, [
        map.sizeMm[0] / 2,
        map.sizeMm[1] / 2,
      ]),
    )
    .filter(({ p }) => p > 0.05);
  return {
    defects: [...apart(dents), ...lines],
    lamps,
    limits: limitsOf(responses),
    faults,
    slopes,
  };
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
