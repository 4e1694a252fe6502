import type {
  Ball,
  Borders,
  Comparison,
  CopyKnown,
  Corners,
  FaceAnswer,
  LampPicture,
  Outline,
  Picture,
  Relief,
  SetByHand,
  SizeMm,
} from '../../bench/index.ts';

/** What a hand set of a face, and which of it is drawn onto the edges near. */
export interface HandSet extends SetByHand {
  readonly refine: 'outline' | 'frame' | null;
}

/** A picture of a face to measure, with its corners where a hand set them. */
export interface FaceTask {
  readonly do: 'face';
  readonly file: string;
  /** Changes when the file does, so that no old picture is measured. */
  readonly stamp: string;
  readonly known: Pick<CopyKnown, 'sizeMm' | 'dpi'>;
  readonly raking: readonly string[];
  readonly hand: HandSet;
}

/** Borders alone, while a hand moves the outline or the frame. */
export interface BordersTask extends Pick<FaceTask, 'file' | 'stamp' | 'known'> {
  readonly do: 'borders';
  /** Corners that a hand set, or the outline as it was found. */
  readonly outline: Corners | Outline;
  readonly frame: Corners | null;
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

/** A picture whose outline alone is wanted. */
export interface OutlineTask {
  readonly do: 'outline';
  readonly file: string;
  readonly stamp: string;
  readonly sizeMm: SizeMm | null;
}

/** Pictures of a face under a moved lamp, and how its relief is to be shaded, where that is wanted. */
export interface ReliefTask {
  readonly do: 'relief';
  readonly set: ReliefSet;
  readonly shade: {
    readonly lamp: readonly [number, number, number];
    readonly steeper: number;
  } | null;
}

export interface ReliefSet {
  readonly pictures: readonly {
    readonly file: string;
    readonly stamp: string;
    readonly lampMm: LampPicture['lampMm'];
  }[];
  readonly ball: Ball | null;
  readonly sizeMm: SizeMm;
}

/** Two pictures for being of one specimen, or a copy against references of its printing. */
export interface CompareTask {
  readonly do: 'compare';
  readonly how: 'specimen' | 'references';
  readonly own: FaceTask;
  readonly others: readonly { readonly file: string; readonly stamp: string }[];
  readonly sizeMm: SizeMm;
}

export type BenchTask = FaceTask | BordersTask | CardTask | OutlineTask | ReliefTask | CompareTask;

/** What the bench's thread answers. */
export interface BenchReply {
  /** What is wrong with a picture, in words; then there is nothing else. */
  readonly fault?: string;
  readonly face?: FaceAnswer;
  readonly borders?: Borders;
  readonly card?: Picture;
  /** Null where none is sure. */
  readonly outline?: Outline | null;
  readonly relief?: Omit<Relief, 'slopes'>;
  readonly comparison?: Comparison;
  /** The picture beside that may show the same specimen, measured. */
  readonly other?: { readonly face: FaceAnswer; readonly size: BenchReply['size'] };
  /** Of the upright picture. */
  readonly size: readonly [width: number, height: number];
}
