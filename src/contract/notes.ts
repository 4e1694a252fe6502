import { z } from 'zod';
import { CellsSchema } from './rows.ts';

/** Body of `POST /api/notes`. */
export const NotesRequestSchema = z.object({
  text: z.string().max(2_000_000),
  /** BCP 47 tag of the notes, where the collector says it. */
  language: z.string().max(40).exactOptional(),
  /** Read the notes by themselves, without the printings and sources of the open dossier. */
  alone: z.boolean().exactOptional(),
});
export type NotesRequest = z.infer<typeof NotesRequestSchema>;

export const NotesLineSchema = z.object({
  line: z.number(),
  printing: CellsSchema.nullable(),
  claims: z.array(
    z.object({
      property: z.string(),
      value: z.string(),
      source: z.string().nullable(),
      p: z.number(),
      words: z.string(),
      two_way: z.boolean(),
    }),
  ),
  left_over: z.string(),
  kind: z.enum(['blank', 'heading', 'header', 'item', 'row', 'rule']),
  context: z.object({
    printing: CellsSchema.nullable(),
    source: z.string().nullable(),
    year: z.number().nullable(),
  }),
});

/** Answer of `POST /api/notes`: the shape of `NotesReading` in the evidence step. */
export const NotesAnswerSchema = z.object({ lines: z.array(NotesLineSchema) });
export type NotesAnswer = z.infer<typeof NotesAnswerSchema>;
