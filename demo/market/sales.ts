import { dayOf, isoOf } from '../../src/evidence/index.ts';
import type { Chance } from '../../src/maths/index.ts';
import type { Row } from '../table.ts';
import { pick, serviceOf } from './population.ts';
import { rateOn } from './rates.ts';
import type { Slab } from './slabs.ts';

/** What a well-kept raw copy costs in January 2024, in euros; invented. */
export const BASE: Readonly<Record<string, number>> = {
  'fi-supplement': 55,
  'gb-first': 34,
  'gb-second': 21,
  'br-plain': 28,
  'br-foil': 96,
  'br-second': 19,
  'kr-starter': 31,
  'kr-monthly': 62,
  'pl-box': 37,
  'gb-annual': 24,
  'kr-club': 240,
  'br-mosaic': 88,
  'fi-tin': 45,
  'kr-road-matte': 18,
  'kr-road-foil': 33,
  'pl-road': 42,
};

const VENUES: readonly (readonly [venue: string, currency: string, markets: string])[] = [
  ['Rämehuuto', 'EUR', 'FI GB PL KR BR'],
  ['Ninestile Rooms', 'GBP', 'GB FI KR'],
  ['Feira Pindoré', 'BRL', 'BR'],
  ['너울섬 장터', 'KRW', 'KR'],
  ['Giełda Zajęcza', 'PLN', 'PL KR'],
];

const FIRST = dayOf(2024, 1, 3);
const DAYS = dayOf(2026, 6, 27) - FIRST;

/** The typical price of a copy in euros; `grade` empty for a raw one. */
export function typicalPrice(
  printing: string,
  service: string,
  grade: string,
  day: number,
): number {
  const base = (BASE[printing] ?? 30) * 1.07 ** ((day - FIRST) / 365);
  if (service === '') return base;
  const { grades, premium } = serviceOf(service);
  const place = grades.indexOf(grade) / (grades.length - 1);
  return base * premium * (0.35 + 0.55 * place + 3.4 * place ** 9);
}

/** Some 290 sales, of raw and of graded copies, in order of time; odd ones are added by hand. */
export function saleRows(
  all: readonly Slab[],
  rates: readonly Row[],
  luck: Chance,
): readonly Row[] {
  const days = Array.from({ length: 292 }, () => FIRST + luck.below(DAYS)).sort((a, b) => a - b);
  const known = all.filter((slab) => slab.printing !== '');
  const pull = known.map((slab) => slab.restless / (BASE[slab.printing] ?? 30) ** 0.3);
  return days.map((day, at) => {
    const slab = known[pick(pull, luck)];
    return slab === undefined || luck.uniform() < 0.45
      ? rawSale(day, at, rates, luck)
      : slabSale(slab, day, at, rates, luck);
  });
}

function rawSale(day: number, at: number, rates: readonly Row[], luck: Chance): Row {
  const printings = Object.keys(BASE);
  const weights = printings.map((printing) => 1 / (BASE[printing] ?? 30) ** 0.6);
  const printing = printings[pick(weights, luck)] ?? 'gb-first';
  const untold = printing === 'gb-first' && luck.uniform() < 0.35;
  return {
    ...sale(printing, '', '', day, at, rates, luck),
    printing: untold ? 'gb-first|gb-second' : printing,
    note: untold ? 'The pictures do not show the ink of the bell.' : '',
  };
}

function slabSale(slab: Slab, day: number, at: number, rates: readonly Row[], luck: Chance): Row {
  const shown = luck.uniform() < 0.75;
  return {
    ...sale(slab.printing, slab.service, slab.grade, day, at, rates, luck),
    certificate: shown ? slab.certificate : '',
  };
}

function sale(
  printing: string,
  service: string,
  grade: string,
  day: number,
  at: number,
  rates: readonly Row[],
  luck: Chance,
): Row {
  const market = printing.slice(0, 2).toUpperCase();
  const open = VENUES.filter(([, , markets]) => markets.includes(market));
  const [venue, currency] = open[luck.below(open.length)] ?? ['Rämehuuto', 'EUR'];
  const kind = ['sold', 'asking', 'unpaid'][pick([86, 10, 4], luck)] ?? 'sold';
  const spread = Math.exp((service === '' ? 0.3 : 0.18) * luck.normal());
  const asked = kind === 'asking' ? 1.35 : 1;
  const euros = typicalPrice(printing, service, grade, day) * spread * asked;
  const price = euros * rateOn(rates, currency, isoOf(day));
  return {
    date: isoOf(day),
    printing,
    service,
    grade,
    kind,
    price: priceText(price, currency),
    currency,
    venue,
    lot: String(10_200 + 37 * at),
  };
}

function priceText(price: number, currency: string): string {
  if (currency === 'KRW') return String(Math.round(price / 500) * 500);
  return (Math.round(price * 2) / 2).toFixed(2);
}
