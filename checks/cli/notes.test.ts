import { describe, expect, it } from 'vitest';
import { answerTo, inputPath } from './answer.ts';

const sheet = inputPath('notes/sheet.txt');

interface Line {
  readonly line: number;
  readonly claims: readonly { property: string; value: string; source: string | null; p: number }[];
}

describe('notes', () => {
  it('prints each line with its claims, a two-way day left open', async () => {
    const { exit, out, err } = await answerTo(['notes', sheet, inputPath('quiet'), '--json']);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const { lines } = JSON.parse(out) as { lines: readonly Line[] };
    const values = (row: number) =>
      lines.find(({ line }) => line === row)?.claims.map(({ value }) => value) ?? [];
    expect(values(3)).toEqual(['1999-10']);
    expect(values(4)).toEqual(['1997-05-16']);
    expect(values(5)).toEqual([]);
    expect(values(6)).toEqual(['[1998-03-04,1998-04-03]']);
  });

  it('shows a readable table, without a dossier too', async () => {
    const { exit, out } = await answerTo(['notes', sheet]);
    expect(exit).toBe(0);
    expect(out).toContain('16 May 1997');
    expect(out).toMatch(/^\s+4 +fi first/m);
  });
});
