import {
  chmodSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Dating } from '../../src/dating/index.ts';
import { answerTo, inputPath } from './answer.ts';

const dated = async (folder: string, ...options: string[]) =>
  answerTo(['date', folder, '--json', ...options]);
const bestOf = ({ printings }: Dating) =>
  Object.fromEntries(printings.map(({ id, best }) => [id, best]));

describe('date', () => {
  it('gives the days on which the sources agree, in order', async () => {
    const { exit, out, err } = await dated(inputPath('quiet'));
    const dating = JSON.parse(out) as Dating;
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(bestOf(dating)).toEqual({
      'fi-first': '1997-05-16',
      'kr-first': '1998-02-20',
      'br-foil': '1999-10-08',
    });
    expect(dating.order).toEqual(['fi-first', 'kr-first', 'br-foil']);
  });

  it('prints the fixed parts', async () => {
    const dating = JSON.parse((await dated(inputPath('quiet'))).out);
    const keys = 'printings order first sources leads monte_carlo_error'.split(' ');
    expect(Object.keys(dating)).toEqual(expect.arrayContaining(keys));
    const parts = 'id best edtf p_best interval95 p_interval days claims'.split(' ');
    for (const printing of dating.printings) {
      expect(Object.keys(printing)).toEqual(expect.arrayContaining(parts));
      const { days, best, p_best } = printing;
      expect(days.find(([day]: [string]) => day === best)?.[1]).toBe(p_best);
    }
  });

  it('gives the same bytes for the same seed', async () => {
    const [one, two] = await Promise.all(
      [1, 2].map(() => dated(inputPath('quiet'), '--seed', '7')),
    );
    expect(one).toEqual(two);
  });

  it('dates what can be used of a faulty dossier, lists the faults and ends with 1', async () => {
    const { exit, out, err } = await dated(inputPath('faulty'));
    expect(exit).toBe(1);
    expect(bestOf(JSON.parse(out))['fi-first']).toBe('1997-05-16');
    expect(err).toContain('claims.csv');
  });

  it('says what is not known where there is no claim', async () => {
    const { exit, out } = await answerTo(['date', inputPath('bare')]);
    expect(exit).toBe(0);
    expect(out).toMatch(/^printing only-one {2}not known/m);
  });

  it('shows a readable table', async () => {
    const { out } = await answerTo(['date', inputPath('quiet')]);
    expect(out).toMatch(/^Lantern Heron: 3 printings, 3 sources/);
    expect(out).toMatch(/^Finnish Suo +16 May 1997 +(>?\d+) %/m);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('writes nothing to the folder, and needs no right to', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'printlore-date-'));
    cpSync(inputPath('quiet'), folder, { recursive: true });
    const state = () =>
      readdirSync(folder).map((name) => {
        const path = join(folder, name);
        return [name, statSync(path).mtimeMs, readFileSync(path, 'utf8')];
      });
    for (const name of readdirSync(folder)) chmodSync(join(folder, name), 0o444);
    chmodSync(folder, 0o555);
    const before = state();
    const [dated, checked] = [await answerTo(['date', folder]), await answerTo(['check', folder])];
    expect([dated.exit, dated.err, checked.exit]).toEqual([0, '', 0]);
    expect(state()).toEqual(before);
    chmodSync(folder, 0o755);
    rmSync(folder, { recursive: true });
  });
});
