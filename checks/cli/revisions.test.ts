import { appendFileSync, cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

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

  it('freezes the dossier with the hash that another program finds', async () => {
    const { exit } = await answerTo(['revisions', folder, '--freeze']);
    const frozen = JSON.parse(readFileSync(first, 'utf8'));
    expect(exit).toBe(0);
    expect(frozen.files).toEqual(witness.files);
    expect(frozen.sha512).toBe(witness.sha512);
    expect(frozen.day).toBe('2026-06-30');
    expect(frozen.claims).toHaveLength(139);
  });

  it('freezes nothing twice, and the same bytes in another folder', async () => {
    expect((await answerTo(['revisions', folder, '--freeze'])).out).toContain('Nothing changed');
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
