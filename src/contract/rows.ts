import { z } from 'zod';

/** The cells of one row by the name of their column; an empty cell is the empty text. */
export const CellsSchema = z.record(z.string().max(200), z.string().max(100_000));
export type Cells = z.infer<typeof CellsSchema>;

/**
 * One change of a table: a whole row added, replaced or removed. `row` (the header being row 1) is
 * a hint where to look; `before` is the row as it was seen, and decides whether sides disagree.
 */
export const ChangeSchema = z
  .object({
    file: z.string().min(1).max(200),
    op: z.enum(['add', 'replace', 'remove']),
    row: z.int().min(1).exactOptional(),
    before: CellsSchema.exactOptional(),
    after: CellsSchema.exactOptional(),
    /** The row to the letter, as undo keeps it; a page need not send it. */
    raw: z.string().max(1_000_000).exactOptional(),
  })
  .refine(({ op, after }) => op === 'remove' || after !== undefined, {
    message: 'say in `after` what is to stand there',
  })
  .refine(({ op, before }) => op === 'add' || before !== undefined, {
    message: 'say in `before` what stands there',
  });
export type WireChange = z.infer<typeof ChangeSchema>;

/** A change that could not be made, because the row that it speaks of is not there, or not alone. */
export const ConflictSchema = z.object({
  change: ChangeSchema,
  /** `gone`: no row is as `before` says; `several`: more than one is, and the hint names none. */
  reason: z.enum(['gone', 'several']),
  /** What stands at the hint now: with this as its `before` the change can be sent again. */
  now: CellsSchema.exactOptional(),
  /** The same in a sentence. */
  message: z.string(),
});
export type WireConflict = z.infer<typeof ConflictSchema>;

/** Something in the files that cannot be used, and what was expected in its place. */
export const FaultSchema = z.object({
  file: z.string(),
  /** The header is row 1; null where the fault is the file's. */
  row: z.number().nullable(),
  column: z.string().nullable(),
  found: z.string(),
  expected: z.string(),
  message: z.string(),
});
export type WireFault = z.infer<typeof FaultSchema>;
