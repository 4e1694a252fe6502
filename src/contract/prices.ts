import { z } from 'zod';

const interval = z.tuple([z.number(), z.number()]);
const cell = { service: z.string().nullable(), grade: z.string().nullable() };

/** The next sale of one printing at one grade, or raw, in the desk's currency. */
export const PriceSchema = z.object({
  ...cell,
  price: z.number(),
  interval80: interval,
  /** Of that very grade. */
  sales: z.number(),
});
export type WirePrice = z.infer<typeof PriceSchema>;

/** Answer of `GET /api/prices`: of each printing raw, every grade that was sold and the top ones. */
export const PricesSchema = z.object({
  version: z.int(),
  /** The day that prices hold for; null where no table has one. */
  on: z.string().nullable(),
  currency: z.string(),
  services: z.array(z.object({ id: z.string(), title: z.string() })),
  printings: z.array(
    z.object({
      id: z.string(),
      prices: z.array(PriceSchema),
      /** Sales that its prices are learned from, its own among them. */
      sales: z.number(),
    }),
  ),
  /** The newest sales foretold from the ones before. */
  backTest: z
    .object({
      sales: z.number(),
      inside: z.number(),
      error: z.number().nullable(),
      days: z.number(),
    })
    .nullable(),
  /** How many rows of `sales.csv` were left out, by why. */
  leftOut: z.array(z.object({ why: z.string(), rows: z.array(z.number()) })),
  assumed: z.array(z.string()),
});
export type PricesAnswer = z.infer<typeof PricesSchema>;

/** One row of `sales.csv` as a mark. */
export const SaleMarkSchema = z.object({
  row: z.number(),
  /** A day number; null where it is not known. */
  day: z.number().nullable(),
  ...cell,
  kind: z.enum(['sold', 'asking', 'unpaid']),
  /** As it is written. */
  price: z.string().nullable(),
  currency: z.string().nullable(),
  venue: z.string(),
  /** In the desk's currency at the rate of its day. */
  home: z.number().nullable(),
  /** The day of the rate, ISO 8601; null where none was needed. */
  rateOf: z.string().nullable(),
  /** The probability that it is no usual sale; null where no price is learned from it. */
  odd: z.number().nullable(),
  leftOut: z.string().nullable(),
  /** It may be of other printings too. */
  perhaps: z.boolean(),
});
export type SaleMark = z.infer<typeof SaleMarkSchema>;

/** Answer of `GET /api/prices/of/PRINTING`. */
export const PrintingPricesSchema = z.object({
  version: z.int(),
  on: z.string(),
  /** The same as a day number. */
  day: z.number(),
  currency: z.string(),
  /** Raw first, then every grade of every service. */
  prices: z.array(PriceSchema),
  sales: z.array(SaleMarkSchema),
  /** What the market stood above the day, going back in time, as natural logarithms. */
  course: z.array(z.object({ daysBack: z.number(), log: z.number(), sd: z.number() })),
});
export type PrintingPrices = z.infer<typeof PrintingPricesSchema>;
