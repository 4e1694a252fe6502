import type { Hono } from 'hono';
import { NotesRequestSchema } from '../../contract/index.ts';
import { readNotes } from '../../evidence/index.ts';
import { bodyOf } from '../body.ts';
import type { Session } from '../session.ts';

/** `POST /api/notes`: reads notes line by line, and writes nothing. */
export function addNotes(app: Hono, session: Session): void {
  app.post('/api/notes', async (context) => {
    const { text, language, alone } = await bodyOf(context, NotesRequestSchema);
    const spoken = language === undefined ? {} : { language };
    if (alone) return context.json(readNotes(text, spoken));
    const { manifest, evidence } = (await session.shown()).dossier;
    const { printings, sources } = evidence;
    const known = manifest.language === '' ? {} : { language: manifest.language };
    return context.json(readNotes(text, { printings, sources, ...known, ...spoken }));
  });
}
