import { z } from 'zod';
import { CellsSchema } from './rows.ts';

const probability = z.number().min(0).max(1);
const interval = z.tuple([z.number(), z.number()]);
/** As the report or the table has it: a day, or a vaguer date. */
const date = z.string();

/** What one service has counted of one printing, and its totals at each of the service's reports. */
const ServiceCountSchema = z.object({
  service: z.string(),
  as_of: date,
  labels: z.array(z.string()),
  total: z.number(),
  total95: interval,
  top: z.number(),
  rate: probability.nullable(),
  interval95: interval,
  wilson95: interval,
  shrunk: probability,
  shrunk95: interval,
  off_scale: z.record(z.string(), z.number()),
  lumped_with: z.array(z.string()),
  p_listed: probability,
  /** Graded copies at each report of the service, oldest first; null where its labels are not in it. */
  course: z.array(z.number().nullable()),
});
export type WireServiceCount = z.infer<typeof ServiceCountSchema>;

const ExtantSchema = z.object({
  estimate: z.number(),
  interval95: interval,
  method: z.string(),
  of: z.string(),
  bound: z.enum(['lower', 'none']),
  seen: z.number(),
  again: z.number(),
  from: z.string(),
  to: z.string(),
  p_even: probability,
  covered: probability,
  others: z.array(
    z.object({ method: z.string(), estimate: z.number(), interval95: interval.nullable() }),
  ),
  cautions: z.array(z.string()),
});
export type WireExtant = z.infer<typeof ExtantSchema>;

/** One printing with all that is known of how many there are. */
export const PrintingCountSchema = z.object({
  id: z.string(),
  services: z.array(ServiceCountSchema),
  extant: ExtantSchema.nullable(),
  graded_at_most: z.number(),
  seen_by: z.object({ day: z.string(), service: z.string(), certificate: z.string() }).nullable(),
  low: z
    .object({
      p_few_exist: probability,
      raw: z.number(),
      graded: z.number(),
      settle: z.string().nullable(),
    })
    .nullable(),
});
export type WirePrintingCount = z.infer<typeof PrintingCountSchema>;

const FallSchema = z.object({
  service: z.string(),
  label: z.string(),
  grade: z.string().nullable(),
  from: date,
  to: date,
  before: z.number(),
  after: z.number(),
  explanation: z.string(),
});
export type WireFall = z.infer<typeof FallSchema>;

/** A grading service with the days of its reports. */
const CountingServiceSchema = z.object({
  id: z.string(),
  title: z.string(),
  /** Worst to best. */
  grades: z.array(z.string()),
  /** Index of the lowest grade that counts as a top grade. */
  top: z.number(),
  offScale: z.array(z.string()),
  /** The dossier states no grades: they were read off its report. */
  assumed: z.boolean(),
  reports: z.array(z.object({ as_of: date, day: z.number() })),
});
export type CountingService = z.infer<typeof CountingServiceSchema>;

/** Answer of `GET /api/population`. */
export const PopulationSchema = z.object({
  version: z.int(),
  /** The day that it holds for; null where no table has one. */
  on: z.string().nullable(),
  services: z.array(CountingServiceSchema),
  printings: z.array(PrintingCountSchema),
  falls: z.array(FallSchema),
  /** Labels whose printing is in doubt and on which nothing was said yet. */
  in_doubt: z.number(),
});
export type PopulationAnswer = z.infer<typeof PopulationSchema>;

/** Answer of `GET /api/population/of/PRINTING`: its counts by grade, report by report. */
export const HistoriesSchema = z.object({
  version: z.int(),
  histories: z.array(
    z.object({
      service: z.string(),
      /** The printing's share of the copies under its labels; 1 unless they hold several printings. */
      share: z.number(),
      share95: interval,
      snapshots: z.array(z.object({ as_of: date, day: z.number(), counts: z.array(z.number()) })),
    }),
  ),
});
export type HistoriesAnswer = z.infer<typeof HistoriesSchema>;
export type WireHistory = HistoriesAnswer['histories'][number];

const MatchSchema = z.object({
  service: z.string(),
  label: z.string(),
  printing: z.string().nullable(),
  p: probability,
  agrees: z.array(z.string()),
  near: z.array(z.string()),
  differs: z.array(z.string()),
});
export type WireMatch = z.infer<typeof MatchSchema>;

const LabelledSchema = z.object({
  service: z.string(),
  as_of: date,
  label: z.string(),
  total: z.number(),
  /** Empty where nothing was said; null where it is none of the dossier's printings. */
  confirmed: z.array(z.string()).nullable(),
  matches: z.array(MatchSchema),
  in_doubt: z.boolean(),
});
export type WireLabelled = z.infer<typeof LabelledSchema>;

/** Answer of `GET /api/population/labels`. */
export const LabelsSchema = z.object({
  version: z.int(),
  on: z.string().nullable(),
  labels: z.array(LabelledSchema),
});
export type LabelsAnswer = z.infer<typeof LabelsSchema>;

/** Answer of `GET /api/population/rows`: the rows that a word on a label is written in. */
export const LabelRowsSchema = z.object({
  version: z.int(),
  rows: z.array(z.object({ row: z.int(), cells: CellsSchema })),
});
export type LabelRows = z.infer<typeof LabelRowsSchema>;

/** Answer of `GET /api/population/letter`; null where there is nothing to mend. */
export const LetterSchema = z.object({ version: z.int(), letter: z.string().nullable() });
export type LetterAnswer = z.infer<typeof LetterSchema>;

/** Body of `POST /api/population/report`, which reads a pasted report and writes nothing. */
export const ReportRequestSchema = z.object({
  service: z.string().max(200),
  as_of: z.string().max(40),
  text: z.string().max(8_000_000),
});
export type ReportRequest = z.infer<typeof ReportRequestSchema>;

/** What a pasted report was understood to say. */
export const ReportReadSchema = z.object({
  form: z.string(),
  understood: z.array(z.string()),
  labels: z.array(z.string()),
  counts: z.array(z.object({ label: z.string(), grade: z.string(), count: z.number() })),
  faults: z.array(
    z.object({
      line: z.number().nullable(),
      found: z.string(),
      expected: z.string(),
      fate: z.string(),
    }),
  ),
  /** The dossier has a report of the service on that day already. */
  there: z.boolean(),
});
export type ReportRead = z.infer<typeof ReportReadSchema>;
