import { monthName } from '../../../evidence/index.ts';
import { type Rule, wholeOf } from './rules.ts';

const SMALL = [
  ...['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'],
  ...['eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen'],
  'nineteen',
];
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const GROUPS = [
  [1e9, 'billion'],
  [1e6, 'million'],
  [1e3, 'thousand'],
] as const;
const ODD_ORDINALS: Readonly<Record<string, string>> = {
  one: 'first',
  two: 'second',
  three: 'third',
  five: 'fifth',
  eight: 'eighth',
  nine: 'ninth',
  twelve: 'twelfth',
};
const CURRENCIES: Readonly<Record<string, string>> = {
  '£': 'pounds',
  '€': 'euros',
  $: 'dollars',
  US$: 'US dollars',
  R$: 'reais',
  '₩': 'won',
  '¥': 'yen',
  PLN: 'zloty',
};
const UNITS: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  g: 'grams',
  lpi: 'lines an inch',
  dpi: 'dots an inch',
};

/** A whole number below 10^12 in words, as British English says it: `one hundred and one`. */
export function englishCardinal(n: number): string {
  if (n < 20) return SMALL[n] ?? '';
  if (n < 100) return joined(TENS[Math.floor(n / 10) - 2]!, n % 10, '-');
  if (n < 1000) return joined(`${englishCardinal(Math.floor(n / 100))} hundred`, n % 100, ' and ');
  const [size, name] = GROUPS.find(([least]) => n >= least)!;
  const head = `${englishCardinal(Math.floor(n / size))} ${name}`;
  return joined(head, n % size, n % size < 100 ? ' and ' : ' ');
}

function joined(head: string, rest: number, by: string): string {
  return rest === 0 ? head : `${head}${by}${englishCardinal(rest)}`;
}

/** An ordinal in words: `twenty-first`. */
export function englishOrdinal(n: number): string {
  return englishCardinal(n).replace(
    /[a-z]+$/,
    (last) => ODD_ORDINALS[last] ?? `${last.replace(/y$/, 'ie')}th`,
  );
}

/** A year as it is said, in pairs but for the first ten of a thousand: `nineteen oh-five`. */
export function englishYear(year: number): string {
  const [century, rest] = [Math.floor(year / 100), year % 100];
  if (year < 1000 || (century % 10 === 0 && rest < 10)) return englishCardinal(year);
  if (rest === 0) return `${englishCardinal(century)} hundred`;
  const tail = rest < 10 ? `oh-${englishCardinal(rest)}` : englishCardinal(rest);
  return `${englishCardinal(century)} ${tail}`;
}

/** A decimal number as it is said, digit by digit after the point. */
export function englishDecimal(text: string): string {
  const [whole = '', digits = ''] = text.split('.');
  return `${englishCardinal(wholeOf(whole))} point ${[...digits].map((d) => SMALL[Number(d)]).join(' ')}`;
}

const MONTH = `(${Array.from({ length: 12 }, (_, i) => {
  const name = monthName(i + 1);
  return name.length > 3 ? `${name}|${name.slice(0, 3)}` : name;
}).join('|')})\\b\\.?`;
const DAY = '(\\d{1,2})';
const YEAR = '(\\d{4})';
const LINK = '( to | and | or |[–-])';

const theDay = (day: string) => `the ${englishOrdinal(Number(day))}`;
const year = (text: string) => englishYear(Number(text));

function monthOf(text: string): string {
  const all = Array.from({ length: 12 }, (_, i) => monthName(i + 1));
  return all.find((name) => name.startsWith(text)) ?? text;
}

function link(text: string): string {
  return /[–-]/.test(text) ? ' to ' : text;
}

/** How English says dates, shares and numbers that stand in a text; applied in this order. */
export const ENGLISH: readonly Rule[] = [
  [
    /\b(\d{4})-(\d\d)-(\d\d)\b/g,
    (_, y, m, d) => `${theDay(d)} of ${monthName(Number(m))} ${year(y)}`,
  ],
  [
    new RegExp(`\\b${DAY}${LINK}${DAY} ${MONTH}(?: ${YEAR}\\b)?`, 'g'),
    (_, from, by, to, month, y) =>
      `${theDay(from)}${link(by)}${theDay(to)} of ${monthOf(month)}${y ? ` ${year(y)}` : ''}`,
  ],
  [
    new RegExp(`\\b(?:the )?${DAY} ${MONTH}(?: ${YEAR}\\b)?`, 'g'),
    (_, day, month, y) => `${theDay(day)} of ${monthOf(month)}${y ? ` ${year(y)}` : ''}`,
  ],
  [new RegExp(`\\b${MONTH} ${YEAR}\\b`, 'g'), (_, month, y) => `${monthOf(month)} ${year(y)}`],
  [/\b(\d{3}0)s\b/g, (_, decade) => `${year(decade).replace(/y$/, 'ie')}s`],
  [/\b(\d+)(st|nd|rd|th)\b/g, (_, n) => englishOrdinal(Number(n))],
  [/\b1\/(\d+)\b/g, (_, n) => `one in ${englishCardinal(Number(n))}`],
  [/ ?± ?/g, () => ' plus or minus '],
  [/([<>]) ?(?=\d)/g, (_, sign) => (sign === '<' ? 'less than ' : 'more than ')],
  [
    /(US\$|R\$|[£€$₩¥]|[A-Z]{3} ?)(\d[\d,.]*\d|\d)/g,
    (whole, sign, amount) =>
      CURRENCIES[sign!.trim()] ? `${amount} ${CURRENCIES[sign!.trim()]}` : whole,
  ],
  [/(\d) ?%/g, (_, digit) => `${digit} per cent`],
  [/(\d) (mm|cm|g|lpi|dpi)\b/g, (_, digit, unit) => `${digit} ${UNITS[unit]}`],
  [/(\d)–(\d)/g, (_, from, to) => `${from} to ${to}`],
  [/\b([A-Z]{1,3})-?(\d+)\b/g, (_, letters, n) => `${[...letters].join(' ')} ${n}`],
  [/\b(\d{1,3}(?:,\d{3})+|\d+)\.\d+\b/g, (decimal) => englishDecimal(decimal.replaceAll(',', ''))],
  [/\b\d{1,3}(?:,\d{3})+\b/g, (grouped) => englishCardinal(wholeOf(grouped))],
  [/\b(1\d{3}|20\d\d)\b/g, (y) => year(y)],
  [/\b\d+\b/g, (n) => englishCardinal(Number(n))],
];
