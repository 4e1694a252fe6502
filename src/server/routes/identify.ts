import type { Hono } from 'hono';
import { IdentifyRequestSchema } from '../../contract/index.ts';
import { bodyOf } from '../body.ts';
import type { Identifying } from '../desk/identifying.ts';

/** `POST /api/identify`, which writes nothing, and `GET /api/key`. */
export function addIdentify(app: Hono, identifying: Identifying): void {
  app.post('/api/identify', async (context) =>
    context.json(await identifying.identify(await bodyOf(context, IdentifyRequestSchema))),
  );
  app.get('/api/key', async (context) => context.json(await identifying.key()));
}
