import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dayFrom, isoOf } from '../../evidence/index.ts';
import { type CalendarEntry, calendarOf } from './calendar.ts';

const read = (name: string) =>
  readFileSync(new URL(`../../../checks/fixtures/market/${name}`, import.meta.url), 'utf8');
const entry = (over: Partial<CalendarEntry>): CalendarEntry => ({
  copy: 'hare-1',
  parcel: '',
  against: 'seller',
  startsFrom: 'arrived',
  startsOn: '2026-06-18',
  days: 14,
  counts: 'calendar',
  done: '',
  last: dayFrom('2026-07-01'),
  left: 1,
  called: 'hare-1, Ninefen; wave 1, “밀물종 토끼” \\ plain',
  ...over,
});
const ENTRIES = [
  entry({}),
  entry({
    copy: '',
    parcel: 'seoul-august',
    against: 'carrier',
    days: 7,
    counts: 'working',
    last: dayFrom('2026-12-31'),
  }),
];

describe('the calendar of deadlines', () => {
  const written = calendarOf(ENTRIES, dayFrom('2026-06-30'));

  it('is the file that an independent reader was given', () => {
    expect(written).toBe(read('deadlines.ics'));
  });

  // icalendar 4.0.3 for Python, checks/makers/calendar/read.py.
  it('is read by it as it was meant', () => {
    const { version, events } = JSON.parse(read('deadlines.json'));
    expect(version).toBe('2.0');
    expect(events).toHaveLength(ENTRIES.length);
    for (const [i, event] of events.entries()) {
      const { last, against, called, days, counts } = ENTRIES[i] as CalendarEntry;
      expect(event).toMatchObject({
        start: isoOf(last),
        end: isoOf(last + 1),
        summary: `Last day against ${against}: ${called}`,
        warning: ['-2 days, 0:00:00'],
      });
      expect(event.description).toContain(`${days} ${counts} days from arrived on 2026-06-18`);
    }
    expect(new Set(events.map(({ uid }: { uid: string }) => uid)).size).toBe(ENTRIES.length);
  });

  it('keeps to lines of 75 octets that end with CR and LF', () => {
    const lines = written.split('\r\n');
    expect(written.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  });
});
