import { describe, expect, it } from 'vitest';
import { plannedCut, readMarks, retimedCut } from '../../src/chronicle/index.ts';
import { TWO } from './scripts.ts';

const planned = plannedCut(TWO);

function placesBy(...lines: readonly string[]) {
  const { marks, faults } = readMarks(lines.join('\n'));
  expect(faults).toEqual([]);
  return retimedCut(planned, marks).takes.map(({ line, from, to }) => [
    line.id,
    Math.round(from * 1000) / 1000,
    Math.round(to * 1000) / 1000,
  ]);
}

describe('a file of marks', () => {
  it('is read in order of time, comments and blank lines left out', () => {
    const { marks, faults } = readMarks(
      [
        '# recorded in June',
        '0:00:09.5 line one.2',
        '',
        '0:03.25 line one.1',
        '1:00:00.000 end',
      ].join('\r\n'),
    );
    expect(faults).toEqual([]);
    expect(marks).toEqual([
      { is: 'line', at: 3.25, line: 'one.1' },
      { is: 'line', at: 9.5, line: 'one.2' },
      { is: 'end', at: 3600 },
    ]);
  });

  it('holds what was seen on a copy, and when', () => {
    const { marks } = readMarks(
      '0:01:02.500 seen 2026-06-18T20:31:04+03:00 hare-1 Two specks at the top',
    );
    expect(marks).toEqual([
      {
        is: 'seen',
        at: 62.5,
        clock: '2026-06-18T20:31:04+03:00',
        copy: 'hare-1',
        note: 'Two specks at the top',
      },
    ]);
  });

  it('names every line that it cannot read, and what was expected', () => {
    const { faults } = readMarks(
      'soon line one.1\n0:01 begin\n0:02 line\n0:03 seen noon hare-1 words\n0:04 seen 2026-06-18T20:31:04Z hare-1',
    );
    expect(faults.map(({ row, expected }) => [row, expected])).toEqual([
      [1, 'a time such as 0:01:02.500'],
      [2, 'line, hold, on, end or seen after the time'],
      [3, 'the id of a line after the word line'],
      [4, 'a time of day such as 2026-06-18T20:10:00+03:00 after the word seen'],
      [5, 'a copy and what was seen on it'],
    ]);
  });
});

describe('a cut that marks re-time', () => {
  it('puts each line where it was marked, and ends it where the next begins', () => {
    expect(
      placesBy(
        '0:05 line one.2',
        '0:07.5 line one.3',
        '0:11 line two.1',
        '0:12 line two.2',
        '0:14 end',
      ),
    ).toEqual([
      ['one.2', 5, 7.5],
      ['one.3', 7.5, 11],
      ['two.1', 11, 12],
      ['two.2', 12, 14],
    ]);
  });

  it('takes the last time that a line was said', () => {
    expect(
      placesBy(
        '0:01 line two.1',
        '0:04 line two.2',
        '0:06 line two.1',
        '0:09 line two.2',
        '0:12 end',
      ),
    ).toEqual([
      ['two.1', 6, 9],
      ['two.2', 9, 12],
    ]);
  });

  it('leaves out the time in which the reader held', () => {
    expect(
      placesBy('0:01 line two.1', '0:02 hold', '0:10 on', '0:12 line two.2', '0:15 end'),
    ).toEqual([
      ['two.1', 1, 12],
      ['two.2', 12, 15],
    ]);
  });

  it('shares the time between marks by how long lines take to read', () => {
    const [a, b] = TWO.scenes[1]!.lines;
    const split = 10 + (6 * a!.seconds) / (a!.seconds + b!.seconds);
    expect(placesBy('0:10 line two.1', '0:16 end')).toEqual([
      ['two.1', 10, Math.round(split * 1000) / 1000],
      ['two.2', Math.round(split * 1000) / 1000, 16],
    ]);
  });

  it('lets no line stay longer than twice its reading', () => {
    const [, second] = TWO.scenes[1]!.lines;
    expect(placesBy('0:10 line two.2', '9:00 end')).toEqual([
      ['two.2', 10, Math.round((10 + 2 * second!.seconds) * 1000) / 1000],
    ]);
  });

  it('refuses a mark of a line that the script does not have', () => {
    const { marks } = readMarks('0:01 line three.1');
    expect(() => retimedCut(planned, marks)).toThrow('the script has no line three.1');
  });

  it('by marks at the planned places is the plan', () => {
    const marks = planned.takes.map(
      ({ line, from }) => ({ is: 'line', at: from, line: line.id }) as const,
    );
    const cut = retimedCut(planned, marks);
    expect(cut.takes.map(({ from }) => from)).toEqual(planned.takes.map(({ from }) => from));
  });
});
