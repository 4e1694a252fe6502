import type { Cells, WireChange } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';

/** What a picture of a copy shows; its file is named by it. */
export type Role = string;

/** The roles that a picture can be given, in words. */
export const ROLES: readonly (readonly [role: Role, words: string])[] = [
  ['front', 'the front'],
  ['back', 'the back'],
  ['front.raking', 'the front by one low lamp'],
  ['back.raking', 'the back by one low lamp'],
  ...Array.from({ length: 8 }, (_, k): [string, string] => [
    `front.light-${k + 1}`,
    `the front by lamp ${k + 1} of several`,
  ]),
  ['listing', 'the seller’s own picture'],
];

/** What a file's own name says that it shows; undefined where it says nothing. */
function roleNamed(name: string): Role | undefined {
  const plain = name.toLowerCase();
  const side = /back|rear|reverse|verso/.test(plain) ? 'back' : 'front';
  const lamp = /(?:lamp|light)\D?([1-8])(?!\d)/.exec(plain)?.[1];
  if (lamp) return `front.light-${lamp}`;
  if (/raking|low.?lamp/.test(plain)) return `${side}.raking`;
  if (/listing|seller/.test(plain)) return 'listing';
  return /front|recto/.test(plain) || side === 'back' ? side : undefined;
}

/**
 * What each picture shows, as far as its name and its place tell: names first; of the others the first
 * is the front, the second the back, a third alone the front by a low lamp, more are lamps in turn.
 */
export function rolesOf(names: readonly string[], taken: readonly Role[] = []): readonly Role[] {
  const used = new Set(taken);
  const take = (role: Role | undefined) => {
    if (role === undefined || used.has(role)) return undefined;
    used.add(role);
    return role;
  };
  const named = names.map((name) => take(roleNamed(name)));
  const unnamed = named.filter((role) => role === undefined).length;
  const lamps = ROLES.map(([role]) => role).filter((role) => role.includes('light'));
  const faces = ['front', 'back'].filter((role) => !used.has(role));
  const order = [...faces, ...(unnamed - faces.length === 1 ? ['front.raking'] : []), ...lamps];
  return named.map((role) => role ?? take(order.find((one) => !used.has(one))) ?? '');
}

/** What is asked of a new copy, beside its pictures. */
export interface CopyDraft {
  readonly id: string;
  /** Empty where it is not known yet. */
  readonly printing: string;
  readonly status: string;
  readonly listing: string;
  /** Days in which it can go back to the seller, and the day they are counted from; both may be empty. */
  readonly days: string;
  readonly from: string;
}

/** The first of `copy-1`, `copy-2` … that no copy has. */
export function freeId(taken: readonly string[]): string {
  const ids = new Set(taken);
  for (let n = 1; ; n++) if (!ids.has(`copy-${n}`)) return `copy-${n}`;
}

/** What is wrong with a draft, in a sentence; empty where nothing is. */
export function wrongWith({ id, days, from }: CopyDraft, taken: readonly string[]): string {
  if (!/^[a-z0-9][a-z0-9-]*$/.test(id)) return 'An id is small letters, digits and hyphens.';
  if (taken.includes(id)) return `There is a copy ${id} already.`;
  if (days !== '' && !/^[1-9]\d{0,2}$/.test(days))
    return 'Days to send it back are a whole number.';
  if (days !== '' && !/^\d{4}-\d\d-\d\d$/.test(from)) return 'Say from which day they are counted.';
  return '';
}

/** The rows of a new copy: itself, and its deadline where one was given. */
export function stepFor({ id, printing, status, listing, days, from }: CopyDraft): Step {
  const add = (file: string, after: Cells): WireChange => ({ file, op: 'add', after });
  const clock = { copy: id, against: 'seller', starts_from: 'arrived', counts: 'calendar' };
  return {
    label: `Lay ${id} on the bench`,
    changes: [
      add('desk/copies.csv', { id, printing, status, listing: listing.trim() }),
      ...(days === '' ? [] : [add('desk/deadlines.csv', { ...clock, starts_on: from, days })]),
    ],
  };
}
