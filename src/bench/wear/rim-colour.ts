import { type Lab, labOfLight, type Three } from '../colour/spaces.ts';
import type { PointMm } from '../geometry/points.ts';
import type { BorderStrip } from './border-strip.ts';
import { quantileOf } from './quantiles.ts';

/** Where the rim's colour is farthest from the border's own further in, other than towards white. */
export interface RimColour {
  readonly centreMm: PointMm;
  /** How far, in CIELAB, what is usual along its side taken away. */
  readonly difference: number;
  /** What that is for most of the rim. */
  readonly usual: number;
  /** Logarithm of how much more uneven the rim is there than the border further in, against the usual. */
  readonly texture: number;
}

/** Depths of the rim, where wear lies, and of the border's own colour, mm. */
const RIM_MM = [0.2, 0.6] as const;
const OWN_MM = [0.9, 1.4] as const;
const COLUMNS = 20;
const LEAST_BLOCKS = 40;

/**
 * The stretch of rim, 2 mm long, whose colour is farthest from the border's own: ink laid over a worn
 * edge is seldom of the print's own colour. What has gone towards white is whitening and does not count.
 * Null where the strip is too short. Dirt, stains and short shadows look alike.
 *
 * @param white light of the card's white, red, green and blue
 */
export function rimColourOf(strip: BorderStrip, white: readonly number[]): RimColour | null {
  const blocks = blocksOf(strip).map((columns) => blockOf(strip, columns, white));
  if (blocks.length < LEAST_BLOCKS) return null;
  const groups = new Map<number, Block[]>();
  for (const block of blocks) groups.set(block.group, [...(groups.get(block.group) ?? []), block]);
  const judged = [...groups.values()].flatMap((group) => {
    const usual = [0, 1, 2].map((k) => middleOf(group.map(({ step }) => step[k] as number)));
    return group.map((block) => ({ ...block, value: offWhite(block, usual) }));
  });
  const worst = judged.reduce((a, b) => (b.value > a.value ? b : a));
  return {
    centreMm: worst.centreMm,
    difference: worst.value,
    usual: middleOf(judged.map(({ value }) => value)),
    texture: worst.uneven - middleOf(judged.map(({ uneven }) => uneven)),
  };
}

interface Block {
  /** A side by its number, the four tips together. */
  readonly group: number;
  readonly centreMm: PointMm;
  readonly own: Lab;
  /** The rim's Lab less the border's own. */
  readonly step: Lab;
  readonly uneven: number;
}

function blocksOf({ rays }: BorderStrip): readonly (readonly number[])[] {
  const blocks: number[][] = [];
  rays.forEach(({ part }, column) => {
    const last = blocks.at(-1);
    const same = last && rays[last[0] as number]?.part === part && last.length < COLUMNS;
    if (same) last.push(column);
    else blocks.push([column]);
  });
  return blocks.filter(({ length }) => length > COLUMNS / 2);
}

function blockOf(strip: BorderStrip, columns: readonly number[], white: readonly number[]): Block {
  const [rim, own] = [RIM_MM, OWN_MM].map((between) => seenOf(strip, columns, between, white)) as [
    Seen,
    Seen,
  ];
  const ray = strip.rays[columns[columns.length >> 1] as number] as BorderStrip['rays'][number];
  return {
    group: ray.part % 2 === 0 ? ray.part : 1,
    centreMm: [ray.x + 0.4 * ray.inX, ray.y + 0.4 * ray.inY],
    own: own.lab,
    step: rim.lab.map((value, k) => value - (own.lab[k] as number)) as unknown as Lab,
    uneven: Math.log((rim.spread + 0.002) / (own.spread + 0.002)),
  };
}

interface Seen {
  readonly lab: Lab;
  /** Standard deviation of green, as a share of white. */
  readonly spread: number;
}

function seenOf(
  { values, rows, firstMm, stepMm }: BorderStrip,
  columns: readonly number[],
  [fromMm, toMm]: readonly [number, number],
  white: readonly number[],
): Seen {
  const [from, to] = [fromMm, toMm].map((mm) => Math.round((mm - firstMm) / stepMm)) as [
    number,
    number,
  ];
  let squares = 0;
  const light = values.map((plane, k) => {
    let [sum, all] = [0, 0];
    for (const column of columns)
      for (let row = from; row <= to; row++) {
        const value = (plane[column * rows + row] as number) / (white[k] as number);
        sum += value;
        if (k === 1) squares += value * value;
        all++;
      }
    return sum / all;
  });
  const cells = columns.length * (to - from + 1);
  const spread = Math.sqrt(Math.max(0, squares / cells - (light[1] as number) ** 2));
  return { lab: labOfLight(light as unknown as Three), spread };
}

/** Length of a step less the usual one, its part towards white taken away. */
function offWhite({ own, step }: Block, usual: readonly number[]): number {
  const off = step.map((value, k) => value - (usual[k] as number));
  const way = [100 - own[0], -own[1], -own[2]];
  const long = Math.hypot(...way) || 1;
  const along = off.reduce((sum, value, k) => sum + (value * (way[k] as number)) / long, 0);
  const towards = Math.max(0, along);
  return Math.hypot(...off.map((value, k) => value - (towards * (way[k] as number)) / long));
}

function middleOf(values: readonly number[]): number {
  return quantileOf(values, 0.5);
}
