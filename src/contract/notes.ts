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
  /** From 1. */
  line: z.int(),
  /** Columns of `printings.csv` that the line itself tells. */
  printing: CellsSchema.nullable(),
  claims: z.array(
    z.object({
      property: z.string(),
      /** EDTF; a day that can be read two ways is the set of both. */
      value: z.string(),
      /** In the words of the note. */
      source: z.string().nullable(),
      p: z.number(),
    }),
  ),
  left_over: z.string(),
});

/** Answer of `POST /api/notes`. */
export const NotesAnswerSchema = z.object({ lines: z.array(NotesLineSchema) });
export type NotesAnswer = z.infer<typeof NotesAnswerSchema>;
