import { z } from 'zod';
import { CellsSchema } from './rows.ts';

const probability = z.number().min(0).max(1);
const kind = z.enum(['printing', 'counterfeit', 'alteration']);

/** What was seen, as it would stand in `desk/observations.csv`. */
const seen = z.object({
  trait: z.string().trim().min(1).max(200),
  value: z.string().trim().min(1).max(1000),
  /** How it was looked at; empty: as the trait is looked at. */
  sees: z.string().max(40),
});

/** Body of `POST /api/identify`. */
export const IdentifyRequestSchema = z.object({
  /** A copy of the desk; what is kept of it counts too. */
  copy: z.string().max(200).exactOptional(),
  saw: z.array(seen).max(500),
  /** A seller's words. */
  listing: z.string().max(50_000).exactOptional(),
  /** Whether it lies in a slab, where no copy tells. */
  graded: z.boolean().exactOptional(),
});
export type IdentifyRequest = z.infer<typeof IdentifyRequestSchema>;

/** How a trait is looked at. */
const sight = z.enum([
  ...(['eye', 'loupe', 'scan', 'scales', 'calliper', 'lamp'] as const),
  ...(['ultraviolet', 'through-light', 'listing', 'label'] as const),
]);

const look = z.object({
  trait: z.string(),
  sees: sight,
  /** `x0 y0 x1 y1` in mm, `back` before it for the back; empty where it is not told. */
  region: z.string(),
  side: z.enum(['front', 'back']),
  caution: z.string(),
});

/** What is known of a copy, and where it comes from. */
export const CopyReadingSchema = z.object({
  trait: z.string(),
  value: z.string(),
  sees: z.string(),
  from: z.enum(['seen', 'measured', 'listing', 'label', 'told']),
  /** The row of `desk/observations.csv` where it stands there. */
  row: z.int().nullable(),
  cells: CellsSchema.nullable(),
});
export type CopyReading = z.infer<typeof CopyReadingSchema>;

/** Answer of `POST /api/identify`. */
export const IdentifyAnswerSchema = z.object({
  version: z.int(),
  /** The day that the numbers of copies hold for; empty where the dossier has none. */
  on: z.string(),
  /** Width and height of the card in mm; null where the dossier does not tell. */
  card: z.tuple([z.number(), z.number()]).nullable(),
  candidates: z.array(z.object({ id: z.string(), kind, p: probability })),
  unlisted: probability,
  entropyBits: z.number(),
  /** Candidates that no known trait tells apart. */
  alike: z.array(z.tuple([z.string(), z.string()])),
  next: z.array(look.extend({ gainBits: z.number(), gainPerEffort: z.number() })),
  unused: z.array(z.object({ trait: z.string(), value: z.string() })),
  readings: z.array(CopyReadingSchema),
  traits: z.array(
    look.extend({
      /** Its numbers' unit; null where it is told in words. */
      unit: z.string().nullable(),
      values: z.array(z.object({ value: z.string(), ids: z.array(z.string()) })),
    }),
  ),
  kinds: z.array(z.object({ id: z.string(), kind: z.string(), note: z.string() })),
});
export type IdentifyAnswer = z.infer<typeof IdentifyAnswerSchema>;

/** Answer of `GET /api/key`: the key to all printings of the dossier. */
export const KeyAnswerSchema = z.object({
  version: z.int(),
  on: z.string(),
  /** The very shape of `IdentificationKey` in the step. */
  key: z.object({
    couplets: z.array(
      z.object({
        number: z.number(),
        from: z.number().nullable(),
        trait: z.string(),
        sees: sight,
        region: z.string(),
        leads: z.array(
          z.object({
            says: z.string(),
            value: z.string(),
            share: probability,
            to: z.number().nullable(),
            ids: z.array(z.string()),
          }),
        ),
      }),
    ),
    expected_looks: z.number(),
    expected_effort: z.number(),
    left_out: probability,
    alike: z.array(z.array(z.string())),
    keep_at_home: z.array(z.string()),
  }),
  kinds: z.array(z.object({ id: z.string(), kind: z.string(), note: z.string() })),
});
export type KeyAnswer = z.infer<typeof KeyAnswerSchema>;
