import {
  cardMapOf,
  type FaceAnswer,
  faceAlong,
  faceOf,
  outlineByHand,
  type Picture,
  rectifiedView,
  refitOutline,
  viewOf,
} from '../../bench/index.ts';
import { answerTasks, decodePicture, PictureFault } from '../../host/index.ts';
import type { BenchReply, BenchTask, CardTask, FaceTask } from './tasks.ts';

/** Pictures kept decoded, so that a moved corner is followed at once. */
const KEPT = 3;
const kept = new Map<string, Picture>();

answerTasks(async (task: BenchTask): Promise<BenchReply> => {
  try {
    const picture = await pictureOf(task.file, task.stamp);
    const size = [picture.width, picture.height] as const;
    return task.do === 'face'
      ? { size, face: await measured(picture, task) }
      : { size, card: card(picture, task) };
  } catch (error) {
    // A fault is the collector's to mend, and loses its kind on the way out of a thread.
    if (error instanceof PictureFault) return { size: [0, 0], fault: error.message };
    throw error;
  }
});

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
  const copy = { ...task.known, raking, setting: null };
  if (!task.hand) return faceOf(picture, copy);
  const known = { sizeMm: copy.sizeMm, dpi: copy.dpi ?? picture.dpi };
  const { corners, refine } = task.hand;
  const outline = refine
    ? refitOutline(picture, corners, known)
    : outlineByHand(picture, corners, known);
  return faceAlong(picture, outline, copy);
}

function card(picture: Picture, { corners, k1, sizeMm, from, to, width }: CardTask): Picture {
  const lens = { k1, width: picture.width, height: picture.height };
  const step = (to[0] - from[0]) / width;
  return rectifiedView(picture, cardMapOf(corners, sizeMm, lens), viewOf(from, to, [step, step]));
}
