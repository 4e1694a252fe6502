import type { Context, Hono } from 'hono';
import { type ReportRead, ReportRequestSchema } from '../../contract/index.ts';
import { printingCalled } from '../../evidence/index.ts';
import { letterTo, readReport, type Service } from '../../population/index.ts';
import { bodyOf } from '../body.ts';
import type { Counted } from '../counts/counted.ts';
import type { Counting } from '../counts/counting.ts';
import {
  historiesOnWire,
  labelRowsOnWire,
  labelsOnWire,
  populationOnWire,
} from '../counts/on-wire.ts';
import { Refused } from '../refusal.ts';

/**
 * `GET /api/population`, its `/of/PRINTING`, `/labels`, `/rows` and `/letter`, and `POST
 * /api/population/report`. None of them writes.
 */
export function addPopulation(app: Hono, counting: Counting): void {
  app.get('/api/population', async (context) =>
    context.json(populationOnWire(await counting.counted())),
  );
  app.get('/api/population/labels', async (context) =>
    context.json(labelsOnWire(await counting.counted())),
  );
  app.get('/api/population/of/:printing', async (context) => {
    const counted = await counting.counted();
    const id = context.req.param('printing');
    const count = counted.answer.printings.find((one) => one.id === id);
    if (!count) throw new Refused('not-found', `${id} is no printing of this dossier.`);
    return context.json(historiesOnWire(counted, count));
  });
  app.get('/api/population/rows', async (context) => {
    const counted = await counting.counted();
    const { id } = serviceIn(counted, asked(context, 'service'));
    return context.json(labelRowsOnWire(counted, id, asked(context, 'label')));
  });
  app.get('/api/population/letter', async (context) => {
    const counted = await counting.counted();
    const { id, title = id } = serviceIn(counted, asked(context, 'service'));
    const { evidence } = counted.shown.dossier;
    const letter = letterTo(id, title, counted.answer, evidence, printingCalled(evidence));
    return context.json({ version: counted.shown.version, letter });
  });
  app.post('/api/population/report', async (context) => {
    const { service, as_of, text } = await bodyOf(context, ReportRequestSchema);
    const counted = await counting.counted();
    const report = readReport(text, serviceIn(counted, service));
    const there = counted.records.reports.some(
      (one) => one.service === service && one.asOf === as_of,
    );
    return context.json({ ...(structuredClone(report) as Omit<ReportRead, 'there'>), there });
  });
}

function asked(context: Context, name: string): string {
  const value = context.req.query(name);
  if (value !== undefined) return value;
  throw new Refused('bad-request', `Say which ${name}.`);
}

function serviceIn({ records }: Counted, id: string): Service {
  const service = records.services.find((one) => one.id === id);
  if (service) return service;
  throw new Refused('not-found', `${id} is no service of the dossier: services.csv has none.`);
}
