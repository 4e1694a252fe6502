import type { Context, Hono } from 'hono';
import type { Language } from '../../chronicle/index.ts';
import {
  type ChronicleAnswer,
  FilmRequestSchema,
  type LeavingAnswer,
  PublishRequestSchema,
  type WorkAnswer,
} from '../../contract/index.ts';
import { now } from '../../host/index.ts';
import { leavingIn } from '../../press/index.ts';
import { bodyOf } from '../body.ts';
import type { Chronicle } from '../chronicle/chronicle.ts';
import {
  filesOnWire,
  missingOnWire,
  previewOnWire,
  revisionsOnWire,
} from '../chronicle/on-wire.ts';
import { Refused } from '../refusal.ts';

/**
 * `GET /api/chronicle` and its `/leaving`, `/revisions`, `/preview`, `/documents`, `/stills` and `/work`, which
 * write nothing; `POST /api/chronicle/publish`, `/film` and `/stop`.
 */
export function addChronicle(app: Hono, chronicle: Chronicle): void {
  const { session, previewing, working } = chronicle;
  app.get('/api/chronicle', async (context) => {
    const { version, dossier } = await session.shown();
    const today = now().slice(0, 10);
    const missing = missingOnWire(dossier, today);
    const places = await chronicle.places();
    return context.json({ version, today, missing, places } satisfies ChronicleAnswer);
  });
  app.get('/api/chronicle/leaving', async (context) => {
    const { version, opened, dossier } = await session.shown();
    const leaving = await leavingIn(opened.folder, dossier, { prices: prices(context) });
    return context.json({ version, leaving: [...leaving] } satisfies LeavingAnswer);
  });
  app.get('/api/chronicle/revisions', async (context) =>
    context.json(await revisionsOnWire(await session.shown())),
  );
  app.get('/api/chronicle/preview', async (context) => {
    const proof = await previewing.proof(prices(context), { do: 'site' });
    return context.json(previewOnWire(proof, (await session.shown()).dossier));
  });
  app.get('/api/chronicle/documents', async (context) => {
    const language = languageOf(context);
    const proof = await previewing.proof(prices(context), { do: 'documents', language });
    return context.json(filesOnWire(proof));
  });
  app.get('/api/chronicle/stills', async (context) => {
    const printing = context.req.query('printing') ?? '';
    const { evidence } = (await session.shown()).dossier;
    if (!evidence.printings.some(({ id }) => id === printing))
      throw new Refused('not-found', `${printing} is no printing of this dossier.`);
    const language = languageOf(context);
    const proof = await previewing.proof(prices(context), { do: 'stills', printing, language });
    return context.json(filesOnWire(proof));
  });
  const work = (context: Context) => context.json({ work: working.work } satisfies WorkAnswer);
  app.get('/api/chronicle/work', work);
  app.post('/api/chronicle/publish', async (context) => {
    await chronicle.publish(await bodyOf(context, PublishRequestSchema));
    return work(context);
  });
  app.post('/api/chronicle/film', async (context) => {
    await chronicle.film(await bodyOf(context, FilmRequestSchema));
    return work(context);
  });
  app.post('/api/chronicle/stop', (context) => {
    working.stop();
    return work(context);
  });
}

function prices(context: Context): boolean {
  return context.req.query('prices') === 'true';
}

function languageOf(context: Context): Language {
  const language = FilmRequestSchema.shape.language.safeParse(context.req.query('language'));
  if (language.success) return language.data;
  throw new Refused('bad-request', 'Ask for language=en, pt, ja or ko.');
}
