import type { Hono } from 'hono';
import { etag } from 'hono/etag';
import type { DossierAnswer } from '../../contract/index.ts';
import { type Evidence, weighFacts } from '../../evidence/index.ts';
import type { Dated } from '../dating-run.ts';
import { heldOnWire } from '../held.ts';
import type { Home } from '../home.ts';
import type { Session } from '../session.ts';
import { conflictsOnWire, rowsOnWire } from '../wire.ts';
import { stepOnWire } from './changes.ts';

/** `GET /api/dossier`: all that the page shows of the open dossier but its dating. */
export function addDossier(app: Hono, session: Session, home: Home): void {
  app.get('/api/dossier', etag(), async (context) => {
    context.header('cache-control', 'private, no-cache');
    await session.look();
    const { version, opened, dossier } = await session.shown();
    const steps = await opened.store?.steps();
    const unsettled = (await opened.store?.unsettled()) ?? [];
    const { manifest, evidence, faults } = dossier;
    const answer: DossierAnswer = {
      version,
      folder: opened.folder,
      demo: home.isDemo(opened.folder),
      writable: opened.store !== undefined,
      notices: [...home.notices, ...session.notices],
      title: manifest.title,
      subject: manifest.subject,
      language: manifest.language,
      ...rowsOnWire(dossier),
      held: heldOnWire(dossier),
      faults: faults.map((fault) => ({ ...fault })),
      facts: factsOf(evidence, session.dated),
      undo: stepOnWire(steps?.undo),
      redo: stepOnWire(steps?.redo),
      unsettled: unsettled.map(({ id, label, conflicts }) => ({
        id,
        label,
        conflicts: conflictsOnWire(conflicts),
      })),
    };
    return context.json(answer);
  });
}

/** Disputed facts, weighed by what the newest dating says of the sources. */
export function factsOf(evidence: Evidence, dated: Dated | undefined): DossierAnswer['facts'] {
  const dating = dated?.refined ?? dated?.first;
  return structuredClone(weighFacts(evidence, dating?.sources)) as DossierAnswer['facts'];
}
