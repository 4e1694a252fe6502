import { type Rule, wholeOf } from './rules.ts';

const DIGITS = ['ゼロ', 'いち', 'に', 'さん', 'よん', 'ご', 'ろく', 'なな', 'はち', 'きゅう'];
const HUNDREDS: Readonly<Record<number, string>> = {
  1: 'ひゃく',
  3: 'さんびゃく',
  6: 'ろっぴゃく',
  8: 'はっぴゃく',
};
const THOUSANDS: Readonly<Record<number, string>> = { 1: 'せん', 3: 'さんぜん', 8: 'はっせん' };
const DAYS: Readonly<Record<number, string>> = {
  1: 'ついたち',
  2: 'ふつか',
  3: 'みっか',
  4: 'よっか',
  5: 'いつか',
  6: 'むいか',
  7: 'なのか',
  8: 'ようか',
  9: 'ここのか',
  10: 'とおか',
  14: 'じゅうよっか',
  17: 'じゅうしちにち',
  19: 'じゅうくにち',
  20: 'はつか',
  24: 'にじゅうよっか',
  27: 'にじゅうしちにち',
  29: 'にじゅうくにち',
};
const MONTHS: Readonly<Record<number, string>> = { 4: 'し', 7: 'しち', 9: 'く' };

/** A whole number below 10^12 in kana, as it is read: `せんきゅうひゃくきゅうじゅうはち`. */
export function japaneseCardinal(n: number): string {
  if (n === 0) return DIGITS[0]!;
  const groups = [
    [1e8, 'おく'],
    [1e4, 'まん'],
    [1, ''],
  ] as const;
  return groups.map(([size, name]) => groupOf(Math.floor(n / size) % 1e4, name)).join('');
}

function groupOf(n: number, name: string): string {
  if (n === 0) return '';
  const thousand = Math.floor(n / 1000);
  const hundred = Math.floor(n / 100) % 10;
  const ten = Math.floor(n / 10) % 10;
  const said = [
    thousand === 0 ? '' : placed(thousand, THOUSANDS, 'せん'),
    hundred === 0 ? '' : placed(hundred, HUNDREDS, 'ひゃく'),
    ten === 0 ? '' : `${ten === 1 ? '' : DIGITS[ten]}じゅう`,
    n % 10 === 0 ? '' : DIGITS[n % 10]!,
  ];
  return `${said.join('')}${name}`;
}

function placed(digit: number, odd: Readonly<Record<number, string>>, place: string): string {
  return odd[digit] ?? `${DIGITS[digit]}${place}`;
}

/** A year as it is read. */
export function japaneseYear(year: number): string {
  return `${japaneseCardinal(year).replace(/よん$/, 'よ')}ねん`;
}

/** A month as it is read. */
export function japaneseMonth(month: number): string {
  return `${MONTHS[month] ?? japaneseCardinal(month)}がつ`;
}

/** A day of the month as it is read. */
export function japaneseDay(day: number): string {
  return DAYS[day] ?? `${japaneseCardinal(day)}にち`;
}

/** A decimal number as it is read, digit by digit after the point. */
export function japaneseDecimal(text: string): string {
  const [whole = '', digits = ''] = text.split('.');
  const head = wholeOf(whole) === 0 ? 'れい' : shortened(japaneseCardinal(wholeOf(whole)));
  return `${head}てん${[...digits].map((d) => (d === '0' ? 'ゼロ' : DIGITS[Number(d)])).join('')}`;
}

/** The last sound of a number before て and し: 一, 八 and 十 are cut short. */
function shortened(kana: string): string {
  return kana
    .replace(/いち$/, 'いっ')
    .replace(/はち$/, 'はっ')
    .replace(/じゅう$/, 'じゅっ');
}

const read = (text: string) => japaneseCardinal(wholeOf(text));

/** How Japanese says dates, shares and numbers that stand in a text; applied in this order. */
export const JAPANESE: readonly Rule[] = [
  [/([\d年月日%]) ?[〜～–] ?(?=\d)/g, (_, before) => `${before}から`],
  [
    /\b(\d{4})-(\d\d)-(\d\d)/g,
    (_, y, m, d) => japaneseYear(Number(y)) + japaneseMonth(Number(m)) + japaneseDay(Number(d)),
  ],
  [/(\d{4})年/g, (_, year) => japaneseYear(Number(year))],
  [/(\d{1,2})月(?!間)/g, (_, month) => japaneseMonth(Number(month))],
  [/(\d{1,2})日(?!間)/g, (_, day) => japaneseDay(Number(day))],
  [/ ?± ?/g, () => 'プラスマイナス'],
  [/> ?([\d.]+)/g, (_, n) => `${n}を超える`],
  [/< ?([\d.]+)/g, (_, n) => `${n}未満`],
  [
    /([¥￥€])\s?(\d[\d,.]*\d|\d)/g,
    (_, sign, amount) => `${amount}${sign === '€' ? 'ユーロ' : 'えん'}`,
  ],
  [/(\d) ?[%％]/g, (_, digit) => `${digit}パーセント`],
  [/(\d) ?mm\b/g, (_, digit) => `${digit}ミリ`],
  [/(\d) ?g\b/g, (_, digit) => `${digit}グラム`],
  [/1\/(\d+)/g, (_, n) => `${read(n)}ぶんのいち`],
  [/(\d{1,3}(?:,\d{3})+|\d+)\.(\d+)/g, (_, whole, digits) => japaneseDecimal(`${whole}.${digits}`)],
  [/(\d[\d,]*)枚/g, (_, n) => `${read(n)}まい`],
  [/(\d[\d,]*)種類/g, (_, n) => `${shortened(read(n))}しゅるい`],
  [/(\d[\d,]*)点/g, (_, n) => `${shortened(read(n))}てん`],
  [/(\d[\d,]*)番/g, (_, n) => `${read(n)}ばん`],
  [/([A-Z]{1,3})-?(\d+)/g, (_, letters, n) => `${[...letters].join(' ')} ${n}`],
  [/\d{1,3}(?:,\d{3})+|\d+/g, (n) => read(n)],
];
