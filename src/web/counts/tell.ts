import type {
  CountingService,
  WireExtant,
  WirePrintingCount,
  WireServiceCount,
} from '../../contract/index.ts';
import { sayEdtf } from '../../evidence/index.ts';
import { count, outOfHundred } from '../words/index.ts';

type Low = NonNullable<WirePrintingCount['low']>;

/** A share in percent with one decimal. */
export function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

/** An interval of shares in percent. */
export function percents([low, high]: readonly [number, number]): string {
  return `${(100 * low).toFixed(1)} to ${percent(high)}`;
}

/** Graded copies as they are printed; an estimate says so. */
export function sayTotal({ total, lumped_with: others }: WireServiceCount): string {
  return others.length > 0 ? `≈ ${Math.round(total)}` : String(total);
}

/** What a count of graded copies rests on. */
export function explainTotal(
  one: WireServiceCount,
  title: string,
  name: (id: string) => string,
): string {
  const { total, total95, lumped_with: others, labels, off_scale: entries } = one;
  const quoted = labels.map((label) => `“${label}”`).join(' and ');
  const under = `under ${quoted} in the report of ${title} as of ${sayEdtf(one.as_of)}`;
  const off = Object.entries(entries).map(([entry, n]) => `${n} ${entry}`);
  const apart = off.length > 0 ? ` Apart from them: ${off.join(', ')}.` : '';
  const what =
    others.length === 0
      ? `${count(total, 'copy', 'copies')} ${under}.`
      : `About ${Math.round(total)} ${under}, which holds ${others.map(name).join(' and ')} too; with probability 0.95 between ${Math.floor(total95[0])} and ${Math.ceil(total95[1])}.`;
  const listed =
    one.p_listed < 0.95 ? ` That it is listed there at all: ${one.p_listed.toFixed(2)}.` : '';
  return `${what}${apart}${listed} What people sent in so far, some of it twice: no count of copies.`;
}

/** The words for a service's top grades. */
function topWords({ grades, top }: CountingService): string {
  const lowest = grades[top] ?? '';
  return top === grades.length - 1 ? `at ${lowest}` : `at ${lowest} or above`;
}

/** What a raw top rate rests on. */
export function explainRate(one: WireServiceCount, service: CountingService): string {
  if (one.rate === null) return `${service.title} has graded none as of ${sayEdtf(one.as_of)}.`;
  const of = `Of ${Math.round(one.total)} graded copies ${Math.round(one.top)} ${topWords(service)}, ${service.title}, as of ${sayEdtf(one.as_of)}.`;
  return `${of} With probability 0.95 the rate lies within ${percents(one.interval95)} (Jeffreys; Wilson: ${percents(one.wilson95)}). It is the rate of what people sent in, the best first: no chance for your copy.`;
}

/** What a shrunk top rate rests on. */
export function explainShrunk(one: WireServiceCount, service: CountingService): string {
  return `The same rate in the light of all printings that ${service.title} counts, as of ${sayEdtf(one.as_of)}: with probability 0.95 within ${percents(one.shrunk95)}. The fewer copies, the nearer it is drawn to the others.`;
}

/** The number of copies that can turn up. */
export function sayExtant({ estimate, bound }: WireExtant): string {
  return bound === 'lower' ? `at least ${estimate}` : `about ${estimate}`;
}

/** What an estimate of copies that can turn up rests on. */
export function explainExtant(extant: WireExtant): string {
  const { method, of, seen, again, from, to, interval95, others } = extant;
  const beside = others.map((one) => `${one.method}: ${Math.round(one.estimate)}`).join(', ');
  const doubt = `With probability 0.95 between ${interval95[0]} and ${interval95[1]}.`;
  const basis = `${count(seen, 'certificate')} seen, ${again} of them again, ${from} to ${to}.`;
  return `Counted: ${of}. By ${method}. ${basis} ${doubt}${beside === '' ? '' : ` By others: ${beside}.`}`;
}

/** What it rests on that a population is low because few copies exist. */
export function explainLow({ p_few_exist: p, raw, graded, settle }: Low): string {
  const rest = settle === null ? '' : ` What would settle it: ${settle}.`;
  return `In ${outOfHundred(p)} such cases few copies existing is the greater part of it, in the others that few were sent in. It rests on ${raw} raw and ${graded} graded copies on offer, on prices of raw copies, odds and print runs where they are known.${rest}`;
}
