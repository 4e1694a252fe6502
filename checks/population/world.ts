import type { Printing, Product } from '../../src/catalogue/index.ts';
import { type Claim, dayOf, type Evidence, parseEdtf } from '../../src/evidence/index.ts';
import { type Chance, chance } from '../../src/maths/index.ts';
import type { Records, Report, Seen, Service } from '../../src/population/index.ts';
import { type Hardness, LEVELS, type Rates } from './hardness.ts';

/** A dossier that is known through and through. */
export interface World {
  readonly evidence: Evidence;
  readonly records: Records;
  readonly on: number;
  /** By service and label with a line break between them: the printings counted there. */
  readonly labels: ReadonlyMap<string, readonly string[]>;
  /** By service and printing: copies, and the true rate of the top. */
  readonly counts: ReadonlyMap<string, { readonly total: number; readonly rate: number }>;
}

const MARKETS: readonly (readonly [
  language: string,
  market: string,
  name: string,
  short: string,
])[] = [
  ['en', 'GB', 'ENGLISH', 'ENG'],
  ['fi', 'FI', 'FINNISH', 'FIN'],
  ['ko', 'KR', 'KOREAN', 'KOR'],
  ['pl', 'PL', 'POLISH', 'POL'],
  ['pt-BR', 'BR', 'PORTUGUESE', 'PORT'],
  ['de', 'DE', 'GERMAN', 'GER'],
  ['it', 'IT', 'ITALIAN', 'ITA'],
  ['ja', 'JP', 'JAPANESE', 'JPN'],
];
const TITLES =
  'Lantern Harbour Quarry Meadow Orchard Signal Copper Bramble Voyage Cellar Almanac Parade Mill Tundra Saffron Ridge'.split(
    ' ',
  );
const KINDS = 'Box Tin Annual Starter Club Deck Album'.split(' ');
const FINISHES: readonly (readonly [string, string])[] = [
  ['plain', ''],
  ['foil', 'FOIL'],
  ['holofoil', 'HOLO'],
  ['mosaic', 'MOSAIC'],
  ['matte', 'MATTE'],
];
const OWN = 'REF PRISM LUX NEO ORO SHINE'.split(' ');

/** A printing as it truly is, with what labels may say. */
interface True {
  readonly id: string;
  readonly market: number;
  readonly product: number;
  readonly number: string;
  readonly finish: number;
  readonly wave: number;
  readonly year: number;
}

/** Makes a world of an invented card: printings, and three services that label them in their own ways. */
export function worldOf(size: number, hardness: Hardness, seed: number): World {
  const random = chance(seed);
  const rates = LEVELS[hardness];
  const all = printingsOf(size + Math.ceil(size * rates.foreign * 1.5), random);
  const hidden = new Set(all.slice(size).map(({ id }) => id));
  const labels = new Map<string, string[]>();
  const counts = new Map<string, { total: number; rate: number }>();
  const seen: Seen[] = [];
  const services = [0, 1, 2].map((at) => serviceOf(at));
  const reports = services.map((service, at) =>
    reportOf(service, styleOf(at, rates, random), all, hidden, rates, random, {
      labels,
      counts,
      seen,
    }),
  );
  return {
    evidence: evidenceOf(all.slice(0, size), random, rates),
    records: { services, reports, blocks: [], seen, offers: [], prices: new Map(), newestDay: ON },
    on: ON,
    labels,
    counts,
  };
}

const ON = dayOf(2026, 6, 30);

function printingsOf(size: number, random: Chance): True[] {
  const list: True[] = [];
  const products = Math.ceil(size / 2.2);
  while (list.length < size) {
    const product = list.length < 3 ? list.length : random.below(products);
    const kin = list.find((one) => one.product === product);
    const sibling = kin !== undefined && random.uniform() < 0.8;
    const one: True = {
      id: `p-${list.length}`,
      market: product % MARKETS.length,
      product,
      number: sibling ? kin.number : numberOf(random),
      finish: random.uniform() < 0.55 ? 0 : 1 + random.below(4),
      wave: random.uniform() < 0.75 ? 1 : 2,
      year: kin ? kin.year + (random.uniform() < 0.25 ? 1 : 0) : 1994 + random.below(16),
    };
    const same = (other: True) =>
      other.product === one.product &&
      other.number === one.number &&
      other.finish === one.finish &&
      other.wave === one.wave;
    if (!list.some(same)) list.push(one);
  }
  return list;
}

function numberOf(random: Chance): string {
  const n = 1 + random.below(120);
  const kind = random.uniform();
  if (kind < 0.12) return 'none';
  return kind < 0.55 ? String(n) : `${'ABCKPR'[random.below(6)]}${'BSD'[random.below(3)]}-${n}`;
}

function titleOf(product: number): string {
  const first = TITLES[product % TITLES.length] as string;
  const second = TITLES[(product * 5 + Math.floor(product / 16) + 3) % TITLES.length] as string;
  return `${first} ${second} ${KINDS[(product * 3) % KINDS.length]}`;
}

function serviceOf(at: number): Service {
  return {
    id: ['plumb', 'ostrel', 'hallin'][at] as string,
    grades: ['6', '7', '8', '9', '10'],
    top: 4,
    offScale: [],
  };
}

/** The habits of a service: its own words, its order, and what it never tells. */
interface Style {
  readonly at: number;
  readonly place: readonly string[];
  readonly finish: readonly string[];
  readonly kind: (title: string) => string;
  readonly tellsWave: boolean;
  readonly tellsPlace: boolean;
}

function styleOf(at: number, rates: Rates, random: Chance): Style {
  const own = () => random.uniform() < rates.other;
  const short = random.uniform() < 0.5;
  const cut = random.uniform();
  return {
    at,
    place: MARKETS.map(([language, , name, abbreviation]) => {
      if (language === 'en' && at !== 1) return '';
      return own() ? abbreviation.slice(0, 2) : short ? abbreviation : name;
    }),
    finish: FINISHES.map(([, word], i) =>
      word !== '' && own() ? (OWN[(i + at) % OWN.length] as string) : word,
    ),
    kind: (title) => shortened(title, cut, rates.other),
    tellsWave: random.uniform() < 0.7,
    tellsPlace: at !== 1 || random.uniform() < 0.5,
  };
}

function shortened(title: string, cut: number, other: number): string {
  const words = title.toUpperCase().split(' ');
  if (cut < 0.4) return words.join(' ');
  if (cut < 0.7) return words.slice(0, 2).join(' ');
  if (cut < 0.7 + 0.3 * other) return words.map((word) => word.slice(0, 4)).join(' ');
  return `${words[0]} ${words[2]}`;
}

interface Out {
  readonly labels: Map<string, string[]>;
  readonly counts: Map<string, { total: number; rate: number }>;
  readonly seen: Seen[];
}

// long because a label, its copies and what was seen of them are made together
function reportOf(
  service: Service,
  style: Style,
  all: readonly True[],
  hidden: ReadonlySet<string>,
  rates: Rates,
  random: Chance,
  out: Out,
): Report {
  const ofLabel = new Map<string, True[]>();
  const byKin = new Map<string, string>();
  for (const one of all) {
    const foreign = hidden.has(one.id);
    if (random.uniform() < (foreign ? 0.5 : rates.unlisted)) continue;
    const kin = `${one.product} ${one.number}`;
    const shared = byKin.get(kin);
    const lumped = !foreign && shared !== undefined && random.uniform() < rates.lump * 3;
    let label = lumped ? shared : labelOf(one, style, rates, random);
    // Labels that come out alike by chance are lumps of their own accord.
    if (foreign && ofLabel.has(label)) label += ' II';
    if (!foreign && !byKin.has(kin)) byKin.set(kin, label);
    ofLabel.set(label, [...(ofLabel.get(label) ?? []), one]);
  }
  const labels = [...ofLabel.keys()];
  const counts = new Int32Array(labels.length * service.grades.length);
  const a = 1 + 2 * random.uniform();
  const b = 10 + 10 * random.uniform();
  const confirmed = labels.map((label, at) => {
    const here = ofLabel.get(label) as True[];
    out.labels.set(
      `${service.id}\n${label}`,
      here.flatMap(({ id }) => (hidden.has(id) ? [] : id)),
    );
    for (const one of here) {
      const x = random.gamma(a);
      const rate = x / (x + random.gamma(b));
      const total = Math.round(Math.exp(1 + 3.5 * random.uniform()));
      out.counts.set(`${service.id}\n${one.id}`, { total, rate });
      for (let i = 0; i < total; i++) {
        const grade = random.uniform() < rate ? 4 : random.below(4);
        counts[at * service.grades.length + grade]! += 1;
      }
      if (hidden.has(one.id)) continue;
      for (let copy = 0; copy < total; copy++)
        if (random.uniform() < rates.looks / 30)
          out.seen.push(lookOf(service, random.uniform() < 0.6 ? label : '', one.id, random));
    }
    const [first] = here;
    const known =
      first !== undefined && !hidden.has(first.id) && random.uniform() < rates.confirmed;
    return known ? [first.id] : [];
  });
  return {
    service: service.id,
    asOf: '2026-06-30',
    day: ON,
    labels,
    confirmed,
    counts,
    columns: service.grades.length,
  };
}

function lookOf(service: Service, label: string, printing: string, random: Chance): Seen {
  return {
    day: ON - random.below(700),
    printings: [printing],
    service: service.id,
    certificate: String(10_000_000 + random.below(80_000_000)),
    label,
    grade: '9',
    where: '',
    serial: '',
    sold: false,
  };
}

function labelOf(one: True, style: Style, rates: Rates, random: Chance): string {
  const told = (text: string) => (random.uniform() < rates.silent ? '' : text);
  const off = random.uniform() < rates.year ? (random.uniform() < 0.7 ? 1 : -1) : 0;
  const year = told(String(one.year + off));
  const place = style.tellsPlace ? told(style.place[one.market] as string) : '';
  const bare = one.number === 'none' ? '' : one.number;
  const number = told(
    style.at === 0 ? bare.replace('-', '') : style.at === 2 && bare ? `#${bare}` : bare,
  );
  const finish = told(style.finish[one.finish] as string);
  const wave = style.tellsWave && one.wave > 1 ? told(style.at === 1 ? 'REPRINT' : '2ND') : '';
  const title = style.kind(titleOf(one.product));
  const parts =
    style.at === 0
      ? [year, 'NINEFEN', place, title, 'TIDEBELL HARE', number, finish, wave]
      : style.at === 1
        ? ['NINEFEN', title, wave, year, number, finish, place]
        : [place, title, number, 'TIDEBELL HARE', finish, wave, year];
  const words = parts.filter((part) => part !== '').flatMap((part) => part.split(' '));
  return words.map((word) => misspelt(word, rates.typo, random)).join(style.at === 1 ? ' · ' : ' ');
}

function misspelt(word: string, rate: number, random: Chance): string {
  if (word.length < 4 || random.uniform() >= rate) return word;
  const at = 1 + random.below(word.length - 2);
  const kind = random.below(3);
  if (kind === 0) return word.slice(0, at) + word.slice(at + 1);
  if (kind === 1) return word.slice(0, at) + (word[at + 1] ?? '') + word[at] + word.slice(at + 2);
  return `${word.slice(0, at)}${'EAIORST'[random.below(7)]}${word.slice(at + 1)}`;
}

function evidenceOf(list: readonly True[], random: Chance, rates: Rates): Evidence {
  const printings = list.map((one): Printing => {
    const [language, market] = MARKETS[one.market] as (typeof MARKETS)[number];
    const unknown = () => random.uniform() < rates.silent / 2;
    return {
      id: one.id,
      subject: 'tidebell-hare',
      language,
      market,
      product: `product-${one.product}`,
      ...(unknown() ? {} : { number: one.number }),
      ...(unknown() ? {} : { finish: (FINISHES[one.finish] as readonly [string, string])[0] }),
      edition: 'base',
      wave: String(one.wave),
    };
  });
  const ids = [...new Set(list.map(({ product }) => product))];
  const products = ids.map(
    (id): Product => ({ id: `product-${id}`, title: titleOf(id), kind: 'box' }),
  );
  const claims = list.map((one, row): Claim => {
    const value = `${one.year}-0${1 + random.below(9)}`;
    const reading = parseEdtf(value);
    return {
      row,
      printings: [one.id],
      source: 'archive',
      property: 'on-sale',
      value,
      ...(reading.ok ? { date: reading.date } : {}),
    };
  });
  return { printings, products, contents: [], sources: [], claims, orders: [] };
}
