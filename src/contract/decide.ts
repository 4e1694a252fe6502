import { z } from 'zod';
import { CellsSchema } from './rows.ts';

const amount = z.string().regex(/^\d{1,12}(\.\d{1,6})?$/, 'an amount such as 12.50');
const probability = z.number().min(0).max(1);
const id = z.string().max(200);
const cell = { service: z.string().nullable(), grade: z.string().nullable() };
const interval = z.tuple([z.number(), z.number()]);

/** What is supposed in the place of what the desk says; nothing of it is written. */
export const SupposedSchema = z.object({
  /** In the currency of the tier. */
  fees: z.array(z.object({ service: id, tier: id, fee: amount })).max(200),
  /** The other grades keep their shares among themselves. */
  grades: z.array(z.object({ copy: id, service: id, grade: id, p: probability })).max(2000),
  /** Units for one euro, from the day of the answer on. */
  rates: z
    .array(z.object({ currency: id, perEur: amount.refine((text) => Number(text) > 0, 'above 0') }))
    .max(200),
  /** What a copy is expected to fetch, in the desk's currency; all copies of its printings follow. */
  prices: z.array(z.object({ copy: id, ...cell, price: z.number().positive() })).max(2000),
  /** What is asked for a copy, in the currency in which it is offered. */
  asked: z.array(z.object({ copy: id, price: amount })).max(500),
  /** In the place of every entry's; null as entered. */
  taxRate: probability.nullable(),
});
export type WireSupposed = z.infer<typeof SupposedSchema>;

const day = z.string().regex(/^\d{4}-\d\d-\d\d$/, 'a day such as 2026-06-30');

/** Body of `POST /api/decide` and `/api/decide/plans`. */
export const DecideRequestSchema = z.object({
  /** The day that the answer holds for; else the newest of sales, sightings, populations and rates. */
  on: day.exactOptional(),
  /** For batches and purchases, each; null without a limit. */
  budget: z.number().min(0).nullable(),
  supposed: SupposedSchema,
});
export type DecideRequest = z.infer<typeof DecideRequestSchema>;

const outcome = z.object({ grade: z.string(), p: probability, price: z.number() });

const optionSchema = z.object({
  service: z.string(),
  tier: z.string(),
  expectedGain: z.number(),
  outcomes: z.array(outcome),
  spread: z.number(),
  pLoss: probability,
  upcharge: z.number(),
  /** That it comes back without a grade, and what is lost then; not in the gain. */
  ungraded: z.object({ p: probability, cost: z.number() }).nullable(),
  postageShare: z.number(),
  days: z.number().nullable(),
  by: z.enum(['examination', 'population']),
});

const deadline = z.object({
  against: z.string(),
  startsFrom: z.string(),
  startsOn: z.string(),
  days: z.number(),
  counts: z.enum(['calendar', 'working']),
  last: day,
  left: z.number(),
});

/** What a copy costs landed, in the desk's currency, or why that cannot be told. */
export const LandedSchema = z.union([
  z.object({
    total: z.string(),
    lines: z.array(
      z.object({ name: z.string(), share: z.string(), parcel: z.string(), how: z.string() }),
    ),
    assumed: z.array(z.string()),
  }),
  z.object({ why: z.string() }),
]);
export type WireLanded = z.infer<typeof LandedSchema>;

/** One copy with what may be done with it. */
export const AdvisedSchema = z.object({
  id: z.string(),
  status: z.string(),
  printings: z.array(z.object({ id: z.string(), p: probability })),
  ...cell,
  /** The price as entered. */
  asked: z.object({ price: z.string(), currency: z.string() }).nullable(),
  landed: LandedSchema,
  keep: z.number().nullable(),
  equalRefund: z.number().nullable(),
  advice: z.enum(['keep', 'return', 'complain', 'submit']).nullable(),
  highestBid: z.number().nullable(),
  /** Its row as a sentence says it. */
  hingesOn: z.string(),
  because: z.string(),
  submit: z.object({ service: z.string(), tier: z.string(), expectedGain: z.number() }).nullable(),
  ways: z.array(
    z.object({
      way: z.enum(['keep', 'return', 'complain', 'sell', 'submit']),
      service: z.string().nullable(),
      tier: z.string().nullable(),
      worth: z.number(),
      interval80: interval,
    }),
  ),
  options: z.array(optionSchema),
  deadlines: z.array(deadline),
  unclear: z.array(z.object({ against: z.string(), why: z.string() })),
});
export type Advised = z.infer<typeof AdvisedSchema>;

/** Something wanted, and where it stands. */
export const WantedSchema = z.object({
  row: z.int(),
  cells: CellsSchema,
  printing: z.string(),
  ...cell,
  /** The most that it may cost landed, in the desk's currency. */
  most: z.number().nullable(),
  price: z.object({ price: z.number(), interval80: interval, sales: z.number() }).nullable(),
  /** The chance that the next sale is at or under the most; null where either is not known. */
  pUnder: probability.nullable(),
});
export type Wanted = z.infer<typeof WantedSchema>;

/** Answer of `POST /api/decide`. */
export const DecideAnswerSchema = z.object({
  version: z.int(),
  /** Null where the dossier has no day that an answer could hold for: ask with one. */
  on: day.nullable(),
  currency: z.string(),
  regretLimit: probability.nullable(),
  copies: z.array(AdvisedSchema),
  wants: z.array(WantedSchema),
  /** What can be supposed: fees in their own currency, rates, and the tax of the entries. */
  tiers: z.array(
    z.object({
      service: z.string(),
      tier: z.string(),
      fee: z.string(),
      currency: z.string(),
      minCopies: z.number(),
      days: z.number().nullable(),
    }),
  ),
  rates: z.array(z.object({ currency: z.string(), perEur: z.string(), of: day.nullable() })),
  taxRates: z.array(z.number()),
  assumed: z.array(z.string()),
});
export type DecideAnswer = z.infer<typeof DecideAnswerSchema>;

/** Answer of `POST /api/decide/plans`: what to send in together and what to buy. */
export const PlansSchema = z.object({
  version: z.int(),
  batches: z.array(
    z.object({ service: z.string(), tier: z.string(), copies: z.array(z.string()) }),
  ),
  /** `atMost`: no choice gains more. */
  batchesPlan: z.object({ gain: z.number(), cost: z.number(), atMost: z.number() }),
  /** For each want, in order, the copy that is bought for it. */
  bought: z.array(z.string().nullable()),
  purchasesPlan: z.object({ saved: z.number(), cost: z.number(), atMost: z.number() }),
});
export type Plans = z.infer<typeof PlansSchema>;
