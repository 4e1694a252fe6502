import { examine, type Setting } from '../../bench/index.ts';
import { type DecodedPicture, decodePicture } from '../../host/index.ts';
import type { Job } from './job.ts';

/** What measuring a copy gave, its pictures, and how long that took. */
export interface Measured {
  readonly examination: ReturnType<typeof examine>;
  readonly front: DecodedPicture;
  readonly back: DecodedPicture | null;
  /** What whoever took the pictures should know, in sentences. */
  readonly notes: readonly string[];
  /** Milliseconds. */
  readonly ms: { readonly decode: number; readonly measure: number };
}

/** Reads the pictures of a job and measures them. Throws PictureFault where one cannot be read. */
export async function measured(job: Job, setting: Setting | null = null): Promise<Measured> {
  const began = performance.now();
  const front = await decodePicture(job.front);
  const back = job.back === null ? null : await decodePicture(job.back);
  const raking = [];
  for (const { file, azimuthDeg } of job.raking)
    raking.push({ picture: await decodePicture(file), azimuthDeg });
  const decoded = performance.now();
  const { cardMm: sizeMm, dpi } = job;
  const examination = examine(front, back, { sizeMm, dpi, raking, setting });
  const done = performance.now();
  const notes = [front, ...(back ? [back] : []), ...raking.map(({ picture }) => picture)].flatMap(
    (picture) => picture.notes,
  );
  return {
    examination,
    front,
    back,
    notes,
    ms: { decode: decoded - began, measure: done - decoded },
  };
}
