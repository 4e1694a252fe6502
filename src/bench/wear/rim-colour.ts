import { quantileOf } from '../../maths/index.ts';
import type { Lab } from '../colour/ciede2000.ts';
import { labOfLight, type Three } from '../colour/spaces.ts';
import type { PointMm } from '../geometry/points.ts';
import type { BorderStrip } from './border-strip.ts';

/** Where the rim's colour is farthest from the border's own further in, other than towards white. */
export interface RimColour {
  readonly centreMm: PointMm;
  /** How far, in CIELAB, what is usual along its side taken away. */
  readonly difference: number;
  /** What that is for most of the rim. */
  readonly usual: number;
  /** Logarithm of how much more uneven the rim is there than the border further in, against the usual; 0 for less. */
  readonly texture: number;
}

/** Depths of the rim, where wear lies, and of the border's own colour, mm. */
const RIM_MM = [0.2, 0.6] as const;
const OWN_MM = [0.9, 1.4] as const;
const COLUMNS = 20;
const LEAST_BLOCKS = 40;
/** Where the border further in is that much more uneven than most, a frame or a mark lies in it. */
const MOST_UNEVEN = 2.5;
const FLOOR = 0.02;
/** On a paler border bare board is as much of another colour as ink is. Judgement, no source. */
const LEAST_TO_WHITE = 0.4;
/** More white than that leaves too little of the print's own colour to be told. */
const MOST_WHITE = 0.7;

/**
 * The stretch of rim, 2 mm long, whose colour is farthest from the border's own: ink laid over a worn
 * edge is seldom of the print's own colour. What has gone towards white is whitening and does not count.
 * Null where the strip is too short, and for a pale border. Dirt, stains and short shadows look alike.
 *
 * @param white light of the card's white, red, green and blue
 */
export function rimColourOf(strip: BorderStrip, white: readonly number[]): RimColour | null {
  const seen = blocksOf(strip).map((columns) => blockOf(strip, columns, white));
  const most = MOST_UNEVEN * middleOf(seen.map(({ ownSpread }) => ownSpread));
  const blocks = seen.filter(({ ownSpread }) => ownSpread <= most);
  const toWhite = middleOf(blocks.map(({ ownToWhite }) => ownToWhite));
  if (blocks.length < LEAST_BLOCKS || toWhite < LEAST_TO_WHITE) return null;
  const groups = new Map<number, Block[]>();
  for (const block of blocks) groups.set(block.group, [...(groups.get(block.group) ?? []), block]);
  const judged = [...groups.values()].flatMap((group) => {
    const usual = [0, 1, 2].map((k) => middleOf(group.map(({ step }) => step[k] as number)));
    return group.map((block) => ({
      ...block,
      value: Math.hypot(...block.step.map((value, k) => value - (usual[k] as number))),
    }));
  });
  const worst = judged.reduce((a, b) => (b.value > a.value ? b : a));
  return {
    centreMm: worst.centreMm,
    difference: worst.value,
    usual: middleOf(judged.map(({ value }) => value)),
    texture: Math.max(0, worst.uneven - middleOf(judged.map(({ uneven }) => uneven))),
  };
}

interface Block {
  /** A side by its number, the four tips together. */
  readonly group: number;
  readonly centreMm: PointMm;
  /** Lab of the rim, its share of white taken out, less the border's own. */
  readonly step: Lab;
  readonly ownSpread: number;
  /** Way from the border's own light to white, in green, as a share of white. */
  readonly ownToWhite: number;
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
    step: stepOf(own.light, rim.light),
    ownSpread: own.spread + FLOOR,
    ownToWhite: 1 - own.light[1],
    uneven: Math.log((rim.spread + FLOOR) / (own.spread + FLOOR)),
  };
}

interface Seen {
  /** As shares of white. */
  readonly light: Three;
  /** Standard deviation of green, as a share of its mean. */
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
  const mean = Math.max(light[1] as number, 1e-3);
  const spread = Math.sqrt(Math.max(0, squares / cells - mean ** 2)) / mean;
  return { light: light as unknown as Three, spread };
}

/** How far the rim's colour is from the border's own once the white that is mixed in is taken out. */
function stepOf(own: Three, rim: Three): Lab {
  const way = own.map((light) => 1 - light);
  const off = rim.map((light, k) => light - (own[k] as number));
  const long = way.reduce((sum, step) => sum + step * step, 1e-9);
  const share = off.reduce((sum, step, k) => sum + step * (way[k] as number), 0) / long;
  const white = Math.max(0, Math.min(MOST_WHITE, share));
  const bare = rim.map((light) => (light - white) / (1 - white));
  const [one, other] = [bare, own].map((light) =>
    labOfLight(light.map((value) => Math.max(0, value)) as unknown as Three),
  ) as [Lab, Lab];
  return [one[0] - other[0], one[1] - other[1], one[2] - other[2]];
}

function middleOf(values: readonly number[]): number {
  return quantileOf(values, 0.5);
}
