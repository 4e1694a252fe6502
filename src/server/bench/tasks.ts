import type { CopyKnown, Corners, FaceAnswer, Picture } from '../../bench/index.ts';

/** A picture of a face to measure, with its corners where a hand set them. */
export interface FaceTask {
  readonly do: 'face';
  readonly file: string;
  /** Changes when the file does, so that no old picture is measured. */
  readonly stamp: string;
  readonly known: Pick<CopyKnown, 'sizeMm' | 'dpi'>;
  readonly raking: readonly string[];
  readonly hand: { readonly corners: Corners; readonly refine: boolean } | null;
}

/** A part of the card as seen straight down, in millimetres, `width` pixels wide. */
export interface CardTask {
  readonly do: 'card';
  readonly file: string;
  readonly stamp: string;
  readonly corners: Corners;
  readonly k1: number;
  readonly sizeMm: readonly [number, number];
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly width: number;
}

export type BenchTask = FaceTask | CardTask;

/** What the bench's thread answers. */
export interface BenchReply {
  /** What is wrong with a picture, in words; then there is nothing else. */
  readonly fault?: string;
  readonly face?: FaceAnswer;
  readonly card?: Picture;
  /** Of the upright picture. */
  readonly size: readonly [width: number, height: number];
}
