import type { Art } from './art.ts';

/** Names of the four process inks, in the order of every list of four here. */
export const INKS = ['cyan', 'magenta', 'yellow', 'black'] as const;

/** How an invented print is made and scanned. */
export interface Print {
  readonly size: number;
  readonly dpi: number;
  readonly process: 'halftone' | 'stochastic' | 'continuous';
  /** Ruling and angle on the plate of each ink, before the scan is turned. */
  readonly screens: readonly { readonly lpi: number; readonly angleDeg: number }[];
  readonly spot: 'round' | 'euclidean' | 'elliptical' | 'diamond';
  /** The print on the glass, clockwise as seen. */
  readonly scanTurnDeg: number;
  /** How far each plate is out of register, in millimetres. */
  readonly shiftsMm: readonly (readonly [number, number])[];
  /** Share of light that each ink lets through: red, green, blue. */
  readonly inks: readonly (readonly [number, number, number])[];
  readonly paper: readonly [number, number, number];
  /** Standard deviation of the scanner's blur, pixels of the scan. */
  readonly blurPx: number;
  /** Standard deviation of the noise, in steps of an 8-bit sample. */
  readonly noise: number;
  readonly art: Art;
}
