import { Hono } from 'hono';
import type { Bench } from './bench/bench.ts';
import type { Chronicle } from './chronicle/chronicle.ts';
import type { Counting } from './counts/counting.ts';
import type { Pricing } from './counts/pricing.ts';
import type { Deciding } from './desk/deciding.ts';
import type { Identifying } from './desk/identifying.ts';
import { ownHost, ownPage, strictHeaders } from './guard.ts';
import type { Home } from './home.ts';
import { answerPage, type Pages } from './pages.ts';
import { Refused, refuse } from './refusal.ts';
import { addBench } from './routes/bench.ts';
import { addChanges } from './routes/changes.ts';
import { addChronicle } from './routes/chronicle.ts';
import { addDating } from './routes/dating.ts';
import { addDecide } from './routes/decide.ts';
import { addDossier } from './routes/dossier.ts';
import { addDossiers } from './routes/dossiers.ts';
import { addEvents } from './routes/events.ts';
import { addIdentify } from './routes/identify.ts';
import { addNotes } from './routes/notes.ts';
import { addPopulation } from './routes/population.ts';
import { addPreview } from './routes/preview.ts';
import { addPrices } from './routes/prices.ts';
import type { Session } from './session.ts';

/** What the routes stand on. */
export interface Ground {
  readonly session: Session;
  readonly bench: Bench;
  readonly deciding: Deciding;
  readonly identifying: Identifying;
  readonly counting: Counting;
  readonly pricing: Pricing;
  readonly chronicle: Chronicle;
  readonly home: Home;
  readonly pages: Pages;
  readonly token: string;
  /** The port that it listens on, once it does. */
  port(): number;
}

/** All routes behind their guards: own host, own page, own token. */
export function appOf({
  session,
  bench,
  counting,
  pricing,
  deciding,
  identifying,
  chronicle,
  home,
  pages,
  token,
  port,
}: Ground): Hono {
  const app = new Hono();
  app.onError(refuse);
  app.use(strictHeaders());
  app.use(ownHost(port));
  app.use('/api/*', ownPage(port, token));
  app.use('/api/*', async (context, next) => {
    context.header('cache-control', 'no-store');
    await next();
  });
  addDossier(app, session, home);
  addDating(app, session);
  addChanges(app, session);
  addNotes(app, session);
  addDossiers(app, session, home);
  addEvents(app, session);
  addBench(app, bench);
  addDecide(app, deciding, identifying);
  addIdentify(app, identifying);
  addPopulation(app, counting);
  addPrices(app, pricing);
  addChronicle(app, chronicle);
  addPreview(app, chronicle.previewing);
  app.all('/api/*', (context) => {
    throw new Refused('not-found', `There is no ${context.req.method} ${context.req.path}.`);
  });
  app.on(['GET', 'HEAD'], '*', (context) => answerPage(context, pages, token));
  app.notFound(() => {
    throw new Refused('wrong-method', 'Pages are only read.');
  });
  return app;
}
