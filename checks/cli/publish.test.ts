import { describe, expect, it } from 'vitest';
import { answerTo } from './answer.ts';

interface Leaves {
  readonly leaving: readonly {
    readonly file: string;
    readonly row: number | null;
    readonly what: string;
    readonly leaves: boolean;
  }[];
}

describe('publish --list', () => {
  it('lists what leaves of the demo, and what stays', async () => {
    const { exit, out } = await answerTo(['publish', 'demo/dossier', '--list', '--json']);
    const { leaving } = JSON.parse(out) as Leaves;
    expect(exit).toBe(0);
    const rows = (file: string, leaves: boolean) =>
      leaving.flatMap((one) => (one.file === file && one.leaves === leaves ? [one.row] : []));
    // Rows that traits.csv and sources.csv of the demo mark with `no`, the header being row 1.
    expect(rows('traits.csv', false)).toEqual([17, 19, 29, 31]);
    expect(rows('sources.csv', false)).toEqual([13]);
    expect(leaving.filter(({ file, leaves }) => leaves && file.startsWith('desk/'))).toEqual([]);
    expect(
      leaving.filter(({ what, leaves }) => leaves && /e-mail|telephone|address/.test(what)),
    ).toEqual([]);
  });

  it('says in words where each thing stands', async () => {
    const { out } = await answerTo(['publish', 'demo/dossier', '--list']);
    expect(out).toContain('The desk stays with its owner.');
    expect(out).toMatch(/pictures\.csv +34 +picture +pictures\/gb-first-1\.jpg/);
  });
});
