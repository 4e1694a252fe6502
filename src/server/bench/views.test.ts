import { cp, mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BenchComparisonSchema, BenchCopySchema, BenchReliefSchema } from '../../contract/index.ts';
import { startTrial, type Trial } from '../fixtures/running.ts';

const DEMO = fileURLToPath(new URL('../../../demo/dossier/', import.meta.url));
const COPIED = [
  'front.jpg',
  'listing.jpg',
  'setup.json',
  ...[1, 2, 3, 4].map((n) => `front.light-${n}.jpg`),
];

describe('what a copy is laid beside', { timeout: 240_000 }, () => {
  let trial: Trial;
  beforeAll(async () => {
    trial = await startTrial();
    const photos = join(trial.folder, 'desk', 'photos', 'one');
    await mkdir(photos, { recursive: true });
    for (const name of COPIED)
      await cp(join(DEMO, 'desk', 'photos', 'hare-1', name), join(photos, name));
    await mkdir(join(photos, 'sent-in'));
    await cp(join(photos, 'listing.jpg'), join(photos, 'sent-in', 'front.jpg'));
    await mkdir(join(trial.folder, 'pictures'));
    await cp(join(DEMO, 'pictures', 'gb-first-1.jpg'), join(trial.folder, 'pictures', 'ref.jpg'));
    const files = {
      'dossier.json': '{"format": 1, "title": "Amberjay", "width_mm": 62.4, "height_mm": 88}\n',
      'pictures.csv':
        'file,of,role,side,known_by\npictures/ref.jpg,pt-first,reference,front,from the first owner\n../out.jpg,pt-first,reference,front,\n',
      'desk/copies.csv': 'id,printing,status\none,pt-first,arrived\n',
    };
    for (const [name, text] of Object.entries(files))
      await writeFile(join(trial.folder, name), text);
    await trial.again();
  });
  afterAll(() => trial.end());

  const picture = async (path: string) => {
    const response = await fetch(new URL(path, trial.running.url), {
      headers: { 'x-printlore-token': trial.running.token },
    });
    expect([path, response.status]).toEqual([path, 200]);
    return sharp(Buffer.from(await response.arrayBuffer()));
  };

  it('is the seller’s picture, other examinations and the references of its printing', async () => {
    const { beside } = BenchCopySchema.parse((await trial.ask('/api/bench/one')).body);
    expect(beside.slice(0, 3).map(({ file, what }) => [file, what])).toEqual([
      ['desk/photos/one/listing.jpg', 'listing'],
      ['desk/photos/one/sent-in/front.jpg', 'examination'],
      ['pictures/ref.jpg', 'reference'],
    ]);
  });

  it('is shown straight down, whole or in part; nothing else is, and nothing outside', async () => {
    const of = encodeURIComponent('desk/photos/one/listing.jpg');
    const at = `/api/bench/one/card/front?of=${of}&pixels=312`;
    expect(await (await picture(at)).metadata()).toMatchObject({ width: 312, height: 440 });
    const part = await picture(`${at}&x0=0&y0=0&x1=10&y1=5`);
    expect(await part.metadata()).toMatchObject({ width: 312, height: 156 });
    for (const other of ['../out.jpg', 'desk/copies.csv', 'pictures/none.jpg']) {
      const path = `/api/bench/one/card/front?of=${encodeURIComponent(other)}`;
      expect((await trial.ask(path)).status).toBe(404);
    }
  });

  it('shows a dent as a lamp that is led round it would', async () => {
    const { body } = await trial.ask('/api/bench/one/relief/front');
    const { shown, marks, lamps, faults } = BenchReliefSchema.parse(body);
    expect([shown, lamps.length, faults]).toEqual([true, 4, []]);
    // demo/photos-truth.json: lamp 1 at 25° round and 34° up, and a dent at 44.5, 22 mm.
    expect(lamps[0]?.azimuth).toBeCloseTo(25, 0);
    expect(lamps[0]?.height).toBeCloseTo(34, 0);
    const [x = 0, y = 0] = marks.find(({ p }) => p >= 0.5)?.centre ?? [];
    expect(Math.hypot(x - 44.5, y - 22)).toBeLessThan(0.3);
    const sides = async (azimuth: number) => {
      const path = `/api/bench/one/shaded/front?azimuth=${azimuth}&height=20&steeper=4`;
      const shaded = await picture(path);
      const { data, info } = await shaded.greyscale().raw().toBuffer({ resolveWithObject: true });
      const step = 62.4 / info.width;
      const grey = (mm: number) =>
        data[Math.round(y / step - 0.5) * info.width + Math.round(mm / step - 0.5)] ?? 0;
      return [grey(x - 0.6), grey(x + 0.6)] as const;
    };
    // A wall faces the lamp across the dent: lit from the right, the left one is bright.
    const [fromRight, fromLeft] = [await sides(0), await sides(180)];
    expect(fromRight[0] - fromRight[1]).toBeGreaterThan(60);
    expect(fromLeft[1] - fromLeft[0]).toBeGreaterThan(60);
  });

  it('is compared, with two explanations named and no verdict', async () => {
    const of = encodeURIComponent('desk/photos/one/sent-in/front.jpg');
    const { body } = await trial.ask(`/api/bench/one/compare/front?of=${of}`);
    const { registered, findings, words, other } = BenchComparisonSchema.parse(body);
    expect([registered, findings.length > 0]).toEqual([true, true]);
    // demo/photos-truth.json: a left border of 3.1 mm against 3.4 mm. Measured within 0.1 mm.
    const told = BenchCopySchema.parse((await trial.ask('/api/bench/one')).body).front;
    const [own, its] = [told?.frame?.borders?.left ?? 0, other?.frame?.borders?.left ?? 9];
    expect(Math.abs(own - its + 0.3)).toBeLessThan(0.1);
    expect(words).not.toMatch(/genuine|fake/i);
  });

  it.each([
    ['shaded/front?azimuth=400&height=20&steeper=4', 400],
    ['shaded/front?azimuth=90', 400],
    ['relief/back', 404],
    ['relief/rim', 400],
    ['compare/front?of=desk/copies.csv', 404],
  ])('refuses %s', async (path, status) => {
    expect((await trial.ask(`/api/bench/one/${path}`)).status).toBe(status);
  });
});
