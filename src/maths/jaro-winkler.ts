/**
 * Jaro's likeness of two texts, 0 to 1 (`winkler:1994`): letters in common within half the longer
 * text, and half of those out of order. Two empty texts are alike, an empty and another not.
 * Compares UTF-16 units: normalise before, and take the letters of scripts beyond the basic plane
 * for two.
 */
export function jaro(a: string, b: string): number {
  if (a === b) return 1;
  if (a === '' || b === '') return 0;
  const reach = Math.max(0, Math.floor(Math.max(a.length, b.length) / 2) - 1);
  const takenOfB = new Uint8Array(b.length);
  const common: number[] = [];
  for (let i = 0; i < a.length; i++) {
    const letter = a.charCodeAt(i);
    const last = Math.min(b.length - 1, i + reach);
    for (let j = Math.max(0, i - reach); j <= last; j++) {
      if (takenOfB[j] || b.charCodeAt(j) !== letter) continue;
      takenOfB[j] = 1;
      common.push(letter);
      break;
    }
  }
  const m = common.length;
  if (m === 0) return 0;
  const half = outOfOrder(common, b, takenOfB) / 2;
  return (m / a.length + m / b.length + (m - half) / m) / 3;
}

function outOfOrder(common: readonly number[], b: string, taken: Uint8Array): number {
  let different = 0;
  let k = 0;
  for (let j = 0; j < b.length; j++) {
    if (!taken[j]) continue;
    if (b.charCodeAt(j) !== common[k]) different += 1;
    k += 1;
  }
  return different;
}

/**
 * Jaro's likeness raised by a tenth of its distance from 1 for each of the first four letters in
 * common, as Winkler does (`winkler:1994`). No threshold below which nothing is raised: his table
 * keeps pairs under 0.7 as they are, which this does too.
 */
export function jaroWinkler(a: string, b: string): number {
  const likeness = jaro(a, b);
  if (likeness <= 0.7) return likeness;
  const most = Math.min(4, a.length, b.length);
  let same = 0;
  while (same < most && a.charCodeAt(same) === b.charCodeAt(same)) same += 1;
  return likeness + same * 0.1 * (1 - likeness);
}
