import { z } from 'zod';
import { FactSchema } from './facts.ts';
import { CellsSchema, ConflictSchema, FaultSchema } from './rows.ts';

/** A row of a table as it stands in its file; `row` and `cells` are what a change is made from. */
const row = { row: z.int(), cells: CellsSchema };

export const PrintingRowSchema = z.object({ id: z.string(), ...row });
export type PrintingRow = z.infer<typeof PrintingRowSchema>;

export const ProductRowSchema = z.object({ id: z.string(), ...row });
export type ProductRow = z.infer<typeof ProductRowSchema>;

export const ContentRowSchema = z.object({
  product: z.string(),
  printing: z.string(),
  ...row,
});
export type ContentRow = z.infer<typeof ContentRowSchema>;

export const SourceRowSchema = z.object({
  id: z.string(),
  kind: z.string(),
  /** Ids of the sources that it says it took things from. */
  cites: z.array(z.string()),
  ...row,
});
export type SourceRow = z.infer<typeof SourceRowSchema>;

export const ClaimRowSchema = z.object({
  /** The printing; several where it is not known which of them; none where a product is meant. */
  printings: z.array(z.string()),
  product: z.string().exactOptional(),
  source: z.string(),
  property: z.string(),
  value: z.string(),
  /** First and last day (ISO 8601) that the value can mean, null where open; for dates only. */
  span: z.tuple([z.string().nullable(), z.string().nullable()]).exactOptional(),
  ...row,
});
export type ClaimRow = z.infer<typeof ClaimRowSchema>;

export const OrderRowSchema = z.object({ earlier: z.string(), later: z.string(), ...row });
export type OrderRow = z.infer<typeof OrderRowSchema>;

/** A stated weekday habit. */
export const WeekdayRowSchema = z.object(row);
export type WeekdayRow = z.infer<typeof WeekdayRowSchema>;

/** A printing of which the collector holds copies; nothing else of the desk goes to the page. */
export const HeldRowSchema = z.object({
  printing: z.string(),
  /** Copies that are this printing. */
  copies: z.int(),
  /** Copies of one of several printings, this one among them, not known which. */
  perhaps: z.int(),
});
export type HeldRow = z.infer<typeof HeldRowSchema>;

/** A step that can be taken back or taken again, in the words that name it. */
export const StepSchema = z.object({ label: z.string(), at: z.string() }).nullable();
export type Step = z.infer<typeof StepSchema>;

/**
 * An acknowledged change that a file could not take any more, because its row was edited meanwhile
 * (after a crash): the collector is asked, and `POST /api/settle` carries the word.
 */
export const UnsettledSchema = z.object({
  id: z.int(),
  label: z.string(),
  conflicts: z.array(ConflictSchema),
});
export type WireUnsettled = z.infer<typeof UnsettledSchema>;

/** Answer of `GET /api/dossier`: all that the page shows of the open dossier but the dating. */
export const DossierSchema = z.object({
  /** Grows with each change of what is shown, also when another dossier is opened. */
  version: z.int(),
  folder: z.string(),
  /** The invented dossier that comes with the workbench. */
  demo: z.boolean(),
  /** False where the folder cannot be written: changes are refused. */
  writable: z.boolean(),
  /** Things the collector has to know, in sentences; empty where there is nothing to say. */
  notices: z.array(z.string()),
  title: z.string(),
  subject: z.string(),
  language: z.string(),
  /** Printings of their own: no id that was given up, none that only stands for its parts. */
  printings: z.array(PrintingRowSchema),
  /** The other ids of `printings.csv`: given up, or standing for their parts. Not free for new rows. */
  otherIds: z.array(z.string()),
  /** Copies on the desk, counted by printing; those without any are left out. */
  held: z.array(HeldRowSchema),
  products: z.array(ProductRowSchema),
  contents: z.array(ContentRowSchema),
  sources: z.array(SourceRowSchema),
  claims: z.array(ClaimRowSchema),
  orders: z.array(OrderRowSchema),
  weekdays: z.array(WeekdayRowSchema),
  faults: z.array(FaultSchema),
  /** Disputed facts that are no dates. */
  facts: z.array(FactSchema),
  undo: StepSchema,
  redo: StepSchema,
  unsettled: z.array(UnsettledSchema),
});
export type DossierAnswer = z.infer<typeof DossierSchema>;
