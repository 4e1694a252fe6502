import { type Rule, wholeOf } from './rules.ts';

const DIGITS = [...'영일이삼사오육칠팔구'];
const PLACES = ['', '십', '백', '천'];
const NATIVE_ONES = ['', '한', '두', '세', '네', '다섯', '여섯', '일곱', '여덟', '아홉'];
const NATIVE_TENS = ['', '열', '스물', '서른', '마흔', '쉰', '예순', '일흔', '여든', '아흔'];
/** Words after which Korean counts with its own numbers: sheets, pieces, kinds, people, volumes. */
const NATIVE_COUNTERS = '장|개국|개|가지|종|명|권|곳|달|시간';

/** A whole number below 10^12 in Sino-Korean words: `천구백구십팔`. */
export function koreanCardinal(n: number): string {
  if (n === 0) return DIGITS[0]!;
  const groups = [
    [1e8, '억'],
    [1e4, '만'],
    [1, ''],
  ] as const;
  return groups
    .map(([size, name]) => groupOf(Math.floor(n / size) % 1e4, name))
    .filter((group) => group !== '')
    .join(' ');
}

/** Four digits; a one is said before the places only at the end, and not before 만. */
function groupOf(n: number, name: string): string {
  if (n === 0) return '';
  if (n === 1 && name === '만') return name;
  const digits = [...String(n)].map(Number);
  const said = digits.map((digit, i) => {
    const place = PLACES[digits.length - 1 - i]!;
    return digit === 0 ? '' : `${digit === 1 && place !== '' ? '' : DIGITS[digit]}${place}`;
  });
  return `${said.join('')}${name}`;
}

/** A number from 1 to 99 in Korean's own words before what is counted: `스물세`; above, Sino-Korean. */
export function koreanCount(n: number): string {
  if (n < 1 || n > 99) return koreanCardinal(n);
  if (n === 20) return '스무';
  return `${NATIVE_TENS[Math.floor(n / 10)]}${NATIVE_ONES[n % 10]}`;
}

/** An ordinal with Korean's own numbers: `첫 번째`, `두 번째`. */
export function koreanOrdinal(n: number): string {
  return n === 1 ? '첫 번째' : `${koreanCount(n)} 번째`;
}

/** A month as it is said: the sixth and the tenth lose their last sound (Standard Korean, 한글 맞춤법 52). */
export function koreanMonth(month: number): string {
  if (month === 6) return '유월';
  return month === 10 ? '시월' : `${koreanCardinal(month)}월`;
}

/** A decimal number as it is said, digit by digit after the point, zeros as 공. */
export function koreanDecimal(text: string): string {
  const [whole = '', digits = ''] = text.split('.');
  const said = [...digits].map((d) => (d === '0' ? '공' : DIGITS[Number(d)]));
  return `${koreanCardinal(wholeOf(whole))}점${said.join('')}`;
}

const sino = (text: string) => koreanCardinal(wholeOf(text));

/** How Korean says dates, shares and numbers that stand in a text; applied in this order. */
export const KOREAN: readonly Rule[] = [
  [
    /\b(\d{4})-(\d\d)-(\d\d)/g,
    (_, y, m, d) => `${sino(y)}년 ${koreanMonth(Number(m))} ${sino(d)}일`,
  ],
  [/(\d{1,2})월/g, (_, month) => koreanMonth(Number(month))],
  [/ ?± ?/g, () => ' 더하기 빼기 '],
  [/> ?([\d.]+)/g, (_, n) => `${n} 초과`],
  [/< ?([\d.]+)/g, (_, n) => `${n} 미만`],
  [/([₩€])\s?(\d[\d,.]*\d|\d)/g, (_, sign, amount) => `${amount} ${sign === '₩' ? '원' : '유로'}`],
  [/(\d) ?%/g, (_, digit) => `${digit} 퍼센트`],
  [/(\d) ?mm\b/g, (_, digit) => `${digit} 밀리미터`],
  [/(\d) ?g\b/g, (_, digit) => `${digit} 그램`],
  [/(\d) ?[~–] ?(\d)/g, (_, from, to) => `${from}에서 ${to}`],
  [/1\/(\d+)/g, (_, n) => `${sino(n)}분의 일`],
  [/(\d+) ?번째/g, (_, n) => koreanOrdinal(Number(n))],
  [/(\d{1,3}(?:,\d{3})+|\d+)\.(\d+)/g, (_, whole, digits) => koreanDecimal(`${whole}.${digits}`)],
  [
    new RegExp(`(\\d[\\d,]*) ?(${NATIVE_COUNTERS})`, 'g'),
    (_, n, counter) => `${koreanCount(wholeOf(n))} ${counter}`,
  ],
  [/([A-Z]{1,3})-?(\d+)/g, (_, letters, n) => `${[...letters].join(' ')} ${n}`],
  [/\d{1,3}(?:,\d{3})+|\d+/g, (n) => sino(n)],
];
