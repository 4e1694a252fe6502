import type { Camera } from './camera.ts';
import type { Point } from './canvas.ts';
import type { Marks } from './defects.ts';
import type { Face } from './face.ts';
import type { Rgb } from './light.ts';

/** Kinds of ground that a card lies on. */
export const GROUNDS = [
  'mat',
  'wood',
  'cloth',
  'stripes',
  'cork',
  'marble',
  'leather',
  'tiles',
  'plain',
] as const;

/** What the card lies on. */
export interface Ground {
  readonly kind: (typeof GROUNDS)[number];
  readonly colour: Rgb;
  readonly second: Rgb;
  readonly seed: number;
  /** Turn of the pattern in degrees. */
  readonly turnDeg: number;
  readonly contrast: number;
}

/** A lamp: from the card's centre, x right, y down, z to the camera, in millimetres. */
export interface Lamp {
  readonly positionMm: readonly [number, number, number];
  /** Light on a plane that faces the lamp, at the card's centre. */
  readonly power: number;
  readonly radiusMm: number;
}

/** All light on the scene. */
export interface Lighting {
  readonly ambient: number;
  readonly lamps: readonly Lamp[];
  /** Change of brightness across the picture's width and height, as a share. */
  readonly ramp: Point;
  /** Loss of light in the corners of the picture, as a share. */
  readonly falloff: number;
  readonly cast: Rgb;
  /** Share and exponent of the card's gloss. */
  readonly gloss: readonly [share: number, exponent: number];
  /** A soft shadow that lies across: a line through a point (mm), its direction and strength. */
  readonly shade?: {
    readonly at: Point;
    readonly angleDeg: number;
    readonly strength: number;
    readonly widthMm: number;
  };
}

/** What lies on the ground beneath or beside the card, in millimetres of the card. */
export interface Thing {
  readonly shape: 'card' | 'disc' | 'pencil' | 'packet';
  readonly centreMm: Point;
  readonly sizeMm: Point;
  readonly turnDeg: number;
  readonly colour: Rgb;
  readonly second: Rgb;
}

/** What lies over the card. */
export type Cover =
  | {
      readonly kind: 'sleeve';
      readonly offsetMm: Point;
      readonly turnDeg: number;
      readonly sizeMm: Point;
      readonly windowAt: Point;
      readonly glare: number;
    }
  | { readonly kind: 'holder'; readonly sizeMm: Point; readonly glare: number }
  | {
      readonly kind: 'finger';
      readonly fromMm: Point;
      readonly toMm: Point;
      readonly radiusMm: number;
      readonly skin: Rgb;
    };

/** What the camera makes of the light. */
export interface Develop {
  readonly blurPx: number;
  readonly discPx: number;
  /** Standard deviation of a dark sample, and its square's growth with light. */
  readonly readNoise: number;
  readonly shotNoise: number;
  /** 0: none; about 0.3: as telephones do it. */
  readonly contrastCurve: number;
  readonly halo: number;
  /** Share of each channel that leaks to the others. */
  readonly jpegQuality: number;
}

/** A matt ball that lies beside the card, its centre in millimetres of the card. */
export interface Ball {
  readonly centreMm: Point;
  readonly radiusMm: number;
}

/** Everything in front of the camera, and the camera. */
export interface Scene {
  readonly kind: string;
  /** null: there is no card. */
  readonly face: Face | null;
  readonly marks: Marks;
  readonly thicknessMm: number;
  readonly sideColour: Rgb;
  readonly camera: Camera;
  readonly ground: Ground;
  readonly things: readonly Thing[];
  readonly covers: readonly Cover[];
  readonly ball?: Ball;
  readonly lighting: Lighting;
  /** Share of dusty places on a scanner's glass. */
  readonly dust: number;
  readonly develop: Develop;
}
