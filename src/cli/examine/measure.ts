import {
  type CopyReport,
  type Examination,
  faceOf,
  NOTHING_SET,
  type Relief,
  reportOf,
  type SetByHand,
  signsOf,
  type Told,
  withRelief,
} from '../../bench/index.ts';
import { type DecodedPicture, decodePicture } from '../../host/index.ts';
import type { Job } from './job.ts';
import { lampsMeasured } from './lamps.ts';
import { type Extras, type Printing, printingOf } from './printing.ts';
import type { Setup } from './setup.ts';

/** What measuring a copy gave, its pictures, and how long that took. */
export interface Measured extends Omit<CopyReport, 'grade'> {
  readonly examination: Examination;
  /** What pictures under a moved lamp told; null where there are none, or no outline in them. */
  readonly relief: Relief | null;
  readonly printing: Printing;
  readonly front: DecodedPicture;
  readonly back: DecodedPicture | null;
  readonly byHand: FacesByHand;
  /** What whoever took the pictures should know, in sentences. */
  readonly notes: readonly string[];
  /** Milliseconds. */
  readonly ms: { readonly decode: number; readonly measure: number };
}

/** What hands set of each face of a copy. */
export interface FacesByHand {
  readonly front: SetByHand;
  readonly back: SetByHand;
}

/** What is known of a copy beside its pictures, and who is told how far measuring has come. */
export interface Around {
  /** Pictures under a moved lamp. */
  readonly lamps: Setup | null;
  readonly extras: Extras;
  readonly told: Told;
  /** What hands set of each face. */
  readonly byHand: FacesByHand;
  /** What is done now, and the share that is done, 0 to 1. */
  readonly say: (what: string, share: number) => void;
}

/** Nothing is known and nobody watches. */
export const ALONE: Around = {
  lamps: null,
  extras: { cut: null, chart: null },
  told: { annotations: { front: [], back: [] }, listing: '', words: [], setting: null },
  byHand: { front: NOTHING_SET, back: NOTHING_SET },
  say: () => {},
};

/** Reads the pictures of a job and measures them. Throws PictureFault where one cannot be read. */
export async function measured(
  job: Job,
  { lamps, extras, told, byHand, say }: Around = ALONE,
): Promise<Measured> {
  const began = performance.now();
  say('Reading', 0);
  const front = await decodePicture(job.front);
  const back = job.back === null ? null : await decodePicture(job.back);
  const raking = [];
  for (const { file, azimuthDeg } of job.raking)
    raking.push({ picture: await decodePicture(file), azimuthDeg });
  const decoded = performance.now();
  const { cardMm: sizeMm, dpi } = job;
  say('Measuring the front', 0.2);
  const face = faceOf(front, { sizeMm, dpi, raking }, byHand.front);
  if (back) say('Measuring the back', 0.4);
  const other = back && faceOf(back, { sizeMm, dpi, raking: [] }, byHand.back);
  const faces = { front: face, back: other };
  say('Reading print and colours', 0.55);
  const printing = await printingOf(extras, face, front, dpi);
  const done = performance.now();
  if (lamps) say('Measuring the moved lamp', 0.6);
  const lit = lamps && (await lampsMeasured(lamps));
  say('Weighing', 0.95);
  const all = withRelief(faces, lit?.relief ?? null);
  const { grade, ...report } = reportOf(all, told);
  const pictures = [front, ...(back ? [back] : []), ...raking.map(({ picture }) => picture)];
  return {
    examination: { ...all, signs: signsOf(face, other, { sizeMm }), grade },
    ...{ relief: lit?.relief ?? null, printing, ...report, front, back, byHand },
    notes: [...pictures.flatMap(({ notes }) => notes), ...(lit?.faults ?? []), ...printing.faults],
    ms: {
      decode: decoded - began + (lit?.ms.decode ?? 0),
      measure: done - decoded + (lit?.ms.measure ?? 0),
    },
  };
}
