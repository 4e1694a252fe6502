import { z } from 'zod';
import { StepSchema } from './dossier.ts';
import { ChangeSchema, ConflictSchema } from './rows.ts';

/** Header in which the page sends the token of this start, read from `<meta name="printlore-token">`. */
export const TOKEN_HEADER = 'x-printlore-token';

const changes = z.array(ChangeSchema).max(20_000);

/** Body of `POST /api/changes`; `version` is what the page showed when the change was made. */
export const ChangesRequestSchema = z.object({
  version: z.int(),
  /** Names the step for undo: "Withdraw a claim of the checklist". */
  label: z.string().min(1).max(300),
  changes: changes.min(1),
});
export type ChangesRequest = z.infer<typeof ChangesRequestSchema>;

/**
 * Answer of `POST /api/changes`, `/api/undo` and `/api/redo`. All changes of a request are made or
 * none: with conflicts nothing was written and the collector is asked.
 */
export const ChangedSchema = z.object({
  version: z.int(),
  conflicts: z.array(ConflictSchema),
  undo: StepSchema,
  redo: StepSchema,
});
export type Changed = z.infer<typeof ChangedSchema>;

/** Body of `POST /api/settle`: make the change over the row as it is now, or give it up. */
export const SettleRequestSchema = z.object({ id: z.int(), keep: z.enum(['mine', 'theirs']) });
export type SettleRequest = z.infer<typeof SettleRequestSchema>;

/** Body of `POST /api/begin`: a new dossier in the data folder, which is then open. */
export const BeginRequestSchema = z.object({
  title: z.string().trim().min(1).max(200),
  subject: z.string().max(200).exactOptional(),
  language: z.string().max(40),
  changes,
});
export type BeginRequest = z.infer<typeof BeginRequestSchema>;

/** Body of `POST /api/open`: a folder that holds `printings.csv`, by its full path. */
export const OpenRequestSchema = z.object({ folder: z.string().min(1).max(4096) });
export type OpenRequest = z.infer<typeof OpenRequestSchema>;

/** Answer of `POST /api/open` and `/api/begin`. */
export const OpenedSchema = z.object({ version: z.int(), folder: z.string() });
export type Opened = z.infer<typeof OpenedSchema>;

/** Answer of `GET /api/dossiers`: opened lately, the newest first. */
export const DossiersSchema = z.object({
  dossiers: z.array(
    z.object({
      folder: z.string(),
      title: z.string(),
      demo: z.boolean(),
      /** RFC 3339. */
      opened: z.string(),
      /** It is the one that is open now. */
      current: z.boolean(),
    }),
  ),
  /** Where new dossiers are put. */
  dataFolder: z.string(),
});
export type DossiersAnswer = z.infer<typeof DossiersSchema>;

/** One message of `GET /api/events` (`text/event-stream`, the JSON in its `data` lines). */
export const EventSchema = z.object({
  version: z.int(),
  /** What is ready for this version. */
  dating: z.enum(['none', 'first', 'refined']),
  /** The files were edited by another program, and read anew. */
  outside: z.boolean(),
  /** Dating gave up, and why. */
  trouble: z.string().exactOptional(),
});
export type WireEvent = z.infer<typeof EventSchema>;

/** What every route answers when it cannot do what it was asked, with a status of 400 or more. */
export const RefusalSchema = z.object({
  error: z.object({
    /** For programs: `bad-request`, `forbidden`, `not-found`, `too-large`, `read-only` … */
    code: z.string(),
    /** For the collector: what is wrong, and what to do. */
    message: z.string(),
    /** Fields of the body that are wrong. */
    problems: z.array(z.string()).exactOptional(),
  }),
});
export type Refusal = z.infer<typeof RefusalSchema>;
