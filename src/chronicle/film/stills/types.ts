/** Width of a text in pixels; `serif` for names and days, `sans` for all else. */
export type Measure = (text: string, face: Face, size: number) => number;
/** The house's two families. */
export type Face = 'sans' | 'serif';

/** The shape of a still. */
export interface Frame {
  readonly name: 'wide' | 'tall';
  readonly width: number;
  readonly height: number;
}

/** The two shapes of a film, in pixels. */
export const FRAMES: readonly Frame[] = [
  { name: 'wide', width: 1920, height: 1080 },
  { name: 'tall', width: 1080, height: 1920 },
];

/** Smallest text on a still, in pixels: it stays legible where the still is 320 wide. */
export const LEAST = 34;

/** A picture of a card that can be laid on a still. */
export interface StillPicture {
  /** Data address of a JPEG or PNG. */
  readonly href: string;
  readonly width: number;
  readonly height: number;
  /** The picture is the face of the card to its edges, so that places on it are known. */
  readonly toEdges: boolean;
  readonly rights: string;
}

/** A drawing to be made a PNG. */
export interface Still {
  /** `FOLDER/NAME`, without a suffix. */
  readonly file: string;
  readonly frame: Frame;
  readonly svg: string;
}
