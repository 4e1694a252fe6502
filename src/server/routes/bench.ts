import type { Context, Hono } from 'hono';
import {
  BenchMarkRequestSchema,
  BenchMovedSchema,
  BenchOutlineSchema,
  type BenchSide,
} from '../../contract/index.ts';
import type { Bench } from '../bench/bench.ts';
import { bodyOf, bytesOf } from '../body.ts';
import { Refused } from '../refusal.ts';

/** `GET /api/bench`, `/api/bench/COPY`, its progress and pictures; `POST` its outline, marks and new pictures. */
export function addBench(app: Hono, bench: Bench): void {
  app.get('/api/bench', async (context) => context.json(await bench.list()));
  app.get('/api/bench/:copy', async (context) =>
    context.json(await bench.copy(context.req.param('copy'))),
  );
  app.post('/api/bench/:copy/borders', async (context) => {
    const moved = await bodyOf(context, BenchMovedSchema);
    return context.json(await bench.borders(context.req.param('copy'), moved));
  });
  app.post('/api/bench/:copy/outline', async (context) => {
    const moved = await bodyOf(context, BenchOutlineSchema);
    return context.json(await bench.outline(context.req.param('copy'), moved));
  });
  app.post('/api/bench/:copy/marks', async (context) => {
    const mark = await bodyOf(context, BenchMarkRequestSchema);
    return context.json(await bench.mark(context.req.param('copy'), mark));
  });
  app.get('/api/bench/:copy/progress', (context) =>
    context.json(bench.progress(context.req.param('copy'))),
  );
  app.post('/api/bench/:copy/pictures/:role', async (context) => {
    const { copy, role } = context.req.param();
    const bytes = await bytesOf(context, PICTURE_AT_MOST);
    return context.json(await bench.keepPicture(copy, role, bytes));
  });
  app.get('/api/bench/:copy/picture/:name', async (context) => {
    const { copy, name } = context.req.param();
    const part = partOf(context, ['x', 'y', 'width', 'height']);
    const area = part && { x: part[0], y: part[1], width: part[2], height: part[3] };
    return jpeg(context, await bench.picture(copy, name, widthOf(context), area));
  });
  app.get('/api/bench/:copy/card/:side', async (context) => {
    const { copy, side } = context.req.param();
    const part = partOf(context, ['x0', 'y0', 'x1', 'y1']);
    const of = context.req.query('of');
    const shown = of
      ? bench.straight(copy, of, widthOf(context), part)
      : bench.card(copy, sideOf(side), widthOf(context), part);
    return jpeg(context, await shown);
  });
  app.get('/api/bench/:copy/relief/:side', async (context) => {
    const { copy, side } = context.req.param();
    return context.json(await bench.relief(copy, sideOf(side)));
  });
  app.get('/api/bench/:copy/shaded/:side', async (context) => {
    const { copy, side } = context.req.param();
    const lamp = {
      azimuth: numberOf(context, 'azimuth', 0, 360),
      height: numberOf(context, 'height', 5, 90),
      steeper: numberOf(context, 'steeper', 1, 20),
    };
    return jpeg(context, await bench.shaded(copy, sideOf(side), lamp));
  });
  app.get('/api/bench/:copy/compare/:side', async (context) => {
    const { copy, side } = context.req.param();
    const of = context.req.query('of') ?? '';
    return context.json(await bench.compare(copy, sideOf(side), of));
  });
}

/** Most bytes of a picture that is sent through the page; larger ones are laid into the folder. */
const PICTURE_AT_MOST = 96 * 1024 * 1024;

/** Widest picture that is made for showing, in pixels. */
const WIDEST = 4096;

function widthOf(context: Context): number {
  const width = Number(context.req.query('pixels') ?? 1200);
  if (Number.isInteger(width) && width >= 1 && width <= WIDEST) return width;
  throw new Refused('bad-request', `Ask for 1 to ${WIDEST} pixels.`);
}

function sideOf(side: string): BenchSide {
  if (side === 'front' || side === 'back') return side;
  throw new Refused('bad-request', 'A card has a front and a back.');
}

function numberOf(context: Context, name: string, least: number, most: number): number {
  const value = Number(context.req.query(name) ?? Number.NaN);
  if (value >= least && value <= most) return value;
  throw new Refused('bad-request', `${name} is a number from ${least} to ${most}.`);
}

function partOf(
  context: Context,
  names: readonly [string, string, string, string],
): readonly [number, number, number, number] | null {
  const texts = names.map((name) => context.req.query(name));
  if (texts.every((text) => text === undefined)) return null;
  const numbers = texts.map((text) => Number(text ?? Number.NaN));
  if (numbers.every(Number.isFinite)) return numbers as unknown as [number, number, number, number];
  throw new Refused('bad-request', `A part is told by ${names.join(', ')}, all of them numbers.`);
}

function jpeg(context: Context, bytes: Uint8Array): Response {
  return context.body(Uint8Array.from(bytes).buffer, 200, { 'content-type': 'image/jpeg' });
}
