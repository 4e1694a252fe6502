import { z } from 'zod';

/** A property of a printing that is no date, weighed: the shape of `Fact` in the evidence step. */
export const FactSchema = z.object({
  printing: z.string(),
  property: z.string(),
  values: z.array(
    z.object({ value: z.string(), p: z.number(), claims: z.array(z.number()), own: z.boolean() }),
  ),
  p_other: z.number(),
  disputed: z.boolean(),
  claims: z.array(
    z.object({
      row: z.number(),
      source: z.string(),
      value: z.string(),
      p_right: z.number(),
      slip: z.boolean(),
    }),
  ),
  why: z.string(),
});
export type WireFact = z.infer<typeof FactSchema>;
