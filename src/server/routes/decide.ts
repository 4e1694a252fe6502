import type { Hono } from 'hono';
import { DecideRequestSchema, ListingRequestSchema } from '../../contract/index.ts';
import { bodyOf } from '../body.ts';
import type { Deciding } from '../desk/deciding.ts';
import type { Identifying } from '../desk/identifying.ts';
import { weighed } from '../desk/listing.ts';

/** `POST /api/decide`, its plans and `/api/listing`, which write nothing; `GET /api/decide/calendar`. */
export function addDecide(app: Hono, deciding: Deciding, identifying: Identifying): void {
  app.post('/api/decide', async (context) =>
    context.json(await deciding.decide(await bodyOf(context, DecideRequestSchema))),
  );
  app.post('/api/decide/plans', async (context) =>
    context.json(await deciding.plans(await bodyOf(context, DecideRequestSchema))),
  );
  app.post('/api/listing', async (context) => {
    const listing = await bodyOf(context, ListingRequestSchema);
    return context.json(await weighed(listing, deciding, identifying));
  });
  app.get('/api/decide/calendar', async (context) => {
    const calendar = await deciding.calendar(context.req.query('on'));
    return context.body(calendar, 200, { 'content-type': 'text/calendar; charset=utf-8' });
  });
}
