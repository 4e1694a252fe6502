import { type Rule, wholeOf } from './rules.ts';

const SMALL = [
  ...['zero', 'um', 'dois', 'três', 'quatro', 'cinco', 'seis', 'sete', 'oito', 'nove', 'dez'],
  ...['onze', 'doze', 'treze', 'catorze', 'quinze', 'dezesseis', 'dezessete', 'dezoito'],
  'dezenove',
];
const TENS = [
  'vinte',
  'trinta',
  'quarenta',
  'cinquenta',
  'sessenta',
  'setenta',
  'oitenta',
  'noventa',
];
const HUNDREDS = [
  ...['cento', 'duzentos', 'trezentos', 'quatrocentos', 'quinhentos', 'seiscentos'],
  ...['setecentos', 'oitocentos', 'novecentos'],
];
const ORDINALS = [
  ...['primeiro', 'segundo', 'terceiro', 'quarto', 'quinto', 'sexto', 'sétimo', 'oitavo', 'nono'],
];
const TENTHS = [
  ...['décimo', 'vigésimo', 'trigésimo', 'quadragésimo', 'quinquagésimo', 'sexagésimo'],
  ...['septuagésimo', 'octogésimo', 'nonagésimo'],
];
const CURRENCIES: Readonly<Record<string, string>> = { R$: 'reais', '€': 'euros', '£': 'libras' };
const MONTHS =
  'janeiro|fevereiro|março|abril|maio|junho|julho|agosto|setembro|outubro|novembro|dezembro';
const MONTH_NAMES = MONTHS.split('|');

/** A whole number below 10^12 in words, as Brazil says it; `feminine` counts what is feminine. */
export function portugueseCardinal(n: number, feminine = false): string {
  if (n < 20) return genderOf(SMALL[n] ?? '', feminine);
  if (n < 100) return joined(TENS[Math.floor(n / 10) - 2]!, n % 10, ' e ', feminine);
  if (n === 100) return 'cem';
  if (n < 1000) {
    return joined(genderOf(HUNDREDS[Math.floor(n / 100) - 1]!, feminine), n % 100, ' e ', feminine);
  }
  const [size, one, more] = sizeOf(n);
  const times = Math.floor(n / size);
  const head =
    times > 1
      ? `${portugueseCardinal(times, feminine && size === 1000)} ${more}`
      : size === 1000
        ? 'mil'
        : `um ${one}`;
  const rest = n % size;
  return joined(head, rest, rest < 100 || rest % 100 === 0 ? ' e ' : ' ', feminine);
}

function sizeOf(n: number): readonly [number, string, string] {
  if (n >= 1e9) return [1e9, 'bilhão', 'bilhões'];
  return n >= 1e6 ? [1e6, 'milhão', 'milhões'] : [1000, 'mil', 'mil'];
}

function joined(head: string, rest: number, by: string, feminine: boolean): string {
  return rest === 0 ? head : `${head}${by}${portugueseCardinal(rest, feminine)}`;
}

function genderOf(word: string, feminine: boolean): string {
  if (!feminine) return word;
  if (word === 'um') return 'uma';
  return word === 'dois' ? 'duas' : word.replace(/entos$/, 'entas').replace(/hentos$/, 'hentas');
}

/** An ordinal from 1 to 99 in words: `vigésimo primeiro`, `vigésima primeira`. */
export function portugueseOrdinal(n: number, feminine = false): string {
  const words = [TENTHS[Math.floor(n / 10) - 1], ORDINALS[(n % 10) - 1]];
  const said = words.filter((word) => word !== undefined);
  return (feminine ? said.map((word) => word.replace(/o$/, 'a')) : said).join(' ');
}

/** A decimal number as it is said, digit by digit after the comma. */
export function portugueseDecimal(text: string): string {
  const [whole = '', digits = ''] = text.split(',');
  return `${portugueseCardinal(wholeOf(whole))} vírgula ${[...digits].map((d) => SMALL[Number(d)]).join(' ')}`;
}

/** A word that stands right after a number and is counted as feminine: what ends so, few excepted. */
function isFeminine(word: string): boolean {
  if (/^(dias|mapas|programas|temas|sistemas|problemas)$/i.test(word)) return false;
  return /(as|ções|sões|dades|gens|fontes)$/i.test(word);
}

const dayOf = (day: string) => (Number(day) === 1 ? 'primeiro' : portugueseCardinal(Number(day)));

/** How Portuguese says dates, shares and numbers that stand in a text; applied in this order. */
export const PORTUGUESE: readonly Rule[] = [
  [
    /\b(\d{4})-(\d\d)-(\d\d)\b/g,
    (_, y, m, d) =>
      `${dayOf(d)} de ${MONTH_NAMES[Number(m) - 1]} de ${portugueseCardinal(Number(y))}`,
  ],
  [
    new RegExp(`\\b(\\d{1,2})º?( a | e | ou )(\\d{1,2}) de (${MONTHS})`, 'g'),
    (_, from, by, to, month) => `${dayOf(from)}${by}${dayOf(to)} de ${month}`,
  ],
  [
    new RegExp(`\\b(\\d{1,2})º? de (${MONTHS})`, 'g'),
    (_, day, month) => `${dayOf(day)} de ${month}`,
  ],
  [/\b(\d+)([ºª])/g, (_, n, mark) => portugueseOrdinal(Number(n), mark === 'ª')],
  [/\b1\/(\d+)\b/g, (_, n) => `um em ${portugueseCardinal(Number(n))}`],
  [/ ?± ?/g, () => ' mais ou menos '],
  [/([<>]) ?(?=\d)/g, (_, sign) => (sign === '<' ? 'menos de ' : 'mais de ')],
  [/(R\$|€|£)\s?(\d[\d,.]*\d|\d)/g, (_, sign, amount) => `${amount} ${CURRENCIES[sign]}`],
  [/(\d) ?%/g, (_, digit) => `${digit} por cento`],
  [/(\d) mm\b/g, (_, digit) => `${digit} milímetros`],
  [/(\d) g\b/g, (_, digit) => `${digit} gramas`],
  [/(\d)–(\d)/g, (_, from, to) => `${from} a ${to}`],
  [/\b([A-Z]{1,3})-?(\d+)\b/g, (_, letters, n) => `${[...letters].join(' ')} ${n}`],
  [/\b\d{1,3}(?:\.\d{3})*,\d+\b/g, (decimal) => portugueseDecimal(decimal)],
  [
    /\b(\d{1,3}(?:\.\d{3})+|\d+)(?: (\p{L}+))?/gu,
    (_, n, word) =>
      `${portugueseCardinal(wholeOf(n), word !== undefined && isFeminine(word))}${word === undefined ? '' : ` ${word}`}`,
  ],
];
