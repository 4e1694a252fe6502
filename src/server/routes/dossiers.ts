import type { Hono } from 'hono';
import {
  BeginRequestSchema,
  type DossiersAnswer,
  type Opened,
  OpenRequestSchema,
} from '../../contract/index.ts';
import { bodyOf } from '../body.ts';
import { isTable } from '../doors.ts';
import type { Home } from '../home.ts';
import { Refused } from '../refusal.ts';
import type { Session } from '../session.ts';

/** `GET /api/dossiers`, `POST /api/open` and `/api/begin`. */
export function addDossiers(app: Hono, session: Session, home: Home): void {
  const opened = async (folder: string): Promise<Opened> => {
    await session.open(folder);
    const { version, dossier } = await session.shown();
    await home.note(session.opened.folder, dossier.manifest.title);
    return { version, folder: session.opened.folder };
  };
  app.get('/api/dossiers', async (context) => {
    const current = session.opened.folder;
    const dossiers = (await home.recent()).map((entry) => ({
      ...entry,
      demo: home.isDemo(entry.folder),
      current: entry.folder === current,
    }));
    return context.json({ dossiers, dataFolder: home.folder } satisfies DossiersAnswer);
  });
  app.post('/api/open', async (context) => {
    const { folder } = await bodyOf(context, OpenRequestSchema);
    return context.json(await opened(folder));
  });
  app.post('/api/begin', async (context) => {
    const request = await bodyOf(context, BeginRequestSchema);
    for (const { op, file } of request.changes) {
      if (op === 'add' && isTable(file)) continue;
      throw new Refused(
        'bad-request',
        `A new dossier begins with added rows: not ${op} in ${file}.`,
      );
    }
    return context.json(await opened(await home.begin(request)));
  });
}
