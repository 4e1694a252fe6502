/** Densities that an ink, or a peak in the spectrum, has in red, green and blue; length 1. */
export type Densities = readonly [red: number, green: number, blue: number];

/** A process ink by name, `unknown` where the colour fits none. */
export type InkName = 'cyan' | 'magenta' | 'yellow' | 'black' | 'unknown';

/** The chromatic inks in the order of the channel that each takes most from. */
export const CHROMATIC = ['cyan', 'magenta', 'yellow'] as const;

/** Where learning begins. Judgement, no source: ordinary offset inks as a scanner sees them. */
export const ORDINARY: readonly Densities[] = [
  unit([0.92, 0.35, 0.15]),
  unit([0.2, 0.88, 0.42]),
  unit([0.07, 0.15, 0.98]),
];

/** Spread of the three densities about their mean below which an ink counts as black. */
const NEUTRAL = 0.14;

/** The name that a colour speaks for: black where all channels are alike, else by the most taken. */
export function nameOf(colour: Densities): Exclude<InkName, 'unknown'> {
  const mean = (colour[0] + colour[1] + colour[2]) / 3;
  const apart = Math.hypot(...colour.map((density) => density - mean));
  if (apart < NEUTRAL) return 'black';
  return CHROMATIC[colour.indexOf(Math.max(...colour))] as (typeof CHROMATIC)[number];
}

/** How far apart the colours of two inks lie at least. Judgement, no source. */
const ONE_INK = 0.1;

/** Whether two colours are so near that one ink may show both. */
export function areOfOneInk(a: Densities, b: Densities): boolean {
  return Math.hypot(...a.map((density, c) => density - (b[c] as number))) < ONE_INK;
}

/** The vector of length 1 in the same direction. */
export function unit(vector: readonly [number, number, number]): Densities {
  const length = Math.hypot(...vector);
  return [vector[0] / length, vector[1] / length, vector[2] / length];
}

/**
 * Weights of the three densities that single out one chromatic ink and answer nothing to the other
 * two: the rows of the inverse of the matrix whose columns are the inks, each scaled to length 1.
 * Black, which is all three at once, stays in every row.
 */
export function separationOf(inks: readonly Densities[]): readonly Densities[] {
  return [0, 1, 2].map((own) => {
    const [a, b] = [0, 1, 2].filter((other) => other !== own).map((i) => inks[i] as Densities) as [
      Densities,
      Densities,
    ];
    const across = unit([
      a[1] * b[2] - a[2] * b[1],
      a[2] * b[0] - a[0] * b[2],
      a[0] * b[1] - a[1] * b[0],
    ]);
    return across;
  });
}
