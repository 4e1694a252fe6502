import type { Dossier } from './types.ts';

/** The printings that a cell means: forwarded ids and wholes followed, `a|b` as alternatives. */
export type Stands = (cell: string) => readonly string[];

/** Follows the cells of a dossier to printings; ids that it does not have are left out. */
export function standingOf({ forwards, evidence }: Dossier): Stands {
  const parts = new Map<string, string[]>();
  const known = new Set(evidence.printings.map(({ id }) => id));
  for (const { id, part_of: whole } of evidence.printings)
    if (whole !== undefined) parts.set(whole, [...(parts.get(whole) ?? []), id]);
  const remembered = new Map<string, readonly string[]>();
  return (cell) => {
    const before = remembered.get(cell);
    if (before !== undefined) return before;
    const ids = cell.split('|').map((id) => forwards.get(id.trim()) ?? id.trim());
    const all = [...new Set(ids.flatMap((id) => (known.has(id) ? id : (parts.get(id) ?? []))))];
    remembered.set(cell, all);
    return all;
  };
}
