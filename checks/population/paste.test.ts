import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { type PastedReport, readReport, type Service } from '../../src/population/index.ts';
import { answerTo } from '../cli/answer.ts';

const plumb: Service = {
  id: 'plumb',
  grades: ['1', '5', '9', '9.5', '10'],
  top: 4,
  offScale: ['altered'],
};
const listed = ({ counts }: PastedReport) =>
  counts.map(({ label, grade, count }) => `${label}: ${grade} × ${count}`);
const WANTED = [
  '1994 HARE 31: 5 × 6',
  '1994 HARE 31: 10 × 1204',
  'HARE, FOIL: altered × 2',
  'HARE, FOIL: 9.5 × 3',
];
const sorted = (report: PastedReport) => listed(report).sort();

const pasted: Readonly<Record<string, string>> = {
  tabs: 'Card\t1\t5\t9\t9.5\t10\tAltered\tTotal\n1994 HARE 31\t-\t6\t\t0\t1,204\t0\t1,210\nHARE, FOIL\t\t\t\t3\t\t2\t5\nTotal\t0\t6\t0\t3\t1,204\t2\t1,215\n',
  CSV: 'label,grade 1,grade 5,grade 9,grade 9.5,grade 10,altered\r\n1994 HARE 31,0,6,0,0,"1,204",\r\n"HARE, FOIL",0,0,0,3,0,2\r\n',
  bars: '| Card | 5 | 9.5 | 10 | altered |\n| --- | --: | --: | --: | --- |\n| 1994 HARE 31 | 6 | – | 1 204 | 0 |\n| HARE, FOIL | | 3 | | 2 |\n',
  page: '<html><body><table><tr><td>menu</td></tr></table><table class=x><thead><tr><th>Card<th>5<th>9.5<th>10<th>Altered</tr></thead><tr><td><a href="/1">1994&nbsp;HARE <b>31</b></a></td><td>6</td><td>&ndash;</td><td>1,204</td><td></td></tr><tr><td>HARE, FOIL</td><td></td><td>3</td><td>0</td><td>2</td></tr></table></body></html>',
  long: 'label;grade;count\n1994 HARE 31;5;6\n1994 HARE 31;10;1204\nHARE, FOIL;9.5;3\nHARE, FOIL;altered;2\n',
};

describe('a pasted report', () => {
  it.each(Object.keys(pasted))('as %s says the same', (form) => {
    const report = readReport(pasted[form] as string, plumb);
    expect(report.faults).toEqual([]);
    expect(sorted(report)).toEqual([...WANTED].sort());
  });

  it('says which totals do not add up, and keeps the grades', () => {
    const report = readReport('Card\t5\t10\tTotal\nHARE 31\t6\t4\t11\nTotal\t7\t4\t11\n', plumb);
    expect(listed(report)).toEqual(['HARE 31: 5 × 6', 'HARE 31: 10 × 4']);
    expect(report.faults.map(({ line, found }) => `${line} ${found}`)).toEqual([
      '2 HARE 31: total 11',
      '3 grade 5: 7',
    ]);
  });

  it('leaves out what it cannot read, and says so', () => {
    const report = readReport(
      'Card\t5\t10\nHARE 31\t-3\tsome\n\t1\t1\nHARE 44\t1\t99999999999\n',
      plumb,
    );
    expect(report.faults.map(({ found }) => found)).toEqual(['-3', 'some', ' 1 1', '99999999999']);
    expect(listed(report)).toEqual(['HARE 31: 1 × 0', 'HARE 44: 5 × 1']);
  });

  it('without grades among its heads is not guessed at', () => {
    const report = readReport('a\tb\nHARE\t4\n', plumb);
    expect(report.counts).toEqual([]);
    expect(report.faults[0]?.expected).toMatch(/grades of plumb/);
  });

  it('of any shape is read without a throw', () => {
    fc.assert(
      fc.property(
        fc.string({
          maxLength: 200,
          unit: fc.constantFrom(
            '<',
            't',
            'r',
            'd',
            '>',
            '&',
            '#',
            ';',
            '\t',
            '\n',
            '1',
            '5',
            '|',
            '"',
            ',',
          ),
        }),
        (text) => {
          const { counts } = readReport(text, plumb);
          for (const { count } of counts) expect(Number.isInteger(count) && count >= 0).toBe(true);
        },
      ),
      { seed: 5 },
    );
  });
});

const folder = mkdtempSync(join(tmpdir(), 'printlore-paste-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('a report that is added', () => {
  cpSync(fileURLToPath(new URL('../../demo/dossier', import.meta.url)), folder, {
    recursive: true,
  });
  const file = join(folder, 'saved.txt');
  writeFileSync(
    file,
    'Card\t8\t9\t10\tTotal\n2002 NINEFEN FINNISH TIN TIDEBELL HARE 7\t9\t8\t5\t22\n',
  );
  const call = [
    'population',
    folder,
    '--add',
    file,
    '--service',
    'plumb-assay',
    '--as-of',
    '2026-07-31',
  ];
  const table = () => readFileSync(join(folder, 'population.csv'), 'utf8');

  it('is shown first, and written only where that is asked for', async () => {
    const before = table();
    const shown = await answerTo(call);
    expect(shown.exit).toBe(0);
    expect(shown.out).toMatch(/1 labels with 22 copies/);
    expect(shown.out).toMatch(/Nothing is written yet/);
    expect(table()).toBe(before);
    const written = await answerTo([...call, '--write']);
    expect(written.exit).toBe(0);
    expect(table().startsWith(before)).toBe(true);
    expect(table().slice(before.length).trim().split('\n')).toHaveLength(3);
    const twice = await answerTo([...call, '--write']);
    expect(twice.exit).toBe(2);
    expect(twice.err).toMatch(/remove it first/);
  });

  it('needs to be told whose it is, and as of when', async () => {
    const { exit, err } = await answerTo(['population', folder, '--add', file]);
    expect({ exit, err }).toEqual({ exit: 2, err: '--add needs --service: whose report is it?\n' });
    const other = await answerTo(['population', folder, '--add', file, '--service', 'nobody']);
    expect(other.exit).toBe(2);
  });
});

describe('the letter to a service', () => {
  const demo = fileURLToPath(new URL('../../demo/dossier', import.meta.url));

  it('asks it to list apart what one label holds, with what was seen', async () => {
    const { out } = await answerTo(['population', demo, '--letter', '--service', 'plumb-assay']);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /“1994 NINEFEN STARTER TIDEBELL HARE 31” holds more than one printing: .*\(\d+ seen under this label\).*wave \(1 \/ 2\)/,
    );
    expect(out).not.toMatch(/fake|genuine|wrong/i);
  });

  it('asks nothing where there is nothing to ask', async () => {
    const { out } = await answerTo(['population', demo, '--letter', '--service', 'sorimae']);
    expect(out).toBe('Nothing was found that this service would be asked to mend.\n');
  });
});
