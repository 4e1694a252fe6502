import {
  type Borders,
  bordersAlong,
  type CopyKnown,
  cardMapOf,
  compareSpecimens,
  compareWithReferences,
  type FaceAnswer,
  faceAlong,
  faceOf,
  findOutline,
  frameNear,
  type Outline,
  outlineByHand,
  type Picture,
  rectifiedView,
  refitOutline,
  type Seen,
  type SizeMm,
  seenOf,
  viewOf,
} from '../../bench/index.ts';
import { answerTasks, decodePicture, PictureFault } from '../../host/index.ts';
import { reliefReply } from './relief-task.ts';
import type {
  BenchReply,
  BenchTask,
  BordersTask,
  CardTask,
  CompareTask,
  FaceTask,
  HandSet,
} from './tasks.ts';

/** Pictures kept decoded, so that a moved corner is followed at once. */
const KEPT = 3;
const kept = new Map<string, Picture>();

answerTasks(async (task: BenchTask): Promise<BenchReply> => {
  try {
    return await answerTo(task);
  } catch (error) {
    // A fault is the collector's to mend, and loses its kind on the way out of a thread.
    if (error instanceof PictureFault || error instanceof RangeError)
      return { size: [0, 0], fault: error.message };
    throw error;
  }
});

async function answerTo(task: BenchTask): Promise<BenchReply> {
  if (task.do === 'relief') return await reliefReply(task, pictureOf);
  const { file, stamp } = task.do === 'compare' ? task.own : task;
  const picture = await pictureOf(file, stamp);
  const size = [picture.width, picture.height] as const;
  switch (task.do) {
    case 'face':
      return { size, face: await measured(picture, task) };
    case 'borders':
      return { size, borders: bordersOf(picture, task) };
    case 'card':
      return { size, card: card(picture, task) };
    case 'outline':
      return { size, outline: outlineIn(picture, task.sizeMm) };
    case 'compare':
      return { size, ...(await compared(picture, task)) };
  }
}

function outlineIn(picture: Picture, sizeMm: SizeMm | null): Outline | null {
  const { hypotheses, trouble } = findOutline(picture, { sizeMm, dpi: picture.dpi });
  return trouble ? null : (hypotheses[0] ?? null);
}

async function compared(
  picture: Picture,
  task: CompareTask,
): Promise<Pick<BenchReply, 'comparison' | 'other'>> {
  const { own, others, sizeMm, how } = task;
  const copy = seenOf(picture, await measured(picture, own), sizeMm);
  const seen: Seen[] = [];
  let other: BenchReply['other'];
  for (const { file, stamp } of others) {
    const beside = await pictureOf(file, stamp);
    const face = faceOf(beside, { sizeMm, dpi: beside.dpi, raking: [] });
    other ??= { face, size: [beside.width, beside.height] };
    const one = seenOf(beside, face, sizeMm);
    if (one) seen.push(one);
  }
  const [first] = seen;
  if (!copy || !first)
    throw new PictureFault('These pictures', 'no sure outline in one of them', 'one in each');
  return how === 'specimen' && other
    ? { comparison: compareSpecimens(copy, first, [], sizeMm), other }
    : { comparison: compareWithReferences(copy, seen, sizeMm) };
}

async function pictureOf(file: string, stamp: string): Promise<Picture> {
  const key = `${stamp} ${file}`;
  const picture = kept.get(key) ?? (await decodePicture(file));
  kept.delete(key);
  kept.set(key, picture);
  for (const old of [...kept.keys()].slice(0, -KEPT)) kept.delete(old);
  return picture;
}

async function measured(picture: Picture, task: FaceTask): Promise<FaceAnswer> {
  const raking = [];
  for (const file of task.raking)
    raking.push({ picture: await pictureOf(file, task.stamp), azimuthDeg: null });
  return faceBy(picture, task.hand, { ...task.known, raking });
}

function faceBy(picture: Picture, { refine, ...byHand }: HandSet, copy: CopyKnown) {
  const { corners, frame } = byHand;
  if (refine === 'outline' && corners) {
    const known = { sizeMm: copy.sizeMm, dpi: copy.dpi ?? picture.dpi };
    return faceAlong(picture, refitOutline(picture, corners, known), copy, frame);
  }
  const face = faceOf(picture, copy, byHand);
  if (refine !== 'frame' || !frame || !face.outline) return face;
  return { ...face, frame: frameNear(picture, face.outline, frame) };
}

function bordersOf(picture: Picture, { outline, frame, known }: BordersTask): Borders {
  const { sizeMm, dpi } = known;
  const along =
    'corners' in outline
      ? outline
      : outlineByHand(picture, outline, { sizeMm, dpi: dpi ?? picture.dpi });
  return bordersAlong(picture, along, known, frame);
}

function card(picture: Picture, { corners, k1, sizeMm, from, to, width }: CardTask): Picture {
  const lens = { k1, width: picture.width, height: picture.height };
  const step = (to[0] - from[0]) / width;
  return rectifiedView(picture, cardMapOf(corners, sizeMm, lens), viewOf(from, to, [step, step]));
}
