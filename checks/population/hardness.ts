/** How hard a world is made. */
export type Hardness = 'easy' | 'medium' | 'hard';

/** Shares of what goes wrong in a world, by how hard it is. */
export const LEVELS: Readonly<Record<Hardness, Rates>> = {
  easy: {
    typo: 0.004,
    silent: 0.02,
    lump: 0.06,
    unlisted: 0.08,
    foreign: 0.05,
    year: 0.06,
    other: 0.1,
    confirmed: 0.2,
    looks: 2.5,
  },
  medium: {
    typo: 0.02,
    silent: 0.06,
    lump: 0.12,
    unlisted: 0.15,
    foreign: 0.08,
    year: 0.15,
    other: 0.3,
    confirmed: 0.12,
    looks: 1.2,
  },
  hard: {
    typo: 0.05,
    silent: 0.12,
    lump: 0.2,
    unlisted: 0.22,
    foreign: 0.12,
    year: 0.3,
    other: 0.5,
    confirmed: 0.06,
    looks: 0.6,
  },
};

/** How often a service's report differs from the card. */
export interface Rates {
  readonly typo: number;
  readonly silent: number;
  readonly lump: number;
  readonly unlisted: number;
  readonly foreign: number;
  /** Year of the cover, or one off. */
  readonly year: number;
  /** A word of the service's own. */
  readonly other: number;
  readonly confirmed: number;
  /** Of thirty copies so many were looked at. */
  readonly looks: number;
}
