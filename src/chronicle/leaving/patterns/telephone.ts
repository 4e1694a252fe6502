import type { Found } from './found.ts';

/** Country codes that are assigned (ITU-T E.164, annex to Operational Bulletin 991 of 2011, and +383). */
const COUNTRY =
  /^(1|7|2[07]|3[0-469]|4[013-9]|5[1-8]|6[0-6]|8[1246]|9[0-58]|21[1-368]|2[2346]\d|25[0-8]|29[01789]|3[578]\d|42[013]|50\d|59\d|67[02-9]|68[0-35-9]|69[0-2]|800|808|85[02356]|87[0-48]|88[0-368]|888|96[0-8]|97[0-79]|979|99[2-68])/;
/** Signs between groups as E.123 writes them, and as people do. */
const GAP = String.raw`[ \u00a0\u2009.\-\u2010\u2011\u2013/]`;
const INTERNATIONAL = new RegExp(
  String.raw`(?<![\p{L}\p{N}+])(?:\+|00${GAP}?(?=[1-9]))${GAP}?(?:\(\d{1,4}\)|\d)(?:(?:${GAP}|\)|${GAP}?\()?\d){5,17}(?!\d)`,
  'gu',
);
/** A trunk zero or an area code in brackets, and groups. */
const NATIONAL = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/+-])(?:\(0?\d{2,5}\)${GAP}?|0\d{1,4}${GAP})\d{2,4}(?:${GAP}?\d{2,4}){1,3}(?![\p{L}\p{N}])`,
  'gu',
);
/** Three, three and four digits, as the North American Numbering Plan is written. */
const NORTH_AMERICAN = /(?<![\p{L}\p{N}.,/+-])\d{3}([ .-])\d{3}\1\d{4}(?![\p{L}\p{N}])/gu;
const LEAD_WORD = new RegExp(
  String.raw`(?:(?<!\p{L})(?:tel|telephone|phone|mobile|mob|cell|call|ring|fax|whatsapp|telefon|telefone|fone|celular|telefono|téléphone|puh|puhelin|komórka)(?!\p{L})|tel:|電話|携帯|전화|휴대폰)(?:\.|:|：|\s|number|no|at|me|us|on|番号|번호)*(\+?\(?\d(?:${GAP}?[()]?\d){5,14})(?!\d)`,
  'giu',
);

/**
 * Telephone numbers in a text: with a country code (ITU-T E.164, `itu:2010`), with a trunk zero or
 * area code in groups (E.123), or after a word that says so. Dates, ISBN and plain runs of digits
 * are none; a number without code, zero and word is missed.
 */
export function telephonesIn(text: string): readonly Found[] {
  if (!/\d{2}/.test(text)) return [];
  const hits = [
    ...[...text.matchAll(INTERNATIONAL)].filter(([found]) => isInternational(found)),
    ...[...text.matchAll(NATIONAL)].filter(([found]) => isNational(found)),
    ...[...text.matchAll(NORTH_AMERICAN)].filter(([found]) => !isDate(found)),
    ...[...text.matchAll(LEAD_WORD)].filter(([, found = '']) => !isDate(found)),
  ];
  return hits.map((hit) => {
    const text = hit.findLast((group) => /^[+(]?\d/.test(group ?? '')) ?? hit[0];
    return { what: 'telephone', text: text.trim(), at: hit.index + hit[0].indexOf(text) };
  });
}

/** At most 15 digits (E.164, 6), with an assigned code in front. */
function isInternational(found: string): boolean {
  const digits = digitsIn(found.replace(/\(0\)/, '')).replace(/^00/, '');
  return digits.length >= 7 && digits.length <= 15 && COUNTRY.test(digits);
}

function isNational(found: string): boolean {
  const digits = digitsIn(found);
  return digits.length >= 9 && digits.length <= 12 && !isDate(found) && !isIsbn(digits);
}

function digitsIn(text: string): string {
  return text.replaceAll(/\D/g, '');
}

/** Day, month and year in any order, or a time of the day after them. */
function isDate(text: string): boolean {
  const parts = text.split(/\D+/).filter(Boolean);
  const [a = '', b = '', c = ''] = parts;
  const year = [a, c].some((part) => /^(1[5-9]|20)\d\d$/.test(part));
  return parts.length >= 3 && year && Number(b) <= 31 && b.length <= 2;
}

/** Ten digits whose check digit is right (ISO 2108, the form until 2006). */
function isIsbn(digits: string): boolean {
  if (digits.length !== 10) return false;
  return [...digits].reduce((sum, digit, at) => sum + (10 - at) * Number(digit), 0) % 11 === 0;
}
