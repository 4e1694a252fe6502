import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import sharp from 'sharp';
import { node } from './run.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const PHOTOS = join(ROOT, 'demo', 'dossier', 'desk', 'photos');
const COPIES = [1, 2, 3, 4].map((n) => join(PHOTOS, `hare-${n}`));
const SCAN = join(ROOT, 'checks', 'fixtures', 'bench', 'pictures', 'scan-bronze-300', 'front.jpg');

/** Milliseconds of processor time of a face once decoded, and of OpenCV's basics on it in the same run; undefined where it is not installed. */
export interface FaceTimes {
  readonly kind: 'photo' | 'scan';
  readonly hereMs: number;
  readonly witnessMs: number | undefined;
}

/** As much room for what is soon dropped as the threads of `--jobs` have. */
const ROOM = '--max-semi-space-size=64';

/** Times faces of the demo and a scan, medians, first here and then by OpenCV in one thread. */
export function timedFaces(): readonly FaceTimes[] {
  const photos = COPIES.flatMap((folder) =>
    ['front.jpg', 'back.jpg'].map((name) => join(folder, name)),
  );
  return (
    [
      ['photo', photos],
      ['scan', [SCAN, SCAN, SCAN]],
    ] as const
  ).map(([kind, files]) => {
    const here = JSON.parse(node([ROOM, 'tools/bench/faces.js', ...files])) as number[];
    const witness = byOpenCv(files);
    return { kind, hereMs: medianOf(here), witnessMs: witness && medianOf(witness) };
  });
}

function byOpenCv(files: readonly string[]): readonly number[] | undefined {
  const words = ['tools/bench/opencv.py', ...files];
  const { status, stdout } = spawnSync('/usr/bin/python3', words, { cwd: ROOT, encoding: 'utf8' });
  return status === 0 ? (JSON.parse(stdout) as number[]) : undefined;
}

/** What one photo of 24 megapixels takes, and what a step of its moved outline does. */
export interface Whole {
  readonly megapixels: number;
  readonly decodeMs: number;
  readonly measureMs: number;
  readonly stepMs: number;
  readonly peakMb: number;
}

/** Most memory that such a photo may take, megabytes, and longest that a step may, milliseconds. */
export const WHOLE_AIM = { peakMb: 700, stepMs: 100 } as const;

/** Measures a photo of the demo enlarged to 24 megapixels in a process of its own. */
export async function wholePhoto(below: string): Promise<Whole> {
  const file = join(below, 'large.jpg');
  await sharp(join(COPIES[0] ?? '', 'front.jpg'))
    .resize(4297, 5586, { fit: 'fill' })
    .toFile(file);
  return JSON.parse(node(['tools/bench/whole.js', file])) as Whole;
}

/** Largest share of the time one after the other that two threads may take. */
export const COPIES_AIM = 0.6;

/** Times the four copies of the demo one after the other and two at once. */
export function timedCopies(): { readonly oneByOneMs: number; readonly twoAtOnceMs: number } {
  return JSON.parse(node(['tools/bench/copies.js', ...COPIES]));
}

function medianOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
