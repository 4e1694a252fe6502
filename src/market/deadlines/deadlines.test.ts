import { describe, expect, it } from 'vitest';
import { dayFrom, isoOf } from '../../evidence/index.ts';
import { clockOf, type DeadlineRow, lastDayOf } from './deadlines.ts';

const row = (over: Partial<DeadlineRow>): DeadlineRow => ({
  copy: 'hare-1',
  parcel: '',
  against: 'seller',
  startsFrom: 'arrived',
  startsOn: '2026-06-18',
  days: 14,
  counts: 'calendar',
  done: '',
  ...over,
});
const copy = { id: 'hare-1', parcel: 'leeds-june' };
const today = dayFrom('2026-06-26');

describe('the last day of a deadline', () => {
  // numpy 2.4.6: busday_offset(start, days - 1, roll='forward').
  it.each([
    ['2026-06-18', 7, '2026-06-26'],
    ['2026-06-20', 1, '2026-06-22'],
    ['2026-06-19', 1, '2026-06-19'],
    ['2026-12-31', 10, '2027-01-13'],
    ['2024-02-29', 23, '2024-04-01'],
    ['2026-06-21', 5, '2026-06-26'],
  ])('%s and %d working days is %s', (start, days, last) => {
    expect(isoOf(lastDayOf(dayFrom(start), days, 'working'))).toBe(last);
  });

  it('of calendar days counts the first of them', () => {
    expect(isoOf(lastDayOf(dayFrom('2026-06-18'), 14, 'calendar'))).toBe('2026-07-01');
  });

  it('wants a day at least', () => {
    expect(() => lastDayOf(today, 0, 'calendar')).toThrow(RangeError);
  });
});

describe('the clock', () => {
  it('has the nearest first, of the copy and of its parcel, and none that is done', () => {
    const { open, unclear } = clockOf(
      [
        row({ days: 30, against: 'venue' }),
        row({}),
        row({ copy: '', parcel: 'leeds-june', against: 'carrier', days: 7, counts: 'working' }),
        row({ done: '2026-06-19', against: 'done' }),
        row({ copy: 'hare-2' }),
        row({ copy: '', parcel: 'other' }),
      ],
      copy,
      today,
    );
    expect(open.map(({ against, left }) => [against, left])).toEqual([
      ['carrier', 0],
      ['seller', 5],
      ['venue', 21],
    ]);
    expect(unclear).toEqual([]);
  });

  it('takes the first day of a start that is known within bounds, and says what is unclear', () => {
    const { open, unclear } = clockOf(
      [
        row({ startsOn: '2026-06-10/2026-06-20' }),
        row({ startsOn: '' }),
        row({ days: Number.NaN }),
        row({ startsOn: 'soon' }),
        row({ startsOn: '../2026-06-20' }),
      ],
      copy,
      today,
    );
    expect(open.map(({ last }) => isoOf(last))).toEqual(['2026-06-23']);
    expect(unclear.map(({ why }) => why)).toEqual([
      'the day on which it starts is not entered',
      'the number of days is not entered',
      'soon is no date',
      'the day on which it starts has no first day',
    ]);
  });
});
