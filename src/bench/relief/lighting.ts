/** A place in millimetres from the card's centre: x right, y down as the card is read, z to the camera. */
export type PlaceMm = readonly [x: number, y: number, z: number];

/** One lamp and how brightly it lights the card, as learned from the card's flat parts. */
export interface Lamp {
  readonly place: PlaceMm;
  /** Logarithm of its strength over the card: constant, u, v, u², uv, v² with u = x/50, v = y/50. */
  readonly strength: Float64Array;
}

/** Terms of a lamp's strength; they hold any law by which its light falls off. */
export const STRENGTH_TERMS = 6;

/** The light on a card, and what its surface does with it. */
export interface Lighting {
  readonly lamps: readonly Lamp[];
  /** Gloss: light thrown back is `strength · cosine^exponent` of normal and half-way direction (`blinn:1977`). */
  readonly gloss: Gloss;
  /** Light from all sides as a share of a lamp's light on the flat card. */
  readonly ambient: Doubtful;
  readonly noise: Noise;
}

/** Strength relative to a perfectly white matt surface, and the exponent of its lobe. */
export interface Gloss {
  readonly strength: number;
  /** Standard error of the strength. */
  readonly sd: number;
  readonly exponent: number;
}

/** A number and its standard error. */
export interface Doubtful {
  readonly value: number;
  readonly sd: number;
}

/** Standard error of a pixel's light: √(floor² + (relative · light)² + (edge · step to the next pixel)²). */
export interface Noise {
  readonly floor: number;
  readonly relative: number;
  readonly edge: number;
  /** Pixels on the side of the blocks that it was learned from. */
  readonly block: number;
}

/** Height of the camera over the card where nothing tells it, mm: a hand's picture (Judgement, no source). */
export const CAMERA_MM = 450;

/** Numbers that `lampsAt` writes for each lamp: direction x, y, z, half-way direction x, y, z, strength. */
export const LAMP_STRIDE = 7;

/** Directions to each lamp and half-way to the camera, and its strength, at a point from the card's centre. */
export function lampsAt(lamps: readonly Lamp[], x: number, y: number, out: Float64Array): void {
  const view = Math.hypot(x, y, CAMERA_MM);
  let at = 0;
  for (const { place, strength } of lamps) {
    const lx = place[0] - x;
    const ly = place[1] - y;
    const length = Math.hypot(lx, ly, place[2]);
    const dx = lx / length;
    const dy = ly / length;
    const dz = place[2] / length;
    const hx = dx - x / view;
    const hy = dy - y / view;
    const hz = dz + CAMERA_MM / view;
    const half = Math.hypot(hx, hy, hz);
    out[at++] = dx;
    out[at++] = dy;
    out[at++] = dz;
    out[at++] = hx / half;
    out[at++] = hy / half;
    out[at++] = hz / half;
    out[at++] = Math.exp(logStrengthAt(strength, x, y));
  }
}

function logStrengthAt(terms: Float64Array, x: number, y: number): number {
  const u = x / 50;
  const v = y / 50;
  return (
    (terms[0] as number) +
    u * (terms[1] as number) +
    v * (terms[2] as number) +
    u * u * (terms[3] as number) +
    u * v * (terms[4] as number) +
    v * v * (terms[5] as number)
  );
}
