import { z } from 'zod';
import { LandedSchema } from './decide.ts';
import { IdentifyAnswerSchema } from './identify.ts';

const amount = z.string().regex(/^\d{1,12}(\.\d{1,6})?$/, 'an amount such as 12.50');
const probability = z.number().min(0).max(1);

/** Body of `POST /api/listing`: a copy that is offered, as its seller words it. */
export const ListingRequestSchema = z.object({
  words: z.string().max(50_000),
  price: amount,
  /** ISO 4217. */
  currency: z.string().regex(/^[A-Z]{3}$/, 'three letters such as EUR'),
  /** ISO 3166-1; empty where not known, which counts as abroad. */
  origin: z.string().regex(/^([A-Z]{2})?$/, 'two letters such as BR'),
  shippedBy: z.string().max(200),
  /** In the currency of the price; empty where not known. */
  shipping: z.union([amount, z.literal('')]),
  /** Empty where it is raw. */
  service: z.string().max(200),
  grade: z.string().max(200),
  on: z
    .string()
    .regex(/^\d{4}-\d\d-\d\d$/, 'a day such as 2026-06-30')
    .exactOptional(),
});
export type ListingRequest = z.infer<typeof ListingRequestSchema>;

/** Answer of `POST /api/listing`, in the desk's currency. */
export const ListingAnswerSchema = z.object({
  on: z.string(),
  currency: z.string(),
  identified: IdentifyAnswerSchema,
  landed: LandedSchema,
  /** What it may fetch, should it be one of the printings. */
  expected: z.number().nullable(),
  interval80: z.tuple([z.number(), z.number()]).nullable(),
  /** The price alone; 0 where no bid is low enough. */
  highestBid: z.number().nullable(),
  /** The same in the currency of the listing, at the rate of the day. */
  highestBidThere: z.number().nullable(),
  regretLimit: probability.nullable(),
  /** At the price that is asked. */
  pRegret: probability.nullable(),
  /** That it is a known counterfeit or alteration. */
  pFalse: probability,
  assumed: z.array(z.string()),
});
export type ListingAnswer = z.infer<typeof ListingAnswerSchema>;
