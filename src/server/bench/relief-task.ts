import {
  cardMapOf,
  type DepthMap,
  depthMapOf,
  findOutline,
  type Picture,
  type Relief,
  reliefOf,
  shadedRelief,
} from '../../bench/index.ts';
import type { BenchReply, ReliefSet, ReliefTask } from './tasks.ts';

interface Measured {
  readonly key: string;
  readonly relief: Omit<Relief, 'slopes'>;
  readonly depth: DepthMap | null;
}

/** The set that was measured last, so that a lamp that is moved over its relief is followed at once. */
let last: Measured | undefined;

/** Relief of a set of lamp pictures, shaded as it would look under another lamp where that is wanted. */
export async function reliefReply(
  { set, shade }: ReliefTask,
  pictureOf: (file: string, stamp: string) => Promise<Picture>,
): Promise<BenchReply> {
  const key = JSON.stringify(set);
  if (last?.key !== key) last = { key, ...(await measured(set, pictureOf)) };
  const { relief, depth } = last;
  const card = shade && depth ? shadedRelief(depth, shade.lamp, shade.steeper) : undefined;
  return { size: [0, 0], relief, ...(card ? { card } : {}) };
}

async function measured(
  { pictures, ball, sizeMm }: ReliefSet,
  pictureOf: (file: string, stamp: string) => Promise<Picture>,
): Promise<Omit<Measured, 'key'>> {
  const read: {
    picture: Picture;
    lampMm: ReliefSet['pictures'][number]['lampMm'];
    name: string;
  }[] = [];
  for (const { file, stamp, lampMm } of pictures) {
    const name = file.replace(/^.*[\\/]/, '');
    read.push({ picture: await pictureOf(file, stamp), lampMm, name });
  }
  const first = read[0]?.picture;
  const found = first && findOutline(first, { sizeMm, dpi: null });
  const outline = found?.trouble ? undefined : found?.hypotheses[0];
  if (!outline) {
    const faults = [found?.trouble?.words ?? 'No outline of a card was found.'];
    return { relief: { defects: [], lamps: [], limits: [], faults }, depth: null };
  }
  const map = cardMapOf(outline.corners, sizeMm, outline.lens);
  const { slopes, ...relief } = reliefOf(read, map, ball);
  return { relief, depth: slopes && depthMapOf(slopes, map) };
}
