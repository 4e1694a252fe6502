/** A dent put into a made card: place and width at half the depth in card millimetres. */
export interface PlantedDent {
  readonly x: number;
  readonly y: number;
  readonly depth: number;
  readonly width: number;
  readonly profile: 'cosine' | 'gauss' | 'cap' | 'flat-bottomed';
  /** How many times longer than wide, along the angle in degrees; 1 for a round one. */
  readonly oval?: number;
  readonly angle?: number;
}

/** A ridge (height above 0) or groove along a straight line, its section a Gaussian, ends fading out. */
export interface PlantedLine {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly height: number;
  /** Width at half the height. */
  readonly width: number;
}

/** A made card under lamps, with a shading of its own: not the model that is fitted. */
export interface Scene {
  readonly sizeMm: readonly [number, number];
  readonly perMm: number;
  /** Turn of the card in the picture, degrees clockwise as seen. */
  readonly turn: number;
  readonly lamps: readonly (readonly [number, number, number])[];
  readonly dents: readonly PlantedDent[];
  readonly lines: readonly PlantedLine[];
  /** Reflectance, red, green, blue, at a point of the card in millimetres. */
  readonly print: (x: number, y: number) => readonly [number, number, number];
  readonly gloss: {
    readonly law: 'beckmann' | 'blinn' | 'ggx';
    readonly strength: number;
    readonly roughness: number;
  };
  readonly ambient: number;
  /** Standard deviation of the noise as a share of full light, and as a share of the light itself. */
  readonly noise: readonly [number, number];
  /** Half the side of the square lamp, mm; whether its light falls with the square of the distance. */
  readonly lampHalf: number;
  readonly falls: boolean;
  readonly cameraMm: number;
  readonly seed: number;
}

/** Height of the surface under the plane, positive downwards, as a share of a dent's depth at r widths. */
function profileOf(profile: PlantedDent['profile'], r: number): number {
  switch (profile) {
    case 'cosine':
      return r < 1 ? (1 + Math.cos(Math.PI * r)) / 2 : 0;
    case 'gauss':
      return Math.exp(-4 * Math.LN2 * r * r);
    case 'cap':
      return Math.max(0, 1 - 2 * r * r);
    case 'flat-bottomed':
      return Math.exp(-Math.LN2 * (2 * r) ** 4);
  }
}

/** Height of the made surface over its plane at a point in card millimetres, mm, positive up. */
export function heightAt({ dents, lines }: Scene, x: number, y: number): number {
  let height = 0;
  for (const { from, to, height: crest, width } of lines) {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(dx, dy);
    const along = ((x - from[0]) * dx + (y - from[1]) * dy) / length;
    const d = ((y - from[1]) * dx - (x - from[0]) * dy) / length;
    const fade = Math.max(0, Math.min(1, along, length - along));
    height += crest * fade * Math.exp(-4 * Math.LN2 * (d / width) ** 2);
  }
  for (const { x: cx, y: cy, depth, width, profile, oval = 1, angle = 0 } of dents) {
    const a = (angle * Math.PI) / 180;
    const u = (x - cx) * Math.cos(a) + (y - cy) * Math.sin(a);
    const v = -(x - cx) * Math.sin(a) + (y - cy) * Math.cos(a);
    const root = Math.sqrt(oval);
    height -= depth * profileOf(profile, Math.hypot(u / root, v * root) / width);
  }
  return height;
}
