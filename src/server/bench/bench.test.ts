import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BenchBordersSchema, BenchCopySchema, BenchListSchema } from '../../contract/index.ts';
import { startTrial, type Trial } from '../fixtures/running.ts';

/** A card of 63 × 88 mm at 8 pixels a millimetre on a grey ground, border 4 mm, art within. */
async function cardPicture(): Promise<Buffer> {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="700" height="900">
    <rect width="700" height="900" fill="#6d716e"/>
    <rect x="100" y="90" width="504" height="704" rx="20" fill="#d9b341"/>
    <rect x="132" y="122" width="440" height="640" fill="#22405a"/>
    <circle cx="340" cy="330" r="120" fill="#cfd9d2"/></svg>`;
  return await sharp(Buffer.from(svg)).jpeg({ quality: 95 }).toBuffer();
}

describe('the bench', { timeout: 240_000 }, () => {
  let trial: Trial;
  beforeAll(async () => {
    trial = await startTrial();
    const photos = join(trial.folder, 'desk', 'photos', 'one');
    await mkdir(photos, { recursive: true });
    await writeFile(join(photos, 'front.jpg'), await cardPicture());
    await writeFile(join(photos, 'back.jpg'), 'no picture');
    await writeFile(
      join(trial.folder, 'dossier.json'),
      '{"format": 1, "title": "Amberjay", "width_mm": 63, "height_mm": 88}\n',
    );
    await writeFile(
      join(trial.folder, 'desk', 'copies.csv'),
      'id,printing,status,parcel,described_as\none,pt-first,arrived,,"Well centred, no creases"\ntwo,fi-first,offered,,\nthree,fi-first,offered,,\n',
    );
    await writeFile(
      join(trial.folder, 'desk', 'deadlines.csv'),
      'copy,parcel,against,starts_from,starts_on,days,counts,done\none,,seller,arrived,2026-06-18,14,calendar,\n',
    );
    await trial.again();
    await mkdir(join(trial.folder, 'desk', 'photos', 'three'));
    await writeFile(
      join(trial.folder, 'desk', 'photos', 'three', 'front.jpg'),
      await cardPicture(),
    );
  });
  afterAll(() => trial.end());

  const copy = async (id = 'three') => {
    const { status, body } = await trial.ask(`/api/bench/${id}`);
    expect([status, status === 200 ? '' : body]).toEqual([200, '']);
    return BenchCopySchema.parse(body);
  };

  it('lists the copies with the pictures of each', async () => {
    const { copies } = BenchListSchema.parse((await trial.ask('/api/bench')).body);
    expect(copies.map(({ id, pictures }) => [id, pictures.map(({ name }) => name)])).toEqual([
      ['one', ['front.jpg', 'back.jpg']],
      ['two', []],
      ['three', ['front.jpg']],
    ]);
  });

  it('measures a copy from its picture', async () => {
    const { front, back, grade } = await copy();
    expect(back).toBeNull();
    // Drawn with its rim at x = 100: the centre of the first pixel within is half a pixel further.
    const [x, y] = front?.outline?.corners[0] ?? [0, 0];
    expect(Math.hypot(x - 99.5, y - 89.5)).toBeLessThan(0.5);
    expect(front?.frame?.borders?.left).toBeCloseTo(4, 1);
    expect(grade?.grades.reduce((sum, { p }) => sum + p, 0)).toBeCloseTo(1, 6);
  });

  it('says which picture cannot be read, what was found in it, and measures the other', async () => {
    const { front, back } = await copy('one');
    expect(back?.whyNot).toBe(
      'desk/photos/one/back.jpg: found a text under the name of a JPEG; expected a picture (JPEG, PNG, WebP, TIFF, AVIF or HEIC).',
    );
    expect(front?.outline?.p).toBeGreaterThan(0.5);
  });

  it('tells what disagrees with the seller’s words, and the clock', async () => {
    const { described, clock } = await copy('one');
    expect(described?.compared.map(({ words }) => words)).toContain('Well centred');
    expect(clock.open).toMatchObject([{ against: 'seller', last: '2026-07-01' }]);
  });

  it('has a copy without pictures too', async () => {
    expect(await copy('two')).toMatchObject({ front: null, back: null, grade: null });
  });

  it('follows a corner that was moved, keeps it where wanted, and gives it up again', async () => {
    const moved = (await copy()).front?.outline?.corners.map(([x, y]) => [x + 4, y]);
    const post = async (body: object) =>
      BenchCopySchema.parse((await trial.ask('/api/bench/three/outline', body)).body);
    const hand = { side: 'front', corners: moved, frame: null };
    const tried = await post({ ...hand, refine: null, keep: false });
    expect(tried.front?.outline).toMatchObject({ byHand: true, corners: moved });
    expect((await copy()).front?.outline?.byHand).toBe(false);
    await post({ ...hand, refine: null, keep: true });
    expect((await copy()).front?.outline).toMatchObject({ byHand: true, corners: moved });
    const refined = await post({ ...hand, refine: 'outline', keep: false });
    expect(refined.front?.outline?.corners[0][0]).toBeCloseTo(99.5, 0);
    await post({ ...hand, corners: null, refine: null, keep: true });
    expect((await copy()).front?.outline?.byHand).toBe(false);
  });

  it('answers the borders alone at once, and keeps a frame that a hand set', async () => {
    const { front } = await copy();
    const frame = front?.frame?.corners.map(([x, y]) => [x + 8, y]);
    const hand = { side: 'front', corners: null, frame };
    const { body } = await trial.ask('/api/bench/three/borders', hand);
    const quick = BenchBordersSchema.parse(body);
    // Eight pixels a millimetre: the frame was moved by one.
    expect(quick.frame?.borders?.left).toBeCloseTo((front?.frame?.borders?.left ?? 0) + 1, 3);
    await trial.ask('/api/bench/three/outline', { ...hand, refine: null, keep: true });
    const kept = (await copy()).front;
    expect(kept).toMatchObject({ size: quick.size, frame: { ...quick.frame, byHand: true } });
    expect(kept?.outline?.byHand).toBe(false);
    await trial.ask('/api/undo', {});
    expect((await copy()).front?.frame?.byHand).toBe(false);
  });

  it('refuses corners that cross over', async () => {
    const crossed = [
      [0, 0],
      [9, 9],
      [9, 0],
      [0, 9],
    ];
    const body = { side: 'front', corners: crossed, frame: null };
    const { status, body: answer } = await trial.ask('/api/bench/three/borders', body);
    expect([status, JSON.stringify(answer)]).toEqual([400, expect.stringContaining('clockwise')]);
  });

  it('keeps marks as web annotations, which undo takes back', async () => {
    const mark = {
      ...{ do: 'add', side: 'front', kind: 'scratch', closed: false, words: 'by the loupe' },
      points: [
        [20, 30],
        [26, 38],
      ],
    };
    const { body } = await trial.ask('/api/bench/three/marks', mark);
    const hand = BenchCopySchema.parse(body).front?.marks.find(({ from }) => from === 'hand');
    expect(hand).toMatchObject({ kind: 'scratch', p: 1, words: ['by the loupe'] });
    expect(hand?.length).toBeCloseTo(10, 1);
    const file = join(trial.folder, 'desk', 'examinations', 'three.json');
    const kept = JSON.parse(await readFile(file, 'utf8'));
    expect(kept.marks[0]).toMatchObject({
      '@context': 'http://www.w3.org/ns/anno.jsonld',
      target: { source: 'desk/photos/three/front.jpg' },
    });
    await trial.ask('/api/undo', {});
    expect((await copy()).front?.marks.filter(({ from }) => from === 'hand')).toEqual([]);
  });

  it('shows pictures and the card seen straight down, whole or in part', async () => {
    const fetched = async (path: string) => {
      const response = await fetch(new URL(path, trial.running.url), {
        headers: { 'x-printlore-token': trial.running.token },
      });
      const { width, height } = await sharp(Buffer.from(await response.arrayBuffer())).metadata();
      return [response.headers.get('content-type'), width, height];
    };
    expect(await fetched('/api/bench/three/picture/front.jpg?pixels=350')).toEqual([
      'image/jpeg',
      350,
      450,
    ]);
    expect(await fetched('/api/bench/three/card/front?pixels=630')).toEqual([
      'image/jpeg',
      630,
      880,
    ]);
    expect(await fetched('/api/bench/three/card/front?pixels=400&x0=10&y0=10&x1=20&y1=15')).toEqual(
      ['image/jpeg', 400, 200],
    );
  });

  it('keeps pictures of a new copy as they came, measures them, and writes over none', async () => {
    const after = { id: 'four', printing: 'pt-first', status: 'arrived', listing: 'No creases' };
    const { version } = (await trial.ask('/api/dossier')).body;
    const changes = [{ file: 'desk/copies.csv', op: 'add', after }];
    await trial.ask('/api/changes', { version, label: 'Lay four on the bench', changes });
    const bytes = await cardPicture();
    const send = async (path: string, body: Buffer | string) => {
      const response = await fetch(new URL(path, trial.running.url), {
        ...{ method: 'POST', body: new Uint8Array(Buffer.from(body)) },
        headers: { 'x-printlore-token': trial.running.token },
      });
      return [response.status, await response.json()];
    };
    expect(await send('/api/bench/four/pictures/front', bytes)).toEqual([
      200,
      { name: 'front.jpg' },
    ]);
    const kept = join(trial.folder, 'desk', 'photos', 'four', 'front.jpg');
    expect(Buffer.compare(await readFile(kept), bytes)).toBe(0);
    expect(await send('/api/bench/four/pictures/front', bytes)).toEqual([
      409,
      {
        error: {
          code: 'already-there',
          message: 'desk/photos/four/front.jpg is there already; originals are never written over.',
        },
      },
    ]);
    expect((await send('/api/bench/four/pictures/back', 'words'))[0]).toBe(400);
    expect((await send('/api/bench/four/pictures/..%2Fback', bytes))[0]).toBe(400);
    expect((await send('/api/bench/nobody/pictures/front', bytes))[0]).toBe(404);
    expect((await copy('four')).front?.outline?.p).toBeGreaterThan(0.5);
    expect((await trial.ask('/api/bench/four/progress')).body).toEqual({ done: 0, of: 0, now: '' });
    await trial.ask('/api/undo', {});
    expect((await trial.ask('/api/bench/four')).status).toBe(404);
    expect((await readFile(kept)).length).toBe(bytes.length);
  });

  it.each([
    ['/api/bench/nobody', 404],
    ['/api/bench/three/picture/..%2F..%2Fcopies.csv', 404],
    ['/api/bench/three/picture/setup.json', 404],
    ['/api/bench/three/picture/front.jpg?pixels=99999', 400],
    ['/api/bench/three/picture/front.jpg?x=1', 400],
    ['/api/bench/three/card/rim', 400],
    ['/api/bench/..%2F..', 404],
  ])('refuses %s', async (path, status) => {
    expect((await trial.ask(path)).status).toBe(status);
  });
});
