import { civilOf, dayOf } from '../../evidence/index.ts';
import { type Scale, xOf } from './scale.ts';

/** A line of the long axis; minor ones carry no label. */
export interface Tick {
  readonly x: number;
  readonly label: string;
  readonly major: boolean;
}

/** Steps in months: a month, a quarter, then years. */
const STEPS = [1, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 6000];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const MONTH_DAYS = 30.436875;

/** Lines of the long axis, labels at least `apart` pixels from each other. */
export function yearTicks(scale: Scale, apart = 56): readonly Tick[] {
  if (scale.to - scale.from < 130) return dayTicks(scale, apart);
  const perMonth = (scale.width / (scale.to - scale.from)) * MONTH_DAYS;
  const at = STEPS.findIndex((months) => months * perMonth >= apart);
  const major = STEPS[at < 0 ? STEPS.length - 1 : at] ?? 12;
  const minor = minorOf(major, perMonth);
  const ticks: Tick[] = [];
  const start = monthsOf(scale.from);
  for (let month = Math.floor(start / minor) * minor; ; month += minor) {
    const day = dayOf(Math.floor(month / 12), (((month % 12) + 12) % 12) + 1, 1);
    if (day > scale.to || ticks.length > 2000) break;
    if (day < scale.from) continue;
    const isMajor = month % major === 0;
    ticks.push({ x: xOf(scale, day), label: isMajor ? labelOf(month) : '', major: isMajor });
  }
  return ticks;
}

const DAY_STEPS = [1, 2, 7, 14, 28];

function dayTicks(scale: Scale, apart: number): readonly Tick[] {
  const perDay = scale.width / (scale.to - scale.from);
  const step = DAY_STEPS.find((days) => days * perDay >= apart) ?? 28;
  const ticks: Tick[] = [];
  // Weeks are counted from a Monday, 5 January 1970.
  for (let day = Math.ceil((scale.from - 4) / step) * step + 4; day <= scale.to; day += step) {
    const { month, dayOfMonth } = civilOf(day);
    const label = `${dayOfMonth} ${MONTHS[month - 1] ?? ''}`;
    ticks.push({ x: xOf(scale, day), label, major: true });
  }
  return ticks;
}

function minorOf(major: number, perMonth: number): number {
  return STEPS.find((step) => step < major && major % step === 0 && step * perMonth >= 8) ?? major;
}

function monthsOf(day: number): number {
  const { year, month } = civilOf(Math.floor(day));
  return year * 12 + month - 1;
}

function labelOf(months: number): string {
  const year = Math.floor(months / 12);
  const month = months - year * 12;
  return month === 0 ? String(year) : `${MONTHS[month] ?? ''} ${year}`;
}

/** Whether the words of a tick, about 7 pixels a letter, end before the scale does. */
export function fits(tick: Tick, scale: Scale): boolean {
  return tick.x + 4 + 7 * tick.label.length <= scale.width + 8;
}
