import type { Cells, WireDating } from '../../../src/contract/index.ts';
import { dayOf, isoOf } from '../../../src/evidence/index.ts';
import { chance } from './rows.ts';

type Printing = WireDating['printings'][number];
type Claim = Printing['claims'][number];

interface Stated {
  readonly source: string;
  readonly property: string;
  readonly from: number;
  readonly to: number;
  readonly value: string;
  readonly pRight: number;
  readonly explanation: string;
  readonly reading: Claim['reading'];
}

function stated(day: number, at: number, random: () => number): readonly Stated[] {
  const iso = isoOf(day);
  const late = day + 3 + Math.floor(random() * 30);
  const claims: Stated[] = [
    claim('publisher', 'on-sale', day, day, iso, 0.96, 'the day itself', 'right'),
  ];
  if (at % 2 === 0) {
    claims.push(claim('shop', 'on-sale', day, day, iso, 0.98, 'the day itself', 'right'));
  }
  if (at % 3 === 0) {
    const words = 'the day it reached the shops abroad, a few days on';
    claims.push(claim('checklist', 'on-sale', late, late, isoOf(late), 0.03, words, 'few-days'));
  }
  if (at % 7 === 4) {
    const cover = dayOf(2004, 1, 1);
    const words = 'this monthly comes out about six weeks ahead of its cover';
    claims.push(claim('cover', 'cover-date', cover, cover + 30, '2004-01', 0.02, words, 'lead'));
    claims.push(
      claim(
        'label',
        'label-year',
        cover,
        cover + 365,
        '2004',
        0.04,
        'the cover’s year',
        'cover-year',
      ),
    );
  }
  if (at % 5 === 1) {
    const seen = day + 40;
    const words = 'seen after release';
    claims.push(claim('diary', 'seen-by', seen, seen, isoOf(seen), 0.99, words, 'bound'));
  }
  return claims;
}

function claim(
  source: string,
  property: string,
  from: number,
  to: number,
  value: string,
  pRight: number,
  explanation: string,
  reading: Claim['reading'],
): Stated {
  return { source, property, from, to, value, pRight, explanation, reading };
}

function spread(day: number, at: number): readonly (readonly [string, number])[] {
  if (at % 7 === 2) {
    return Array.from({ length: 91 }, (_, k) => {
      const p = (1 - ((k - 45) / 46) ** 2) / 61.4;
      return [isoOf(day + k - 45), p] as const;
    });
  }
  const best = at % 5 === 3 ? 0.61 : 0.94;
  const rest = (1 - best) / 2;
  return [
    [isoOf(day - 1), rest * 0.6],
    [isoOf(day), best],
    [isoOf(day + 1), rest * 0.6],
    [isoOf(day + 7), rest * 0.8],
  ];
}

function dayOfPrinting(at: number, n: number, random: () => number): number {
  if (at === 4) return dayOf(2003, 11, 19);
  return dayOf(1993, 3, 11) + Math.floor((at / n) * 5900 + random() * 60);
}

function dated(at: number, day: number, claims: readonly Stated[], firstRow: number): Printing {
  const days = spread(day, at);
  const window = at % 7 === 2;
  const best = window ? (days[45]?.[1] ?? 0) : (days[1]?.[1] ?? 0);
  return {
    id: `printing-${at + 1}`,
    best: isoOf(day),
    edtf: window ? `${isoOf(day - 45)}/${isoOf(day + 45)}` : isoOf(day),
    p_best: best,
    interval95: window ? [isoOf(day - 40), isoOf(day + 40)] : [isoOf(day - 1), isoOf(day + 1)],
    p_interval: 0.96,
    days: days.map(([iso, p]) => [iso, p]),
    state: window ? 'window' : 'day',
    modes:
      at % 5 === 3
        ? [
            { from: isoOf(day - 1), to: isoOf(day + 1), p: 0.72 },
            { from: isoOf(day + 7), to: isoOf(day + 7), p: 0.28 },
          ]
        : [],
    together: at % 6 === 0 ? [`printing-${at + 2}`] : [],
    claims: claims.map((one, k) => ({
      row: firstRow + k,
      source: one.source,
      property: one.property,
      value: one.value,
      p_right: one.pRight,
      explanation: one.explanation,
      reading: one.reading,
      others: [
        { reading: 'pen', explanation: 'a slip of the pen', p: 0.02 },
        { reading: 'noise', explanation: 'unexplained', p: 0.01 },
      ],
      p_reading: 0.9,
      slip: one.pRight < 0.5 && one.reading !== 'bound' && one.reading !== 'lead',
      span: [isoOf(one.from), isoOf(one.to)],
    })),
    why:
      at % 7 === 4
        ? 'The publisher’s page names the 19th and a shop’s notice agrees. *The cover says January 2004, but this monthly came out six weeks ahead of its cover* in the eleven numbers that are known.'
        : 'The publisher’s page names this day. *The checklist is a few days late*, as it mostly is abroad.',
  };
}

/** Claims and answer for `n` printings, schema-valid and wholly invented; row numbers agree. */
export function madeUpAnswers(n: number): { claims: Cells[]; dating: WireDating } {
  const random = chance(n);
  const cells: Cells[] = [];
  const printings: Printing[] = [];
  for (let at = 0; at < n; at++) {
    const day = dayOfPrinting(at, n, random);
    const claims = stated(day, at, random);
    printings.push(dated(at, day, claims, cells.length + 2));
    for (const { source, property, value } of claims) {
      const printing = `printing-${at + 1}`;
      cells.push({ printing, source, property, value, locator: 'p. 24', quote: `“${value}”` });
    }
  }
  const order = [...printings].sort((a, b) => ((a.best ?? '') < (b.best ?? '') ? -1 : 1));
  return { claims: cells, dating: { ...rest(order.map(({ id }) => id)), printings } };
}

function rest(order: readonly string[]): Omit<WireDating, 'printings'> {
  return {
    order: [...order],
    first: [{ id: order[0] ?? '', p: 0.99 }],
    sequences: order.slice(1).map((later, at) => ({
      earlier: order[at] ?? '',
      later,
      p: 0.97,
      p_same_day: 0.01,
      stated: at === 0,
    })),
    sources: ['publisher', 'shop', 'checklist', 'label', 'cover', 'diary'].map((id, at) => ({
      id,
      accuracy: at < 3 ? 0.95 - at * 0.2 : null,
      accuracy95: at < 3 ? [0.8 - at * 0.2, 0.99 - at * 0.1] : null,
      claims: 9 - at,
      derives: id === 'label' ? [{ from: 'checklist', p: 0.83 }] : [],
      habits:
        id === 'checklist'
          ? [{ reading: 'few-days', words: 'a few days late', share: 0.31, share95: [0.12, 0.55] }]
          : [],
    })),
    weekdays: [
      { market: 'KR', channel: '', shares: [0.02, 0.03, 0.05, 0.1, 0.7, 0.06, 0.04], releases: 5 },
    ],
    leads: [
      {
        printing: 'printing-3',
        kind: 'newspaper',
        gain_bits: 2.31,
        words: 'A newspaper of the market that names the day',
      },
      {
        printing: 'printing-5',
        kind: 'store-listing',
        gain_bits: 0.31,
        words: 'The shop’s dated photograph',
      },
    ],
    monte_carlo_error: 0.004,
    seed: 1,
    effort: 'refined',
  };
}
