import type { Hono } from 'hono';
import { pricesOnWire, printingPricesOnWire } from '../counts/prices-on-wire.ts';
import type { Pricing } from '../counts/pricing.ts';

/** `GET /api/prices` and `/api/prices/of/PRINTING`, which write nothing. */
export function addPrices(app: Hono, pricing: Pricing): void {
  app.get('/api/prices', async (context) => context.json(pricesOnWire(await pricing.priced())));
  app.get('/api/prices/of/:printing', async (context) =>
    context.json(printingPricesOnWire(await pricing.priced(), context.req.param('printing'))),
  );
}
