import { z } from 'zod';

/** A property of a printing that is no date, and how probable each value is that somebody claims. */
export const FactSchema = z.object({
  printing: z.string(),
  property: z.string(),
  values: z.array(
    z.object({
      value: z.string(),
      p: z.number(),
      /** Rows of `claims.csv` that state it, the header being row 1. */
      claims: z.array(z.int()),
    }),
  ),
});
export type WireFact = z.infer<typeof FactSchema>;
