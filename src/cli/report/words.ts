import { dayOf } from '../../evidence/index.ts';

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** A day as people write it: `4 Mar 1996`. */
export function dayInWords(iso: string): string {
  const { year, month, dayOfMonth } = partsOf(iso);
  return `${dayOfMonth} ${MONTHS[month - 1]} ${year}`;
}

/** A run of days as people write it, what both ends share said once: `28 Mar – 3 Apr 1996`. */
export function runInWords(first: string, last: string): string {
  if (first === last) return dayInWords(first);
  const a = partsOf(first);
  const b = partsOf(last);
  if (isWholeMonth(first, last)) return `${MONTHS[a.month - 1]} ${a.year}`;
  if (a.year !== b.year) return `${dayInWords(first)} – ${dayInWords(last)}`;
  const month = a.month === b.month ? '' : ` ${MONTHS[a.month - 1]}`;
  return `${a.dayOfMonth}${month} – ${dayInWords(last)}`;
}

function isWholeMonth(first: string, last: string): boolean {
  const { year, month, dayOfMonth } = partsOf(first);
  const end = dayOf(month === 12 ? year + 1 : year, month === 12 ? 1 : month + 1, 1) - 1;
  const b = partsOf(last);
  return dayOfMonth === 1 && dayOf(b.year, b.month, b.dayOfMonth) === end;
}

function partsOf(iso: string): { year: number; month: number; dayOfMonth: number } {
  const [, year = '', month = '', dayOfMonth = ''] = /^(-?\d+)-(\d\d)-(\d\d)$/.exec(iso) ?? [];
  return { year: Number(year), month: Number(month), dayOfMonth: Number(dayOfMonth) };
}

/**
 * A date of ISO 8601-2 as people write it, where there is a plain way: a day, a month, one of
 * several days; `?` stays and `~` becomes *about*. Every other date stays as it is.
 */
export function dateInWords(edtf: string): string {
  const [, bare = '', doubt = ''] = /^([\d-]+)([?~%])$/.exec(edtf) ?? [];
  if (doubt !== '') {
    return `${doubt === '?' ? '' : 'about '}${dateInWords(bare)}${doubt === '~' ? '' : '?'}`;
  }
  if (/^\d{4}-\d\d-\d\d$/.test(edtf)) return dayInWords(edtf);
  const [, year = '', month = ''] = /^(\d{4})-(0[1-9]|1[0-2])$/.exec(edtf) ?? [];
  if (year !== '') return `${MONTHS[Number(month) - 1]} ${year}`;
  const [, members = ''] = /^\[([\d,?~%-]+)\]$/.exec(edtf) ?? [];
  return members === '' ? edtf : members.split(',').map(dateInWords).join(' or ');
}

/** A probability in per cent that never claims to be certain: `>99 %`, `97 %`, `<1 %`. */
export function percent(p: number): string {
  if (p >= 0.995) return '>99 %';
  if (p <= 0.005) return '<1 %';
  return `${Math.round(p * 100)} %`;
}

/** A number with its noun, in the plural unless it is one. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
