import {
  appendFileSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answerTo, inputPath } from './answer.ts';

// Hashes by Python's csv, json and hashlib; see checks/makers/revisions.
const witness = JSON.parse(
  readFileSync(new URL('../fixtures/revisions/demo.json', import.meta.url), 'utf8'),
) as { readonly sha512: string; readonly files: object };

/** A copy of the demo's research, in a folder of its own. */
function research(): string {
  const folder = mkdtempSync(join(tmpdir(), 'revisions-'));
  cpSync('demo/dossier', folder, {
    recursive: true,
    filter: (path) => !/demo[\\/]dossier[\\/](desk|pictures)([\\/]|$)/.test(path),
  });
  return folder;
}

describe('revisions', { timeout: 120_000 }, () => {
  const folder = research();
  const first = join(folder, 'revisions', '1.json');

  it('publishing freezes the dossier with the hash that another program finds', async () => {
    const { exit, out } = await answerTo([
      'publish',
      folder,
      '--out',
      join(folder, '..', `${basename(folder)}-site`),
    ]);
    expect(out).toContain('Revision 1 of 2026-07-03 is frozen.');
    const frozen = JSON.parse(readFileSync(first, 'utf8'));
    expect(exit).toBe(0);
    expect(frozen.files).toEqual(witness.files);
    expect(frozen.sha512).toBe(witness.sha512);
    expect(frozen.day).toBe('2026-07-03');
    expect(frozen.claims).toHaveLength(139);
    const kinds = frozen.figures.map(({ name }: { name: string }) => name.split('.')[0]);
    expect([...new Set(kinds)]).toEqual(
      expect.arrayContaining(['release', 'place', 'population', 'top', 'extant', 'accuracy']),
    );
  });

  it('freezes the same bytes in another folder', async () => {
    const other = research();
    await answerTo(['revisions', other, '--freeze']);
    expect(readFileSync(join(other, 'revisions', '1.json'), 'utf8')).toBe(
      readFileSync(first, 'utf8'),
    );
  });

  it('compares what is frozen with the dossier as it stands', async () => {
    appendFileSync(
      join(folder, 'claims.csv'),
      'kr-club,,shop-notices,on-sale,2001-04-04,list 98,,,,\r\n',
    );
    const { exit, out } = await answerTo(['revisions', folder, '1', '--json']);
    const { claims, figures } = JSON.parse(out);
    expect(exit).toBe(0);
    expect(claims.map((one: { what: string }) => one.what)).toContain('new');
    const club = figures.find((one: { name: string }) => one.name === 'release.kr-club');
    expect(club).toMatchObject({ because: 'one source added' });
  });

  it('names a file that is none, and a revision that is not there', async () => {
    expect((await answerTo(['revisions', folder, '7'])).err).toContain('There is no revision 7');
    writeFileSync(join(folder, 'revisions', '2.json'), '{"format": 1, "number": 3}');
    const { exit, err } = await answerTo(['revisions', folder]);
    expect(exit).toBe(1);
    expect(err).toContain('the number 2 of its name');
    expect((await answerTo(['check', folder])).out).toContain('revisions/2.json');
  });
});

describe('publishing a small dossier again', () => {
  const folder = mkdtempSync(join(tmpdir(), 'revisions-'));
  cpSync(inputPath('quiet'), folder, { recursive: true });
  const publish = async (...more: string[]) =>
    (await answerTo(['publish', folder, '--out', `${folder}-site`, ...more])).out;
  const frozen = () => readdirSync(join(folder, 'revisions'));

  it('freezes a revision where something changed, and only then', async () => {
    expect(await publish('--on', '2026-06-30')).toContain('Revision 1 of 2026-06-30 is frozen.');
    expect(await publish('--on', '2026-06-30')).toContain('Nothing changed since revision 1');
    expect((await answerTo(['revisions', folder, '--freeze', '--on', '2026-06-30'])).out).toContain(
      'Nothing changed since revision 1',
    );
    expect(frozen()).toEqual(['1.json']);
    expect(await publish('--on', '2026-07-01')).toContain('Revision 2 of 2026-07-01 is frozen.');
  });

  it('freezes nothing for a proof, nor while a revision is broken', async () => {
    expect(await publish('--on', '2026-08-01', '--proof')).toContain('no revision is frozen');
    writeFileSync(join(folder, 'revisions', '3.json'), '{}');
    const { exit, err } = await answerTo(['publish', folder, '--out', `${folder}-site`]);
    expect([exit, frozen()]).toEqual([2, ['1.json', '2.json', '3.json']]);
    expect(err).toContain('Nothing is frozen while a revision is broken.');
  });
});
