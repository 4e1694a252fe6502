import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { answerTo } from '../cli/answer.ts';

const root = mkdtempSync(join(tmpdir(), 'printlore-packet-'));
afterAll(() => rmSync(root, { recursive: true }));
const made = (copy: string, out: string) =>
  answerTo(['packet', 'demo/dossier', copy, '--out', join(root, out)]);
const all = (folder: string) =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(join(root, folder).length + 1))
    .sort();

describe('printlore packet', () => {
  it('seals four pages at most, the same bytes twice, and names nobody without a tick', async () => {
    const { exit, out } = await made('hare-1', 'one');
    expect(exit).toBe(0);
    expect(out).toMatch(/data\/packet\.pdf, [1-4] pages/);
    expect((await made('hare-1', 'two')).exit).toBe(0);
    expect(all('two')).toEqual(all('one'));
    for (const name of all('one'))
      expect(
        readFileSync(join(root, 'two', name)).equals(readFileSync(join(root, 'one', name))),
      ).toBe(true);
    const sums = spawnSync('sha512sum', ['-c', 'manifest-sha512.txt'], { cwd: join(root, 'one') });
    if (sums.error === undefined) expect(sums.status).toBe(0);
  });

  it('shows no picture that is marked to stay, not as a drawing either', async () => {
    expect((await made('hare-4', 'kept')).exit).toBe(0);
    expect(all('kept').filter((name) => name.includes('pictures/'))).toEqual([]);
    expect(readFileSync(join(root, 'kept/data/packet.pdf')).includes('/Subtype /Image')).toBe(
      false,
    );
    expect(readFileSync(join(root, 'one/data/packet.pdf')).includes('/Subtype /Image')).toBe(true);
  });

  it('refuses a folder with other files, and leaves them', async () => {
    mkdirSync(join(root, 'mine'));
    writeFileSync(join(root, 'mine', 'letter.txt'), 'mine');
    const { exit, err } = await made('hare-4', 'mine');
    expect([exit, err]).toEqual([2, expect.stringContaining('holds other files')]);
    expect(all('mine')).toEqual(['letter.txt']);
  });

  it('lists what leaves without writing, and what is asked wrongly', async () => {
    const list = await answerTo(['packet', 'demo/dossier', 'hare-1', '--list', '--with', 'seller']);
    expect(list.out).toMatch(/name of seller and venue +millrace-cards, Ninestile Rooms +leaves/);
    expect(list.out).toMatch(/purchase and tracking numbers +NR-48812, .* +stays, unless --with/);
    const unknown = await answerTo(['packet', 'demo/dossier', 'hare-9', '--list']);
    expect([unknown.exit, unknown.err]).toEqual([
      2,
      'There is no copy hare-9 in desk/copies.csv.\n',
    ]);
    const tick = await answerTo(['packet', 'demo/dossier', 'hare-1', '--list', '--with', 'name']);
    expect(tick.err).toContain('seller, purchase, certificate, costs, notes, place');
  });

  it('names a picture that is none, and packs the others', async () => {
    cpSync('demo/dossier', join(root, 'dossier'), { recursive: true });
    writeFileSync(join(root, 'dossier/desk/photos/hare-1/back.jpg'), 'no picture');
    const { exit, err } = await answerTo(['packet', join(root, 'dossier'), 'hare-1', '--list']);
    expect(exit).toBe(1);
    expect(err).toMatch(/back\.jpg.*It is left out\./);
  });
});
