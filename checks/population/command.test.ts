import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import type { Population } from '../../src/population/index.ts';
import { answerTo } from '../cli/answer.ts';

const demo = fileURLToPath(new URL('../../demo/dossier', import.meta.url));
const truth = JSON.parse(
  readFileSync(new URL('../../demo/truth.json', import.meta.url), 'utf8'),
) as { labels: { service: string; label: string; copies: Record<string, number> }[] };
const answered = answerTo(['population', demo, '--json']);
const answer = async () => JSON.parse((await answered).out) as Population;

const folders: string[] = [];
/** A small dossier with the files that are given. */
function dossierWith(files: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'printlore-population-'));
  folders.push(folder);
  writeFileSync(
    join(folder, 'printings.csv'),
    'id,language,number,finish\nen-one,en,31,plain\nen-two,en,44,foil\n',
  );
  writeFileSync(
    join(folder, 'services.csv'),
    'id,title,grades,top,off_scale\nplumb,Plumb,1|5|10,10,altered\n',
  );
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

describe('population of the demo', () => {
  it('takes the labels for the printings whose copies are counted there', async () => {
    const { matches } = await answer();
    const said = matches.filter(({ p, printing }) => p >= 0.5 && printing !== null);
    const true_ = truth.labels.flatMap(({ service, label, copies }) =>
      Object.keys(copies).map((printing) => `${service} ${label} ${printing}`),
    );
    const right = said.filter((m) => true_.includes(`${m.service} ${m.label} ${m.printing}`));
    // Of 31 a reprint is said under the label of the first printing at one service (0.59) where it is
    // not listed, and missed there at another; a foil card that is called holo, without year or number,
    // stays just under a half.
    expect(said.length - right.length).toBeLessThanOrEqual(1);
    expect(true_.length - right.length).toBeLessThanOrEqual(3);
  });

  it('splits the label of two waves by what its owner saw under it', async () => {
    const { printings } = await answer();
    const of = (id: string) =>
      printings
        .find((one) => one.id === id)
        ?.services.find(({ service }) => service === 'plumb-assay');
    const [first, second] = [of('gb-first'), of('gb-second')];
    expect(first?.lumped_with).toEqual(['gb-second']);
    const copies = truth.labels.find(({ label }) =>
      label.endsWith('STARTER TIDEBELL HARE 31'),
    )?.copies;
    for (const [one, id] of [
      [first, 'gb-first'],
      [second, 'gb-second'],
    ] as const) {
      const is = copies?.[id] ?? 0;
      expect(one?.total95[0]).toBeLessThanOrEqual(is);
      expect(one?.total95[1]).toBeGreaterThanOrEqual(is);
    }
    expect((first?.total ?? 0) + (second?.total ?? 0)).toBeCloseTo(438, 6);
  });

  it('says what a service has that the dossier does not', async () => {
    const { matches } = await answer();
    // The label tells neither number nor year: nothing is sure, but no printing comes before “none”.
    const [first, ...others] = matches
      .filter(({ label }) => label.includes('견본'))
      .sort((a, b) => b.p - a.p);
    expect(first?.printing).toBeNull();
    expect(first?.p).toBeGreaterThan(0.3);
    for (const { p } of others) expect(p).toBeLessThan(0.5);
  });

  it('flags a fall that grading cannot explain', async () => {
    const { falls } = await answer();
    expect(falls).toContainEqual(
      expect.objectContaining({ service: 'plumb-assay', grade: '9', before: 66, after: 57 }),
    );
  });

  it('answers for an earlier day by what was known then', async () => {
    const { out } = await answerTo(['population', demo, '--json', '--on', '2025-06-30']);
    const earlier = JSON.parse(out) as Population;
    expect(earlier.on).toBe('2025-06-30');
    for (const { services } of earlier.printings)
      for (const { as_of } of services) expect(as_of <= '2025-06-30').toBe(true);
    expect(earlier.printings.flatMap(({ services }) => services).length).toBeGreaterThan(10);
  });

  it('shows a table with its day, its doubt, and what is not known', async () => {
    const { out, exit, err } = await answerTo(['population', demo]);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).toMatch(/as of 2026-06-30/);
    expect(out).toMatch(/^Not known for \d+ others/m);
    expect(out).toMatch(/≈\d+ \(\d+–\d+\)/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });
});

describe('a report with something wrong in it', () => {
  it('is answered with file, row and what became of it, and used as far as it goes', async () => {
    const folder = dossierWith({
      'population.csv': [
        'service,as_of,label,printing,grade,count',
        'plumb,2025-01-31,HARE 31,,10,4',
        'plumb,2025-01-31,HARE 31,,5,6',
        'plumb,2025-01-31,HARE 31,,total,12',
        'plumb,2025-01-31,HARE 31,,9.5,1',
        'plumb,2025-01-31,HARE 31,,5,7',
        'plumb,2025-01-31,HARE 44 FOIL,,10,-3',
        'plumb,2025-01-31,HARE 44 FOIL,,1,999999999',
        'plumb,2025-01-31,HARE 44 FOIL,,altered,2',
        '',
      ].join('\n'),
      'sightings.csv': [
        'date,printing,service,certificate,label,grade,serial,where',
        '2025-01-02,en-one,plumb,100,,10,,Tampere',
        '2025-01-02,en-one,plumb,100,,10,,Leeds',
        '',
      ].join('\n'),
    });
    const { exit, out } = await answerTo(['population', folder, '--json']);
    const checked = JSON.parse((await answerTo(['check', folder, '--json'])).out) as {
      faults: { file: string; row: number; message: string }[];
    };
    expect(exit).toBe(1);
    expect(checked.faults.map(({ file, row }) => `${file} ${row}`)).toEqual([
      'population.csv 4',
      'population.csv 5',
      'population.csv 6',
      'population.csv 7',
      'population.csv 8',
      'sightings.csv 3',
    ]);
    const one = (JSON.parse(out) as Population).printings.find(({ id }) => id === 'en-one');
    expect(one?.services[0]).toMatchObject({ total: 10, top: 4, rate: 0.4 });
    const two = (JSON.parse(out) as Population).printings.find(({ id }) => id === 'en-two');
    expect(two?.services[0]).toMatchObject({ total: 0, rate: null, off_scale: { altered: 2 } });
  });

  it('whose service states no grades is read by its own, and that is said', async () => {
    const folder = dossierWith({
      'services.csv': 'id,title\nplumb,Plumb\n',
      'population.csv':
        'service,as_of,label,printing,grade,count\nplumb,2025-01,HARE 31,en-one,10,4\nplumb,2025-01,HARE 31,en-one,9,6\n',
    });
    const { out } = await answerTo(['population', folder]);
    expect(out).toMatch(/states no grades for plumb/);
    expect(out).toMatch(/40\.0 %/);
  });

  it('and a dossier without any report says so', async () => {
    const { out, exit } = await answerTo(['population', dossierWith({})]);
    expect(exit).toBe(0);
    expect(out).toMatch(/listed by no service/);
    expect(out).toMatch(/no certificate was seen twice/);
  });

  it('a day that is none is a wrong call', async () => {
    const { exit, err } = await answerTo(['population', demo, '--on', '2025-02-30']);
    expect(exit).toBe(2);
    expect(err).toMatch(/A day is expected/);
  });
});
