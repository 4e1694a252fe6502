import { OWN, type Statement } from './statements.ts';

/** A value with who names it, as `why` tells of it. */
export interface Side {
  readonly key: string;
  readonly value: string;
  readonly p: number;
}

/**
 * Why the first of the values is thought right, in a sentence or two for a reader.
 *
 * @param sides the values, the most probable first
 * @param repeating ids of the sources that probably took their word from another
 */
export function why(
  property: string,
  sides: readonly Side[],
  statements: readonly Statement[],
  repeating: readonly string[],
  titles: ReadonlyMap<string, string>,
): string {
  const name = (id: string) => (id === OWN ? 'the dossier’s own row' : (titles.get(id) ?? id));
  const parts = sides.map(({ key, value }) => {
    const said = statements.filter((statement) => statement.key === key);
    const who = [...new Set(said.map(({ source }) => name(source)))];
    return `${list(who)} ${says(property, value, who.length > 1)}`;
  });
  const best = sides[0]!;
  const taken =
    repeating.length === 0
      ? ''
      : ` ${list(repeating.map(name))} probably took it from another and ${
          repeating.length > 1 ? 'count' : 'counts'
        } little.`;
  const told = `${capital(parts.join('; '))}`;
  if (sides.length === 1) return `${told}; nobody disagrees (${percent(best.p)}).${taken}`;
  return `${told}.${taken} By how often each is right elsewhere, ${verdict(property, best)}.`;
}

function says(property: string, value: string, many: boolean): string {
  const verb = many ? 'say' : 'says';
  if (property !== 'exists') return `${verb} *${value}*`;
  return `${verb} that it ${value.toLowerCase() === 'no' ? 'does *not exist*' : '*exists*'}`;
}

function verdict(property: string, { value, p }: Side): string {
  if (property !== 'exists') return `*${value}* is the most probable of them (${percent(p)})`;
  const no = value.toLowerCase() === 'no';
  return `it probably ${no ? 'does *not exist*' : '*exists*'} (${percent(p)})`;
}

function list(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function percent(p: number): string {
  const rounded = Math.round(100 * p);
  if (rounded >= 100) return 'over 99 %';
  return rounded < 1 ? 'under 1 %' : `${rounded} %`;
}
