/** The normal distribution's cumulative function by Zelen and Severo's 26.2.17, within 7.5e-8; `bell` is its density at z. */
export function cumulative(z: number, bell = bellOf(z)): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    bell *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}

/** The normal distribution's density. */
export function bellOf(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}
