import type { Chosen } from './choose.ts';
import { binAt, type InkView, summitNear } from './peaks.ts';
import { TILE } from './spectrum.ts';

/** How far the pattern of two screens must stand above its surroundings. Judgement, no source. */
const LEAST = 10;

/**
 * Whether the pattern that two screens make together is seen: peaks at the difference of their
 * frequencies, for two of the inks that stand about 30 degrees apart, in any ink's view. Null
 * where no two stand so.
 */
export function rosetteIn(chosen: readonly Chosen[], views: readonly InkView[]): boolean | null {
  const pairs = chosen.flatMap((one, i) =>
    chosen
      .slice(i + 1)
      .filter((other) => Math.abs(apart(one.peak.angleDeg, other.peak.angleDeg) - 30) < 4)
      .map((other) => [one, other] as const),
  );
  if (pairs.length === 0) return null;
  return pairs.some(([one, other]) => views.some((view) => isSeen(one, other, view)));
}

/** Angle between two screens, 0 to 45 degrees: a screen is the same after a quarter turn. */
function apart(a: number, b: number): number {
  return Math.abs(((((a - b) % 90) + 135) % 90) - 45);
}

function isSeen({ peak: one }: Chosen, { peak: other }: Chosen, { excess }: InkView): boolean {
  const [ax, ay] = [other.x, other.y];
  const turned = [
    [ax, ay],
    [ay, -ax],
    [-ax, -ay],
    [-ay, ax],
  ] as const;
  const differences = turned.map(([x, y]) => ({ x: one.x - x, y: one.y - y }));
  const { x, y } = differences.reduce((a, b) =>
    Math.hypot(a.x, a.y) < Math.hypot(b.x, b.y) ? a : b,
  );
  const at = (u: number, v: number) =>
    excess[binAt(...summitNear(excess, Math.round(u), Math.round(v)))] as number;
  return Math.min(at(x * TILE, y * TILE), at(y * TILE, -x * TILE)) > LEAST;
}
