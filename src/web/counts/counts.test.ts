import { describe, expect, it } from 'vitest';
import type { LabelRows, WireHistory, WirePrintingCount } from '../../contract/index.ts';
import { bandOf, courseOf, topOf } from './course.ts';
import { rateRows } from './order.ts';
import { BAR_HEIGHT, stackOf } from './stack.ts';
import { type Candidate, wordChanges, wordWithout } from './words.ts';

const scale = { from: 0, to: 100, width: 100 };

describe('the course of a count', () => {
  it('stands on the days of the reports and breaks where one lacks the label', () => {
    const { dots, line } = courseOf([0, 50, 75, 100], [10, null, 20, 40], scale, 40, 80);
    expect(dots.map(({ x, y }) => [x, y])).toEqual([
      [0, 60],
      [75, 40],
      [100, 0],
    ]);
    expect(line).toBe('M0.0 60.0M75.0 40.0L100.0 0.0');
  });

  it('has a round top at or above the most', () => {
    expect([0, 1, 3, 5, 41, 297, 1000].map(topOf)).toEqual([1, 1, 3, 5, 50, 300, 1000]);
  });

  it('has a band between the ends of a share, and none about one dot', () => {
    const course = courseOf([0, 100], [10, 20], scale, 40, 80);
    expect(bandOf(course, 0.5, 1.5, 40, 80)).toBe('M0.0 50.0L100.0 20.0L100.0 60.0L0.0 70.0z');
    expect(bandOf(courseOf([0], [10], scale, 40, 80), 0.5, 1.5, 40, 80)).toBe('');
  });
});

describe('a stacked bar', () => {
  it('is as high as the share of the copies, grades only, the worst lowest', () => {
    const history: WireHistory = {
      service: 'plumb',
      share: 0.5,
      share95: [0.25, 0.75],
      snapshots: [{ as_of: '2026-01-01', day: 10, counts: [20, 0, 60, 7] }],
    };
    const { bars, most } = stackOf(history, 3, 300);
    expect([most, bars[0]?.total]).toEqual([60, 40]);
    expect(bars[0]?.blocks.map(({ grade, height }) => [grade, height / BAR_HEIGHT])).toEqual([
      [0, 10 / 60],
      [2, 30 / 60],
    ]);
    expect(bars[0]?.y).toBeCloseTo(BAR_HEIGHT / 3, 9);
    expect(bars[0]?.doubt?.map((y) => 1 - y / BAR_HEIGHT)).toEqual([expect.closeTo(1 / 3, 9), 1]);
  });
});

describe('top rates', () => {
  const printing = (id: string, rate: number, shrunk: number, total: number) =>
    ({
      id,
      services: [{ service: 'plumb', rate, shrunk, total, shrunk95: [shrunk - 0.01 * total, 1] }],
    }) as unknown as WirePrintingCount;
  const all = [printing('a', 0.3, 0.1, 5), printing('b', 0.2, 0.2, 9), printing('c', 0.1, 0.15, 1)];
  const sorted = (order: Parameters<typeof rateRows>[2]) =>
    rateRows(all, 'plumb', order, ['c', 'a', 'b']).map(({ id }) => id);

  it('are sorted by what the reader chooses', () => {
    expect(sorted('raw')).toEqual(['a', 'b', 'c']);
    expect(sorted('shrunk')).toEqual(['b', 'c', 'a']);
    expect(sorted('sure')).toEqual(['c', 'b', 'a']);
    expect(sorted('copies')).toEqual(['b', 'a', 'c']);
    expect(sorted('release')).toEqual(['c', 'a', 'b']);
  });
});

describe('a word on a label', () => {
  const rows: LabelRows = {
    version: 1,
    rows: [
      { row: 2, cells: { label: 'X', printing: '', grade: '9' } },
      { row: 3, cells: { label: 'X', printing: 'a', grade: '10' } },
    ],
  };

  it('changes the rows that say another thing, and no other cell', () => {
    expect(wordChanges(rows, ['a'])).toEqual([
      {
        ...{ file: 'population.csv', op: 'replace', row: 2 },
        before: rows.rows[0]?.cells,
        after: { label: 'X', printing: 'a', grade: '9' },
      },
    ]);
    expect(wordChanges(rows, 'nothing').map(({ row, after }) => [row, after?.printing])).toEqual([
      [3, ''],
    ]);
    expect(wordChanges(rows, ['a', 'b']).map(({ after }) => after?.printing)).toEqual([
      'a|b',
      'a|b',
    ]);
  });

  it('that rejects one leaves the likely others, else none', () => {
    const of = (printing: string, p: number) => ({ printing, p }) as Candidate;
    const three = [of('a', 0.9), of('b', 0.4), of('c', 0.05)];
    expect(wordWithout(three, 'a')).toEqual(['b']);
    expect(wordWithout(three, 'b')).toEqual(['a']);
    expect(wordWithout([of('a', 0.9), of('c', 0.05)], 'a')).toBe('none');
  });
});
