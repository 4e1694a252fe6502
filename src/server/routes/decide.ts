import type { Hono } from 'hono';
import { DecideRequestSchema } from '../../contract/index.ts';
import { bodyOf } from '../body.ts';
import type { Deciding } from '../desk/deciding.ts';

/** `POST /api/decide` and `/api/decide/plans`, which write nothing; `GET /api/decide/calendar`. */
export function addDecide(app: Hono, deciding: Deciding): void {
  app.post('/api/decide', async (context) =>
    context.json(await deciding.decide(await bodyOf(context, DecideRequestSchema))),
  );
  app.post('/api/decide/plans', async (context) =>
    context.json(await deciding.plans(await bodyOf(context, DecideRequestSchema))),
  );
  app.get('/api/decide/calendar', async (context) => {
    const calendar = await deciding.calendar(context.req.query('on'));
    return context.body(calendar, 200, { 'content-type': 'text/calendar; charset=utf-8' });
  });
}
