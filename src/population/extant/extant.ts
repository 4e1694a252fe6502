import { isoOf } from '../../evidence/index.ts';
import type { Extant, Seen } from '../types.ts';
import {
  ace,
  chao,
  chapman,
  coverage,
  type Estimate,
  type Occasion,
  schnabel,
  schumacherEschmeyer,
} from './capture.ts';
import { uneven } from './uneven.ts';

/** Days on which certified copies of one printing were seen, each copy once a day, ascending. */
interface Looks {
  readonly certificate: string;
  readonly day: number;
}

/** Graded copies by the services' counts may be this much more by the time of the sightings. */
const GROWN = 1.1;

/**
 * How many certified copies of a printing can turn up, from certificates seen again; null where none
 * was. Every day is an occasion. The number of copies is integrated under a gamma–Poisson law, since
 * dear copies turn up again more often; the estimates of Chapman, Schnabel, Schumacher and Eschmeyer
 * and Chao stand beside it.
 *
 * @param most what the services' counts allow; infinite where they do not say
 */
export function extantOf(seen: readonly Seen[], most: number): Extant | null {
  const looks = looksOf(seen);
  const counts = new Map<string, number>();
  for (const { certificate } of looks) counts.set(certificate, (counts.get(certificate) ?? 0) + 1);
  const often: number[] = [];
  for (const times of counts.values()) often[times - 1] = (often[times - 1] ?? 0) + 1;
  for (let i = 0; i < often.length; i++) often[i] ??= 0;
  const distinct = counts.size;
  const again = looks.length - distinct;
  if (again === 0) return null;
  const bound = Math.max(distinct, most * GROWN);
  const believed = uneven(often, bound);
  const lower = chao(distinct, often[0] ?? 0, often[1] ?? 0, looks.length);
  const open = believed.interval95[1] > 40 * distinct;
  const [from, to] = [looks[0]?.day as number, looks.at(-1)?.day as number];
  return {
    estimate: open ? Math.round(lower.estimate) : believed.median,
    interval95: believed.interval95,
    method: open ? 'chao-1987' : 'gamma-poisson',
    of: 'certified copies of all services that can turn up for sale or be seen in the time of the sightings',
    bound: open ? 'lower' : 'none',
    seen: distinct,
    again,
    from: isoOf(from),
    to: isoOf(to),
    p_even: believed.pEven,
    covered: coverage(often[0] ?? 0, often[1] ?? 0, looks.length),
    others: othersOf(looks, lower, ace(often)),
    cautions: cautionsOf(often, again, believed.pEven, to - from),
  };
}

function looksOf(seen: readonly Seen[]): Looks[] {
  const looks = new Map<string, Looks>();
  for (const { service, certificate, serial, day } of seen) {
    // A numbered copy stays one when it crosses to another service.
    const copy = serial === '' ? `${service} ${certificate}` : `no. ${serial}`;
    if (certificate !== '') looks.set(`${copy} ${day}`, { certificate: copy, day });
  }
  return [...looks.values()].sort((a, b) => a.day - b.day);
}

function othersOf(looks: readonly Looks[], lower: Estimate, rare: number): Extant['others'] {
  const occasions = occasionsOf(looks);
  const half = Math.floor(looks.length / 2);
  const first = new Set(looks.slice(0, half).map(({ certificate }) => certificate));
  const second = new Set(looks.slice(half).map(({ certificate }) => certificate));
  const both = [...second].filter((one) => first.has(one)).length;
  const two = chapman(first.size, second.size, both);
  return [
    { method: 'chapman', estimate: two.estimate, interval95: two.interval95 },
    { method: 'schnabel', ...schnabel(occasions) },
    { method: 'schumacher-eschmeyer', estimate: schumacherEschmeyer(occasions), interval95: null },
    { method: 'chao-1987, from below', estimate: lower.estimate, interval95: lower.interval95 },
    ...(Number.isFinite(rare) ? [{ method: 'ace', estimate: rare, interval95: null }] : []),
  ];
}

function occasionsOf(looks: readonly Looks[]): Occasion[] {
  const known = new Set<string>();
  const byDay = new Map<number, string[]>();
  for (const { certificate, day } of looks)
    byDay.set(day, [...(byDay.get(day) ?? []), certificate]);
  return [...byDay.values()].map((names) => {
    const again = names.filter((name) => known.has(name)).length;
    const occasion = { caught: names.length, again, known: known.size };
    for (const name of names) known.add(name);
    return occasion;
  });
}

function cautionsOf(
  often: readonly number[],
  again: number,
  pEven: number,
  days: number,
): string[] {
  const cautions: string[] = [];
  if (again < 5)
    cautions.push(`Only ${again} seen again: the figure hangs on ${again === 1 ? 'it' : 'them'}.`);
  if (pEven < 0.3)
    cautions.push(
      'Some copies turn up far more often than others: copies that lie still are not in it.',
    );
  if (days > 3 * 365)
    cautions.push(
      'The sightings span years: copies graded, cracked out or put away since blur the count.',
    );
  if ((often[0] ?? 0) === 0)
    cautions.push('Every copy was seen more than once: few others are left to turn up.');
  return cautions;
}
