import { z } from 'zod';
import { FactSchema } from './facts.ts';

const day = z.string();
const probability = z.number().min(0).max(1);

export const ReadingSchema = z.enum([
  'right',
  'next-day',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
  'other-moment',
  'row-shift',
  'filled-in',
  'cover-date',
  'sibling',
  'copied',
  'pen',
  'noise',
  'lead',
  'bound',
  'cover-year',
]);

export const ExplainedClaimSchema = z.object({
  row: z.int(),
  source: z.string(),
  property: z.string(),
  value: z.string(),
  p_right: probability,
  explanation: z.string(),
  reading: ReadingSchema,
  others: z.array(z.object({ reading: ReadingSchema, explanation: z.string(), p: probability })),
  p_reading: probability,
  slip: z.boolean(),
  span: z.tuple([day.nullable(), day.nullable()]),
});

export const DatedPrintingSchema = z.object({
  id: z.string(),
  best: day.nullable(),
  edtf: z.string(),
  p_best: probability,
  interval95: z.tuple([day, day]).nullable(),
  p_interval: probability,
  days: z.array(z.tuple([day, probability])),
  state: z.enum(['day', 'window', 'bounded', 'open']),
  modes: z.array(z.object({ from: day, to: day, p: probability })),
  together: z.array(z.string()),
  claims: z.array(ExplainedClaimSchema),
  why: z.string(),
});

export const SequenceSchema = z.object({
  earlier: z.string(),
  later: z.string(),
  p: probability,
  p_same_day: probability,
  stated: z.boolean(),
});

export const DatedSourceSchema = z.object({
  id: z.string(),
  accuracy: probability.nullable(),
  accuracy95: z.tuple([probability, probability]).nullable(),
  claims: z.number(),
  derives: z.array(z.object({ from: z.string(), p: probability })),
  habits: z.array(
    z.object({
      reading: ReadingSchema,
      words: z.string(),
      share: probability,
      share95: z.tuple([probability, probability]),
    }),
  ),
});

/** The answer of dating on the wire: the very shape of `Dating` in the step, held by a type test. */
export const DatingSchema = z.object({
  printings: z.array(DatedPrintingSchema),
  order: z.array(z.string()),
  first: z.array(z.object({ id: z.string(), p: probability })),
  sequences: z.array(SequenceSchema),
  sources: z.array(DatedSourceSchema),
  weekdays: z.array(
    z.object({
      market: z.string(),
      channel: z.string(),
      shares: z.array(probability),
      releases: z.number(),
    }),
  ),
  leads: z.array(
    z.object({ printing: z.string(), kind: z.string(), gain_bits: z.number(), words: z.string() }),
  ),
  monte_carlo_error: z.number(),
  seed: z.number(),
  effort: z.enum(['first', 'refined']),
});
export type WireDating = z.infer<typeof DatingSchema>;

/** Answer of `GET /api/dating`; `dating` is null where it is not ready after a minute: ask again. */
export const DatingAnswerSchema = z.object({
  version: z.int(),
  dating: DatingSchema.nullable(),
  /** Disputed facts that are no dates, weighed by what this dating says of the sources. */
  facts: z.array(FactSchema),
});
export type DatingAnswer = z.infer<typeof DatingAnswerSchema>;
