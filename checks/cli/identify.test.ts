import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

const demo = fileURLToPath(new URL('../../demo/dossier', import.meta.url));

interface Answer {
  candidates: { id: string; kind: string; p: number }[];
  unlisted: number;
  next: { trait: string; sees: string; gain_bits: number; gain_per_effort: number }[];
}

async function identified(...words: string[]): Promise<Answer> {
  const { exit, out, err } = await answerTo(['identify', demo, ...words, '--json']);
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  return JSON.parse(out);
}

describe('identify', () => {
  it('prints the fixed parts, which add up to 1', async () => {
    const { candidates, unlisted, next } = await identified('--saw', 'language=ko');
    const all = candidates.reduce((sum, { p }) => sum + p, unlisted);
    // Adds up to 1 to the rounding of twenty additions.
    expect(Math.abs(all - 1)).toBeLessThan(1e-12);
    for (const { kind } of candidates)
      expect(['printing', 'counterfeit', 'alteration']).toContain(kind);
    for (const [i, { gain_bits, gain_per_effort, sees }] of next.entries()) {
      expect([gain_bits > 0, sees !== '']).toEqual([true, true]);
      expect(gain_per_effort).toBeLessThanOrEqual(next[i - 1]?.gain_per_effort ?? Infinity);
    }
  });

  it('names the printing that the traits speak for', async () => {
    const { candidates } = await identified('--saw', 'number=A7', '--saw', 'perforation=left side');
    expect(candidates[0]).toMatchObject({ id: 'gb-annual', kind: 'printing' });
    expect(candidates[0]?.p).toBeGreaterThan(0.9);
  });

  it('holds a copy against known alterations of its printing', async () => {
    const { candidates } = await identified('--copy', 'hare-1');
    const [one, other] = candidates;
    expect([one?.id, other?.id].sort()).toEqual(['gb-first', 'trimmed-first']);
  });

  it('leaves out what was not known on the day', async () => {
    const ids = async (day: string) =>
      (await identified('--saw', 'number=31', '--on', day)).candidates.map(({ id }) => id);
    expect(await ids('2018-06-01')).not.toContain('laser-january');
    expect(await ids('2024-06-01')).toContain('laser-january');
  });

  it('shows a readable report with cautions, and no verdict', async () => {
    const { exit, out } = await answerTo([
      'identify',
      demo,
      '--saw',
      'foil=holofoil',
      '--saw',
      'gloss=high',
    ]);
    expect(exit).toBe(0);
    expect(out).toContain('Where to look next');
    expect(out).toContain('“gloss: high” says nothing');
    expect(out).toContain('This is no verdict on the copy.');
    expect(out).not.toMatch(/genuine|fake/i);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('warns before a look that touches the card', async () => {
    const { out } = await answerTo(['identify', demo, '--copy', 'hare-2']);
    expect(out).toMatch(/scan +front\n +The lid of a scanner presses on a card\. Ask whether/);
  });

  it('makes the key to all printings, as text and as one page to print', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'printlore-key-'));
    const page = join(folder, 'key.html');
    const { exit, out } = await answerTo(['identify', demo, '--key']);
    expect(exit).toBe(0);
    expect(out).toMatch(/^1 {2}number, by eye\n {4}31 → 2$/m);
    expect(out).toMatch(/^ {4}A7 → English Ninefen Annual 2000$/m);
    expect(out).toContain('No known trait tells apart, in every case:');
    expect(out).toContain('Keep this page at home: screen');
    const { exit: written, out: silent } = await answerTo([
      'identify',
      demo,
      '--key',
      '--out',
      page,
    ]);
    expect([written, silent]).toEqual([0, '']);
    const html = readFileSync(page, 'utf8');
    expect(html).toContain('@page{size:A4');
    expect(html).toContain('<b>English Ninefen Annual 2000</b>');
    rmSync(folder, { recursive: true });
  });

  it.each([
    [['--key', '--copy', 'hare-1'], 'neither --copy nor --saw'],
    [['--copy', 'hare-1', '--out', 'key.html'], '--key'],
    [['--key', '--out', join(demo, 'printings.csv', 'key.html')], 'cannot be written'],
    [[], '--copy'],
    [['--saw', 'foil'], 'finish=foil'],
    [['--saw', 'weight=1.8±0 g'], 'a tolerance above 0'],
    [['--copy', 'hare-9'], 'no copy hare-9'],
    [['--saw', 'foil=silver', '--on', 'someday'], 'A day is expected'],
  ])('called with %j says what is wrong', async (words, says) => {
    const { exit, out, err } = await answerTo(['identify', demo, ...words]);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(says);
  });
});
