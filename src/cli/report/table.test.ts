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

  it('holds a column at its widest', () => {
    const table = tableOf([{ head: 'id', most: 4 }, { head: '' }], [['abcdefgh', 'z']], 60);
    expect(table).toBe('id\nabcd  z\nefgh\n');
  });
});
