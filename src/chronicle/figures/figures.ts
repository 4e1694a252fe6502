import type { Account, Count, ToldPrice, ToldPrinting } from '../account/types.ts';
import type { Figure } from './types.ts';

type Told = Omit<Account, 'figures'>;

/** Every computed figure of an account, those about all of it first, then printing by printing. */
export function figuresOf(account: Told): Figure[] {
  return [
    ...wholeFigures(account),
    ...account.printings.flatMap((printing) => [
      ...releaseFigures(account, printing),
      ...countFigures(account, printing),
      ...printing.prices.map((price) => priceFigure(account, printing.id, price)),
    ]),
    ...account.sources.flatMap((source): Figure[] => {
      if (source.accuracy === null) return [];
      const value = { is: 'share', share: source.accuracy, interval: source.accuracy95 } as const;
      return [{ ...about(account, `accuracy.${source.id}`), value, unit: null }];
    }),
  ];
}

/** The figure of that name; undefined where the account has none. */
export function figureNamed(account: Pick<Account, 'figures'>, name: string): Figure | undefined {
  return account.figures.find((figure) => figure.name === name);
}

/** The lasting name of the price of a printing, raw or at a grade. */
export function priceName(printing: string, { service, grade }: ToldPrice): string {
  return ['price', printing, ...(service === null ? [] : [service, grade ?? ''])].join('.');
}

function about({ asOf }: Told, name: string): Omit<Figure, 'value' | 'unit'> {
  return { name, asOf, claims: [], printing: null };
}

function wholeFigures(account: Told): Figure[] {
  const counts = [
    ['printings', account.printings.length],
    ['sources', account.sources.length],
    ['claims', account.sources.reduce((sum, { claims }) => sum + claims, 0)],
  ] as const;
  const figures = counts.map(([name, count]): Figure => {
    const value = { is: 'count', count, interval: null, how: 'counted' } as const;
    return { ...about(account, name), value, unit: name };
  });
  const [first] = account.printings;
  if (first === undefined || first.release.pFirst === 0) return figures;
  const value = { is: 'printing', id: first.id, p: first.release.pFirst } as const;
  const claims = first.release.claims.map(({ key }) => key);
  return [...figures, { ...about(account, 'first'), value, unit: null, claims }];
}

function releaseFigures(account: Told, { id, release }: ToldPrinting): Figure[] {
  const { best, edtf, pBest, interval95, pInterval, state, place, after } = release;
  const claims = release.claims.map(({ key }) => key);
  const rests = { asOf: account.asOf, claims, printing: id, unit: null };
  return [
    {
      ...rests,
      name: `release.${id}`,
      value: { is: 'release', best, edtf, p: pBest, interval: interval95, pInterval, state },
    },
    {
      ...rests,
      name: `place.${id}`,
      value: {
        is: 'place',
        place,
        of: account.printings.length,
        p: after === null ? 1 : Math.min(1, after.p + after.pSameDay),
      },
    },
  ];
}

function countFigures(account: Told, { id, counts, extant }: ToldPrinting): Figure[] {
  const rests = { claims: [], printing: id };
  const figures = counts.flatMap((count): Figure[] => [
    {
      ...rests,
      name: `population.${id}.${count.service}`,
      asOf: count.asOf,
      value: countedValue(count),
      unit: 'copies',
    },
    ...topFigure(id, count),
  ]);
  if (extant === null) return figures;
  const how = extant.bound === 'lower' ? 'at-least' : 'estimated';
  const value = { is: 'count', count: extant.estimate, interval: extant.interval95, how } as const;
  const name = `extant.${id}`;
  return [...figures, { ...rests, name, asOf: account.asOf, value, unit: 'copies' }];
}

function countedValue({ total, total95, lumpedWith }: Count): Figure['value'] {
  if (lumpedWith.length === 0) return { is: 'count', count: total, interval: null, how: 'counted' };
  return { is: 'count', count: total, interval: total95, how: 'estimated' };
}

function topFigure(id: string, { service, asOf, rate, rate95 }: Count): Figure[] {
  if (rate === null) return [];
  const value = { is: 'share', share: rate, interval: rate95 } as const;
  return [{ name: `top.${id}.${service}`, asOf, claims: [], printing: id, value, unit: null }];
}

function priceFigure({ asOf, currency }: Told, id: string, price: ToldPrice): Figure {
  const { median: amount, interval80 } = price;
  const value = { is: 'price', amount, interval80, currency: currency ?? '' } as const;
  return { name: priceName(id, price), asOf, claims: [], printing: id, value, unit: null };
}
