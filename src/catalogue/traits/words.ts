/**
 * A text as it is compared: compatibility forms, marks over letters, case, quotes, dashes and
 * spaces do not count.
 */
export function keyOf(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/(?<=[a-z])\p{M}+/giu, '')
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\u2018\u2019\u201b\u2032`´]/g, "'")
    .replace(/[\u2010-\u2015_-]+/g, ' ')
    .replace(/[^\p{L}\p{N}\p{M}\p{S}'&/]+/gu, ' ')
    .trim();
}

/**
 * Letters changed, put in, left out or swapped with their neighbour between two texts, each letter
 * touched once (the optimal string alignment of `damerau:1964`).
 */
export function editsBetween(one: string, other: string): number {
  const [a, b] = [[...one], [...other]];
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (last[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(changed, (last[j] as number) + 1, (row[j - 1] as number) + 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, (before[j - 2] as number) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] as number;
}

/** How alike two texts are, 1 the same, 0 with no letter in its place. */
export function likeness(one: string, other: string): number {
  const longer = Math.max([...one].length, [...other].length);
  return longer === 0 ? 1 : 1 - editsBetween(one, other) / longer;
}
