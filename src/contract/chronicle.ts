import { z } from 'zod';
import { CellsSchema } from './rows.ts';

const day = z.string().regex(/^\d{4}-\d\d-\d\d$/, 'a day such as 2026-06-30');
const folder = z.string().min(1).max(4096);
const language = z.enum(['en', 'pt', 'ja', 'ko']);

/** Things of one kind that the account lacks, and why that matters to a reader. */
const LackSchema = z.object({
  lack: z.string(),
  head: z.string(),
  why: z.string(),
  entries: z.array(
    z.object({
      /** Id of a printing, source, service or correction. */
      of: z.string(),
      found: z.string(),
      file: z.string(),
      row: z.int().nullable(),
      /** The empty cell that mends it; null where more than a cell is wanted. */
      column: z.string().nullable(),
      /** The row as it stands, where a cell of it mends it. */
      cells: CellsSchema.nullable(),
    }),
  ),
});
export type WireLack = z.infer<typeof LackSchema>;

/** Answer of `GET /api/chronicle`. */
export const ChronicleSchema = z.object({
  version: z.int(),
  /** The day by which figures are old or not. */
  today: day,
  /** In the order of the work; kinds of which nothing is missing are left out. */
  missing: z.array(LackSchema),
  /** Where site and film were written last, or would be. */
  places: z.object({ site: folder, film: folder }),
});
export type ChronicleAnswer = z.infer<typeof ChronicleSchema>;

/** Answer of `GET /api/chronicle/leaving`: what a publication holds that could harm, and what stays. */
export const LeavingSchema = z.object({
  version: z.int(),
  leaving: z.array(
    z.object({
      file: z.string(),
      row: z.int().nullable(),
      column: z.string().nullable(),
      what: z.string(),
      found: z.string(),
      leaves: z.boolean(),
      why: z.string(),
    }),
  ),
});
export type LeavingAnswer = z.infer<typeof LeavingSchema>;
export type WireLeaving = LeavingAnswer['leaving'][number];

const RevisionSchema = z.object({
  number: z.int(),
  day,
  claims: z.int(),
  figures: z.int(),
  sha512: z.string(),
  /** Since the one before; null for the first. */
  changed: z
    .object({
      claims: z.array(z.object({ what: z.string(), count: z.int() })),
      figures: z.array(z.object({ name: z.string(), moved: z.string(), because: z.string() })),
    })
    .nullable(),
});
export type WireRevision = z.infer<typeof RevisionSchema>;

/** Answer of `GET /api/chronicle/revisions`, newest first. */
export const RevisionsSchema = z.object({
  version: z.int(),
  revisions: z.array(RevisionSchema),
  /** Files of revisions that are broken. */
  faults: z.array(z.string()),
});
export type RevisionsAnswer = z.infer<typeof RevisionsSchema>;

/** Answer of `GET /api/chronicle/preview`: the pages stand under `root`. */
export const PreviewSchema = z.object({
  version: z.int(),
  root: z.string(),
  languages: z.array(language),
  /** Within the folder of a language; `printing` where it is the page of one. */
  pages: z.array(z.object({ path: z.string(), printing: z.string().nullable() })),
  /** What was left out, and why. */
  left: z.array(z.string()),
});
export type PreviewAnswer = z.infer<typeof PreviewSchema>;

/** Answer of `GET /api/chronicle/stills` and `/documents`: pictures under `root`. */
export const ProofSchema = z.object({
  version: z.int(),
  root: z.string(),
  files: z.array(z.string()),
  left: z.array(z.string()),
});
export type ProofAnswer = z.infer<typeof ProofSchema>;

/** Body of `POST /api/chronicle/publish`. */
export const PublishRequestSchema = z.object({
  out: folder,
  prices: z.boolean(),
  /** No revision is frozen. */
  proof: z.boolean(),
});
export type PublishRequest = z.infer<typeof PublishRequestSchema>;

/** Body of `POST /api/chronicle/film`. */
export const FilmRequestSchema = z.object({
  out: folder,
  prices: z.boolean(),
  /** By release, or the ids of printings in an order of one's own. */
  order: z.union([z.enum(['oldest', 'newest']), z.array(z.string().max(200)).min(1).max(5000)]),
  language,
  /** Words a minute. */
  rate: z.number().min(40).max(400),
  /** Name of the recording, as the edit names it; empty where there is none yet. */
  recording: z.string().max(400),
});
export type FilmRequest = z.infer<typeof FilmRequestSchema>;

/** Answer of `GET /api/chronicle/work`, `/publish`, `/film` and `/stop`: what is or was at work. */
export const WorkSchema = z.object({
  work: z
    .object({
      does: z.enum(['publish', 'film']),
      out: folder,
      state: z.enum(['running', 'done', 'stopped', 'failed']),
      /** What it is at. */
      step: z.string(),
      share: z.number().min(0).max(1),
      left: z.array(z.string()),
      /** What came of it, or why nothing did; empty while it runs. */
      said: z.string(),
    })
    .nullable(),
});
export type WorkAnswer = z.infer<typeof WorkSchema>;
export type Work = NonNullable<WorkAnswer['work']>;
