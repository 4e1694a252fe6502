import { nameOfCode, type Printing } from '../../catalogue/index.ts';
import type { ToldApart, ToldTrait } from './types.ts';

/** Columns that a look at the card can tell. */
const SEEN = ['language', 'printed_name', 'number', 'finish', 'edition', 'art', 'rarity'] as const;
/** Columns by which collectors take two printings for alike. */
const KIN = ['product', 'wave', 'market', ...SEEN] as const;
/** Others that a printing is told from. */
const MOST = 3;

/** How each printing is told from those most like it, by what may be published. */
export function toldApart(
  printings: readonly Printing[],
  traits: ReadonlyMap<string, readonly ToldTrait[]>,
): ReadonlyMap<string, readonly ToldApart[]> {
  return new Map(
    printings.map((one) => {
      const others = printings
        .filter(({ id }) => id !== one.id)
        .map((other) => ({ other, alike: likeness(one, other) }))
        .filter(({ alike }) => alike > KIN.length / 2)
        .sort((a, b) => b.alike - a.alike)
        .slice(0, MOST);
      return [one.id, others.map(({ other }) => apart(one, other, traits))];
    }),
  );
}

function likeness(a: Printing, b: Printing): number {
  return KIN.filter((column) => a[column] !== undefined && a[column] === b[column]).length;
}

/** A column as it is said; a language by its name. */
function seenIn(printing: Printing, column: (typeof SEEN)[number]): string | undefined {
  const cell = printing[column];
  return column === 'language' && cell !== undefined ? nameOfCode(cell, 'language') : cell;
}

function apart(
  one: Printing,
  other: Printing,
  traits: ReadonlyMap<string, readonly ToldTrait[]>,
): ToldApart {
  const columns = SEEN.flatMap((column) => {
    const [here, there] = [seenIn(one, column), seenIn(other, column)];
    if (here === undefined || there === undefined || here === there) return [];
    return [{ trait: column.replaceAll('_', ' '), here, there, sees: 'eye' }];
  });
  const theirs = new Map((traits.get(other.id) ?? []).map((told) => [told.trait, told]));
  const marks = (traits.get(one.id) ?? []).flatMap(({ trait, value, sees }) => {
    const there = theirs.get(trait)?.value;
    return there === undefined || there === value ? [] : [{ trait, here: value, there, sees }];
  });
  return { other: other.id, by: [...columns, ...marks] };
}
