import type { PlantedDent, Scene } from './scene.ts';

/** Five lamps about half a metre away, mm from the card's centre. */
export const LAMPS = [
  [380, -20, 250],
  [120, 430, 260],
  [-350, 300, 330],
  [-320, -300, 280],
  [150, -420, 230],
] as const;

/** A print with a dark and a bright half, stripes and a border, so that a dent lies on either. */
export function print(x: number, y: number): readonly [number, number, number] {
  if (x < 1.5 || y < 1.5 || x > 22.5 || y > 28.5) return [0.5, 0.45, 0.6];
  if (y > 15) return x % 5 < 2.5 ? [0.03, 0.08, 0.07] : [0.05, 0.16, 0.13];
  return x + y < 15 ? [0.2, 0.55, 0.4] : [0.6, 0.5, 0.3];
}

/** A small made card under five lamps, flat. */
export const base: Scene = {
  sizeMm: [24, 30],
  perMm: 12,
  turn: 2,
  lamps: LAMPS,
  dents: [],
  lines: [],
  print,
  gloss: { law: 'beckmann', strength: 0.12, roughness: 0.4 },
  ambient: 0.05,
  noise: [0.001, 0.006],
  lampHalf: 20,
  falls: true,
  cameraMm: 480,
  seed: 5,
};

/** Dents of different profiles, on dark and on bright print. */
export const dents: readonly PlantedDent[] = [
  { x: 16.5, y: 8, depth: 0.15, width: 1.3, profile: 'cosine' },
  { x: 7, y: 22, depth: 0.08, width: 0.8, profile: 'gauss' },
  { x: 6.5, y: 7, depth: 0.06, width: 1.8, profile: 'cap' },
  { x: 12, y: 12.5, depth: 0.1, width: 1.2, profile: 'flat-bottomed' },
];
