import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Population } from '../../src/population/index.ts';
import { answerTo } from '../cli/answer.ts';

const folders: string[] = [];
/** A dossier of two printings, a service and one report of it. */
function dossierWith(files: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'printlore-joined-'));
  folders.push(folder);
  const all = {
    'printings.csv': 'id,language,number,finish\nen-plain,en,31,plain\nen-foil,en,44,foil\n',
    'services.csv': 'id,title,grades,top\nplumb,Plumb,1|5|10,10\n',
    'population.csv': report('2025-01-31', ['en-plain', 'en-foil']),
    ...files,
  };
  mkdirSync(join(folder, 'desk'));
  for (const [name, text] of Object.entries(all)) writeFileSync(join(folder, name), text);
  return folder;
}
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

const HEAD = 'service,as_of,label,printing,grade,count\n';
/** Two labels that tell nothing by their words; what they are stands on their first row alone. */
function report(day: string, [first = '', second = ''] = ['', '']): string {
  return [
    `plumb,${day},KX ONE,${first},1,10`,
    `plumb,${day},KX ONE,,5,30`,
    `plumb,${day},KX ONE,,10,60`,
    `plumb,${day},KX TWO,${second},1,9`,
    `plumb,${day},KX TWO,,10,1`,
    '',
  ].reduce((text, line) => `${text}${line}${line === '' ? '' : '\n'}`, HEAD);
}

async function populationOf(folder: string): Promise<Population> {
  return JSON.parse((await answerTo(['population', folder, '--json'])).out) as Population;
}

describe('a label that is matched on one row', () => {
  it('counts with all its rows, also in a report that says nothing of it', async () => {
    const later = report('2025-06-30').slice(HEAD.length);
    const folder = dossierWith({
      'population.csv': report('2025-01-31', ['en-plain', 'en-foil']) + later,
    });
    const totals = (await populationOf(folder)).printings.map(({ services }) => services[0]);
    expect(totals.map((one) => [one?.as_of, one?.total, one?.top])).toEqual([
      ['2025-06-30', 100, 60],
      ['2025-06-30', 10, 1],
    ]);
  });

  // Shares drawn towards those of both printings: 60 of 100 copies and 1 of 10 at the top.
  it('gives decisions the shares of all its grades', async () => {
    const folder = dossierWith({
      'sales.csv': [
        'date,printing,service,grade,kind,price,currency',
        '2025-01-05,en-plain,,,sold,10,EUR',
        '2025-01-06,en-plain,plumb,10,sold,200,EUR',
        '2025-01-06,en-plain,plumb,5,sold,12,EUR',
        '',
      ].join('\n'),
      'desk/copies.csv': 'id,printing,status\none,en-plain,kept\n',
      'desk/tiers.csv': 'service,tier,fee,currency\nplumb,post,5,EUR\n',
    });
    const { out } = await answerTo(['decide', folder, '--json']);
    const [one] = (JSON.parse(out) as { copies: { hinges_on: string }[] }).copies;
    const now = Number(/now (\d+) %/.exec(one?.hinges_on ?? '')?.[1]);
    expect(now).toBeGreaterThan(50);
    expect(now).toBeLessThanOrEqual(60);
  });
});

describe('certificates in dated blocks', () => {
  const files = {
    'certificates.csv':
      'service,from,to,period\nplumb,100,199,2003/2004\nplumb,200,299,2005/2006\n',
    'sightings.csv':
      'date,printing,service,certificate,label,grade\n2025-01-02,en-plain,plumb,150,KX ONE,10\n2025-01-03,en-plain,plumb,250,KX ONE,10\n',
  };

  it('bound a release, and become a claim only where that is asked for', async () => {
    const folder = dossierWith({
      ...files,
      'sources.csv': 'id,title,kind,service\nplumb-label,Labels,grading-label,plumb\n',
      'claims.csv': 'printing,source,property,value\n',
    });
    const shown = await answerTo(['population', folder, '--claims']);
    expect(shown.out).toMatch(/2004-12-31 +plumb-label +certificate 150/);
    expect(readFileSync(join(folder, 'claims.csv'), 'utf8')).toBe(
      'printing,source,property,value\n',
    );
    const written = await answerTo(['population', folder, '--claims', '--write']);
    expect(written).toMatchObject({ exit: 0, err: 'Written to claims.csv: 1 row.\n' });
    expect(readFileSync(join(folder, 'claims.csv'), 'utf8')).toContain(
      'en-plain,plumb-label,seen-by,2004-12-31',
    );
    const again = await answerTo(['population', folder, '--claims', '--write']);
    expect(again.out).toMatch(/tells more than the evidence does/);
  });

  it('are no claim of nobody: the service wants a source', async () => {
    const { exit, err } = await answerTo(['population', dossierWith(files), '--claims', '--write']);
    expect(exit).toBe(2);
    expect(err).toMatch(/No source in sources\.csv stands for the labels/);
  });
});

describe('copies that were seen', () => {
  it('are one where their own number is one, whatever slab they came in', async () => {
    const rows = (serial: string) =>
      [
        'date,printing,service,certificate,label,grade,serial',
        `2025-01-02,en-plain,plumb,150,KX ONE,10,${serial}`,
        `2025-02-03,en-plain,plumb,777,KX ONE,10,${serial}`,
        '',
      ].join('\n');
    const [one, two] = await Promise.all(
      ['12/50', ''].map((serial) => populationOf(dossierWith({ 'sightings.csv': rows(serial) }))),
    );
    expect(one?.printings[0]?.extant).toMatchObject({ seen: 1, again: 1 });
    expect(two?.printings[0]?.extant).toBeNull();
  });

  it('under a label of another printing are told to the service', async () => {
    const folder = dossierWith({
      'sightings.csv':
        'date,printing,service,certificate,label,grade\n2025-01-02,en-foil,plumb,150,KX ONE,10\n',
    });
    const { out } = await answerTo(['population', folder, '--letter', '--service', 'plumb']);
    expect(out.replaceAll('\n', ' ')).toMatch(
      /Under the label “KX ONE”, which is that of .*31.*, a copy of .*44.* was seen/,
    );
  });
});
