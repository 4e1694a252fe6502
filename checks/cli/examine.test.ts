import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const pictures = fileURLToPath(new URL('../fixtures/bench/pictures/', import.meta.url));
const scan = join(pictures, 'scan-bronze-300/front.jpg');
const truth = JSON.parse(readFileSync(join(pictures, 'scan-bronze-300/truth.json'), 'utf8'));
const folder = mkdtempSync(join(tmpdir(), 'printlore-examine-'));
afterAll(() => rmSync(folder, { recursive: true }));

const TOLD = [scan, '--card', '63x88', '--dpi', '300'];
const pair = [expect.any(Number), expect.any(Number)];
const sides = { left: 0, right: 0, top: 0, bottom: 0 };

/** The parts that are fixed; more may stand beside them. */
const FACE = {
  outline: [pair, pair, pair, pair],
  p_outline: expect.any(Number),
  size_mm: pair,
  borders_mm: expect.objectContaining(
    Object.fromEntries(Object.keys(sides).map((side) => [side, expect.any(Number)])),
  ),
  centering: { leftRight: pair, topBottom: pair, sd: pair },
  why_not: null,
  rotation_deg: expect.any(Number),
  defects: expect.any(Array),
};

async function plainPicture(name: string): Promise<string> {
  const file = join(folder, name);
  const background = { r: 120, g: 118, b: 115 };
  await sharp({ create: { width: 900, height: 1200, channels: 3, background } })
    .png()
    .toFile(file);
  return file;
}

describe('examine', () => {
  it('prints the fixed parts, which agree with how the picture was made', async () => {
    const { exit, out, err } = await answerTo(['examine', ...TOLD, '--json']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { front, back, grade, ms } = JSON.parse(out);
    expect(front).toMatchObject(FACE);
    expect(back).toBeNull();
    expect(grade).toEqual({ scale: expect.any(String), p: expect.any(Object) });
    const shares = Object.values<number>(grade.p);
    // Adds up to 1 to the rounding of ten additions.
    expect(Math.abs(shares.reduce((sum, p) => sum + p, 0) - 1)).toBeLessThan(1e-12);
    expect(ms).toEqual({ decode: expect.any(Number), measure: expect.any(Number) });
    front.outline.forEach(([x, y]: [number, number], i: number) => {
      // Measured 0.29 px, allowed 0.5.
      expect(Math.hypot(x - truth.outline[i][0], y - truth.outline[i][1])).toBeLessThan(0.5);
    });
    // Measured 0.10 points, allowed 0.3; the two shares are each rounded once.
    expect(Math.abs(front.centering.leftRight[0] - truth.centering.leftRight[0])).toBeLessThan(0.3);
    expect(
      Math.abs(front.centering.leftRight[0] + front.centering.leftRight[1] - 100),
    ).toBeLessThan(1e-9);
    expect(front.p_outline).toBeGreaterThan(0.9);
  });

  it('measures the size of a scan with its error, and gives none where nothing tells it', async () => {
    const [scanned, bare] = await Promise.all(
      [TOLD, [scan]].map(async (words) => {
        const { out } = await answerTo(['examine', ...words, '--json']);
        return JSON.parse(out).front;
      }),
    );
    truth.cardMm.forEach((mm: number, i: number) => {
      expect(Math.abs(scanned.size_mm[i] - mm)).toBeLessThan(3 * scanned.size_sd_mm[i]);
      // The scanner's own scale is held to be off by a thousandth, so never below that.
      expect(scanned.size_sd_mm[i]).toBeGreaterThan(0.0009 * mm);
      expect(scanned.size_sd_mm[i]).toBeLessThan(0.003 * mm);
    });
    expect([bare.size_mm, bare.borders_mm, bare.defects]).toEqual([null, null, []]);
    expect(bare.centering).not.toBeNull();
  });

  it('shows millimetres with their doubt, and what could not be seen', async () => {
    const { exit, out } = await answerTo(['examine', scan, scan, '--card', '63x88']);
    expect(exit).toBe(0);
    expect(out).toMatch(/^border left +\d\.\d\d ± 0\.\d\d mm/m);
    expect(out).toMatch(/^centering left \/ right +\d\d\.\d \/ \d\d\.\d \(± /m);
    expect(out).toMatch(
      /^Nothing was found that these pictures could show: [\s\S]*?down\s+to\s+0\.\d\s+mm/m,
    );
    expect(out).toMatch(/^Back/m);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('says what to photograph again where there is no card, and ends with 1', async () => {
    const bare = await plainPicture('bare.png');
    const { exit, out } = await answerTo(['examine', bare, scan, '--card', '63x88', '--json']);
    expect(exit).toBe(1);
    const { front, back } = JSON.parse(out);
    expect([front.outline, front.trouble, front.size_mm]).toEqual([null, 'no-card', null]);
    expect(front.why_not).toContain('photograph it whole');
    expect(back.centering).not.toBeNull();
  });
});

describe('examine with a folder', () => {
  const dossier = join(folder, 'dossier');
  const photos = join(dossier, 'desk', 'photos', 'bronze-1');
  mkdirSync(photos, { recursive: true });
  writeFileSync(join(dossier, 'printings.csv'), 'id\nbronze\n');
  writeFileSync(join(dossier, 'dossier.json'), '{"format":1,"width_mm":63,"height_mm":88}');
  copyFileSync(scan, join(photos, 'FRONT.JPG'));

  it('measures a copy of a dossier by its size, and draws it to scale', async () => {
    const out = join(folder, 'drawn');
    const words = ['examine', dossier, '--copy', 'bronze-1', '--out', out];
    const { exit, out: table, err } = await answerTo(words);
    expect(exit).toBe(0);
    expect(table).toMatch(/^size +63 × 88 mm, as told/m);
    expect(err).toContain('front.svg');
    const drawn = readFileSync(join(out, 'front.svg'), 'utf8');
    expect(drawn).toMatch(/^<svg [^>]*viewBox="-28 -28 119 144" width="119mm" height="144mm"/);
    const [, left] = /^border left +(\S+ ± \S+) mm/m.exec(table) ?? [];
    expect(drawn).toContain(`>${left}</text>`);
    expect(drawn).toContain('href="data:image/jpeg;base64,');
  });

  it('grades a copy of a dossier as its services, batches and thresholds say', async () => {
    writeFileSync(
      join(dossier, 'services.csv'),
      'id,title,grades,top\nassay,Assay,low|mid|high,high\n',
    );
    writeFileSync(
      join(dossier, 'population.csv'),
      'service,as_of,label,printing,grade,count\nassay,2026-01-01,BRONZE,bronze,low,20\nassay,2026-01-01,BRONZE,bronze,mid,30\nassay,2026-01-01,BRONZE,bronze,high,50\n',
    );
    writeFileSync(
      join(dossier, 'desk', 'copies.csv'),
      'id,printing,status,service,described_as\nbronze-1,bronze,arrived,assay,"well centred, no creases"\n',
    );
    const gradeWith = async (atMost: number) => {
      writeFileSync(
        join(dossier, 'desk', 'thresholds.csv'),
        `service,grade,side,measure,at_most\nassay,high,front,centering,${atMost}\nassay,mid,front,centering,90\n`,
      );
      const { out } = await answerTo(['examine', dossier, '--copy', 'bronze-1', '--json']);
      return JSON.parse(out);
    };
    const [strict, mild] = [await gradeWith(50.1), await gradeWith(80)];
    expect(mild.grade).toEqual({
      scale: 'assay',
      p: { low: expect.any(Number), mid: expect.any(Number), high: expect.any(Number) },
    });
    // The scan's wider border has 54.4 %: a limit of 50.1 speaks against the top step, one of 80 does
    // not. Limits are soft; measured 0.54 and 0.62.
    expect(mild.grade.p.high - strict.grade.p.high).toBeGreaterThan(0.05);
    expect(mild.looks[0]).toEqual({ look: expect.any(String), gain_bits: expect.any(Number) });
    expect(mild.described.compared.map(({ words }: { words: string }) => words)).toContain(
      'well centred',
    );
    const kept = join(dossier, 'desk', 'examinations', 'bronze-1.json');
    mkdirSync(dirname(kept), { recursive: true });
    const byHand = { hand: {}, marks: [{ id: 'urn:a' }], of_mine: 'loupe, by daylight' };
    writeFileSync(kept, JSON.stringify(byHand));
    const words = ['examine', dossier, '--copy', 'bronze-1', '--write'];
    const { out, err } = await answerTo(words);
    expect(out).toContain('Grade on the scale “assay”');
    expect(out.replaceAll('\n', ' ')).toContain('One more look that would change it most: ');
    expect(out).toContain('As the seller wrote');
    expect(err).toContain('Written: desk/examinations/bronze-1.json');
    const { machine, grade, ...rest } = JSON.parse(readFileSync(kept, 'utf8'));
    expect([machine.front, grade, rest]).toEqual([mild.front, mild.grade, byHand]);
    expect(machine.measured_at).toMatch(/^\d{4}-\d\d-\d\dT/);
    writeFileSync(kept, '{"marks": [');
    const refused = await answerTo(words);
    expect([refused.exit, readFileSync(kept, 'utf8')]).toEqual([2, '{"marks": [']);
    expect(refused.err).toContain('is no JSON object');
    rmSync(kept);
  });

  it('measures the moved lamp of a folder beside the faces', async () => {
    const demo = fileURLToPath(new URL('../../demo/dossier', import.meta.url));
    const words = ['examine', demo, '--copy', 'hare-1'];
    const { out } = await answerTo([...words, '--json']);
    const { front, relief, looks } = JSON.parse(out);
    const isDent = ({ kind, p }: { kind: string; p: number }) => kind === 'dent' && p > 0.5;
    expect(relief.defects.filter(isDent)).toHaveLength(1);
    expect(front.defects.filter(isDent)).toHaveLength(1);
    expect(looks[0].gain_bits).toBeGreaterThan(0);
    // Seven pictures: 8 s of one core, more than the usual time on a machine that others load.
  }, 300_000);

  it('takes the folder of the pictures itself', async () => {
    const { exit, out } = await answerTo(['examine', photos, '--json']);
    expect(exit).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ front: { size_mm: null }, back: null });
  });

  it('hints at the dent that one low lamp shows beside soft light, and gives no depth', async () => {
    const desk = 'demo/dossier/desk/photos/hare-1';
    const call = ['examine', `${desk}/front.jpg`, '--raking', `${desk}/front.raking.jpg`];
    const { exit, out } = await answerTo([...call, '--card', '63x88', '--json']);
    expect(exit).toBe(0);
    const { defects, limits } = JSON.parse(out).front;
    const dents = defects.filter(
      ({ kind, p }: { kind: string; p: number }) => kind === 'dent' && p >= 0.5,
    );
    expect(dents).toMatchObject([{ seen_from: 'raking', depth_mm: null }]);
    expect(dents[0].words).toContain('One lamp cannot tell depth from tilt');
    // demo/photos-truth.json: 44.5, 22 mm on a card trimmed by 0.6 mm, which the size told stretches.
    expect(Math.hypot(dents[0].centre_mm[0] - 44.5, dents[0].centre_mm[1] - 22)).toBeLessThan(0.7);
    expect(limits.flatMap(({ kinds }: { kinds: string[] }) => kinds)).toContain('crease');
  }, 60_000);

  it('tells print process and colours of a folder that holds a fine cut and a chart', async () => {
    const desk = 'demo/dossier/desk/photos/hare-1';
    const whole = join(folder, 'whole');
    mkdirSync(whole, { recursive: true });
    for (const name of ['front.jpg', 'cut.jpg', 'chart.jpg', 'chart.json'])
      copyFileSync(join(desk, name), join(whole, name));
    const call = ['examine', whole, '--card', '63x88'];
    const { exit, out } = await answerTo([...call, '--json']);
    expect(exit).toBe(0);
    const { printing, colour } = JSON.parse(out);
    const asked = [
      await answerTo(['screen', join(desk, 'cut.jpg'), '--json']),
      await answerTo([
        'colour',
        join(desk, 'chart.jpg'),
        '--chart',
        join(desk, 'chart.json'),
        '--json',
      ]),
    ].map((answer) => JSON.parse(answer.out));
    expect({ ...printing, ms: asked[0].ms }).toEqual(asked[0]);
    expect({ ...colour, ms: asked[1].ms }).toEqual(asked[1]);

    writeFileSync(join(whole, 'chart.json'), '{"patches": []}');
    const without = await answerTo(call);
    expect(without.exit).toBe(0);
    expect(without.out).toContain('How it was printed');
    expect(without.out).not.toContain('Colours by the chart');
    expect(without.err).toContain('chart.json is not a chart');
  }, 120_000);

  it('takes a picture under a low lamp alone, and is quiet where no scratch is', async () => {
    const told = ['--card', '63x88', '--json'];
    const alone = join(folder, 'alone');
    mkdirSync(alone, { recursive: true });
    copyFileSync(scan, join(alone, 'front.raking.jpg'));
    const answers = [
      await answerTo(['examine', '--raking', `${scan}@30`, ...told]),
      await answerTo(['examine', alone, ...told]),
    ];
    for (const { exit, out } of answers) {
      expect(exit).toBe(0);
      const { front } = JSON.parse(out);
      expect(front.outline).toHaveLength(4);
      expect(front.defects.filter(({ p }: { p: number }) => p >= 0.5)).toEqual([]);
    }
    const lines = answers.map(({ out }) =>
      JSON.parse(out).front.defects.filter((one: { kind: string }) => one.kind === 'scratch'),
    );
    expect(lines[0].length).toBeGreaterThan(0);
    expect(lines[1]).toEqual(lines[0]);
  });

  it.each([
    [[dossier], 'holds no picture of a front'],
    [[dossier, '--copy', '../bronze-1'], 'is no id of a copy'],
    [[dossier, '--copy', 'other'], 'there is no such file or folder'],
    [[photos, scan], 'takes the place of FRONT and BACK'],
    [[scan, '--write'], '--write needs --copy'],
  ])('refuses %j', async (words, why) => {
    const { exit, err } = await answerTo(['examine', ...words]);
    expect(exit).toBe(2);
    expect(err).toContain(why);
  });
});

describe('examine --jobs', () => {
  const jobsOf = (lines: readonly string[]) => {
    const file = join(folder, 'jobs.jsonl');
    writeFileSync(file, lines.join('\n'));
    return answerTo(['examine', '--jobs', file]);
  };

  it('answers in order, and a bad line spoils no other', async () => {
    writeFileSync(join(folder, 'letter.jpg'), 'Dear collector');
    await plainPicture('bare.png');
    const { exit, out } = await jobsOf([
      JSON.stringify({ front: scan, back: null, card_mm: [63, 88], dpi: 300 }),
      'no JSON',
      '[1]',
      '{"back": "b.jpg"}',
      '{"front": "letter.jpg"}',
      '{"front": "nowhere.jpg"}',
      '',
      '{"front": "bare.png", "card_mm": [63]}',
      '{"front": "bare.png", "dpi": "300"}',
      '{"front": "bare.png", "raking": [{"file": "bare.png", "azimuth_deg": "north"}]}',
      '{"front": "bare.png"}',
    ]);
    expect(exit).toBe(1);
    const answers = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    const { out: alone } = await answerTo(['examine', ...TOLD, '--json']);
    const { ms, ...rest } = JSON.parse(alone);
    expect(answers[0]).toMatchObject(rest);
    expect(Object.keys(answers[0].ms)).toEqual(Object.keys(ms));
    expect(answers.slice(1, 9).map(({ error }) => error)).toEqual([
      expect.stringContaining('no JSON'),
      expect.stringContaining('A job is an object'),
      expect.stringContaining('"front" must be the name of a file'),
      expect.stringContaining('a text under the name of a JPEG'),
      expect.stringContaining('no such file'),
      expect.stringContaining('two sides of 10 to 500 mm'),
      expect.stringContaining('Dots an inch'),
      expect.stringContaining('"azimuth_deg" must be a number'),
    ]);
    expect(answers[9].front.trouble).toBe('no-card');
    expect(answers).toHaveLength(10);
  });

  it('ends with 0 where every line is answered', async () => {
    expect((await jobsOf([JSON.stringify({ front: scan })])).exit).toBe(0);
  });
});
