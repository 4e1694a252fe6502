import type { Hono } from 'hono';
import { type Changed, ChangesRequestSchema, SettleRequestSchema } from '../../contract/index.ts';
import type { Step } from '../../store/index.ts';
import { bodyOf } from '../body.ts';
import type { Made, Session } from '../session.ts';
import { conflictsOnWire } from '../wire.ts';

/** `POST /api/changes`, `/api/undo`, `/api/redo` and `/api/settle`. */
export function addChanges(app: Hono, session: Session): void {
  app.post('/api/changes', async (context) => {
    const { version, label, changes } = await bodyOf(context, ChangesRequestSchema);
    return context.json(await changed(session, await session.change(version, label, changes)));
  });
  for (const way of ['undo', 'redo'] as const) {
    app.post(`/api/${way}`, async (context) =>
      context.json(await changed(session, await session.move(way))),
    );
  }
  app.post('/api/settle', async (context) => {
    const { id, keep } = await bodyOf(context, SettleRequestSchema);
    return context.json(await changed(session, await session.settle(id, keep)));
  });
}

async function changed(session: Session, made: Made): Promise<Changed> {
  const steps = await session.opened.store?.steps();
  return {
    version: made.version,
    conflicts: conflictsOnWire(made.conflicts),
    undo: stepOnWire(steps?.undo),
    redo: stepOnWire(steps?.redo),
  };
}

/** A step of the history as the page gets it. */
export function stepOnWire(step: Step | undefined): Changed['undo'] {
  return step ? { label: step.label, at: step.at } : null;
}
