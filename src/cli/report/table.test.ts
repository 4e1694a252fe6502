import { describe, expect, it } from 'vitest';
import { tableOf } from './table.ts';
import { widthOf } from './width.ts';

describe('tableOf', () => {
  it('aligns wide letters by what they take on the screen', () => {
    const rows = [
      ['파도', '1', 'x'],
      ['tide', '20', 'y'],
    ];
    const columns = [{ head: 'name' }, { head: 'p', align: 'right' }, { head: '' }] as const;
    expect(tableOf(columns, rows, 80)).toBe('name   p\n파도   1  x\ntide  20  y\n');
  });

  it('wraps the last column within the width and leaves no blanks at the end', () => {
    const rows = [['a', 'many words that do not fit on one line of so narrow a terminal as this']];
    const table = tableOf([{ head: 'id' }, { head: 'why' }], rows, 40);
    const lines = table.trimEnd().split('\n');
    expect(lines.length).toBe(3);
    for (const line of lines) {
      expect(widthOf(line)).toBeLessThanOrEqual(40);
      expect(line).toBe(line.trimEnd());
    }
  });

  it('puts a text below its row, across all columns', () => {
    const table = tableOf([{ head: 'id' }, { head: '' }], [['a', 'z'], 'nothing bounds it'], 60);
    expect(table).toBe('id\na   z\n    nothing bounds it\n');
  });

  it('wraps a head before it narrows any cell', () => {
    const rows = [['abcdefgh', 'word word']];
    const columns = [{ head: 'id' }, { head: 'after the one above' }];
    expect(tableOf(columns, rows, 20)).toBe(
      'id        after the\n          one above\nabcdefgh  word word\n',
    );
  });

  it('narrows the widest column first', () => {
    const wide = 'word '.repeat(20).trim();
    const lines = tableOf([{ head: 'id' }, { head: 'a' }], [['abcdefgh', wide]], 30).split('\n');
    expect(lines[1]).toBe('abcdefgh  word word word word');
  });
});
